/** Two or three necks that came by one link: open one, or see them all as the customer does. */
import { addressOf } from '../../state/share/address.ts';
import { store } from '../../state/store.ts';
import { Dialog } from '../dialog/dialog.tsx';
import { METHOD_WORDS } from '../words/panels.ts';
import { useReceived } from './received-store.ts';
import { LINK_WORDS, RECEIVED_WORDS } from './words.ts';
import './share.css';

export function ReceivedDialog() {
  const { shared, link } = useReceived();
  const { closeDialog, replaceBuild, notify } = store.getState();
  if (!shared) return null;
  return (
    <Dialog title={RECEIVED_WORDS.title} onClose={closeDialog}>
      <p>{RECEIVED_WORDS.intro(shared.builds.length)}</p>
      <ul className="received">
        {shared.builds.map((build, index) => (
          <li key={index}>
            <span>
              <strong>{build.name}</strong>, {METHOD_WORDS[build.method].label}
            </span>
            <button
              type="button"
              aria-label={RECEIVED_WORDS.openName(`${build.name}, ${METHOD_WORDS[build.method].label}`)}
              onClick={() => {
                replaceBuild(build, LINK_WORDS.stepOpen);
                notify('info', LINK_WORDS.opened(build.name));
                closeDialog();
              }}
            >
              {RECEIVED_WORDS.open}
            </button>
          </li>
        ))}
      </ul>
      {shared.page.note !== '' && (
        <section>
          <h3>{RECEIVED_WORDS.note}</h3>
          <p className="own-text">{shared.page.note}</p>
        </section>
      )}
      <p>
        <a href={addressOf(location.href, { kind: 'customer', link })} target="_blank" rel="noreferrer">
          {RECEIVED_WORDS.page}
        </a>
      </p>
    </Dialog>
  );
}
