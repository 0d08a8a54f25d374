/** Entries for the tests of the log. */
import { ORDINARY_SCATTER, UNSAID, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { withContentId } from '../../../src/mechanics/bench-log/identity.ts';

/** The same neck and change give the same entry, with the same id. */
export function entry(neck: string, change: Partial<LogEntry> = {}): LogEntry {
  const made = withContentId({
    ...UNSAID,
    date: '2026-03-01',
    neck,
    method: 'press',
    measuredFrettedMm: -0.28,
    measuredStrungMm: null,
    gaugeErrorMm: 0.02,
    predictedFrettedMm: -0.21,
    predictedFrettedFretsMm: -0.21,
    predictedStrungMm: null,
    predictedStrungFretsMm: null,
    biteFactor: 1,
    ...ORDINARY_SCATTER,
  });
  return { ...made, ...change };
}
