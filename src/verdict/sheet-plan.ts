/** Everything that stands on the bench sheet, from a build and its prediction. */
import type { Build } from '../neck/build.ts';
import type { Check } from '../fretwork/checks/check-types.ts';
import { fretworkPlan, type FretworkPlan, type PlayedRow } from '../fretwork/plan/plan.ts';
import { splitAt, withRest } from '../mechanics/while-fretting/job.ts';
import { runAhead, type RunAhead } from '../mechanics/while-fretting/run-ahead.ts';
import { fretsInAfterQuarters } from '../fretwork/plan/seating-order.ts';
import type { Moment, Prediction, ReliefLine } from '../mechanics/prediction-types.ts';
import { sampleLine } from '../mechanics/relief.ts';
import { lineAt } from '../mechanics/states.ts';
import type { RodAnswer } from '../mechanics/inversion/rod.ts';
import { bandAt } from '../mechanics/uncertainty/band-at.ts';
import type { Band } from '../mechanics/uncertainty/band.ts';
import type { ReadoutBand, Uncertainty } from '../mechanics/uncertainty/types.ts';
import { checkNumbersOf, levellingState } from './checks.ts';
import { rodForTarget } from './job-figures.ts';
import { withKnownLimits } from './known-limits.ts';
import { raisedBy } from './raised-by.ts';
import type { Reckoned } from './reckoned.ts';
import type { OwnStrength } from '../playing/own-strength.ts';
import { setUpFigures, type SetUpFigures } from './set-up-figures.ts';
import { setUpHeights, type SetUpHeights } from './set-up-heights.ts';
import { verdictOf, type Verdict } from './in-short/verdict.ts';

/** In the order of the job; `rodNow` is the rod as the build has it, `rodWanted` the setting for the relief wanted or nearest to it. */
export type StateId = 'bare' | 'fretted' | 'strung' | 'settled' | 'rodNow' | 'rodWanted';

export interface ExpectedState {
  readonly id: StateId;
  readonly moment: Moment;
  readonly line: ReliefLine;
  /** 5 to 95 % of the relief of greatest size; undefined while it is not known. */
  readonly band?: Band;
}

/** What to do when the bow after a quarter of the frets is so many times what was predicted. */
export interface AheadRow {
  /** Frets that are in. */
  readonly fretsIn: number;
  readonly ratio: number;
  readonly measuredMm: number;
  /** With all frets in, when the rest goes in unchanged. */
  readonly expectedFullMm: number;
  readonly result: RunAhead;
  /** What a kerf for the rest would raise among the checks of the slots, worst first; empty where none is advised. */
  readonly raised: readonly Check[];
}

