/** Why a neck or a file is refused, in the reader's units. */
import { PROJECT_FORMAT } from '../neck/file.ts';
import type { Limits, Problem, Quantity } from '../neck/problems.ts';
import { PARAMETERS, type ParameterId } from '../neck/parameters.ts';
import { displayDigits, toDisplay, type Unit, type UnitSystem } from '../neck/units.ts';
import { ENTRY_WORDS, IMPOSSIBLE_WORDS, KIND_WORDS, PLACE_WORDS, PROBLEM_WORDS } from './en/neck/problems.ts';
import { PARAMETER_WORDS } from './en/neck/parameters.ts';
import { formatRange, formatShort, unitLabel, withDecimalSign, withUnit } from './quantity.ts';

/** Most digits after the point, in the stored unit. */
const DIGITS = 3;

/** The value of a table's entry under a name that comes from a file; undefined where the table has none. */
function entryOf<T>(table: Readonly<Record<string, T>>, name: string): T | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}

const PARAMETER_IDS: ReadonlySet<string> = new Set(PARAMETERS.map(({ id }) => id));

/** What a place is called: "Kerf", "Strings, entry 3, string diameter". @param path as in `Problem` */
export function placeText(path: string): string {
  const [head = 'build', index, ...rest] = path.split('.');
  if (PARAMETER_IDS.has(head)) return PARAMETER_WORDS[head as ParameterId].label;
  const list = entryOf(PLACE_WORDS, head) ?? head;
  if (index === undefined || !/^\d+$/.test(index)) return list;
  const entry = String(Number(index) + 1);
  if (rest.length === 0) return PROBLEM_WORDS.entry(list, entry);
  const part = rest.join('.');
  return PROBLEM_WORDS.entryPart(list, entry, entryOf(ENTRY_WORDS, part) ?? part);
}

/** Levels of a list or a record that a sentence shows; a file may nest so deeply that writing all of it out fails. */
const SHOWN_LEVELS = 3;
const SHOWN_ENTRIES = 20;

function shallow(value: unknown, levels: number): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (levels === 0) return '…';
  if (Array.isArray(value)) return value.slice(0, SHOWN_ENTRIES).map((entry) => shallow(entry, levels - 1));
  const entries = Object.entries(value).slice(0, SHOWN_ENTRIES);
  return Object.fromEntries(entries.map(([key, entry]) => [key, shallow(entry, levels - 1)]));
}

/** A value as it was given, short enough for a sentence. */
export function givenText(value: unknown): string {
  if (value === undefined) return PROBLEM_WORDS.nothing;
  if (typeof value === 'number') return withDecimalSign(String(value));
  const text = JSON.stringify(shallow(value, SHOWN_LEVELS)) ?? typeof value;
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}

function quantityText({ value, unit }: Quantity, system: UnitSystem): string {
  const digits = displayDigits(DIGITS, unit, system);
  return withUnit(formatShort(toDisplay(value, unit, system), digits), unitLabel(unit, system));
}

/** A number of a build as it was given: in its unit where the place has one. */
function numberText(value: unknown, { unit }: Limits, system: UnitSystem): string {
  if (typeof value !== 'number' || !Number.isFinite(value) || unit === undefined) return givenText(value);
  // All the digits that somebody gave, where nothing is converted.
  if (system === 'metric') return withUnit(withDecimalSign(String(value)).replace('-', '−'), unitLabel(unit, system));
  return quantityText({ value, unit }, system);
}

/** A limit, rounded inwards so that what is printed is itself allowed. */
function limitText(value: number, kind: 'min' | 'max', unit: Unit, system: UnitSystem): string {
  const power = 10 ** displayDigits(DIGITS, unit, system);
  const shown = toDisplay(value, unit, system) * power;
  const inwards = (kind === 'min' ? Math.ceil(shown - 1e-6) : Math.floor(shown + 1e-6)) / power;
  return withDecimalSign(String(inwards)).replace('-', '−');
}

