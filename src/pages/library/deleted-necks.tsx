/** What was deleted, to be brought back or let go for good. */
import { useState } from 'react';
import type { LibraryEntry } from '../../state/library/types.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';

interface DeletedNecksProps {
  readonly entries: readonly LibraryEntry[];
  readonly bringBack: (entry: LibraryEntry) => void;
  readonly forget: () => void;
}

export function DeletedNecks({ entries, bringBack, forget }: DeletedNecksProps) {
  const [asking, setAsking] = useState(false);
  if (entries.length === 0) return null;
  return (
    <details className="more-necks">
      <summary>{LIBRARY_WORDS.deletedTitle(entries.length)}</summary>
      <p className="quiet">{LIBRARY_WORDS.deletedIntro}</p>
      <ul>
        {entries.map((entry) => (
          <li key={entry.id}>
            <span>{entry.name}</span>
            <button type="button" aria-label={LIBRARY_WORDS.bringBackName(entry.name)} onClick={() => bringBack(entry)}>
              {LIBRARY_WORDS.bringBack}
            </button>
          </li>
        ))}
      </ul>
      {asking ? (
        <p className="button-row">
          <span>{LIBRARY_WORDS.forgetSure(entries.length)}</span>
          <button
            type="button"
            onClick={() => {
              setAsking(false);
              forget();
            }}
          >
            {LIBRARY_WORDS.forgetYes}
          </button>
          <button type="button" onClick={() => setAsking(false)}>
            {LIBRARY_WORDS.cancel}
          </button>
        </p>
      ) : (
        <button type="button" onClick={() => setAsking(true)}>
          {LIBRARY_WORDS.forget}
        </button>
      )}
    </details>
  );
}
