/** The draft that a form begins with, and what an entry takes from the build in hand. */
import type { UnitSystem } from '../../neck/units.ts';
import type { Build } from '../../neck/build.ts';
import { workingKerfMm } from '../../neck/kerf.ts';
import { documentWood } from '../../neck/woods.ts';
import { UNSAID, type LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { PredictedFurther, PredictedPart } from '../../mechanics/bench-log/predicted.ts';
import { USUAL_DIAL_ERROR_MM } from '../../mechanics/neck-readings/spreads.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { isoDate } from '../papers/date.ts';
import {
  DRAFT_NUMBERS,
  draftText,
  NOTHING_STORED,
  USUAL_GAUGE_ERROR_MM,
  waysOf,
  type DraftTexts,
  type EntryDraft,
  type FromBuild,
  type StoredNumbers,
} from './entry-draft.ts';

/** The numbers that an entry has; of a new one only the usual error of the gauge. */
export function storedNumbers(entry: LogEntry | null): StoredNumbers {
  if (!entry)
    return { ...NOTHING_STORED, gaugeErrorMm: USUAL_GAUGE_ERROR_MM, dialErrorMm: USUAL_DIAL_ERROR_MM, days: 0 };
  const own = DRAFT_NUMBERS.map((id) => [id, id === 'days' ? (entry.strungDays ?? 0) : entry[id]]);
  return Object.fromEntries(own) as StoredNumbers;
}

/** @param last the entry before: workshop and feelers are mostly the same again */
export function draftOf(
  build: Build,
  entry: LogEntry | null,
  last: LogEntry | undefined,
  system: UnitSystem,
): EntryDraft {
  const stored = storedNumbers(entry);
  const text = (id: keyof StoredNumbers) => draftText(id, stored[id], system);
  const { workshop, wire, blade, instrument, rod, straightedgeOn, rodWay, rodStrings } = entry ?? {
    ...UNSAID,
    workshop: last?.workshop ?? '',
    instrument: last?.instrument ?? '',
  };
  return {
    date: entry?.date ?? isoDate(new Date()),
    neck: entry?.neck ?? build.name,
    method: entry?.method ?? build.method,
    ...(Object.fromEntries(DRAFT_NUMBERS.map((id) => [id, text(id)])) as DraftTexts),
    ways: waysOf(entry),
    workshop,
    wire,
    blade,
    instrument,
    rod,
    straightedgeOn,
    rodWay,
    rodStrings,
  };
}

/** What an entry that is changed keeps: the prediction of its day, and the neck it was taken on. */
export function keptOf(entry: LogEntry): FromBuild {
  const {
    predictedFrettedMm,
    predictedFrettedFretsMm,
    predictedStrungMm,
    predictedStrungFretsMm,
    biteFactor,
    studShape,
    embeddingLengthMm,
    fretShift,
    fretScatter,
    stringScatter,
    scatterCorrelation,
    wood,
    kerfMm,
    tangWidthMm,
    studWidthMm,
    spanMm,
    predictedPullMm,
    predictedRodMm,
    predictedQuarter1Mm,
    predictedQuarter2Mm,
    predictedQuarter3Mm,
    seatingOrder,
  } = entry;
  return {
    predictedFrettedMm,
    predictedFrettedFretsMm,
    predictedStrungMm,
    predictedStrungFretsMm,
    biteFactor,
    studShape,
    embeddingLengthMm,
    fretShift,
    fretScatter,
    stringScatter,
    scatterCorrelation,
    wood,
    kerfMm,
    tangWidthMm,
    studWidthMm,
    spanMm,
    predictedPullMm,
    predictedRodMm,
    predictedQuarter1Mm,
    predictedQuarter2Mm,
    predictedQuarter3Mm,
    seatingOrder,
  };
}

/** @param method the way of seating that the entry is of */
export function fromBuild(build: Build, method: Method, predicted: PredictedPart & PredictedFurther): FromBuild {
  const { boardWood, tangWidthMm, studWidthMm } = build;
  const kerfMm = workingKerfMm(build, method);
  return { ...predicted, wood: documentWood(boardWood), kerfMm, tangWidthMm, studWidthMm, spanMm: null };
}
