/** Everything that stands on the bench sheet, from a build and its prediction. */
import type { Build } from '../../build/build.ts';
import { fretworkPlan, type FretworkPlan } from '../../fretwork/plan.ts';
import { runAhead, type RunAhead } from '../../fretwork/run-ahead.ts';
import { fretsInAfterQuarters } from '../../fretwork/seating-order.ts';
import type { Moment, Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import { sampleLine } from '../../mechanics/relief.ts';
import { lineAt } from '../../mechanics/states.ts';
import type { Solution } from '../../state/solution-slice.ts';
import { checkNumbersOf, levellingState } from '../checks/checks-of.ts';

export const STATES = ['bare', 'fretted', 'strung', 'settled', 'rodSet'] as const;
export type StateId = (typeof STATES)[number];

export interface ExpectedState {
  readonly id: StateId;
  readonly moment: Moment;
  readonly line: ReliefLine;
}

/** What to do when the bow after a quarter of the frets is so many times what was predicted. */
export interface AheadRow {
  /** Frets that are in. */
  readonly fretsIn: number;
  readonly ratio: number;
  readonly measuredMm: number;
  readonly result: RunAhead;
}

export interface SheetPlan {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly plan: FretworkPlan;
  /** The line after each quarter of the frets. */
  readonly quarterLines: readonly ReliefLine[];
  /** Those that this build comes through, in order; without a rod there is no rod to set. */
  readonly states: readonly ExpectedState[];
  /** Empty where the frets do not bow the neck enough to tell. */
  readonly ahead: readonly AheadRow[];
  readonly levelledIn: 'bare' | 'strung';
  /** The build does not say yet where the crowns are levelled; `levelledIn` is taken for it. */
  readonly levellingAssumed: boolean;
}

/** Ratios of measured over predicted that the sheet answers for. */
const RATIOS = [1.25, 1.5, 2] as const;
/** A bow below this is nothing that a straightedge and a feeler gauge tell, mm. */
const LEAST_TOLD_MM = 0.03;
/** Allowed difference at the end while no band is known: a third, from the 22 % scatter of the woods' stiffness and the wire's. */
const TOLERANCE = 1 / 3;

function momentOf(id: StateId, build: Build): Moment {
  const bench = { strung: false, days: 0, rodPercent: 0 };
  switch (id) {
    case 'bare':
      return { ...bench, fretsIn: [] };
    case 'fretted':
      return bench;
    case 'strung':
      return { strung: true, days: 0, rodPercent: 0 };
    case 'settled':
      return { strung: true, days: build.settleDays, rodPercent: 0 };
    case 'rodSet':
      return { strung: true, days: build.settleDays, rodPercent: build.rodSettingPercent };
  }
}

function aheadRows(
  { build, prediction }: Solution,
  quarterLines: readonly ReliefLine[],
  tolerance: number,
): AheadRow[] {
  const full = quarterLines.at(-1)!;
  const at = (line: ReliefLine) => sampleLine(prediction.stationXMm, line.reliefMm, full.extremeXMm);
  const start = sampleLine(prediction.stationXMm, prediction.startingMm, full.extremeXMm);
  const predictedFullMm = at(full) - start;
  const counts = fretsInAfterQuarters(build).map((frets) => frets.length);
  return [0, 1].flatMap((quarter) => {
    const predictedSoFarMm = at(quarterLines[quarter]!) - start;
    if (Math.abs(predictedSoFarMm) < LEAST_TOLD_MM || predictedSoFarMm * predictedFullMm <= 0) return [];
    return RATIOS.map((ratio): AheadRow => {
      const measured = ratio * predictedSoFarMm;
      const { kerfMm, studWidthMm } = build;
      const input = { predictedSoFarMm, measuredSoFarMm: measured, predictedFullMm, tolerance, kerfMm, studWidthMm };
      return { fretsIn: counts[quarter]!, ratio, measuredMm: start + measured, result: runAhead(input) };
    });
  });
}

export function sheetPlan(solution: Solution): SheetPlan {
  const { build, prediction } = solution;
  const { method } = build;
  const line = (moment: Moment) => lineAt(prediction, method, moment);
  const quarterLines = fretsInAfterQuarters(build).map((fretsIn) =>
    line({ fretsIn, strung: false, days: 0, rodPercent: 0 }),
  );
  const of = prediction.methods[method];
  const plan = fretworkPlan(build, {
    ...checkNumbersOf(solution),
    seating: {
      seatingForceN: of.seatingForceN,
      wedgeForceN: of.wedgeForceN,
      pullOutForceN: of.pullOutForceN,
      bowAfterQuarterMm: quarterLines.map(({ extremeMm }) => extremeMm),
    },
  });
  const states = STATES.filter((id) => id !== 'rodSet' || build.rodKind !== 'none').map((id): ExpectedState => {
    const moment = momentOf(id, build);
    return { id, moment, line: line(moment) };
  });
  return {
    build,
    prediction,
    plan,
    quarterLines,
    states,
    ahead: aheadRows(solution, quarterLines, TOLERANCE),
    levelledIn: levellingState(solution),
    levellingAssumed: build.levelledIn === 'none',
  };
}
