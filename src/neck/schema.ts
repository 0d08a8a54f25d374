/**
 * Validation of a build: types and ranges from the parameter table, then the combinations that cannot exist.
 * Nothing is corrected or clamped: a build is either accepted as it is or refused with its problems.
 */
import { say } from '../speech/language.ts';
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
import { findImpossible } from './combinations.ts';
import { PARAMETERS } from './parameters.ts';
import type { Parameter } from './parameter-kinds.ts';
import { describeValue, type Problem } from './problems.ts';
import type { Unit } from './units.ts';
import { unitLabel } from '../speech/quantity.ts';
import { CONSTRUCTIONS } from './strings.ts';
import { OWN_WOOD_ID, WOODS } from './woods.ts';

// The page's security policy forbids code made from text, which the library would otherwise try.
z.config({ jitless: true });

export type CheckedBuild =
  { readonly ok: true; readonly build: Build } | { readonly ok: false; readonly problems: readonly Problem[] };

const WOOD_IDS = [...WOODS.map((wood) => wood.id), OWN_WOOD_ID];

function schemaOf(parameter: Parameter): z.ZodMiniType {
  switch (parameter.kind) {
    case 'number': {
      const range = [z.minimum(parameter.min), z.maximum(parameter.max)] as const;
      return parameter.integer ? z.int().check(...range) : z.number().check(...range);
    }
    case 'choice':
      return z.enum(parameter.options.map((option) => option.value));
    case 'flag':
      return z.boolean();
  }
}

