/** The neck on the bench with its prediction and its band, once the two belong together. */
import { useMemo } from 'react';
import type { Method } from '../../mechanics/prediction-types.ts';
import { bandAt, type LineBand } from '../../mechanics/uncertainty/band-at.ts';
import { momentAt, type RailPosition } from '../../verdict/rail.ts';
import { useBackbow } from '../../state/store.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { useNotComputed } from '../workshop/not-computed.tsx';
import { useGuesses } from './guesses.ts';
import type { Bench } from './quantities.ts';

/** Null while it is being computed. */
export function useBench(): Bench | null {
  const solution = useBackbow((state) => (state.solution?.build === state.build ? state.solution : null));
  const remembered = useGuesses((state) => state.remembered);
  return useMemo(() => solution && { ...solution, remembered }, [solution, remembered]);
}

/** Band of the line at a moment; null while it is being computed. */
export function useBand(at: RailPosition | null, method: Method | undefined): LineBand | null {
  const build = useBackbow((state) => state.build);
  const bands = useBackbow((state) => state.bands);
  return useMemo(() => {
    if (at === null || bands?.build !== build) return null;
    const { uncertainty } = bands;
    const of = method ?? build.method;
    return bandAt(uncertainty, of, momentAt(build, at, uncertainty.methods[of].rodSetPercent));
  }, [at, method, build, bands]);
}

/** What stands where a number of the neck will be: it is being computed, or will not be and why. */
export function useComing(): string {
  const reason = useNotComputed();
  return reason === null ? LESSON_WORDS.computing : SOLVER_WORDS.notComputedWhy(reason);
}
