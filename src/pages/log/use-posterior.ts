/** What the log says of the bite, found by a worker. */
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import type { GripLaw } from '../../mechanics/bench-log/law.ts';
import { useBackbow } from '../../state/store.ts';
import { useAnswer, type Asked } from '../../state/answers/use-answer.ts';

const numbers = new WeakMap<readonly LogEntry[], number>();
let count = 0;

/** A number for each list: a long one is not looked through to be told from another. */
function numberOf(entries: readonly LogEntry[]): number {
  const number = numbers.get(entries) ?? (count += 1);
  numbers.set(entries, number);
  return number;
}

/** The law of the grip that the bench's build is computed with. */
export function useLaw(): GripLaw {
  const studShape = useBackbow(({ build }) => build.studShape);
  const studSoftnessMm = useBackbow(({ build }) => build.studSoftnessMm);
  return { studShape, studSoftnessMm };
}

/** @param entries null while they are being read */
export function usePosterior(entries: readonly LogEntry[] | null): Asked<BitePosterior> {
  const law = useLaw();
  const key = entries === null ? null : JSON.stringify([numberOf(entries), law]);
  return useAnswer<BitePosterior>(key, (api, told) => api.posterior(entries!, law, told));
}
