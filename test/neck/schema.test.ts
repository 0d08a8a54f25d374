/** Every value of a build is accepted as it is or refused by name, value, range and unit. */
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import type { NumberParameter, Parameter } from '../../src/neck/parameter-kinds.ts';
import { GROUPS } from '../../src/neck/parameter-kinds.ts';
import { isRelevant, parameterById, PARAMETERS } from '../../src/neck/parameters.ts';
import type { Problem } from '../../src/neck/problems.ts';
import { checkBuild, LIST_NUMBERS } from '../../src/neck/schema.ts';
import { parameterName, parameterWords } from '../../src/speech/names.ts';
import { problemText } from '../../src/speech/problems.ts';
import { unitLabel, withUnit } from '../../src/speech/quantity.ts';

const ALL: readonly Parameter[] = PARAMETERS;
const NUMBERS = ALL.filter((parameter): parameter is NumberParameter => parameter.kind === 'number');

function problemsWith(change: Record<string, unknown>): readonly Problem[] {
  const checked = checkBuild({ ...defaultBuild(), ...change });
  return checked.ok ? [] : checked.problems;
}

function only(change: Record<string, unknown>): Problem {
  const problems = problemsWith(change);
  expect(problems).toHaveLength(1);
  return problems[0];
}

describe('the parameter table', () => {
  it('has every id once, in a group that exists, with a hint and a source', () => {
    expect(new Set(ALL.map(({ id }) => id)).size).toBe(ALL.length);
    for (const { group, id } of ALL) {
      expect(GROUPS).toContain(group);
      const { label, hint, source } = parameterWords(id);
      expect(hint.length).toBeGreaterThan(15);
      expect(source.length).toBeGreaterThan(5);
      expect(label.length).toBeGreaterThan(2);
    }
    expect(GROUPS.every((id) => ALL.some(({ group }) => group === id))).toBe(true);
    expect(() => parameterById('no-such')).toThrow(/parameter "no-such" is not in the table/);
  });

  it.each(NUMBERS.map((parameter) => [parameter.id, parameter] as const))(
    '%s: range, step, digits and default fit together',
    (_id, parameter) => {
      const { min, max, step, typical, default: standard, digits, integer } = parameter;
      expect(min).toBeLessThan(max);
      expect(standard).toBeGreaterThanOrEqual(min);
      expect(standard).toBeLessThanOrEqual(max);
      expect(typical[0]).toBeGreaterThanOrEqual(min);
      expect(typical[1]).toBeLessThanOrEqual(max);
      expect(typical[0]).toBeLessThanOrEqual(typical[1]);
      expect(step).toBeGreaterThan(0);
      // The default can be shown, and reached, with the digits of the control.
      expect(Number(standard.toFixed(digits))).toBe(standard);
      expect(integer !== true || Number.isInteger(step)).toBe(true);
      expect(integer !== true || digits === 0).toBe(true);
    },
  );

  it('conditions name parameters and values that exist', () => {
    for (const { when } of ALL) {
      for (const [id, values] of Object.entries(when ?? {})) {
        const parameter = parameterById(id);
        const known: readonly (string | boolean)[] = parameter.kind === 'choice' ? parameter.options : [true, false];
        for (const value of values) expect(known).toContain(value);
      }
    }
    const rodEnd = parameterById('rodEndMm');
    expect(isRelevant(rodEnd, { ...defaultBuild(), rodKind: 'none' })).toBe(false);
    expect(isRelevant(rodEnd, { ...defaultBuild(), rodKind: 'one-way' })).toBe(true);
    expect(isRelevant(parameterById('kerfMm'), defaultBuild())).toBe(true);
  });

  it('the defaults are a valid build', () => {
    expect(checkBuild(defaultBuild())).toEqual({ ok: true, build: defaultBuild() });
  });
});

describe.each(NUMBERS.map((parameter) => [parameter.id, parameter] as const))('%s', (id, parameter) => {
  const label = unitLabel(parameter.unit, 'metric');
  const range = `${parameter.min} to ${withUnit(String(parameter.max), label)}`.replace('-', '−');

  it.each([
    ['below', parameter.min - parameter.step],
    ['above', parameter.max + parameter.step],
  ] as const)('%s its range is refused by name, value, range and unit', (_where, value) => {
    const problem = problemsWith({ [id]: value }).find((candidate) => candidate.parameter === id)!;
    expect(problem).toMatchObject({
      code: 'out-of-range',
      value,
      min: parameter.min,
      max: parameter.max,
      unit: parameter.unit,
    });
    const given = withUnit(String(value).replace('-', '−'), label);
    expect(problemText(problem, 'metric')).toBe(`${parameterName(id)} (${id}) is ${given}; it takes ${range}.`);
  });

  it.each([
    ['text', '1'],
    // Nothing stands for a measurement that nobody has made yet.
    parameter.measured ? ['an object', {}] : ['nothing', null],
    ['a list', [1]],
    ['not a number', Number.NaN],
    ['infinity', Infinity],
    ['yes', true],
  ] as const)('%s is refused', (_what, value) => {
    const problem = only({ [id]: value });
    expect(problem).toMatchObject({
      code: 'wrong-type',
      parameter: id,
      min: parameter.min,
      max: parameter.max,
      unit: parameter.unit,
    });
    expect(problemText(problem, 'metric')).toContain(`${parameterName(id)} (${id}) is `);
    expect(problemText(problem, 'metric')).toContain(range);
  });

  it('left out is refused', () => {
    const { [id as 'kerfMm']: _left, ...rest } = defaultBuild();
    const checked = checkBuild(rest);
    expect(checked).toMatchObject({ ok: false, problems: [{ code: 'missing', parameter: id }] });
  });
});

