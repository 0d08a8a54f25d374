/**
 * A prediction as JSON for people and for scripts: names with units, the digits that the numbers deserve (a tenth of a
 * micrometre, a tenth of a newton), no internal vectors.
 */
import type { BitePosterior } from './bench-log/posterior.ts';
import type { Build } from '../neck/build.ts';
import { solveRod } from './inversion/rod.ts';
import type { Method, MethodPrediction, Prediction, ReliefLine } from './prediction-types.ts';
import { sampleLine } from './relief.ts';
import { reportHowBanded, reportMethodBands } from './report-bands.ts';
import { levellingMoment, lineAt } from './states.ts';
import { flatAfterDays } from './uncertainty/time-course.ts';
import type { Uncertainty } from './uncertainty/types.ts';

export const REPORT_FORMAT = 'backbow prediction';
export const REPORT_VERSION = 1;

const round = (value: number, digits: number): number => Number(value.toFixed(digits));
const mm = (value: number) => round(value, 4);
const newtons = (values: ArrayLike<number>) => Array.from(values, (value) => round(value, 1));

function reportLine(line: ReliefLine) {
  return {
    reliefMm: mm(line.extremeMm),
    atXMm: round(line.extremeXMm, 1),
    atFret7Mm: mm(line.atFret7Mm),
    atFret8Mm: mm(line.atFret8Mm),
  };
}

/** The rod setting that brings the settled neck to the relief that the build wants, or how close it comes. */
function reportRod(prediction: Prediction, method: Method, build: Build) {
  const answer = solveRod(prediction, method, { reliefMm: build.targetReliefMm, when: 'settled' });
  return {
    status: answer.status,
    settingPercent: round(answer.percent, 2),
    turnsOfNut: answer.turns === null ? null : round(answer.turns, 3),
    reliefMm: mm(answer.reliefMm),
    missMm: mm(answer.missMm),
  };
}

/** Relief of every fret top in the state in which the crowns are levelled, before the file. */
function reportLevelling(prediction: Prediction, method: Method, levelledIn: 'bare' | 'strung') {
  const { reliefMm } = lineAt(prediction, method, levellingMoment(levelledIn));
  return prediction.fretXMm.map((x) => mm(sampleLine(prediction.stationXMm, reliefMm, x)));
}

interface Reported {
  readonly prediction: Prediction;
  readonly build: Build;
  readonly levelledIn: 'bare' | 'strung';
  readonly uncertainty: Uncertainty | undefined;
}

function reportMethod(id: Method, { prediction, build, levelledIn, uncertainty }: Reported) {
  const method: MethodPrediction = prediction.methods[id];
  const flat = flatAfterDays(prediction, id);
  return {
    kerfMm: mm(method.kerfMm),
    fretted: reportLine(method.fretted),
    strung: reportLine(method.strung),
    settled: reportLine(method.settled),
    rodSet: reportLine(method.rodSet),
    wedgeForceN: newtons(method.wedgeForceN),
    wedgeForceStrungN: newtons(method.wedgeForceStrungN),
    seatingForceN: newtons(method.seatingForceN),
    pullOutForceN: newtons(method.pullOutForceN),
    studBiteMm: method.biteMm.map(mm),
    slotOpeningMm: method.openingMm.map(mm),
    extraFlexibilityPercent: round(100 * method.extraFlexibility, 2),
    rodForTarget: reportRod(prediction, id, build),
    flatAfterDays: flat === null ? null : round(flat, 2),
    levellingReliefMm: reportLevelling(prediction, id, levelledIn),
    ...(uncertainty ? { bands: reportMethodBands(uncertainty.methods[id]) } : {}),
  };
}

/**
 * Positive relief is forward bow, negative is back-bow; the straightedge lies on the two frets that are named.
 * @param uncertainty of the build, for its bands; without it there are none in the report
 * @param log what a bench log left of the bite's scatter, where the bands come from one
 */
export function predictionReport(
  prediction: Prediction,
  build: Build,
  uncertainty?: Uncertainty,
  log?: Pick<BitePosterior, 'logSpread' | 'necks'>,
) {
  const levelledIn = build.levelledIn === 'strung' ? 'strung' : 'bare';
  const reported: Reported = { prediction, build, levelledIn, uncertainty };
  return {
    format: REPORT_FORMAT,
    version: REPORT_VERSION,
    build: build.name,
    chosenMethod: build.method,
    signs: 'relief is positive for forward bow, negative for back-bow',
    straightedge: prediction.straightedge,
    stringPullN: round(prediction.stringPullN, 1),
    strings: prediction.strings.map((string) => ({
      tensionN: round(string.tensionN, 1),
      stressMPa: round(string.stressMPa, 0),
      stressShareOfStrength: round(string.stressRatio, 3),
    })),
    rod: { ...prediction.rod, limitN: round(prediction.rod.limitN, 0) },
    fretXMm: prediction.fretXMm.map(mm),
    targetReliefMm: build.targetReliefMm,
    settleDays: build.settleDays,
    levelledIn,
    levelledInIsAssumed: build.levelledIn === 'none',
    ...(uncertainty ? { bands: reportHowBanded(uncertainty, log) } : {}),
    methods: {
      press: reportMethod('press', reported),
      glue: reportMethod('glue', reported),
      both: reportMethod('both', reported),
    },
  };
}
