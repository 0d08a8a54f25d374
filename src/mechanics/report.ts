/**
 * A prediction as JSON for people and for scripts: names with units, the digits that the numbers deserve (a tenth of a
 * micrometre, a tenth of a newton), no internal vectors.
 */
import type { MethodPrediction, Prediction, ReliefLine } from './prediction-types.ts';

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

function reportMethod(method: MethodPrediction) {
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
  };
}

/** Positive relief is forward bow, negative is back-bow; the straightedge lies on the two frets that are named. */
export function predictionReport(prediction: Prediction, build: { readonly name: string; readonly method: string }) {
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
    methods: {
      press: reportMethod(prediction.methods.press),
      glue: reportMethod(prediction.methods.glue),
      both: reportMethod(prediction.methods.both),
    },
  };
}