it('a fraction of a fret is refused', () => {
  expect(only({ fretCount: 21.5 })).toMatchObject({ code: 'wrong-type', parameter: 'fretCount' });
  expect(problemText(only({ fretCount: 21.5 }), 'metric')).toBe(
    'Frets (fretCount) is 21.5; it takes a whole number, 12 to 36.',
  );
});

describe('choices and flags', () => {
  it.each(ALL.filter(({ kind }) => kind === 'choice').map(({ id }) => id))('%s takes its options only', (id) => {
    const parameter = parameterById(id);
    const options = parameter.kind === 'choice' ? parameter.options : [];
    const problem = problemsWith({ [id]: 'something else' }).find((candidate) => candidate.parameter === id)!;
    expect(problem.code).toBe('not-an-option');
    expect(problemText(problem, 'metric')).toBe(
      `${parameterName(id)} (${id}) is "something else"; it takes one of: ${options.join(', ')}.`,
    );
  });

  it.each(ALL.filter(({ kind }) => kind === 'flag').map(({ id }) => id))('%s takes yes or no only', (id) => {
    expect(only({ [id]: 'yes' })).toMatchObject({ code: 'wrong-type', parameter: id });
    expect(only({ [id]: 1 })).toMatchObject({ code: 'wrong-type', parameter: id });
  });
});

describe('lists', () => {
  const string = defaultBuild().strings[0];
  const region = { fromFret: 1, toFret: 3, kerfMm: 0.6, tangWidthMm: 0.5, studWidthMm: 0.8 };

  it.each([
    [
      'strings.0.diameterMm',
      { strings: [{ ...string, diameterMm: 9 }] },
      /Strings, entry 1, string diameter .* is 9\smm; it takes 0\.15 to 4\smm/,
    ],
    [
      'strings.1.pitch',
      { strings: [string, { ...string, pitch: 64.5 }] },
      /Strings, entry 2, pitch as a MIDI note number .* is 64\.5; it takes a whole number, 12 to 96/,
    ],
    [
      'strings.0.construction',
      { strings: [{ ...string, construction: 'gut' }] },
      /is "gut"; it takes one of: steel-plain/,
    ],
    [
      'laminates.0.wood',
      { laminates: [{ wood: 'cheese', share: 1 }] },
      /Neck laminates, entry 1, wood .* is "cheese"; it takes one of: sugar-maple/,
    ],
    ['laminates.0.share', { laminates: [{ wood: 'wenge', share: '1' }] }, /it takes a number, 0\.02 to 1/],
    [
      'binding.2.thicknessMm',
      { binding: defaultBuild().binding.map((line, i) => (i === 2 ? { ...line, thicknessMm: 0 } : line)) },
      /Binding lines, entry 3, binding line thickness .* is 0\smm; it takes 0\.2 to 4\smm/,
    ],
    [
      'binding.0.colour',
      { binding: defaultBuild().binding.map((line, i) => (i === 0 ? { ...line, colour: 'red' } : line)) },
      /colour as #rrggbb/,
    ],
    [
      'regions.0.kerfMm',
      { regions: [{ ...region, kerfMm: 5 }] },
      /kerf in the region .* is 5\smm; it takes 0\.3 to 1\.2\smm/,
    ],
    ['regions.0.fromFret', { regions: [{ ...region, fromFret: 0 }] }, /is 0; it takes 1 to 36/],
    [
      'startingReliefMm.1',
      { startingReliefMm: [0, 9] },
      /Measured relief per fret, entry 2 .* is 9\smm; it takes −1 to 1\.5\smm/,
    ],
    ['strings', { strings: [] }, /Strings \(strings\) has 0 entries; it takes at least 1/],
    ['strings', { strings: Array.from({ length: 13 }, () => string) }, /13 entries; it takes at most 12/],
    ['laminates', { laminates: [] }, /0 entries; it takes at least 1/],
    ['binding', { binding: [] }, /0 entries/],
    ['name', { name: 7 }, /Name of the build \(name\) is 7; it takes text/],
    ['name', { name: 'x'.repeat(201) }, /is 201 characters long; it takes at most 200/],
  ])('%s', (parameter, change, words) => {
    const problem = problemsWith(change).find((candidate) => candidate.parameter === parameter)!;
    expect(problem).toBeDefined();
    expect(problemText(problem, 'metric')).toMatch(words);
  });

  it('what a build does not have is refused, at any depth', () => {
    expect(only({ tuner: 'open' })).toMatchObject({ code: 'unknown', parameter: 'tuner', value: 'open' });
    expect(only({ strings: [{ ...string, brand: 'x' }] })).toMatchObject({
      code: 'unknown',
      parameter: 'strings.0.brand',
    });
  });

  it('ranges of list numbers are ranges', () => {
    for (const { min, max } of Object.values(LIST_NUMBERS)) expect(min).toBeLessThan(max);
  });
});

describe('what is no build', () => {
  it.each([null, undefined, 7, 'build', [], true])('%j', (value) => {
    expect(checkBuild(value)).toMatchObject({ ok: false, problems: [{ code: 'wrong-type', parameter: 'build' }] });
  });

  it('all that is wrong is said at once', () => {
    const problems = problemsWith({ kerfMm: 9, scaleLengthMm: '650', method: 'weld', extra: 1 });
    expect(problems.map(({ parameter }) => parameter).toSorted()).toEqual([
      'extra',
      'kerfMm',
      'method',
      'scaleLengthMm',
    ]);
  });
});
