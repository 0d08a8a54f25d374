/**
 * What is wrong with a strip, as data: kinds and ranges from the schema, then what cannot be together. Nothing is corrected.
 */
import type * as z from 'zod/mini';
import { isOwnWood } from '../../neck/materials/own-woods.ts';
import type { Unit } from '../../neck/units.ts';
import { isDate } from '../bench-log/days.ts';
import { isId } from '../bench-log/identity.ts';
import {
  MOST_STRIP_FRETS,
  STRIP_NUMBERS,
  stripSchema,
  type Limits,
  type StripNumber,
  type TryStrip,
} from './document.ts';
import { fretsOf, slotPitchMm } from './layout.ts';

/** Wood left between two slots, and between a slot and an end, mm: less breaks out (common practice, no source). */
const LEAST_BETWEEN_MM = 3;
/** Wood left below the slots, mm: less breaks in the hand (common practice, no source). */
const LEAST_BELOW_MM = 0.5;

interface Place {
  /** Path of the value, such as "groups.1.kerfMm"; "strip" or "file" for the whole. */
  readonly at: string;
  readonly value: unknown;
}

export type StripProblem = Place &
  Partial<Limits> &
  (
    | { readonly code: 'missing' | 'unknown' | 'out-of-range' | 'not-a-number' | 'wrong-type' }
    | { readonly code: 'not-an-option'; readonly options: readonly string[] }
    /** A text or list that is too long or too short. */
    | { readonly code: 'wrong-size' }
    | { readonly code: 'not-a-day' | 'not-an-id' }
    | { readonly code: 'not-json' | 'not-strips' | 'newer-version' }
    /** The number must be given, because of what else is said; or must not. */
    | { readonly code: 'needed' | 'not-needed' }
    /** A weight as newtons or as grams, and not as both. */
    | { readonly code: 'one-weight' }
    /** These numbers cannot be together: the range is what the others leave for this one. */
    | {
        readonly code: 'impossible';
        readonly because:
          | 'span-on-offcut'
          | 'wood-below-slots'
          | 'tang-in-slot'
          | 'wood-between-slots'
          | 'ends-in-strip'
          | 'frets-of-strip'
          | 'studs-over-tang'
          | 'group-of-reading';
      }
  );

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key)
        ? (inner as Record<PropertyKey, unknown>)[key]
        : undefined,
    value,
  );
}

function limitsAt(path: readonly PropertyKey[]): Partial<Limits> {
  const last = String(path.at(-1));
  const key = last === 'ownErrorMm' ? 'errorMm' : last;
  return Object.hasOwn(STRIP_NUMBERS, key) ? STRIP_NUMBERS[key as StripNumber] : {};
}

const asText = (path: readonly PropertyKey[]) => path.map(String).join('.') || 'strip';

function fromIssue(issue: z.core.$ZodIssue, input: unknown): StripProblem[] {
  const value = valueAt(input, issue.path);
  const place = { at: asText(issue.path), value };
  const limits = limitsAt(issue.path);
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => {
      const path = [...issue.path, key];
      return { code: 'unknown', at: asText(path), value: valueAt(input, path) };
    });
  if (value === undefined) return [{ code: 'missing', ...place, ...limits }];
  switch (issue.code) {
    case 'too_small':
    case 'too_big': {
      if (typeof value === 'number') return [{ code: 'out-of-range', ...place, ...limits }];
      const bound = issue.code === 'too_small' ? { min: Number(issue.minimum) } : { max: Number(issue.maximum) };
      return [{ code: 'wrong-size', ...place, ...bound }];
    }
    case 'invalid_value':
      return [{ code: 'not-an-option', ...place, options: issue.values.map(String) }];
    case 'invalid_union':
      return [{ code: 'wrong-type', ...place }];
    default:
      return [{ code: 'unit' in limits ? 'not-a-number' : 'wrong-type', ...place, ...limits }];
  }
}

const impossible = (
  because: Extract<StripProblem, { code: 'impossible' }>['because'],
  at: string,
  value: number,
  limit: { readonly min?: number; readonly max?: number },
  unit: Unit = 'mm',
): StripProblem => ({ code: 'impossible', because, at, value, ...limit, unit });

