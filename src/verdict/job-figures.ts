/** Figures of a neck that more than one surface shows: computed here, and nowhere else. */
import type { Build } from '../neck/build.ts';
import { glueById } from '../neck/glues.ts';
import { solveRod, type RodAnswer } from '../mechanics/inversion/rod.ts';
import type { Method, MethodPrediction } from '../mechanics/prediction-types.ts';
import type { Reckoned } from './reckoned.ts';

/** Mean over the frets. @param perFret at least one */
export function meanOfFrets(perFret: readonly number[]): number {
  return perFret.reduce((sum, value) => sum + value, 0) / perFret.length;
}

/** The rod setting that brings the settled neck to the relief that the build wants, or how close it comes. */
export function rodForTarget({ build, prediction }: Reckoned, method: Method = build.method): RodAnswer {
  return solveRod(prediction, method, { reliefMm: build.targetReliefMm, when: 'settled' });
}

/** How far the relief moves between stringing and settled, mm; plus is forward. */
export function settlingMoveMm({ settled, strung }: Pick<MethodPrediction, 'settled' | 'strung'>): number {
  return settled.extremeMm - strung.extremeMm;
}

/** Hours until the glue has set through; 0 where none is used. */
export function glueFullHours({ method, glueKind }: Pick<Build, 'method' | 'glueKind'>): number {
  return method === 'press' ? 0 : glueById(glueKind).fullHours;
}

/** Days from the frets to the strings: the rest that the build asks for, or the glue where that takes longer. */
export function waitDays(build: Pick<Build, 'method' | 'glueKind' | 'restDays'>): number {
  return Math.max(build.restDays, glueFullHours(build) / 24);
}
