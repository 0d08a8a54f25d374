/** An entry while it is being typed: texts, which become an entry or the reasons why not. */
import type { UnitSystem } from '../../neck/units.ts';
import { entryProblems, LOG_NUMBERS, type LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { PredictedPart } from '../../mechanics/bench-log/predicted.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { displayScale, numberText, parseTyped, quantityText, rangeText, type Scaled } from '../../speech/scale.ts';
import { inReadersUnits } from '../../speech/log-messages.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

export interface EntryDraft {
  readonly date: string;
  readonly neck: string;
  readonly method: Method;
  readonly measuredFrettedMm: string;
  readonly measuredStrungMm: string;
  readonly gaugeErrorMm: string;
  /** Days since stringing at which the strung neck was measured. */
  readonly days: string;
}

export type DraftNumber = 'measuredFrettedMm' | 'measuredStrungMm' | 'gaugeErrorMm' | 'days';

/** What a pair of feelers and a good straightedge give, common practice, no source. */
export const USUAL_GAUGE_ERROR_MM = 0.02;

function scaledOf(id: DraftNumber): Scaled {
  if (id === 'days') return { unit: 'day', min: 0, max: 3650, step: 1, digits: 0 };
  const { min, max } = LOG_NUMBERS.find((column) => column.id === id)!;
  return { unit: 'mm', min, max, step: 0.01, digits: id === 'gaugeErrorMm' ? 3 : 2 };
}

/** A stored number as a text to go on typing in; empty for null. */
export function draftText(id: DraftNumber, stored: number | null, system: UnitSystem): string {
  return stored === null ? '' : numberText(stored, displayScale(scaledOf(id), system), system);
}

export interface ReadDraft {
  readonly numbers: Readonly<Record<DraftNumber, number | null>>;
  /** What is wrong, a sentence each; empty when all is well. */
  readonly problems: readonly string[];
}

/** The numbers of a draft. Empty is null, except where a number is needed. */
export function readDraft(draft: EntryDraft, system: UnitSystem): ReadDraft {
  const problems: string[] = [];
  const read = (id: DraftNumber, needed: boolean): number | null => {
    const scaled = scaledOf(id);
    const scale = displayScale(scaled, system);
    const range = rangeText(scaled.min, scaled.max, scale, system);
    const text = draft[id].trim();
    const field = LOG_WORDS.fields[id];
    if (text === '') {
      if (needed) problems.push(LOG_WORDS.needsNumber(field, range));
      return null;
    }
    const value = parseTyped(text, scaled, system);
    if (value === undefined) {
      problems.push(LOG_WORDS.notNumber(text, field, range));
      return null;
    }
    if (value < scaled.min || value > scaled.max) {
      problems.push(LOG_WORDS.outOfRange(quantityText(value, scale, system), field, range));
      return null;
    }
    return value;
  };
  const numbers = {
    measuredFrettedMm: read('measuredFrettedMm', false),
    measuredStrungMm: read('measuredStrungMm', false),
    gaugeErrorMm: read('gaugeErrorMm', true),
    days: read('days', draft.measuredStrungMm.trim() !== ''),
  };
  return { numbers, problems };
}

export type Made =
  { readonly ok: true; readonly entry: LogEntry } | { readonly ok: false; readonly problems: readonly string[] };

/**
 * @param predicted what was predicted for the neck, at these days since stringing
 * @param system of the typed numbers
 */
export function entryOf(draft: EntryDraft, predicted: (days: number) => PredictedPart, system: UnitSystem): Made {
  const { numbers, problems } = readDraft(draft, system);
  if (problems.length > 0) return { ok: false, problems };
  const { measuredFrettedMm, measuredStrungMm, gaugeErrorMm, days } = numbers;
  const of = predicted(days ?? 0);
  const entry: LogEntry = {
    ...of,
    date: draft.date,
    neck: draft.neck.trim(),
    method: draft.method,
    measuredFrettedMm,
    measuredStrungMm,
    gaugeErrorMm: gaugeErrorMm!,
    ...(measuredFrettedMm === null ? { predictedFrettedMm: null, predictedFrettedFretsMm: null } : {}),
    ...(measuredStrungMm === null ? { predictedStrungMm: null, predictedStrungFretsMm: null } : {}),
  };
  const wrong = entryProblems(entry);
  if (wrong.length > 0) return { ok: false, problems: wrong.map(({ message }) => inReadersUnits(message, system)) };
  return { ok: true, entry };
}
