/** The fret-top lines of the moment on the rail: computed on the page's own thread from what the worker found. */
import { useMemo } from 'react';
import { lineAt } from '../mechanics/states.ts';
import { METHODS, type Method, type ReliefLine } from '../mechanics/prediction-types.ts';
import { bandAt, type LineBand } from '../mechanics/uncertainty/band-at.ts';
import { momentAt } from '../verdict/rail.ts';
import { useBackbow, type BackbowState } from './store.ts';

export type Lines = Readonly<Record<Method, ReliefLine>>;

/** Lines of all methods, or null before the first prediction. */
export function linesOf(state: Pick<BackbowState, 'solution' | 'rail'>): Lines | null {
  const { solution, rail } = state;
  if (!solution) return null;
  const { build, prediction } = solution;
  // Each way of seating with its own rod set.
  const momentFor = (method: Method) => momentAt(build, rail, prediction.methods[method].rodSetPercent);
  const entries = METHODS.map((method) => [method, lineAt(prediction, method, momentFor(method))]);
  return Object.fromEntries(entries) as Lines;
}

/** The same for a component. */
/** @param useState the state, or what follows it */
export function useLines(useState: typeof useBackbow = useBackbow): Lines | null {
  const solution = useState((state) => state.solution);
  const rail = useState((state) => state.rail);
  return useMemo(() => linesOf({ solution, rail }), [solution, rail]);
}

export interface LineBands {
  /** Band of the chosen method's line at the moment on the rail, or null while it is being computed. */
  readonly band: LineBand | null;
  /**
   * Room that the band will want: that of the bands computed last, be they of an earlier value. A chart that keeps to it
   * does not jump while a slider moves.
   */
  readonly room: LineBand | null;
}

export function useLineBands(useState: typeof useBackbow = useBackbow): LineBands {
  const solution = useState((state) => state.solution);
  const bands = useState((state) => state.bands);
  const rail = useState((state) => state.rail);
  const method = solution?.build.method;
  const frets = solution?.prediction.fretXMm.length;
  // At the moment of its own build, so that it is computed once while a slider moves on from that build.
  const room = useMemo(() => {
    if (method === undefined || bands?.uncertainty.kindOfFret.length !== frets) return null;
    const { build, uncertainty } = bands!;
    return bandAt(uncertainty, method, momentAt(build, rail, uncertainty.methods[build.method].rodSetPercent));
  }, [method, frets, bands, rail]);
  return { band: bands?.build === solution?.build ? room : null, room };
}
