/** What stands where a number, a list or a chart would be when the neck on the bench could not be computed. */
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { failureText } from '../../speech/failures.ts';
import { useBackbow } from '../../state/store.ts';

/** Why the neck on the bench could not be computed, in words; null when it was, or is being computed. */
export function useNotComputed(): string | null {
  const notComputed = useBackbow((state) => state.notComputed);
  const system = useBackbow((state) => state.unitSystem);
  return notComputed?.what === 'prediction' ? failureText(notComputed.failure, system) : null;
}

/** The reason in the place of what is missing; nothing while there is none. */
export function NotComputed({ says = SOLVER_WORDS.notComputedWhy }: { readonly says?: (reason: string) => string }) {
  const reason = useNotComputed();
  return reason === null ? null : <p className="not-computed quiet">{says(reason)}</p>;
}
