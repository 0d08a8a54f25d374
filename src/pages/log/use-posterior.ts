/** What the log says of the bite, found by a worker. */
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import { useAnswer, type Asked } from '../../state/answers/use-answer.ts';

const numbers = new WeakMap<readonly LogEntry[], number>();
let count = 0;

/** A number for each list: a long one is not looked through to be told from another. */
function numberOf(entries: readonly LogEntry[]): number {
  const number = numbers.get(entries) ?? (count += 1);
  numbers.set(entries, number);
  return number;
}

/** @param entries null while they are being read */
export function usePosterior(entries: readonly LogEntry[] | null): Asked<BitePosterior> {
  const key = entries === null ? null : String(numberOf(entries));
  return useAnswer<BitePosterior>(key, (api, told) => api.posterior(entries!, told));
}
