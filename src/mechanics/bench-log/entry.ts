/**
 * The bench log: what was measured on real necks, beside what was predicted for them at the time. Each entry is a document
 * of its own: an id that stays, what it was taken on, under which conditions, and with what (identity.ts has its hash).
 *
 * Relief is that of greatest size under the straightedge, positive hollow, negative humped, like everywhere.
 */
import type { Build } from '../../neck/build.ts';
import type { Unit } from '../../neck/units.ts';
import { METHODS, type Method } from '../prediction-types.ts';

/** State of the rod while the neck was measured; the prediction is that of a slack one. */
export const ROD_STATES = ['slack', 'snug'] as const;
export type RodState = (typeof ROD_STATES)[number];

/** What the straightedge lay on. */
export const STRAIGHTEDGE_ON = ['frets', 'board'] as const;
export type StraightedgeOn = (typeof STRAIGHTEDGE_ON)[number];

/** What a neck was measured on, how and with what; texts are names of the workshop's own, empty where nobody said. */
export interface Circumstances {
  readonly workshop: string;
  readonly wire: string;
  readonly blade: string;
  /** Id of the board's wood, or "own"; empty = not said. */
  readonly wood: string;
  readonly kerfMm: number | null;
  readonly tangWidthMm: number | null;
  readonly studWidthMm: number | null;
  readonly rod: RodState;
  readonly straightedgeOn: StraightedgeOn;
  /** Length that the straightedge bridged, mm; null = from fret 1 to the body joint. */
  readonly spanMm: number | null;
  readonly humidityPercent: number | null;
  /** Days since stringing at the strung reading. */
  readonly strungDays: number | null;
  readonly instrument: string;
}

/** Which way the nut was turned, as whoever holds the wrench sees it. */
export const NUT_WAYS = ['clockwise', 'anticlockwise'] as const;
export type NutWay = (typeof NUT_WAYS)[number];

export const STRINGS_STATES = ['on', 'off'] as const;
export type StringsState = (typeof STRINGS_STATES)[number];

/** As `Build.seatingOrder`. */
export const SEATING_ORDERS = ['spread', 'nut-first', 'body-first'] as const satisfies readonly Build['seatingOrder'][];

/**
 * What else was read on a neck (neck-readings/): how far strings and rod move it, seen on a dial whose beam spans as the
 * straightedge does, and its bow after each quarter of the frets. Changes have a sign as relief has: towards hollow positive.
 */
export interface FurtherReadings {
  /** Fret that the dial stands over. */
  readonly dialFret: number | null;
  /** Standard deviation of what the dial gives, mm. */
  readonly dialErrorMm: number | null;
  /** From strings off to strings on, mm. */
  readonly measuredPullMm: number | null;
  readonly predictedPullMm: number | null;
  /** Turns of the nut, from where it is snug or beyond; and whether the strings were on. */
  readonly rodTurns: number | null;
  readonly rodWay: NutWay;
  readonly rodStrings: StringsState;
  readonly measuredRodMm: number | null;
  readonly predictedRodMm: number | null;
  /** Bow with one, two and three quarters of the frets in, in the order in which they went in; no strings. */
  readonly seatingOrder: Build['seatingOrder'];
  readonly measuredQuarter1Mm: number | null;
  readonly measuredQuarter2Mm: number | null;
  readonly measuredQuarter3Mm: number | null;
  readonly predictedQuarter1Mm: number | null;
  readonly predictedQuarter2Mm: number | null;
  readonly predictedQuarter3Mm: number | null;
}

export interface LogEntry extends Circumstances, FurtherReadings {
  /** Stays with the entry for ever: through files, other devices and changes. See identity.ts. */
  readonly id: string;
  /** yyyy-mm-dd. */
  readonly date: string;
  readonly neck: string;
  readonly method: Method;
  /** Measured with all frets in and no strings, mm; null = not measured. */
  readonly measuredFrettedMm: number | null;
  /** Measured under strings with the rod neutral, mm; null = not measured. */
  readonly measuredStrungMm: number | null;
  /** Standard deviation of what the straightedge and feeler gauges give, mm. */
  readonly gaugeErrorMm: number;
  /** Predicted at the time, mm; null where nothing was measured. */
  readonly predictedFrettedMm: number | null;
  /** The frets' part of it, mm; null = all of it, as on a neck that is straight before fretting. */
  readonly predictedFrettedFretsMm: number | null;
  readonly predictedStrungMm: number | null;
  /** The frets' part of the predicted relief under strings, mm. */
  readonly predictedStrungFretsMm: number | null;
  /** Bite factor that those predictions were made with. */
  readonly biteFactor: number;
  /** Law of the grip that they were made with (law.ts): shape and embedding length of the studs; null = that of file version 1. */
  readonly studShape: number | null;
  readonly embeddingLengthMm: number | null;
  /**
   * Scatter of the prediction for reasons other than the bite: mean and standard deviation of the logarithm of what the
   * frets really do over what is predicted, standard deviation of the same for the strings, and the correlation of the two
   * (both give in proportion to the stiffness of the wood). The band of the neck knows its own (`MethodUncertainty.scatter`).
   */
  readonly fretShift: number;
  readonly fretScatter: number;
  readonly stringScatter: number;
  readonly scatterCorrelation: number;
}

