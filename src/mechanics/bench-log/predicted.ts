/** What a prediction says that a bench log entry must keep: for the neck that is about to be measured. */
import { fretsInAfterQuarters } from '../../fretwork/plan/seating-order.ts';
import type { Method, Moment, Prediction } from '../prediction-types.ts';
import { sampleLine } from '../relief.ts';
import { describeLine, lineAt } from '../states.ts';
import type { Build } from '../../neck/build.ts';
import type { Scatter } from '../uncertainty/types.ts';
import { ORDINARY_SCATTER, type LogEntry } from './entry.ts';
import type { GripLaw } from './law.ts';

export type PredictedPart = Pick<
  LogEntry,
  | 'predictedFrettedMm'
  | 'predictedFrettedFretsMm'
  | 'predictedStrungMm'
  | 'predictedStrungFretsMm'
  | 'biteFactor'
  | 'studShape'
  | 'embeddingLengthMm'
  | 'fretShift'
  | 'fretScatter'
  | 'stringScatter'
  | 'scatterCorrelation'
>;

/** The same neck with frets that do nothing. */
function withoutWedges(prediction: Prediction, method: Method): Prediction {
  const of = prediction.methods[method];
  const basis = { ...of.basis, wedgeMm: new Float64Array(of.basis.wedgeMm.length) };
  return { ...prediction, methods: { ...prediction.methods, [method]: { ...of, basis } } };
}

/**
 * @param days since stringing at which the neck is measured; the rod neutral.
 * @param grip of the build
 * @param scatter of the method's band; without it that of an ordinary neck is taken.
 */
export function predictedPart(
  prediction: Prediction,
  method: Method,
  grip: Pick<Build, 'biteFactor'> & GripLaw,
  days = 0,
  scatter?: Scatter,
): PredictedPart {
  const idle = withoutWedges(prediction, method);
  /**
   * Relief of greatest size at a moment, and what the frets do where they do most: the place of the former wanders when the
   * line is nearly straight, and other frets would put it back where theirs is.
   */
  const parts = (moment: Moment) => {
    const line = lineAt(prediction, method, moment);
    const rest = lineAt(idle, method, moment).reliefMm;
    const frets = describeLine(
      prediction,
      line.reliefMm.map((relief, i) => relief - rest[i]),
    );
    return { extremeMm: line.extremeMm, fretsMm: frets.extremeMm };
  };
  const fretted = parts({ strung: false, days: 0, rodPercent: 0 });
  const strung = parts({ strung: true, days, rodPercent: 0 });
  return {
    predictedFrettedMm: fretted.extremeMm,
    predictedFrettedFretsMm: fretted.fretsMm,
    predictedStrungMm: strung.extremeMm,
    predictedStrungFretsMm: strung.fretsMm,
    biteFactor: grip.biteFactor,
    studShape: grip.studShape,
    embeddingLengthMm: grip.studSoftnessMm,
    ...(scatter && scatter.wedges > 0
      ? {
          fretShift: scatter.wedgesMean,
          fretScatter: scatter.wedges,
          stringScatter: scatter.strings,
          scatterCorrelation: scatter.correlation,
        }
      : ORDINARY_SCATTER),
  };
}

export type PredictedFurther = Pick<
  LogEntry,
  | 'predictedPullMm'
  | 'predictedRodMm'
  | 'predictedQuarter1Mm'
  | 'predictedQuarter2Mm'
  | 'predictedQuarter3Mm'
  | 'seatingOrder'
>;

/** Where the dial stands, and how far the nut was turned. */
export type DialSetting = Pick<LogEntry, 'dialFret' | 'rodTurns' | 'rodWay'>;

/** What is predicted for whatever else is read on a neck; null where it cannot be told. */
export function predictedFurther(
  prediction: Prediction,
  method: Method,
  build: Pick<Build, 'fretCount' | 'seatingOrder'>,
  { dialFret, rodTurns, rodWay }: DialSetting,
): PredictedFurther {
  const { basis, rodTurnsAtLimit } = prediction.methods[method];
  const xMm = dialFret === null ? undefined : prediction.fretXMm[dialFret - 1];
  const atDial = (line: Float64Array) => (xMm === undefined ? null : sampleLine(prediction.stationXMm, line, xMm));
  const rodAtLimit = rodTurnsAtLimit > 0 ? atDial(basis.rodMm) : null;
  const turns = rodTurns === null ? null : rodWay === 'clockwise' ? rodTurns : -rodTurns;
  const [first, second, third] = fretsInAfterQuarters(build).map(
    (fretsIn) => lineAt(prediction, method, { strung: false, days: 0, rodPercent: 0, fretsIn }).extremeMm,
  );
  return {
    predictedPullMm: atDial(basis.stringsMm),
    predictedRodMm: rodAtLimit === null || turns === null ? null : (rodAtLimit * turns) / rodTurnsAtLimit,
    predictedQuarter1Mm: first,
    predictedQuarter2Mm: second,
    predictedQuarter3Mm: third,
    seatingOrder: build.seatingOrder,
  };
}
