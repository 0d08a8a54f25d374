/** The fret-top lines of the moment on the rail: computed on the page's own thread from what the worker found. */
import { useMemo } from 'react';
import { lineAt } from '../mechanics/states.ts';
import { METHODS, type Method, type ReliefLine } from '../mechanics/prediction-types.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';
import { bandAt, type LineBand } from '../mechanics/uncertainty/band-at.ts';
import { momentAt } from './rail.ts';
import { currentBands } from './solution-slice.ts';
import { useBackbow, type BackbowState } from './store.ts';

export type Lines = Readonly<Record<Method, ReliefLine>>;

/** Lines of all methods, or null before the first prediction. */
export function linesOf(state: Pick<BackbowState, 'solution' | 'rail'>): Lines | null {
  const { solution, rail } = state;
  if (!solution) return null;
  const moment = momentAt(solution.build, rail);
  const entries = METHODS.map((method) => [method, lineAt(solution.prediction, method, moment)]);
  return Object.fromEntries(entries) as Lines;
}

/** The same for a component. */
export function useLines(): Lines | null {
  const solution = useBackbow((state) => state.solution);
  const rail = useBackbow((state) => state.rail);
  return useMemo(() => linesOf({ solution, rail }), [solution, rail]);
}

/** Band of the chosen method's line at the moment on the rail, or null while it is being computed. */
export function useLineBand(): LineBand | null {
  return useBandOf(useBackbow(currentBands));
}

/**
 * Room that the band will want: of the bands computed last, be they of an earlier value. A chart that keeps to it does
 * not jump while a slider moves.
 */
export function useBandRoom(): LineBand | null {
  const last = useBackbow(({ bands, solution }) =>
    bands && solution?.prediction.fretXMm.length === bands.uncertainty.kindOfFret.length ? bands.uncertainty : null,
  );
  return useBandOf(last);
}

function useBandOf(uncertainty: Uncertainty | null): LineBand | null {
  const solution = useBackbow((state) => state.solution);
  const rail = useBackbow((state) => state.rail);
  return useMemo(
    () => (solution && uncertainty ? bandAt(uncertainty, solution.build.method, momentAt(solution.build, rail)) : null),
    [solution, uncertainty, rail],
  );
}
