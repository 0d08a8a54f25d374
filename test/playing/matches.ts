/** A neck that just buzzes, as it is written down. */
import { defaultBuild } from '../../src/neck/build.ts';
import { geometryOf, USUAL_ERRORS, type BuzzMatch } from '../../src/playing/buzz-match.ts';

/** One of the standard neck, but for what is said. */
export function matchOf(change: Partial<BuzzMatch> = {}): BuzzMatch {
  return {
    id: 'bcdfghjklmnpqr',
    date: '2026-11-01',
    name: 'No. 7',
    neck: geometryOf(defaultBuild()),
    string: 1,
    note: 3,
    fret: 8,
    direction: 'along',
    reliefMm: 0.2,
    actionMm: 1.6,
    ...USUAL_ERRORS,
    ...change,
  };
}