export interface SheetPlan {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly verdict: Verdict;
  readonly plan: FretworkPlan;
  /** The line after each quarter of the frets. */
  readonly quarterLines: readonly ReliefLine[];
  /** Those that this build comes through, in order; without a rod there is no rod to set. */
  readonly states: readonly ExpectedState[];
  /** Undefined without a rod. */
  readonly rod?: RodAnswer;
  /** What makes most of the band of the settled neck, largest first. */
  readonly drivers?: ReadoutBand['drivers'];
  /** Empty where the frets do not bow the neck enough to tell. */
  readonly ahead: readonly AheadRow[];
  /** The neck as it is set up and played. */
  readonly setUp: SetUpFigures & Pick<SetUpHeights, 'actionPerTurnMm'>;
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
const BENCH = { strung: false, days: 0, rodPercent: 0 } as const;

function momentsOf(build: Build, rod: RodAnswer | undefined): [StateId, Moment][] {
  const settled = (rodPercent: number): Moment => ({ strung: true, days: build.settleDays, rodPercent });
  return [
    ['bare', { ...BENCH, fretsIn: [] }],
    ['fretted', BENCH],
    ['strung', { strung: true, days: 0, rodPercent: 0 }],
    ['settled', settled(0)],
    ...(rod && build.rodSettingPercent !== 0
      ? [['rodNow', settled(build.rodSettingPercent)] as [StateId, Moment]]
      : []),
    // A rod that cannot help and is best left slack is no state of its own.
    ...(rod && (rod.status === 'reached' || rod.percent !== 0)
      ? [['rodWanted', settled(rod.percent)] as [StateId, Moment]]
      : []),
  ];
}

/** Half the band of the bow with all frets in, as a share of that bow. */
function toleranceOf(fullMm: number, band: Band | undefined): number {
  return band && fullMm !== 0 ? (band.p95 - band.p05) / 2 / Math.abs(fullMm) : TOLERANCE;
}

function aheadRows(
  { build, prediction }: Reckoned,
  quarterLines: readonly ReliefLine[],
  tolerance: number,
): AheadRow[] {
  const full = quarterLines.at(-1)!;
  const { extremeXMm: xMm } = full;
  const at = (line: ReliefLine) => sampleLine(prediction.stationXMm, line.reliefMm, xMm);
  const start = sampleLine(prediction.stationXMm, prediction.startingMm, xMm);
  const predictedFullMm = at(full) - start;
  return [0, 1].flatMap((quarter) => {
    const predictedSoFarMm = at(quarterLines[quarter]) - start;
    if (Math.abs(predictedSoFarMm) < LEAST_TOLD_MM || predictedSoFarMm * predictedFullMm <= 0) return [];
    const { seated, rest } = splitAt(build, fretsInAfterQuarters(build)[quarter].length);
    return RATIOS.map((ratio): AheadRow => {
      const result = runAhead(build, prediction, { seated, rest, ratio, xMm, tolerance });
      const { kerfMm } = result;
      return {
        fretsIn: seated.length,
        ratio,
        measuredMm: start + ratio * predictedSoFarMm,
        expectedFullMm: start + result.expectedFullMm,
        result,
        raised:
          kerfMm === undefined
            ? []
            : raisedBy({ build, prediction }, { build: withRest(build, rest, { code: 'kerf', kerfMm }), prediction }),
      };
    });
  });
}

/** As the table has them: strings and frets counted from 1. */
function playedRows({ strengths, own }: SetUpFigures): PlayedRow[] {
  return [...strengths, ...(own ? [own] : [])].map(({ strength, forceN, least, buzzing, mayBuzz, lowestActionMm }) => ({
    strength,
    forceN,
    roomMm: least.leastMm,
    string: least.string + 1,
    frettedAt: least.note,
    touchedFret: least.atFret,
    notesBuzzing: buzzing,
    notesMayBuzz: mayBuzz,
    lowestActionMm,
  }));
}

/**
 * @param uncertainty of the same build; null while it is not known
 * @param own the maker's own strength, where one was accepted
 */
export function sheetPlan(
  reckoned: Reckoned,
  uncertainty: Uncertainty | null = null,
  own: OwnStrength | null = null,
): SheetPlan {
  const { build, prediction } = reckoned;
  const { method } = build;
  const bandOf = (moment: Moment): { band?: Band } =>
    uncertainty ? { band: bandAt(uncertainty, method, moment).extreme } : {};
  const quarterMoments = fretsInAfterQuarters(build).map((fretsIn): Moment => ({ ...BENCH, fretsIn }));
  const quarterLines = quarterMoments.map((moment) => lineAt(prediction, method, moment));
  const quarterBands = quarterMoments.map((moment) => bandOf(moment).band);
  const of = prediction.methods[method];
  const setUp = setUpFigures(reckoned, own);
  const heights = setUpHeights(reckoned);
  const plan = fretworkPlan(build, {
    ...checkNumbersOf(reckoned),
    seating: {
      seatingForceN: of.seatingForceN,
      wedgeForceN: of.wedgeForceN,
      pullOutForceN: of.pullOutForceN,
      bowAfterQuarterMm: quarterLines.map(({ extremeMm }) => extremeMm),
      ...(uncertainty ? { bowBandMm: quarterBands.map((band) => [band!.p05, band!.p95] as const) } : {}),
    },
    playing: playedRows(setUp),
    setUp: heights.strings.map((row, string) => ({ string: string + 1, ...row })),
  });
  const rod = build.rodKind === 'none' ? undefined : rodForTarget(reckoned);
  const drivers = uncertainty?.methods[method].settled.drivers;
  return {
    build,
    prediction,
    verdict: verdictOf(reckoned, uncertainty),
    plan: { ...plan, checks: withKnownLimits(plan.checks, reckoned) },
    quarterLines,
    states: momentsOf(build, rod).map(([id, moment]) => ({
      id,
      moment,
      line: lineAt(prediction, method, moment),
      // The bare board is what it is.
      ...(id === 'bare' ? {} : bandOf(moment)),
    })),
    ...(rod ? { rod } : {}),
    ...(drivers ? { drivers } : {}),
    ahead: aheadRows(reckoned, quarterLines, toleranceOf(quarterLines.at(-1)!.extremeMm, quarterBands.at(-1))),
    setUp: { ...setUp, actionPerTurnMm: heights.actionPerTurnMm },
    levelledIn: levellingState(reckoned),
    levellingAssumed: build.levelledIn === 'none',
  };
}
