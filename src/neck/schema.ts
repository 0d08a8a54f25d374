/**
 * Validation of a build: types and ranges from the parameter table, then the combinations that cannot exist.
 * Nothing is corrected or clamped: a build is either accepted as it is or refused with its problems.
 */
import * as z from 'zod/mini';
import {
  MAX_BINDING_LINES,
  MAX_LAMINATE_ENTRIES,
  MAX_REGIONS,
  MAX_STARTING_RELIEFS,
  MOST_NAME,
  MOST_NOTES,
  type Build,
} from './build.ts';
import { DOCUMENT_KINDS, MOST_REFERRED } from './bite-reference.ts';
import { findImpossible } from './combinations.ts';
import { parameterById, PARAMETERS } from './parameters.ts';
import type { NumberParameter, Parameter } from './parameter-kinds.ts';
import type { Limits, Problem, ValueKind } from './problems.ts';
import type { Unit } from './units.ts';
import { BINDING_MATERIAL_IDS } from './materials/binding.ts';
import { CONSTRUCTION_IDS } from './strings.ts';
import { MOST_WOOD_NAME, OWN_WOOD_IDS } from './materials/own-woods.ts';
import { WOOD_IDS, WOODS } from './woods.ts';

// The page's security policy forbids code made from text, which the library would otherwise try.
z.config({ jitless: true });

export type CheckedBuild =
  { readonly ok: true; readonly build: Build } | { readonly ok: false; readonly problems: readonly Problem[] };

function schemaOf(parameter: Parameter): z.ZodMiniType {
  switch (parameter.kind) {
    case 'number': {
      const range = [z.minimum(parameter.min), z.maximum(parameter.max)] as const;
      const value = parameter.integer ? z.int().check(...range) : z.number().check(...range);
      return parameter.measured ? z.nullable(value) : value;
    }
    case 'choice':
      return z.enum(parameter.options);
    case 'flag':
      return z.boolean();
  }
}

