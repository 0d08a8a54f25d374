/** Necks that were left on the bench: brought back, or discarded. */
import { useEffect, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { isolated } from '../../speech/isolate.ts';
import type { LeftNeck } from '../../state/journal/keep-bench.ts';
import { benchKeeper } from '../../state/journal/page-keeper.ts';
import { latestOf } from '../../state/journal/record.ts';
import { formatWhen } from '../../state/library/when.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';
import { useLibrary } from './page-library.ts';
import { EarlierStates } from './earlier-states.tsx';

/** When and why it left the bench. */
function leftText({ record, mayBeOpen }: LeftNeck): string {
  const { left, isClosed, toldAt } = record;
  const when = formatWhen(left?.at ?? latestOf(record).at);
  const how = left
    ? LIBRARY_WORDS.leftFor(when, left.for)
    : isClosed
      ? LIBRARY_WORDS.leftClosed(when)
      : mayBeOpen
        ? LIBRARY_WORDS.leftOpen(when)
        : LIBRARY_WORDS.leftSuddenly(when);
  return toldAt === null ? how : `${how} – ${LIBRARY_WORDS.goesNext}`;
}

interface LeftNecksProps {
  readonly open: (build: Build) => void;
  /** Told after one was discarded. */
  readonly discarded: (name: string, undo: () => void) => void;
}

export function LeftNecks({ open, discarded }: LeftNecksProps) {
  const [left, setLeft] = useState<readonly LeftNeck[]>([]);
  const [looked, setLooked] = useState(0);
  // With the library the journal may have changed too, as by a backup.
  const entries = useLibrary((state) => state.entries);
  useEffect(() => {
    let isHere = true;
    void benchKeeper.left().then((necks) => {
      if (isHere) setLeft(necks);
    });
    return () => {
      isHere = false;
    };
  }, [looked, entries]);
  // Until the cards above are there, a finger that aims here would hit one of them.
  const isReading = useLibrary((state) => state.entries === null && state.trouble === null);
  const readable = left.flatMap((neck) => (neck.latest.ok ? [{ neck, build: neck.latest.build }] : []));
  if (isReading || readable.length === 0) return null;
  const lookAgain = (): void => setLooked((count) => count + 1);
  return (
    <details className="more-necks">
      <summary>{LIBRARY_WORDS.leftTitle(readable.length)}</summary>
      <p className="quiet">{LIBRARY_WORDS.leftIntro}</p>
      <ul>
        {readable.map(({ neck, build }) => (
          <li key={neck.record.id}>
            <div>
              {isolated(build.name)} <span className="quiet">{leftText(neck)}</span>
              <EarlierStates record={neck.record} bring={open} />
            </div>
            <span className="button-row">
              <button type="button" aria-label={LIBRARY_WORDS.bringBackName(build.name)} onClick={() => open(build)}>
                {LIBRARY_WORDS.bringBack}
              </button>
              <button
                type="button"
                aria-label={LIBRARY_WORDS.discardName(build.name)}
                onClick={() => {
                  benchKeeper.discard(neck.record.id);
                  lookAgain();
                  discarded(build.name, () => {
                    benchKeeper.journal.write(neck.record);
                    lookAgain();
                  });
                }}
              >
                {LIBRARY_WORDS.discard}
              </button>
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
