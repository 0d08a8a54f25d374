/**
 * A blank that is measured for its stiffness: which numbers a test asks for, and whether they are all there. A number that
 * nobody has entered yet is null. Until the last one is there the blank counts as not measured.
 */
import type { Build } from './build.ts';
import { parameterById, type BlankPart } from './parameters.ts';
import type { Problem } from './problems.ts';

export type BlankTest = Build[`${BlankPart}BlankTest`];
type MeasuringTest = Exclude<BlankTest, 'none'>;

export const BLANK_PARTS: readonly BlankPart[] = ['neck', 'board'];

/** Stiffness of a blank over its species', or the other way round, beyond which it is questioned: see mechanics/blank-slips.ts. */
export const FAR_BLANK_RATIO = 2;

/** In the order of the controls. */
const ASKED = {
  tap: ['LengthMm', 'WidthMm', 'ThicknessMm', 'MassG', 'FrequencyHz'],
  sag: ['LengthMm', 'WidthMm', 'ThicknessMm', 'SpanMm', 'LoadN', 'SagMm'],
} as const satisfies Readonly<Record<MeasuringTest, readonly string[]>>;

/** A number of either test. */
export type BlankNumberName = (typeof ASKED)[MeasuringTest][number];
export type BlankNumberId = `${BlankPart}Blank${BlankNumberName}`;

export type BlankValues<Test extends MeasuringTest = MeasuringTest> = Readonly<
  Record<(typeof ASKED)[Test][number], number>
>;

export type Blank =
  | { readonly state: 'not-measured' }
  | { readonly state: 'incomplete'; readonly test: MeasuringTest; readonly missing: readonly BlankNumberId[] }
  | { readonly state: 'whole'; readonly test: 'tap'; readonly values: BlankValues<'tap'> }
  | { readonly state: 'whole'; readonly test: 'sag'; readonly values: BlankValues<'sag'> };

/** The name of a number without the part that it belongs to. */
export const blankNumberName = (id: BlankNumberId): BlankNumberName =>
  id.replace(/^(neck|board)Blank/, '') as BlankNumberName;

export function blankId(part: BlankPart, name: BlankNumberName): BlankNumberId {
  return `${part}Blank${name}`;
}

/** The numbers that a test asks for, in the order of the controls. */
export function blankIds(part: BlankPart, test: MeasuringTest): BlankNumberId[] {
  return ASKED[test].map((name) => blankId(part, name));
}

/** Which blank a number or a choice belongs to; undefined for everything else. */
export function blankPartOf(id: string): BlankPart | undefined {
  return BLANK_PARTS.find((part) => id.startsWith(`${part}Blank`));
}

export function blankOf(build: Build, part: BlankPart): Blank {
  const test = build[`${part}BlankTest`];
  if (test === 'none') return { state: 'not-measured' };
  const missing = blankIds(part, test).filter((id) => build[id] === null);
  if (missing.length > 0) return { state: 'incomplete', test, missing };
  const values = Object.fromEntries(ASKED[test].map((name) => [name, build[blankId(part, name)]]));
  return { state: 'whole', test, values } as unknown as Blank;
}

/**
 * A span longer than the blank, which cannot have been, said of whichever of the two is being entered. Builds of old files
 * may hold one: there it is a check.
 */
export function spanProblem(build: Build, entered: BlankNumberId): Problem | undefined {
  const part = blankPartOf(entered);
  if (!part || build[`${part}BlankTest`] !== 'sag') return undefined;
  const [span, length] = [build[`${part}BlankSpanMm`], build[`${part}BlankLengthMm`]];
  if (span === null || length === null || span <= length) return undefined;
  const limit = entered.endsWith('SpanMm') ? { value: span, max: length } : { value: length, min: span };
  return { code: 'impossible', parameter: entered, ...limit, unit: 'mm', reason: 'span-on-blank', quantities: [] };
}

/** The test whose result counts. */
export function countedTest(build: Build, part: BlankPart): BlankTest {
  const blank = blankOf(build, part);
  return blank.state === 'whole' ? blank.test : 'none';
}

/**
 * What choosing a test changes. While a blank is not measured its numbers in a build are those of the table, which nobody
 * measured: from there on they are empty. What somebody entered stays.
 */
export function choosingTest(build: Build, part: BlankPart, test: BlankTest): Partial<Build> {
  const choice = { [`${part}BlankTest`]: test } as Partial<Build>;
  if (build[`${part}BlankTest`] !== 'none' || test === 'none') return choice;
  const ids = [...new Set([...blankIds(part, 'tap'), ...blankIds(part, 'sag')])];
  const untouched = ids.filter((id) => build[id] === parameterById(id).default);
  return { ...choice, ...Object.fromEntries(untouched.map((id) => [id, null])) };
}