function sizeProblems(strip: TryStrip): StripProblem[] {
  const { offcut, wire, slotDepthMm, endMm, groups } = strip;
  const problems: StripProblem[] = [];
  const frets = fretsOf(strip);
  const widest = Math.max(...groups.map(({ kerfMm }) => kerfMm));
  const room = offcut.thicknessMm - LEAST_BELOW_MM;
  if (slotDepthMm > room) problems.push(impossible('wood-below-slots', 'slotDepthMm', slotDepthMm, { max: room }));
  if (wire.tangDepthMm >= slotDepthMm)
    problems.push(impossible('tang-in-slot', 'wire.tangDepthMm', wire.tangDepthMm, { max: slotDepthMm }));
  if (wire.studWidthMm < wire.tangWidthMm)
    problems.push(impossible('studs-over-tang', 'wire.studWidthMm', wire.studWidthMm, { min: wire.tangWidthMm }));
  if (frets > MOST_STRIP_FRETS)
    problems.push(impossible('frets-of-strip', 'groups', frets, { max: MOST_STRIP_FRETS }, ''));
  if (frets > 1 && 2 * endMm >= offcut.lengthMm)
    problems.push(impossible('ends-in-strip', 'endMm', endMm, { max: offcut.lengthMm / 2 }));
  else if (frets > 1) {
    const pitch = slotPitchMm(strip);
    const least = widest + LEAST_BETWEEN_MM;
    if (pitch < least) problems.push(impossible('wood-between-slots', 'groups', pitch, { min: least }));
  }
  if (endMm < widest / 2 + LEAST_BETWEEN_MM)
    problems.push(impossible('wood-between-slots', 'endMm', endMm, { min: widest / 2 + LEAST_BETWEEN_MM }));
  return problems;
}

function offcutProblems({ offcut }: TryStrip): StripProblem[] {
  const problems: StripProblem[] = [];
  for (const key of ['ownModulusGPa', 'ownDensityKgM3'] as const) {
    const isOwn = isOwnWood(offcut.wood);
    if (isOwn === (offcut[key] !== null)) continue;
    const place = { at: `offcut.${key}`, value: offcut[key] };
    problems.push({ code: isOwn ? 'needed' : 'not-needed', ...place, ...STRIP_NUMBERS[key] });
  }
  const { stiffness } = offcut;
  if (stiffness.test !== 'weight') return problems;
  if ((stiffness.loadN === null) === (stiffness.loadG === null))
    problems.push({ code: 'one-weight', at: 'offcut.stiffness.loadN', value: stiffness.loadN, ...STRIP_NUMBERS.loadN });
  if (stiffness.spanMm > offcut.lengthMm)
    problems.push(impossible('span-on-offcut', 'offcut.stiffness.spanMm', stiffness.spanMm, { max: offcut.lengthMm }));
  return problems;
}

function readingProblems({ readings, groups }: TryStrip): StripProblem[] {
  return readings.flatMap(({ instrument, ownErrorMm, over }, index): StripProblem[] => {
    const problems: StripProblem[] = [];
    if ((instrument === 'own') !== (ownErrorMm !== null)) {
      const place = { at: `readings.${index}.ownErrorMm`, value: ownErrorMm };
      problems.push({ code: ownErrorMm === null ? 'needed' : 'not-needed', ...place, ...STRIP_NUMBERS.errorMm });
    }
    if (over !== 'ends' && over >= groups.length)
      problems.push(impossible('group-of-reading', `readings.${index}.over`, over, { max: groups.length - 1 }, ''));
    return problems;
  });
}

export type CheckedStrip =
  { readonly ok: true; readonly strip: TryStrip } | { readonly ok: false; readonly problems: readonly StripProblem[] };

/** Accepts a strip as it is, or refuses it and says everything that is wrong with it. */
export function checkStrip(value: unknown): CheckedStrip {
  const parsed = stripSchema.safeParse(value);
  if (!parsed.success) return { ok: false, problems: parsed.error.issues.flatMap((issue) => fromIssue(issue, value)) };
  const strip: TryStrip = parsed.data;
  const { id, date } = strip;
  const problems: StripProblem[] = [
    ...(isId(id) ? [] : [{ code: 'not-an-id', at: 'id', value: id } as const]),
    ...(isDate(date) ? [] : [{ code: 'not-a-day', at: 'date', value: date } as const]),
    ...offcutProblems(strip),
    ...sizeProblems(strip),
    ...readingProblems(strip),
  ];
  return problems.length === 0 ? { ok: true, strip } : { ok: false, problems };
}
