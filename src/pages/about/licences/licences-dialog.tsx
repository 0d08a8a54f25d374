/** Whose work is in the program, and under which licence. */
import { useEffect, useState } from 'react';
import { store } from '../../../state/store.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { fetchLicences } from './fetch-licences.ts';
import type { Licence } from './licence.ts';
import { LICENCE_WORDS } from '../../../speech/en/pages/licences.ts';
import './licences.css';

export function LicencesDialog() {
  const [list, setList] = useState<readonly Licence[] | null>();
  useEffect(() => {
    let gone = false;
    void fetchLicences().then((found) => {
      if (!gone) setList(found);
    });
    return () => {
      gone = true;
    };
  }, []);
  return (
    <Dialog title={LICENCE_WORDS.title} onClose={store.getState().closeDialog}>
      <p>{list ? LICENCE_WORDS.intro(list.length) : list === null ? LICENCE_WORDS.missing : LICENCE_WORDS.loading}</p>
      {list && (
        <ul className="licences">
          {list.map(({ name, version, licence, by, text }) => (
            <li key={`${name} ${version}`}>
              <details>
                <summary>
                  <span className="licence-name">{name}</span> {version}
                  {by !== '' && <span className="quiet"> {LICENCE_WORDS.by(by)}</span>}
                  <span className="licence-kind">{licence}</span>
                </summary>
                {text === null ? <p className="quiet">{LICENCE_WORDS.noText}</p> : <pre lang="en">{text}</pre>}
              </details>
            </li>
          ))}
        </ul>
      )}
    </Dialog>
  );
}