const colour = z.string().check(z.regex(/^#[0-9a-f]{6}$/i));

/** Numbers inside lists, with the range and unit that the schema and the refusals share. */
export const LIST_NUMBERS = {
  diameterMm: { min: 0.15, max: 4, unit: 'mm' },
  coreMm: { min: 0.1, max: 4, unit: 'mm' },
  /** A MIDI note number. */
  pitch: { min: 12, max: 96, unit: '' },
  besidePreviousMm: { min: 1, max: 6, unit: 'mm' },
  thicknessMm: { min: 0.2, max: 4, unit: 'mm' },
  modulusGPa: { min: 2, max: 40, unit: 'GPa' },
  densityKgM3: { min: 250, max: 1600, unit: 'kg/m³' },
  crushingMPa: { min: 10, max: 400, unit: 'MPa' },
  /** Of a laminate of constant width. */
  widthMm: { min: 0.5, max: 60, unit: 'mm' },
  /** How long a fret had been in; of no list of a build. */
  daysIn: { min: 0, max: 36500, unit: 'day' },
  /** Share of the neck's width. */
  share: { min: 0.02, max: 1, unit: '' },
  fromFret: { min: 1, max: 36, unit: '' },
  toFret: { min: 1, max: 36, unit: '' },
  kerfMm: { min: 0.3, max: 1.2, unit: 'mm' },
  tangWidthMm: { min: 0.3, max: 0.9, unit: 'mm' },
  studWidthMm: { min: 0.3, max: 1.4, unit: 'mm' },
  startingReliefMm: { min: -1, max: 1.5, unit: 'mm' },
} as const satisfies Readonly<Record<string, { min: number; max: number; unit: Unit }>>;

export type ListNumber = keyof typeof LIST_NUMBERS;

/** The lists of a build. */
export type ListId = 'laminates' | 'ownWoods' | 'binding' | 'strings' | 'regions' | 'startingReliefMm';

const listNumber = (key: ListNumber) => {
  const { min, max } = LIST_NUMBERS[key];
  return z.number().check(z.minimum(min), z.maximum(max));
};

const wholeNumber = (key: ListNumber) => {
  const { min, max } = LIST_NUMBERS[key];
  return z.int().check(z.minimum(min), z.maximum(max));
};

const MAX_STRINGS = 12;

const BITE = parameterById('biteFactor') as NumberParameter;
/** Longest id of a measurement, in characters. */
const MOST_ID = 40;
/** Numbers of a reference to measurements; the spread goes far beyond that of ln bite before any of them. */
const REFERENCE_NUMBERS: Readonly<Record<string, Limits>> = {
  factor: { min: BITE.min, max: BITE.max, unit: '' },
  necks: { min: 1, max: MOST_REFERRED, unit: '' },
  logSpread: { min: 0, max: 2, unit: '' },
};
const referenceNumber = (key: string) => {
  const { min = 0, max = 0 } = REFERENCE_NUMBERS[key];
  return [z.minimum(min), z.maximum(max)] as const;
};

const SHAPE = parameterById('studShape') as NumberParameter;
/** Of a bite factor that a band may end at. */
const MOST_BITE = 1000;
const hash32 = z.string().check(z.regex(/^[0-9a-f]{32}$/));

const buildSchema = z.strictObject({
  ...Object.fromEntries(PARAMETERS.map((parameter) => [parameter.id, schemaOf(parameter)])),
  name: z.string().check(z.maxLength(MOST_NAME)),
  notes: z.string().check(z.maxLength(MOST_NOTES)),
  laminates: z
    .array(
      z.strictObject({
        wood: z.enum(WOOD_IDS),
        share: listNumber('share'),
        widthMm: z.optional(listNumber('widthMm')),
      }),
    )
    .check(z.minLength(1), z.maxLength(MAX_LAMINATE_ENTRIES)),
  ownWoods: z
    .array(
      z.strictObject({
        name: z.string().check(z.maxLength(MOST_WOOD_NAME)),
        modulusGPa: listNumber('modulusGPa'),
        densityKgM3: listNumber('densityKgM3'),
        crushingMPa: z.nullable(listNumber('crushingMPa')),
        like: z.enum(WOODS.map(({ id }) => id)),
      }),
    )
    .check(z.length(OWN_WOOD_IDS.length)),
  binding: z
    .array(
      z.strictObject({
        thicknessMm: listNumber('thicknessMm'),
        material: z.optional(z.enum(BINDING_MATERIAL_IDS)),
        colour,
      }),
    )
    .check(z.length(MAX_BINDING_LINES)),
  strings: z
    .array(
      z.strictObject({
        construction: z.enum(CONSTRUCTION_IDS),
        diameterMm: listNumber('diameterMm'),
        coreMm: listNumber('coreMm'),
        pitch: wholeNumber('pitch'),
        besidePreviousMm: z.optional(listNumber('besidePreviousMm')),
      }),
    )
    .check(z.minLength(1), z.maxLength(MAX_STRINGS)),
  regions: z
    .array(
      z.strictObject({
        fromFret: wholeNumber('fromFret'),
        toFret: wholeNumber('toFret'),
        kerfMm: listNumber('kerfMm'),
        tangWidthMm: listNumber('tangWidthMm'),
        studWidthMm: listNumber('studWidthMm'),
      }),
    )
    .check(z.maxLength(MAX_REGIONS)),
  startingReliefMm: z.array(listNumber('startingReliefMm')).check(z.maxLength(MAX_STARTING_RELIEFS)),
  biteReference: z.optional(
    z.strictObject({
      factor: z.number().check(...referenceNumber('factor')),
      measurements: z.array(z.string().check(z.maxLength(MOST_ID))).check(z.maxLength(MOST_REFERRED)),
      hash: hash32,
      necks: z.int().check(...referenceNumber('necks')),
      logSpread: z.number().check(...referenceNumber('logSpread')),
    }),
  ),
  gripReference: z.optional(
    z.strictObject({
      biteFactor: z.number().check(...referenceNumber('factor')),
      studShape: z.number().check(z.minimum(SHAPE.min), z.maximum(SHAPE.max)),
      documents: z
        .array(
          z.strictObject({
            kind: z.enum(DOCUMENT_KINDS),
            id: z.string().check(z.maxLength(MOST_ID)),
            hash: hash32,
            ownBoard: z.optional(z.boolean()),
          }),
        )
        .check(z.maxLength(MOST_REFERRED)),
      hash: hash32,
      neck: z.string().check(z.regex(/^([0-9a-f]{32})?$/)),
      measured: z.int().check(...referenceNumber('necks')),
      biteLow: z.number().check(z.minimum(0), z.maximum(MOST_BITE)),
      biteHigh: z.number().check(z.minimum(0), z.maximum(MOST_BITE)),
    }),
  ),
});

const BY_ID = new Map<string, Parameter>(PARAMETERS.map((parameter) => [parameter.id, parameter]));

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key)
        ? (inner as Record<PropertyKey, unknown>)[key]
        : undefined,
    value,
  );
}