/** An entry as it is before it has an id. */
export type EntryContent = Omit<LogEntry, 'id'>;

/** Scatter of an ordinary neck of unmeasured wood, from the band of the standard build. */
export const ORDINARY_SCATTER = {
  fretShift: -0.06,
  fretScatter: 0.3,
  stringScatter: 0.15,
  scatterCorrelation: 0.4,
} as const;

/** An entry of a neck that nothing else was read on. */
const NOTHING_FURTHER: FurtherReadings = {
  dialFret: null,
  dialErrorMm: null,
  measuredPullMm: null,
  predictedPullMm: null,
  rodTurns: null,
  rodWay: 'clockwise',
  rodStrings: 'on',
  measuredRodMm: null,
  predictedRodMm: null,
  seatingOrder: 'spread',
  measuredQuarter1Mm: null,
  measuredQuarter2Mm: null,
  measuredQuarter3Mm: null,
  predictedQuarter1Mm: null,
  predictedQuarter2Mm: null,
  predictedQuarter3Mm: null,
};

/** What an entry of an earlier release says of its circumstances: what was asked for then, and nothing else. */
export const UNSAID: Circumstances & FurtherReadings & Pick<LogEntry, 'studShape' | 'embeddingLengthMm'> = {
  ...NOTHING_FURTHER,
  workshop: '',
  wire: '',
  blade: '',
  wood: '',
  kerfMm: null,
  tangWidthMm: null,
  studWidthMm: null,
  rod: 'slack',
  straightedgeOn: 'frets',
  spanMm: null,
  humidityPercent: null,
  strungDays: null,
  instrument: '',
  studShape: null,
  embeddingLengthMm: null,
};

type NumberId = {
  [Key in keyof LogEntry]: number extends LogEntry[Key] ? Key : never;
}[keyof LogEntry];

/** A number of an entry: one column of the file. */
export interface LogNumber {
  readonly id: NumberId;
  /** Name in the file's header, before the unit in brackets; the same in every language. */
  readonly name: string;
  readonly unit: Extract<Unit, 'mm' | '%' | 'day' | ''>;
  readonly min: number;
  readonly max: number;
  /** Takes whole numbers only. */
  readonly isWhole?: true;
  /** Value of an empty cell; undefined = the cell must not be empty. */
  readonly whenEmpty: number | null | undefined;
}

const relief = (id: NumberId, name: string): LogNumber => ({ id, name, unit: 'mm', min: -5, max: 5, whenEmpty: null });
const known = (id: NumberId, name: string, unit: LogNumber['unit'], min: number, max: number): LogNumber => ({
  id,
  name,
  unit,
  min,
  max,
  whenEmpty: null,
});
const bare = (id: NumberId, name: string, min: number, max: number, whenEmpty: number): LogNumber => ({
  id,
  name,
  unit: '',
  min,
  max,
  whenEmpty,
});

