/** A neck that was read as it is predicted: strings' pull, the rod, the bow after each quarter. */
import { defaultBuild } from '../../../src/neck/build.ts';
import { ORDINARY_SCATTER, UNSAID, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { predictedFurther, predictedPart } from '../../../src/mechanics/bench-log/predicted.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';

export const NECK = defaultBuild();
export const predictor = createPredictor();
export const prediction = predictor.predict(NECK);
export const SETTING = { dialFret: 7, rodTurns: 0.5, rodWay: 'clockwise' } as const;
export const predicted = {
  ...predictedPart(prediction, 'press', NECK),
  ...predictedFurther(prediction, 'press', NECK, SETTING),
};
export const ENTRY: LogEntry = {
  ...UNSAID,
  ...ORDINARY_SCATTER,
  ...predicted,
  ...SETTING,
  id: 'bcdfghjklmnpqr',
  date: '2026-05-04',
  neck: 'Number 12',
  method: 'press',
  gaugeErrorMm: 0.02,
  dialErrorMm: 0.01,
  measuredFrettedMm: null,
  measuredStrungMm: null,
};
export const PULL: LogEntry = { ...ENTRY, measuredPullMm: predicted.predictedPullMm };
export const ROD: LogEntry = { ...ENTRY, measuredRodMm: predicted.predictedRodMm };
export const QUARTERS: LogEntry = {
  ...ENTRY,
  measuredQuarter1Mm: predicted.predictedQuarter1Mm,
  measuredQuarter2Mm: predicted.predictedQuarter2Mm,
  measuredQuarter3Mm: predicted.predictedQuarter3Mm,
  measuredFrettedMm: predicted.predictedFrettedMm,
};
