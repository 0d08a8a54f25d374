/** Several necks that came by a link or in a file: open one, keep them all, or see them as the customer does. */
import { useState } from 'react';
import { isolated } from '../../speech/isolate.ts';
import { addressOf } from '../../state/share/address.ts';
import { writeLink } from '../../state/share/link.ts';
import { MOST_SHARED } from '../../state/share/shared.ts';
import { store, useBackbow } from '../../state/store.ts';
import { columnOf, LEAST_COMPARED, MOST_COMPARED } from '../../state/compare/comparison-slice.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { problemTexts } from '../../speech/problems.ts';
import { useReceived, type Received } from './received-store.ts';
import { LINK_WORDS, RECEIVED_WORDS } from '../../speech/en/pages/share.ts';
import './share.css';

/** Address of the customer's page of these necks; null where there are too many, or too much text, for a link. */
function customerAddress({ builds, page, offers = [] }: Received): string | null {
  if (builds.length < 1 || builds.length > MOST_SHARED) return null;
  const link = writeLink({ builds: builds.map(({ build }) => build), page, offers });
  return link.ok ? addressOf(location.href, { kind: 'customer', link: link.text }) : null;
}

function compareAll({ builds }: Received): void {
  const { setColumns, openDialog } = store.getState();
  setColumns(builds.map(({ build }) => columnOf(build)));
  openDialog('compare');
}

async function keepAll({ builds }: Received): Promise<string> {
  const { library } = await import('../library/page-library.ts');
  const kept = await library.import(builds);
  if (!kept.ok) return LIBRARY_WORDS.troubles[kept.trouble];
  const { added, notKept } = kept.value;
  const missing = notKept ? ` ${LIBRARY_WORDS.notKept(notKept.count)}` : '';
  return `${LIBRARY_WORDS.imported(added.length)}${missing}`;
}

function Refused({ refused }: Pick<Received, 'refused'>) {
  const system = useBackbow((state) => state.unitSystem);
  if (refused.length === 0) return null;
  return (
    <ul className="refusal">
      {refused.map(({ place, name, problems }) => (
        <li key={place}>
          {RECEIVED_WORDS.refused(place, name)} {problemTexts(problems, system).slice(0, 3).join(' ')}
        </li>
      ))}
    </ul>
  );
}

export function ReceivedDialog() {
  const received = useReceived();
  const [said, setSaid] = useState('');
  const { closeDialog, replaceBuild, notify } = store.getState();
  const { builds, page, refused } = received;
  const address = customerAddress(received);
  return (
    <Dialog title={RECEIVED_WORDS.title} onClose={closeDialog}>
      <p>{RECEIVED_WORDS.intro(builds.length)}</p>
      <ul className="received">
        {builds.map(({ build }, index) => {
          const called = `${isolated(build.name)}, ${METHOD_WORDS[build.method].label}`;
          return (
            <li key={index}>
              <span>
                <strong>{isolated(build.name)}</strong>, {METHOD_WORDS[build.method].label}
              </span>
              <button
                type="button"
                aria-label={RECEIVED_WORDS.openName(called)}
                onClick={() => {
                  replaceBuild(build, LINK_WORDS.stepOpen);
                  notify('info', RECEIVED_WORDS.opened(called));
                  closeDialog();
                }}
              >
                {RECEIVED_WORDS.open}
              </button>
            </li>
          );
        })}
      </ul>
      <Refused refused={refused} />
      {received.pageRefused && <p className="refusal">{LIBRARY_WORDS.pageRefused}</p>}
      {page.note !== '' && (
        <section>
          <h3>{RECEIVED_WORDS.note}</h3>
          <p className="own-text">{page.note}</p>
        </section>
      )}
      <div className="button-row">
        {builds.length >= LEAST_COMPARED && builds.length <= MOST_COMPARED && (
          <button type="button" onClick={() => compareAll(received)}>
            {COMPARE_WORDS.open}
          </button>
        )}
        <button type="button" disabled={builds.length === 0} onClick={() => void keepAll(received).then(setSaid)}>
          {RECEIVED_WORDS.keepAll}
        </button>
        {address !== null && (
          <a href={address} target="_blank" rel="noreferrer">
            {RECEIVED_WORDS.page}
          </a>
        )}
        <output>{said}</output>
      </div>
    </Dialog>
  );
}
