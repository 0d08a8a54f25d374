/** An entry while it is being typed: texts, which become an entry or the reasons why not. */
import { reliefOf, wayOf, type BowWay } from '../../neck/bow-way.ts';
import type { UnitSystem } from '../../neck/units.ts';
import {
  LOG_NUMBERS,
  UNSAID,
  type Circumstances,
  type EntryContent,
  type FurtherReadings,
} from '../../mechanics/bench-log/entry.ts';
import { contentProblems, MEASURED } from '../../mechanics/bench-log/entry-problems.ts';
import type { PredictedFurther, PredictedPart } from '../../mechanics/bench-log/predicted.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { bowSize } from '../../speech/bow.ts';
import {
  displayScale,
  hasSign,
  numberText,
  parseTyped,
  quantityText,
  rangeText,
  type Scaled,
} from '../../speech/scale.ts';
import { logProblemText } from '../../speech/measured/log-problems.ts';
import { BOW_ENTRY_WORDS } from '../../speech/en/workshop/bow.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

export type DraftBow = (typeof MEASURED)[number];
export const DRAFT_NUMBERS = [
  ...MEASURED,
  'gaugeErrorMm',
  'humidityPercent',
  'days',
  'dialFret',
  'dialErrorMm',
  'rodTurns',
] as const;
export type DraftNumber = (typeof DRAFT_NUMBERS)[number];

/** Texts as typed; of a bow only its size. */
export type DraftTexts = Readonly<Record<DraftNumber, string>>;

/** What is said of a neck that is not in the build: names of the workshop's own, and how it was measured. */
export type DraftCircumstances = Pick<
  Circumstances,
  'workshop' | 'wire' | 'blade' | 'instrument' | 'rod' | 'straightedgeOn'
> &
  Pick<FurtherReadings, 'rodWay' | 'rodStrings'>;

export interface EntryDraft extends DraftTexts, DraftCircumstances {
  readonly date: string;
  readonly neck: string;
  readonly method: Method;
  /** Hump or hollow; null while neither was chosen. */
  readonly ways: Readonly<Record<DraftBow, BowWay | null>>;
}

/** What a pair of feelers and a good straightedge give, common practice, no source. */
export const USUAL_GAUGE_ERROR_MM = 0.02;

/** What the numbers are before anything is typed: those of the entry that is changed. */
export type StoredNumbers = Readonly<Record<DraftNumber, number | null>>;
export const NOTHING_STORED = Object.fromEntries(DRAFT_NUMBERS.map((id) => [id, null])) as StoredNumbers;

const BOWS: ReadonlySet<DraftNumber> = new Set(MEASURED);
const isBow = (id: DraftNumber): id is DraftBow => BOWS.has(id);

const WHOLE: ReadonlySet<DraftNumber> = new Set<DraftNumber>(['days', 'humidityPercent', 'dialFret']);

function scaledOf(id: DraftNumber): Scaled {
  const column = LOG_NUMBERS.find((each) => each.id === (id === 'days' ? 'strungDays' : id))!;
  const { unit, max } = column;
  const min = isBow(id) ? 0 : column.min;
  if (WHOLE.has(id)) return { unit, min, max, step: 1, digits: 0 };
  return { unit, min, max, step: 0.01, digits: id === 'gaugeErrorMm' || id === 'dialErrorMm' ? 3 : 2 };
}

/** A stored number as a text to go on typing in, of a bow its size; empty for null. */
export function draftText(id: DraftNumber, stored: number | null, system: UnitSystem): string {
  if (stored === null) return '';
  return numberText(isBow(id) ? Math.abs(stored) : stored, displayScale(scaledOf(id), system), system);
}

export interface ReadDraft {
  readonly numbers: StoredNumbers;
  /** What is wrong, a sentence each; empty when all is well. */
  readonly problems: readonly string[];
}

type Read = { readonly value: number | null; readonly problem?: string };

/** Numbers that a reading says nothing without. */
const NEEDED: Readonly<Partial<Record<DraftNumber, readonly (DraftNumber | 'always')[]>>> = {
  gaugeErrorMm: ['always'],
  days: ['measuredStrungMm'],
  dialFret: ['measuredPullMm', 'measuredRodMm'],
  dialErrorMm: ['measuredPullMm', 'measuredRodMm'],
  rodTurns: ['measuredRodMm'],
};

/** A number as it was typed, without a sign. What was not touched keeps all the digits that it had. */
function readNumber(id: DraftNumber, draft: EntryDraft, stored: StoredNumbers, system: UnitSystem): Read {
  const scaled = scaledOf(id);
  const scale = displayScale(scaled, system);
  const range = rangeText(scaled.min, scaled.max, scale, system);
  const text = draft[id].trim();
  const field = LOG_WORDS.fields[id];
  const isNeeded = NEEDED[id]?.some((reading) => reading === 'always' || draft[reading].trim() !== '');
  if (text === '') return isNeeded ? { value: null, problem: LOG_WORDS.needsNumber(field, range) } : { value: null };
  if (text === draftText(id, stored[id], system)) return { value: isBow(id) ? Math.abs(stored[id]!) : stored[id] };
  if (isBow(id) && hasSign(text)) return { value: null, problem: LOG_WORDS.inField(field, BOW_ENTRY_WORDS.noSign) };
  const value = parseTyped(text, scaled, system);
  if (value === undefined) return { value: null, problem: LOG_WORDS.notNumber(text, field, range) };
  if (value < scaled.min || value > scaled.max) {
    return { value: null, problem: LOG_WORDS.outOfRange(quantityText(value, scale, system), field, range) };
  }
  return { value };
}

