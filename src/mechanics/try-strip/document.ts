/**
 * A try strip as a document of its own, like an entry of the bench log: an offcut with a few frets pressed in, in one to four
 * groups of kerfs, and how far it bowed. An id that stays, what it was made of, with what it was read.
 *
 * A bow is told as hump or hollow with its size, seen from the side that the frets are in; nobody is asked for a sign.
 */
import * as z from 'zod/mini';
import type { Unit } from '../../neck/units.ts';
import { DOCUMENT_WOOD_IDS } from '../../neck/woods.ts';

// The page's security policy forbids code made from text, which the library would otherwise try.
z.config({ jitless: true });

export const MOST_GROUPS = 4;
export const MOST_READINGS = 60;
/** Frets of a whole strip. */
export const MOST_STRIP_FRETS = 40;
/** Longest name, in characters; of the notes. */
const MOST_NAME_CHARACTERS = 200;
const MOST_NOTES_CHARACTERS = 2000;

export interface Limits {
  readonly min: number;
  readonly max: number;
  readonly unit: Unit;
}

/** Every number of the document, by its name. */
export const STRIP_NUMBERS = {
  lengthMm: { min: 60, max: 1000, unit: 'mm' },
  widthMm: { min: 10, max: 200, unit: 'mm' },
  thicknessMm: { min: 2, max: 20, unit: 'mm' },
  ownModulusGPa: { min: 2, max: 40, unit: 'GPa' },
  ownDensityKgM3: { min: 250, max: 1600, unit: 'kg/m³' },
  /** The weight at the middle: its force, or its mass. */
  loadN: { min: 0.1, max: 500, unit: 'N' },
  loadG: { min: 10, max: 50_000, unit: 'g' },
  spanMm: { min: 50, max: 1000, unit: 'mm' },
  sagMm: { min: 0.02, max: 50, unit: 'mm' },
  massG: { min: 2, max: 5000, unit: 'g' },
  frequencyHz: { min: 10, max: 5000, unit: 'Hz' },
  tangWidthMm: { min: 0.3, max: 0.9, unit: 'mm' },
  tangDepthMm: { min: 0.8, max: 3, unit: 'mm' },
  studWidthMm: { min: 0.3, max: 1.4, unit: 'mm' },
  studAreaMm2: { min: 0.1, max: 1.5, unit: 'mm²' },
  studPitchMm: { min: 1, max: 8, unit: 'mm' },
  studShape: { min: 0, max: 3, unit: '' },
  slotDepthMm: { min: 1, max: 6, unit: 'mm' },
  /** From either end of the strip to the first and to the last slot. */
  endMm: { min: 3, max: 400, unit: 'mm' },
  kerfMm: { min: 0.3, max: 1.2, unit: 'mm' },
  kerfErrorMm: { min: 0.001, max: 0.1, unit: 'mm' },
  frets: { min: 1, max: MOST_STRIP_FRETS, unit: '' },
  days: { min: 0, max: 3650, unit: 'day' },
  sizeMm: { min: 0, max: 60, unit: 'mm' },
  errorMm: { min: 0.005, max: 5, unit: 'mm' },
} as const satisfies Readonly<Record<string, Limits>>;
export type StripNumber = keyof typeof STRIP_NUMBERS;

const number = (name: StripNumber) => {
  const { min, max } = STRIP_NUMBERS[name];
  return z.number().check(z.minimum(min), z.maximum(max));
};
const wholeNumber = (name: StripNumber) => {
  const { min, max } = STRIP_NUMBERS[name];
  return z.int().check(z.minimum(min), z.maximum(max));
};
const name = z.string().check(z.maxLength(MOST_NAME_CHARACTERS));

/** Was the stiffness measured on the plain offcut, or with its slots sawn and no fret in them? */
export const STIFFNESS_STATES = ['plain', 'slotted'] as const;

const stiffness = z.discriminatedUnion('test', [
  z.strictObject({ test: z.literal('none') }),
  z.strictObject({
    test: z.literal('weight'),
    state: z.enum(STIFFNESS_STATES),
    /** Of its force or its mass as the maker has it; the other is null. */
    loadN: z.nullable(number('loadN')),
    loadG: z.nullable(number('loadG')),
    /** Between the supports, the weight at the middle. */
    spanMm: number('spanMm'),
    sagMm: number('sagMm'),
  }),
  z.strictObject({
    test: z.literal('tap'),
    state: z.enum(STIFFNESS_STATES),
    massG: number('massG'),
    /** First bending, hung at 22 % from both ends. */
    frequencyHz: number('frequencyHz'),
  }),
]);

