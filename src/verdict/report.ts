/**
 * A build and its prediction as JSON for people and for scripts: every quantity under its one key (neck/quantities.ts),
 * with the unit in the key and the digits that the number deserves (a tenth of a micrometre, a tenth of a newton); checks
 * and choices as codes. No internal vectors, no sentences. `report-shape.ts` says what holds of it.
 */
import type { BitePosterior } from '../mechanics/bench-log/posterior.ts';
import { solveRod } from '../mechanics/inversion/rod.ts';
import type { Method, MethodPrediction, ReliefLine } from '../mechanics/prediction-types.ts';
import { sampleLine } from '../mechanics/relief.ts';
import { levellingMoment, lineAt } from '../mechanics/states.ts';
import { flatAfterDays } from '../mechanics/uncertainty/time-course.ts';
import type { MethodUncertainty, Uncertainty } from '../mechanics/uncertainty/types.ts';
import { checksOf, levellingState } from './checks.ts';
import type { Reckoned } from './reckoned.ts';
import { reportBand, reportHowBanded, rounded } from './report-bands.ts';
import { reportCheck } from './report-checks.ts';

export const REPORT_FORMAT = 'backbow prediction';
export const REPORT_VERSION = 2;

/** There is no minus zero. */
const round = (value: number, digits: number): number => Number(value.toFixed(digits)) + 0;
const mm = (value: number) => round(value, 4);
const newtons = (values: ArrayLike<number>) => Array.from(values, (value) => round(value, 1));
const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** The relief of greatest size under the straightedge, where it is, and its band. */
function reportLine(line: ReliefLine, band: MethodUncertainty['fretted'] | undefined) {
  return {
    value: mm(line.extremeMm),
    ...(band ? reportBand(band, 4) : {}),
    atXMm: round(line.extremeXMm, 1),
    atFret7Mm: mm(line.atFret7Mm),
    atFret8Mm: mm(line.atFret8Mm),
  };
}

/** The rod setting that brings the settled neck to the relief that the build wants, or how close it comes. */
function reportRod({ prediction, build }: Reckoned, method: Method, of: MethodUncertainty | undefined) {
  const answer = solveRod(prediction, method, { reliefMm: build.targetReliefMm, when: 'settled' });
  const band = of?.rodPercentForTarget;
  return {
    status: answer.status,
    rodSettingPercent: {
      value: round(answer.percent, 2),
      ...(band ? { ...reportBand(band, 1), withinReachPercent: rounded(100 * band.chance, 1) } : {}),
    },
    turnsOfNut: round(answer.nut.turns, 3),
    nutWay: answer.nut.way,
    nutTorqueNm: round(answer.nut.torqueNm, 2),
    quarterTurnReliefMm: mm(answer.quarterTurnMm),
    rodSetReliefMm: mm(answer.reliefMm),
    missMm: mm(answer.missMm),
  };
}

/** Days from stringing until a back-bow has gone; null where there is none, or where it outlasts ten years. */
function reportFlat({ prediction }: Reckoned, method: Method, of: MethodUncertainty | undefined) {
  const flat = of?.timeCourse.flat;
  return {
    value: rounded(flatAfterDays(prediction, method), 2),
    ...(flat
      ? {
          p05: rounded(flat.p05Days, 2),
          p50: rounded(flat.p50Days, 2),
          p95: rounded(flat.p95Days, 2),
          fromStartPercent: rounded(100 * flat.shareFromStart, 1),
          notInTenYearsPercent: rounded(100 * flat.shareNever, 1),
        }
      : {}),
  };
}

/** Relief of every fret top in the state in which the crowns are levelled, before the file. */
function reportLevelling(reckoned: Reckoned, method: Method) {
  const { prediction } = reckoned;
  const { reliefMm } = lineAt(prediction, method, levellingMoment(levellingState(reckoned)));
  return prediction.fretXMm.map((x) => mm(sampleLine(prediction.stationXMm, reliefMm, x)));
}

function reportMethod(id: Method, reckoned: Reckoned, uncertainty: Uncertainty | undefined) {
  const method: MethodPrediction = reckoned.prediction.methods[id];
  const bands = uncertainty?.methods[id];
  return {
    kerfMm: mm(method.kerfMm),
    frettedReliefMm: reportLine(method.fretted, bands?.fretted),
    strungReliefMm: reportLine(method.strung, bands?.strung),
    settledReliefMm: reportLine(method.settled, bands?.settled),
    rodSetReliefMm: reportLine(method.rodSet, bands?.rodSet),
    rodSetPercent: round(method.rodSetPercent, 2),
    rodTurnsAtLimit: round(method.rodTurnsAtLimit, 3),
    rodForTarget: reportRod(reckoned, id, bands),
    flatAfterDays: reportFlat(reckoned, id, bands),
    meanWedgeForceN: {
      value: round(meanOf(method.wedgeForceN), 1),
      ...(bands ? reportBand(bands.wedgeForceN, 1) : {}),
    },
    wedgeForceN: newtons(method.wedgeForceN),
    wedgeForceStrungN: newtons(method.wedgeForceStrungN),
    seatingForceN: newtons(method.seatingForceN),
    pullOutForceN: newtons(method.pullOutForceN),
    studBiteMm: method.biteMm.map(mm),
    slotOpeningMm: method.openingMm.map(mm),
    extraFlexibilityPercent: round(100 * method.extraFlexibility, 2),
    levellingReliefMm: reportLevelling(reckoned, id),
  };
}

/**
 * Positive relief is forward bow, negative is back-bow; the straightedge lies on the two frets that are named.
 * @param uncertainty of the build, for its bands; without it there are none in the report
 * @param log what a bench log left of the bite's scatter, where the bands come from one
 */
export function predictionReport(
  reckoned: Reckoned,
  uncertainty?: Uncertainty,
  log?: Pick<BitePosterior, 'logSpread' | 'necks'>,
) {
  const { build, prediction } = reckoned;
  return {
    format: REPORT_FORMAT,
    version: REPORT_VERSION,
    build: build.name,
    method: build.method,
    checks: checksOf(reckoned).map(reportCheck),
    straightedge: prediction.straightedge,
    targetReliefMm: build.targetReliefMm,
    settleDays: build.settleDays,
    levelledIn: levellingState(reckoned),
    levelledInIsAssumed: build.levelledIn === 'none',
    stringPullN: round(prediction.stringPullN, 1),
    strings: prediction.strings.map((string) => ({
      stringTensionN: round(string.tensionN, 1),
      stringStressMPa: round(string.stressMPa, 0),
      stringStressPercent: round(100 * string.stressRatio, 1),
    })),
    rod: {
      ...prediction.rod,
      limitN: round(prediction.rod.limitN, 0),
      torqueAtLimitNm: round(prediction.rod.torqueAtLimitNm, 2),
    },
    fretXMm: prediction.fretXMm.map(mm),
    ...(uncertainty ? { bands: reportHowBanded(uncertainty, log) } : {}),
    methods: {
      press: reportMethod('press', reckoned, uncertainty),
      glue: reportMethod('glue', reckoned, uncertainty),
      both: reportMethod('both', reckoned, uncertainty),
    },
  };
}