/** The numbers of a draft. Empty is null, except where a number is needed. */
export function readDraft(draft: EntryDraft, system: UnitSystem, stored: StoredNumbers = NOTHING_STORED): ReadDraft {
  const problems: string[] = [];
  const read = (id: DraftNumber): number | null => {
    const { value, problem } = readNumber(id, draft, stored, system);
    if (problem !== undefined) problems.push(problem);
    if (value === null || value === 0 || !isBow(id)) return value;
    const way = draft.ways[id];
    if (way !== null) return reliefOf(way, value);
    problems.push(LOG_WORDS.inField(LOG_WORDS.fields[id], BOW_ENTRY_WORDS.whichWay(bowSize(value, system))));
    return null;
  };
  const numbers = Object.fromEntries(DRAFT_NUMBERS.map((id) => [id, read(id)])) as StoredNumbers;
  return { numbers, problems };
}

/** The ways of an entry's bows. */
export function waysOf(entry: Pick<EntryContent, DraftBow> | null): EntryDraft['ways'] {
  const way = (relief: number | null | undefined) => (relief === null || relief === undefined ? null : wayOf(relief));
  return Object.fromEntries(MEASURED.map((id) => [id, way(entry?.[id])])) as EntryDraft['ways'];
}

export type Made =
  { readonly ok: true; readonly entry: EntryContent } | { readonly ok: false; readonly problems: readonly string[] };

/** What an entry takes from the build: what was predicted for it, and what it was measured on. */
export type FromBuild = PredictedPart &
  PredictedFurther &
  Pick<Circumstances, 'wood' | 'kerfMm' | 'tangWidthMm' | 'studWidthMm' | 'spanMm'>;

/** Digits after the point that a prediction keeps in the log. */
const PREDICTED_DIGITS = 6;

function rounded(part: FromBuild): FromBuild {
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => [
      key,
      typeof value === 'number' ? Number(value.toFixed(PREDICTED_DIGITS)) + 0 : value,
    ]),
  ) as unknown as FromBuild;
}

/** Of what else was read: predictions and settings of readings that there are none of say nothing. */
function onlyWhatWasRead(
  {
    measuredPullMm,
    measuredRodMm,
    rodTurns,
    dialFret,
    dialErrorMm,
    ...read
  }: Omit<StoredNumbers, 'gaugeErrorMm' | 'humidityPercent' | 'days'>,
  predicted: PredictedFurther,
): PredictedFurther & Pick<EntryContent, 'rodTurns' | 'dialFret' | 'dialErrorMm'> {
  const hasRod = measuredRodMm !== null;
  const hasDial = hasRod || measuredPullMm !== null;
  const quarters = [read.measuredQuarter1Mm, read.measuredQuarter2Mm, read.measuredQuarter3Mm];
  const where = <Value>(has: boolean, value: Value) => (has ? value : null);
  return {
    rodTurns: where(hasRod, rodTurns),
    dialFret: where(hasDial, dialFret),
    dialErrorMm: where(hasDial, dialErrorMm),
    predictedPullMm: where(measuredPullMm !== null, predicted.predictedPullMm),
    predictedRodMm: where(hasRod, predicted.predictedRodMm),
    predictedQuarter1Mm: where(quarters[0] !== null, predicted.predictedQuarter1Mm),
    predictedQuarter2Mm: where(quarters[1] !== null, predicted.predictedQuarter2Mm),
    predictedQuarter3Mm: where(quarters[2] !== null, predicted.predictedQuarter3Mm),
    seatingOrder: quarters.some((quarter) => quarter !== null) ? predicted.seatingOrder : UNSAID.seatingOrder,
  };
}

/**
 * @param fromBuild what was predicted for the neck, at these days since stringing and with the dial there, and what it is made of
 * @param system of the typed numbers
 * @param stored numbers of the entry that is changed
 * @param jointFret where the beam of the dial ends; of a new entry alone
 */
export function entryOf(
  draft: EntryDraft,
  fromBuild: (numbers: StoredNumbers) => FromBuild,
  system: UnitSystem,
  stored: StoredNumbers = NOTHING_STORED,
  jointFret?: number,
): Made {
  const { numbers, problems } = readDraft(draft, system, stored);
  const { dialFret } = numbers;
  const isBeside = jointFret !== undefined && dialFret !== null && (dialFret <= 1 || dialFret >= jointFret);
  const beside = isBeside ? [LOG_WORDS.noSuchFret(String(dialFret), String(jointFret))] : [];
  if (problems.length + beside.length > 0) return { ok: false, problems: [...problems, ...beside] };
  const { gaugeErrorMm, humidityPercent, days, ...read } = numbers;
  const { measuredFrettedMm, measuredStrungMm } = read;
  const { workshop, wire, blade, instrument, rod, straightedgeOn, rodWay, rodStrings } = draft;
  const predicted = rounded(fromBuild(numbers));
  const entry: EntryContent = {
    ...predicted,
    ...read,
    ...onlyWhatWasRead(read, predicted),
    date: draft.date,
    neck: draft.neck.trim(),
    method: draft.method,
    workshop: workshop.trim(),
    wire: wire.trim(),
    blade: blade.trim(),
    instrument: instrument.trim(),
    rod,
    straightedgeOn,
    rodWay,
    rodStrings,
    gaugeErrorMm: gaugeErrorMm!,
    humidityPercent,
    strungDays: measuredStrungMm === null ? null : days,
    ...(measuredFrettedMm === null ? { predictedFrettedMm: null, predictedFrettedFretsMm: null } : {}),
    ...(measuredStrungMm === null ? { predictedStrungMm: null, predictedStrungFretsMm: null } : {}),
  };
  const wrong = contentProblems(entry);
  return wrong.length > 0
    ? { ok: false, problems: wrong.map((problem) => logProblemText(problem, system)) }
    : { ok: true, entry };
}
