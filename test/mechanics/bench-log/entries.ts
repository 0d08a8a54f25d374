/** Entries for the tests: an invented workshop. */
import { ORDINARY_SCATTER, UNSAID, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';

export const ENTRY: LogEntry = {
  ...UNSAID,
  id: 'bcdfghjklmnpqr',
  date: '2026-02-14',
  neck: 'No. 41, walnut board',
  method: 'press',
  measuredFrettedMm: -0.24,
  measuredStrungMm: 0.05,
  gaugeErrorMm: 0.02,
  predictedFrettedMm: -0.21,
  predictedFrettedFretsMm: null,
  predictedStrungMm: 0.11,
  predictedStrungFretsMm: -0.18,
  biteFactor: 1,
  studShape: 1,
  embeddingLengthMm: 0.017,
  ...ORDINARY_SCATTER,
};