export const LOG_NUMBERS: readonly LogNumber[] = [
  relief('measuredFrettedMm', 'measured with frets in'),
  relief('measuredStrungMm', 'measured strung'),
  { id: 'gaugeErrorMm', name: 'gauge error', unit: 'mm', min: 0.001, max: 0.5, whenEmpty: undefined },
  relief('predictedFrettedMm', 'predicted with frets in'),
  relief('predictedFrettedFretsMm', 'predicted with frets in, part of the frets'),
  relief('predictedStrungMm', 'predicted strung'),
  relief('predictedStrungFretsMm', 'predicted strung, part of the frets'),
  bare('biteFactor', 'bite factor used', 0.05, 20, 1),
  bare('fretShift', 'shift of the frets', -1, 1, ORDINARY_SCATTER.fretShift),
  bare('fretScatter', 'scatter of the frets', 0.01, 2, ORDINARY_SCATTER.fretScatter),
  bare('stringScatter', 'scatter of the strings', 0.01, 2, ORDINARY_SCATTER.stringScatter),
  bare('scatterCorrelation', 'correlation of the two', -0.99, 0.99, ORDINARY_SCATTER.scatterCorrelation),
  known('kerfMm', 'kerf', 'mm', 0.3, 1.2),
  known('tangWidthMm', 'tang', 'mm', 0.3, 0.9),
  known('studWidthMm', 'width over the studs', 'mm', 0.3, 1.4),
  known('studShape', 'shape of the studs, as predicted', '', 0, 3),
  known('embeddingLengthMm', 'embedding length, as predicted', 'mm', 0.002, 0.2),
  known('spanMm', 'span of the straightedge', 'mm', 50, 1200),
  known('humidityPercent', 'humidity', '%', 0, 100),
  known('strungDays', 'strung for', 'day', 0, 3650),
  { ...known('dialFret', 'dial at fret', '', 1, 36), isWhole: true },
  known('dialErrorMm', 'error of the dial', 'mm', 0.001, 0.5),
  relief('measuredPullMm', 'measured pull of the strings'),
  relief('predictedPullMm', 'predicted pull of the strings'),
  known('rodTurns', 'turns of the nut', '', 0.05, 10),
  relief('measuredRodMm', 'measured travel of the rod'),
  relief('predictedRodMm', 'predicted travel of the rod'),
  relief('measuredQuarter1Mm', 'measured with a quarter of the frets in'),
  relief('predictedQuarter1Mm', 'predicted with a quarter of the frets in'),
  relief('measuredQuarter2Mm', 'measured with half of the frets in'),
  relief('predictedQuarter2Mm', 'predicted with half of the frets in'),
  relief('measuredQuarter3Mm', 'measured with three quarters of the frets in'),
  relief('predictedQuarter3Mm', 'predicted with three quarters of the frets in'),
];

/** A text of an entry: one column of the file. */
export interface LogText {
  readonly id: Exclude<keyof LogEntry, NumberId>;
  /** Name in the file's header. */
  readonly name: string;
  /** What it can be; without it any text. */
  readonly options?: readonly string[];
  /** What an empty or missing cell means; undefined = the column must be there and the cell filled. */
  readonly whenEmpty: string | undefined;
}

const free = (id: LogText['id'], name: string): LogText => ({ id, name, whenEmpty: '' });

/** Columns that stand first in a file. */
export const FIRST_TEXTS: readonly LogText[] = [
  { id: 'date', name: 'date', whenEmpty: undefined },
  { id: 'neck', name: 'neck', whenEmpty: undefined },
  { id: 'method', name: 'method', options: METHODS, whenEmpty: undefined },
];

/** Columns that stand last in a file. */
export const LAST_TEXTS: readonly LogText[] = [
  free('wire', 'wire'),
  free('blade', 'blade'),
  free('wood', 'wood of the board'),
  free('workshop', 'workshop'),
  { id: 'rod', name: 'rod', options: ROD_STATES, whenEmpty: UNSAID.rod },
  { id: 'straightedgeOn', name: 'straightedge on', options: STRAIGHTEDGE_ON, whenEmpty: UNSAID.straightedgeOn },
  free('instrument', 'instrument'),
  { id: 'rodWay', name: 'nut turned', options: NUT_WAYS, whenEmpty: UNSAID.rodWay },
  { id: 'rodStrings', name: 'strings while turned', options: STRINGS_STATES, whenEmpty: UNSAID.rodStrings },
  { id: 'seatingOrder', name: 'order of seating', options: SEATING_ORDERS, whenEmpty: UNSAID.seatingOrder },
  free('id', 'id'),
];

export const LOG_TEXTS: readonly LogText[] = [...FIRST_TEXTS, ...LAST_TEXTS];

export type LogColumn = LogText['id'] | LogNumber['id'];

const NAMES: ReadonlyMap<LogColumn, string> = new Map(
  [...LOG_TEXTS, ...LOG_NUMBERS].map(({ id, name }): [LogColumn, string] => [id, name]),
);

/** The name of a column in the file's header, without its unit. */
export function columnName(column: LogColumn): string {
  return NAMES.get(column)!;
}

/** Longest text in an entry, in characters. */
export const MOST_TEXT_CHARACTERS = 200;

/** The entries in the order of their dates, those of one day as they came. */
export function byDate(entries: readonly LogEntry[]): LogEntry[] {
  return entries.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
