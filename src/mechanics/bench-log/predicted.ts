/** What a prediction says that a bench log entry must keep: for the neck that is about to be measured. */
import type { Method, Moment, Prediction } from '../prediction-types.ts';
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