/** What the schema library calls the kinds of values. */
const KINDS: Readonly<Record<string, ValueKind>> = {
  int: 'whole-number',
  number: 'number',
  string: 'text',
  boolean: 'flag',
  array: 'list',
  object: 'object',
};

/** The limits of a number at a path, where it has any. */
function limitsAt(path: readonly PropertyKey[]): Limits {
  const [head] = path;
  const parameter = BY_ID.get(String(head));
  if (parameter) {
    return parameter.kind === 'number' ? { min: parameter.min, max: parameter.max, unit: parameter.unit } : {};
  }
  if (head === 'biteReference') return REFERENCE_NUMBERS[String(path[1])] ?? {};
  // An entry of a list of numbers has the list's name, one of a list of objects its own.
  const name = String(typeof path.at(-1) === 'number' ? head : path.at(-1));
  return path.length > 1 && Object.hasOwn(LIST_NUMBERS, name) ? LIST_NUMBERS[name as ListNumber] : {};
}

function outOfRange(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, value: unknown, limits: Limits) {
  const limit = issue.code === 'too_small' ? { min: Number(issue.minimum) } : { max: Number(issue.maximum) };
  if (typeof value === 'string') return { code: 'wrong-size', of: 'text', size: value.length, ...limit } as const;
  if (Array.isArray(value)) return { code: 'wrong-size', of: 'list', size: value.length, ...limit } as const;
  return { code: 'out-of-range', ...limits } as const;
}

function problemsOf(issue: z.core.$ZodIssue, input: unknown): Problem[] {
  const path = issue.path;
  const value = valueAt(input, path);
  const place = { parameter: path.map(String).join('.') || 'build', value };
  const limits = limitsAt(path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      const full = [...path, key];
      return { code: 'unknown', parameter: full.map(String).join('.'), value: valueAt(input, full) };
    });
  }
  if (value === undefined) return [{ code: 'missing', ...place, ...limits }];
  switch (issue.code) {
    case 'too_small':
    case 'too_big':
      return [{ ...place, ...outOfRange(issue, value, limits) }];
    case 'invalid_value':
      return [{ code: 'not-an-option', ...place, options: issue.values.map(String) }];
    case 'invalid_type': {
      const parameter = BY_ID.get(String(path[0]));
      const isWhole = parameter?.kind === 'number' && parameter.integer === true;
      const wants = isWhole ? 'whole-number' : (KINDS[issue.expected] ?? 'other');
      return [{ code: 'wrong-type', ...place, ...limits, wants }];
    }
    default:
      return [{ code: 'wrong-type', ...place, wants: 'other' }];
  }
}

/** Accepts a build as it is, or refuses it and says everything that is wrong with it. */
export function checkBuild(value: unknown): CheckedBuild {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return { ok: false, problems: [{ code: 'wrong-type', parameter: 'build', value, wants: 'object' }] };
  }
  const parsed = z.safeParse(buildSchema, value);
  if (!parsed.success) {
    return { ok: false, problems: parsed.error.issues.flatMap((issue) => problemsOf(issue, value)) };
  }
  const build = parsed.data as unknown as Build;
  const problems = findImpossible(build);
  return problems.length === 0 ? { ok: true, build } : { ok: false, problems };
}
