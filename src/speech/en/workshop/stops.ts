/** What is said aloud when a build cannot be made as it stands. */
import { words } from '../../language.ts';

export const STOP_WORDS = words('STOP_WORDS', {
  /** @param facts a sentence with value, limit and place; empty where the check is not about a number */
  stop: (label: string, facts: string) => (facts === '' ? `Stop: ${label}.` : `Stop: ${label}. ${facts}`),
  more: (count: number) => `${count} more ${count === 1 ? 'stop' : 'stops'}.`,
  solved: (labels: readonly string[], left: number) =>
    `Solved: ${labels.join(', ')}. ${left === 0 ? 'No stops left.' : `${left} ${left === 1 ? 'stop' : 'stops'} left.`}`,
});
