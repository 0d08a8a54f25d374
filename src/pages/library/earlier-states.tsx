/** How a neck was before: the states that the journal keeps of it, the latest first. */
import type { Build } from '../../neck/build.ts';
import { readStanding, type NeckRecord } from '../../state/journal/record.ts';
import { formatWhen } from '../../state/library/when.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';

interface EarlierStatesProps {
  readonly record: NeckRecord;
  /** @param when as it is said */
  readonly bring: (build: Build, when: string) => void;
}

export function EarlierStates({ record, bring }: EarlierStatesProps) {
  const earlier = record.standings
    .slice(0, -1)
    .toReversed()
    .flatMap((standing) => {
      const read = readStanding(standing);
      return read.ok ? [{ at: standing.at, build: read.build }] : [];
    });
  if (earlier.length === 0) return null;
  return (
    <details className="earlier-states">
      <summary>{LIBRARY_WORDS.earlierTitle(earlier.length)}</summary>
      <span className="button-row">
        {earlier.map(({ at, build }) => {
          const when = formatWhen(at);
          return (
            <button
              key={at}
              type="button"
              aria-label={LIBRARY_WORDS.earlierOpen(when, build.name)}
              onClick={() => bring(build, when)}
            >
              {when}
            </button>
          );
        })}
      </span>
    </details>
  );
}