const colour = z.string().check(z.regex(/^#[0-9a-f]{6}$/i));

/** Numbers inside lists, with the range and unit that the schema and the messages share. */
export const LIST_NUMBERS: Readonly<Record<string, { label: string; min: number; max: number; unit: Unit }>> = {
  diameterMm: { label: say`string diameter`, min: 0.15, max: 4, unit: 'mm' },
  coreMm: { label: say`string core diameter`, min: 0.1, max: 4, unit: 'mm' },
  pitch: { label: say`pitch as a MIDI note number`, min: 12, max: 96, unit: '' },
  thicknessMm: { label: say`binding line thickness`, min: 0.2, max: 4, unit: 'mm' },
  share: { label: say`share of the width`, min: 0.02, max: 1, unit: '' },
  fromFret: { label: say`first fret of the region`, min: 1, max: 36, unit: '' },
  toFret: { label: say`last fret of the region`, min: 1, max: 36, unit: '' },
  kerfMm: { label: say`kerf in the region`, min: 0.3, max: 1.2, unit: 'mm' },
  tangWidthMm: { label: say`tang body width in the region`, min: 0.3, max: 0.9, unit: 'mm' },
  studWidthMm: { label: say`width over the studs in the region`, min: 0.3, max: 1.4, unit: 'mm' },
  startingReliefMm: { label: say`measured relief`, min: -1, max: 1.5, unit: 'mm' },
};

const listNumber = (key: string) => {
  const { min, max } = LIST_NUMBERS[key]!;
  return z.number().check(z.minimum(min), z.maximum(max));
};

const wholeNumber = (key: string) => {
  const { min, max } = LIST_NUMBERS[key]!;
  return z.int().check(z.minimum(min), z.maximum(max));
};

const MAX_STRINGS = 12;

const buildSchema = z.strictObject({
  ...Object.fromEntries(PARAMETERS.map((parameter) => [parameter.id, schemaOf(parameter)])),
  name: z.string().check(z.maxLength(MOST_NAME)),
  notes: z.string().check(z.maxLength(MOST_NOTES)),
  laminates: z
    .array(z.strictObject({ wood: z.enum(WOOD_IDS), share: listNumber('share') }))
    .check(z.minLength(1), z.maxLength(MAX_LAMINATE_ENTRIES)),
  binding: z
    .array(z.strictObject({ thicknessMm: listNumber('thicknessMm'), colour }))
    .check(z.length(MAX_BINDING_LINES)),
  strings: z
    .array(
      z.strictObject({
        construction: z.enum(CONSTRUCTIONS),
        diameterMm: listNumber('diameterMm'),
        coreMm: listNumber('coreMm'),
        pitch: wholeNumber('pitch'),
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

const LIST_LABELS: Readonly<Record<string, string>> = {
  name: say`Name of the build`,
  notes: say`Notes`,
  laminates: say`Neck laminates`,
  binding: say`Binding lines`,
  strings: say`Strings`,
  regions: say`Regions of frets`,
  startingReliefMm: say`Measured relief per fret`,
  wood: say`wood`,
  colour: say`colour as #rrggbb`,
  construction: say`string construction`,
};

function labelOf(path: readonly PropertyKey[]): string {
  const [head, index, field] = path;
  const parameter = BY_ID.get(String(head));
  if (parameter) return parameter.label;
  const list = LIST_LABELS[String(head)] ?? String(head ?? 'build');
  if (typeof index !== 'number') return list;
  const inner =
    field === undefined ? '' : `, ${LIST_NUMBERS[String(field)]?.label ?? LIST_LABELS[String(field)] ?? String(field)}`;
  return say`${list}, entry ${index + 1}${inner}`;
}

function rangeText(min: number, max: number, unit: Unit): string {
  return say`${min} to ${max}${unit === '' ? '' : ` ${unitLabel(unit, 'metric')}`}`;
}

/** The most or least of a text or list. */
function sizeLimit(isText: boolean, kind: 'too_small' | 'too_big', limit: string): string {
  if (isText) return kind === 'too_small' ? say`at least ${limit} characters` : say`at most ${limit} characters`;
  return kind === 'too_small' ? say`at least ${limit} entries` : say`at most ${limit} entries`;
}

/** The kind of value that a place takes, as the schema library names it. */
function kindText(expected: string): string {
  switch (expected) {
    case 'int':
      return say`a whole number`;
    case 'number':
      return say`a number`;
    case 'string':
      return say`a string`;
    case 'boolean':
      return say`a boolean`;
    case 'array':
      return say`an array`;
    case 'object':
      return say`an object`;
    default:
      return expected;
  }
}

function problemsOf(issue: z.core.$ZodIssue, input: unknown): Problem[] {
  const path = issue.path;
  const value = valueAt(input, path);
  const label = labelOf(path);
  const name = path.map(String).join('.') || 'build';
  const parameter = BY_ID.get(String(path[0]));
  const range =
    parameter?.kind === 'number'
      ? parameter
      : path.length > 1
        ? LIST_NUMBERS[String(typeof path.at(-1) === 'number' ? path[0] : path.at(-1))]
        : undefined;
  const base = {
    parameter: name,
    label,
    value,
    ...(range ? { min: range.min, max: range.max, unit: range.unit } : {}),
  };
  const allowed = range ? rangeText(range.min, range.max, range.unit) : undefined;
  const given = describeValue(value);

  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      const full = [...path, key].map(String).join('.');
      return {
        code: 'unknown',
        parameter: full,
        label: full,
        value: valueAt(input, [...path, key]),
        message: say`${describeValue(full)} is not something a build has.`,
      };
    });
  }
  if (value === undefined) {
    return [
      {
        ...base,
        code: 'missing',
        message: say`${label} (${name}) is missing${allowed ? say`; it takes ${allowed}` : ''}.`,
      },
    ];
  }
  switch (issue.code) {
    case 'too_small':
    case 'too_big': {
      const limits =
        allowed ??
        sizeLimit(
          typeof value === 'string',
          issue.code,
          issue.code === 'too_small' ? String(issue.minimum) : String(issue.maximum),
        );
      const message =
        typeof value === 'string'
          ? say`${label} (${name}) is ${value.length} characters; it takes ${limits}.`
          : Array.isArray(value)
            ? say`${label} (${name}) is ${value.length} entries; it takes ${limits}.`
            : say`${label} (${name}) is ${given}; it takes ${limits}.`;
      return [{ ...base, code: 'out-of-range', message }];
    }
    case 'invalid_value': {
      const options = issue.values.map(String).join(', ');
      return [
        { ...base, code: 'not-an-option', message: say`${label} (${name}) is ${given}; it takes one of: ${options}.` },
      ];
    }
    case 'invalid_type': {
      const isWhole = parameter?.kind === 'number' && parameter.integer;
      const wanted = kindText(isWhole ? 'int' : issue.expected);
      return [
        {
          ...base,
          code: 'wrong-type',
          message: say`${label} (${name}) is ${given}; it takes ${wanted}${allowed ? `, ${allowed}` : ''}.`,
        },
      ];
    }
    default:
      return [{ ...base, code: 'wrong-type', message: say`${label} (${name}) is ${given}, which it does not take.` }];
  }
}

/** Accepts a build as it is, or refuses it and says everything that is wrong with it. */
export function checkBuild(value: unknown): CheckedBuild {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return {
      ok: false,
      problems: [
        {
          code: 'wrong-type',
          parameter: 'build',
          label: say`Build`,
          value,
          message: say`The build is ${describeValue(value)}; it must be an object.`,
        },
      ],
    };
  }
  const parsed = z.safeParse(buildSchema, value);
  if (!parsed.success) {
    return { ok: false, problems: parsed.error.issues.flatMap((issue) => problemsOf(issue, value)) };
  }
  const build = parsed.data as unknown as Build;
  const problems = findImpossible(build);
  return problems.length === 0 ? { ok: true, build } : { ok: false, problems };
}

/** The problem with giving one parameter this value in this build, or undefined. The build itself must be valid. */
export function checkChange(build: Build, change: Partial<Build>): readonly Problem[] {
  const checked = checkBuild({ ...build, ...change });
  return checked.ok ? [] : checked.problems;
}