function rangeOf({ min, max, unit = '' }: Limits, system: UnitSystem): string | undefined {
  if (min === undefined || max === undefined) return undefined;
  return formatRange(limitText(min, 'min', unit, system), limitText(max, 'max', unit, system), unitLabel(unit, system));
}

type Impossible = Extract<Problem, { code: 'impossible' }>;

function impossibleText(problem: Impossible, system: UnitSystem): string {
  const { parameter, value, min, max, unit = '', reason, quantities } = problem;
  const say: (...texts: readonly string[]) => string = IMPOSSIBLE_WORDS[reason];
  const because = say(...quantities.map((quantity) => quantityText(quantity, system)));
  const limit = min ?? max;
  // Of lists the reason is the whole sentence.
  if (limit === undefined) return because;
  const kind = min === undefined ? 'max' : 'min';
  return PROBLEM_WORDS[kind === 'min' ? 'tooLow' : 'tooHigh'](
    placeText(parameter),
    quantityText({ value: value as number, unit }, system),
    withUnit(limitText(limit, kind, unit, system), unitLabel(unit, system)),
    because,
  );
}

function sizeText(problem: Extract<Problem, { code: 'wrong-size' }>): string {
  const { parameter, of, size, min, max } = problem;
  const limit = min === undefined ? PROBLEM_WORDS.atMost(String(max)) : PROBLEM_WORDS.atLeast(String(min));
  return PROBLEM_WORDS[of === 'text' ? 'textSize' : 'listSize'](placeText(parameter), parameter, String(size), limit);
}

function typeText(problem: Extract<Problem, { code: 'wrong-type' }>, system: UnitSystem): string {
  const { parameter, value, wants } = problem;
  if (parameter === 'build') return PROBLEM_WORDS.notABuild(givenText(value));
  const label = placeText(parameter);
  const given = numberText(value, problem, system);
  if (wants === 'other') return PROBLEM_WORDS.takesNot(label, parameter, given);
  const range = rangeOf(problem, system);
  return range === undefined
    ? PROBLEM_WORDS.takes(label, parameter, given, KIND_WORDS[wants])
    : PROBLEM_WORDS.takesKind(label, parameter, given, KIND_WORDS[wants], range);
}

/** One plain sentence that names the place, the value, its range and its unit. */
export function problemText(problem: Problem, system: UnitSystem): string {
  const { parameter, value } = problem;
  const label = placeText(parameter);
  switch (problem.code) {
    case 'not-json':
      return PROBLEM_WORDS.notJson(problem.detail);
    case 'not-a-project':
      return parameter === 'version'
        ? PROBLEM_WORDS.noVersion(givenText(value), String(problem.latest))
        : PROBLEM_WORDS.notAProject(PROJECT_FORMAT);
    case 'newer-version':
      return PROBLEM_WORDS.newerVersion(givenText(value), String(problem.latest));
    case 'unknown':
      return PROBLEM_WORDS.unknown(givenText(parameter));
    case 'missing': {
      const range = rangeOf(problem, system);
      return range === undefined
        ? PROBLEM_WORDS.missing(label, parameter)
        : PROBLEM_WORDS.missingOf(label, parameter, range);
    }
    case 'wrong-type':
      return typeText(problem, system);
    case 'wrong-size':
      return sizeText(problem);
    case 'not-an-option':
      return PROBLEM_WORDS.takesOneOf(label, parameter, givenText(value), problem.options.join(', '));
    case 'out-of-range':
      return PROBLEM_WORDS.takes(
        label,
        parameter,
        numberText(value, problem, system),
        rangeOf(problem, system) ?? PROBLEM_WORDS.nothing,
      );
    case 'impossible':
      return impossibleText(problem, system);
  }
}

/** Some problems in words, each once. */
export function problemTexts(problems: readonly Problem[], system: UnitSystem): string[] {
  return [...new Set(problems.map((problem) => problemText(problem, system)))];
}