const offcut = z.strictObject({
  lengthMm: number('lengthMm'),
  widthMm: number('widthMm'),
  thicknessMm: number('thicknessMm'),
  wood: z.enum(DOCUMENT_WOOD_IDS),
  sawn: z.enum(['flat', 'quarter']),
  /** Of a wood of the workshop's own; null for one of the table. */
  ownModulusGPa: z.nullable(number('ownModulusGPa')),
  ownDensityKgM3: z.nullable(number('ownDensityKgM3')),
  /** The neck whose board it was cut from, as the workshop calls it; empty where it is another piece of wood. */
  cutFrom: name,
  stiffness,
});

const wire = z.strictObject({
  name,
  tangWidthMm: number('tangWidthMm'),
  tangDepthMm: number('tangDepthMm'),
  studWidthMm: number('studWidthMm'),
  studAreaMm2: number('studAreaMm2'),
  studPitchMm: number('studPitchMm'),
  /** As believed when the strip was made: 0 a block, 1 a ridge, 2 a point. */
  studShape: number('studShape'),
});

const group = z.strictObject({
  blade: name,
  kerfMm: number('kerfMm'),
  /** Standard deviation of that kerf. */
  kerfErrorMm: number('kerfErrorMm'),
  frets: wholeNumber('frets'),
});

export const INSTRUMENTS = ['ruler', 'feelers', 'own'] as const;
export type Instrument = (typeof INSTRUMENTS)[number];
/** One standard deviation of a reading, mm (assumption); `own` says its own. */
export const INSTRUMENT_ERROR_MM: Readonly<Record<Exclude<Instrument, 'own'>, number>> = { ruler: 0.5, feelers: 0.05 };

export const BOWS = ['hump', 'hollow'] as const;

const reading = z.strictObject({
  /** Since the frets went in; 0 on the same day. */
  days: number('days'),
  bow: z.enum(BOWS),
  sizeMm: number('sizeMm'),
  /** What the straightedge bridged: the ends of the strip, or the stretch of one group, counted from 0. */
  over: z.union([z.literal('ends'), z.int().check(z.minimum(0), z.maximum(MOST_GROUPS - 1))]),
  instrument: z.enum(INSTRUMENTS),
  /** Standard deviation of a reading with an instrument of one's own; null for the others. */
  ownErrorMm: z.nullable(number('errorMm')),
});

export const stripSchema = z.strictObject({
  id: z.string(),
  date: z.string(),
  name,
  workshop: name,
  notes: z.string().check(z.maxLength(MOST_NOTES_CHARACTERS)),
  offcut,
  wire,
  slotDepthMm: number('slotDepthMm'),
  endMm: number('endMm'),
  groups: z.array(group).check(z.minLength(1), z.maxLength(MOST_GROUPS)),
  readings: z.array(reading).check(z.maxLength(MOST_READINGS)),
});

type DeepReadonly<T> = T extends object ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> } : T;

export type TryStrip = DeepReadonly<z.infer<typeof stripSchema>>;
/** A strip as it is before it has an id. */
export type StripContent = Omit<TryStrip, 'id'>;
export type Offcut = TryStrip['offcut'];
export type StripStiffness = Offcut['stiffness'];
export type StripWire = TryStrip['wire'];
export type KerfGroup = TryStrip['groups'][number];
export type StripReading = TryStrip['readings'][number];
/** What a straightedge bridges. */
export type StripSpan = StripReading['over'];

/** One standard deviation of a reading, mm. */
export function readingErrorMm({ instrument, ownErrorMm }: Pick<StripReading, 'instrument' | 'ownErrorMm'>): number {
  return instrument === 'own' ? (ownErrorMm ?? Number.NaN) : INSTRUMENT_ERROR_MM[instrument];
}

/** A bow with the sign that the mechanics give it: a hump on the side of the frets is positive, mm. */
export function signedMm({ bow, sizeMm }: Pick<StripReading, 'bow' | 'sizeMm'>): number {
  return bow === 'hump' ? sizeMm : -sizeMm;
}
