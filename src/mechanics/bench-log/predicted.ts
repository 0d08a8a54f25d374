/** What a prediction says that a bench log entry must keep: for the neck that is about to be measured. */
import type { Method, Moment, Prediction } from '../prediction-types.ts';
import { sampleLine } from '../relief.ts';
import { lineAt } from '../states.ts';
import type { MethodUncertainty } from '../uncertainty/types.ts';
import { ORDINARY_SCATTER, type LogEntry } from './entry.ts';

export type PredictedPart = Pick<
  LogEntry,
  | 'predictedFrettedMm'
  | 'predictedFrettedFretsMm'
  | 'predictedStrungMm'
  | 'predictedStrungFretsMm'
  | 'biteFactor'
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
 * @param biteFactor of the build.
 * @param scatter of the method's band; without it that of an ordinary neck is taken.
 */
export function predictedPart(
  prediction: Prediction,
  method: Method,
  biteFactor: number,
  days = 0,
  scatter?: MethodUncertainty['scatter'],
): PredictedPart {
  const idle = withoutWedges(prediction, method);
  /** Relief of greatest size at a moment, and what the frets do there. */
  const parts = (moment: Moment) => {
    const { extremeMm, extremeXMm } = lineAt(prediction, method, moment);
    const rest = sampleLine(prediction.stationXMm, lineAt(idle, method, moment).reliefMm, extremeXMm);
    return { extremeMm, fretsMm: extremeMm - rest };
  };
  const fretted = parts({ strung: false, days: 0, rodPercent: 0 });
  const strung = parts({ strung: true, days, rodPercent: 0 });
  return {
    predictedFrettedMm: fretted.extremeMm,
    predictedFrettedFretsMm: fretted.fretsMm,
    predictedStrungMm: strung.extremeMm,
    predictedStrungFretsMm: strung.fretsMm,
    biteFactor,
    fretScatter: scatter && scatter.wedges > 0 ? scatter.wedges : ORDINARY_SCATTER.fretScatter,
    stringScatter: scatter?.strings ?? ORDINARY_SCATTER.stringScatter,
    scatterCorrelation: scatter?.correlation ?? ORDINARY_SCATTER.scatterCorrelation,
  };
}
