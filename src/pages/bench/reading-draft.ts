/** A reading while it is being entered: hump or hollow, and how much. It becomes a reading, or says what is missing. */
import { reliefOf, type BowWay } from '../../neck/bow-way.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { MM_PER_INCH } from '../../neck/units.ts';
import { GAUGE_ERROR_MM, MOST_READING_NOTE, type Gauge, type JobReading } from '../../state/jobs/job-document.ts';

export interface ReadingDraft {
  readonly seated: number;
  readonly sizeMm: number | null;
  /** Null while neither was chosen. */
  readonly way: BowWay | null;
  readonly instrument: Gauge;
  /** Of an instrument of one's own. */
  readonly ownErrorMm: number | null;
  readonly note: string;
}

/** @param last the reading before: it is mostly the same instrument again */
export function draftAfter(seated: number, last: JobReading | undefined): ReadingDraft {
  const instrument = last?.instrument ?? 'feelers';
  const ownErrorMm = last?.instrument === 'own' ? last.errorMm : null;
  return { seated, sizeMm: null, way: null, instrument, ownErrorMm, note: '' };
}

export type Missing = 'size' | 'way' | 'error' | 'note';

/** @param at now, ms since 1970 @returns the reading, not yet sure, or what is missing */
export function readingOf(draft: ReadingDraft, at: number): JobReading | Missing {
  const { seated, sizeMm, way, instrument, ownErrorMm } = draft;
  const note = draft.note.trim();
  if (sizeMm === null) return 'size';
  if (way === null && sizeMm !== 0) return 'way';
  const errorMm = instrument === 'own' ? ownErrorMm : GAUGE_ERROR_MM[instrument];
  if (errorMm === null) return 'error';
  if (note.length > MOST_READING_NOTE) return 'note';
  const measuredMm = way === null ? 0 : reliefOf(way, sizeMm);
  return { seated, measuredMm, errorMm, instrument, note, isSure: false, at };
}

/** Leaves of a feeler set, mm: hundredths, or thousandths of an inch (common practice, no source). */
const LEAVES: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0.05, 0.08, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1],
  inch: [2, 3, 4, 6, 8, 10, 12, 16, 20, 24, 32, 40].map((thou) => (thou / 1000) * MM_PER_INCH),
};

export const leavesOf = (system: UnitSystem): readonly number[] => LEAVES[system];
