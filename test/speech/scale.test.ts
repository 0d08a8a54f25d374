import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NumberParameter, Parameter } from '../../src/neck/parameter-kinds.ts';
import { parameterById, PARAMETERS } from '../../src/neck/parameters.ts';
import type { UnitSystem } from '../../src/neck/units.ts';
import {
  displayScale,
  limitText,
  niceStep,
  numberText,
  parseTyped,
  quantityText,
  rangeText,
  snapped,
  stepped,
} from '../../src/speech/scale.ts';
import { outOfRange } from '../../src/speech/refusal.ts';
import { parameterName } from '../../src/speech/names.ts';

const named = (parameter: NumberParameter) => ({ ...parameter, label: parameterName(parameter.id) });

const NUMBERS = (PARAMETERS as readonly Parameter[]).filter((row): row is NumberParameter => row.kind === 'number');
const SYSTEMS: readonly UnitSystem[] = ['metric', 'inch'];
const number = (id: string) => parameterById(id) as NumberParameter;
const kerf = number('kerfMm');
const scale = number('scaleLengthMm');
const frets = number('fretCount');

describe('what is typed', () => {
  test.each<[string, NumberParameter, UnitSystem, number | undefined]>([
    ['0.58', kerf, 'metric', 0.58],
    ['0,58', kerf, 'metric', 0.58],
    ['.58', kerf, 'metric', 0.58],
    [' 0.58 mm ', kerf, 'metric', 0.58],
    ['0.58mm', kerf, 'inch', 0.58],
    // 1 in = 25.4 mm exactly (international yard and pound, 1959).
    ['0.023', kerf, 'inch', 0.5842],
    ['0.023 in', kerf, 'metric', 0.5842],
    ['0.023"', kerf, 'metric', 0.5842],
    ['23 thou', kerf, 'metric', 0.5842],
    ['25 1/2', scale, 'inch', 647.7],
    ['25-1/2"', scale, 'metric', 647.7],
    ['1/0', scale, 'inch', undefined],
    ['1,000.5', scale, 'metric', undefined],
    ['1,000,5', scale, 'metric', undefined],
    ['−0.1', number('boardMoistureChange'), 'metric', -0.1],
    ['-2 % MC', number('boardMoistureChange'), 'metric', -2],
    ['22', frets, 'metric', 22],
    ['32°', number('endBevelDegrees'), 'metric', 32],
    ['twenty', frets, 'metric', undefined],
    ['', kerf, 'metric', undefined],
    ['0.58 kg', kerf, 'metric', undefined],
    ['1e3', scale, 'metric', undefined],
    ['0x10', scale, 'metric', undefined],
    ['Infinity', scale, 'metric', undefined],
    ['1.2.3', scale, 'metric', undefined],
  ])('“%s” is read as it is meant', (text, parameter, system, expected) => {
    const read = parseTyped(text, parameter, system);
    // Nine digits are stored.
    expect(read === undefined ? undefined : Number(read.toFixed(9))).toBe(expected);
  });

  test('seed 11: anything typed gives a finite number or none', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 12 }),
        fc.constantFrom(...NUMBERS),
        fc.constantFrom(...SYSTEMS),
        (text, parameter, system) => {
          const read = parseTyped(text, parameter, system);
          expect(read === undefined || Number.isFinite(read)).toBe(true);
        },
      ),
      { seed: 11, numRuns: 2000 },
    );
  });

  test('seed 12: what is shown of a metric value with its digits is read back as that value', () => {
    fc.assert(
      fc.property(fc.constantFrom(...NUMBERS), fc.double({ min: 0, max: 1, noNaN: true }), (parameter, share) => {
        const value = Number((parameter.min + share * (parameter.max - parameter.min)).toFixed(parameter.digits));
        const shown = quantityText(value, displayScale(parameter, 'metric'), 'metric');
        const error = Math.abs(parseTyped(shown, parameter, 'metric')! - value);
        expect(error).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
      }),
      { seed: 12, numRuns: 1000 },
    );
  });
});

describe('steps', () => {
  test('are what the table says in mm, and round numbers in inches', () => {
    expect(stepped(kerf, 0.58, 1, 'metric')).toBe(0.585);
    expect(stepped(kerf, 0.58, 0.1, 'metric')).toBe(0.5805);
    expect(stepped(kerf, 0.58, -10, 'metric')).toBe(0.53);
    expect(niceStep(0.005 / 25.4)).toBe(0.0002);
    expect(niceStep(0.1 / 25.4)).toBe(0.005);
    expect(stepped(frets, 22, 1, 'metric')).toBe(23);
    expect(stepped(frets, 22, 0.1, 'metric')).toBe(23);
    expect(stepped(frets, 22, 10, 'metric')).toBe(32);
  });

  test('stop at the limits', () => {
    for (const system of SYSTEMS) {
      for (const parameter of NUMBERS) {
        expect(stepped(parameter, parameter.max, 10, system)).toBe(parameter.max);
        expect(stepped(parameter, parameter.min, -10, system)).toBe(parameter.min);
      }
    }
  });

  test('seed 13: every step moves, and one back returns to the grid', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...NUMBERS),
        fc.constantFrom(...SYSTEMS),
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        (parameter, system, share) => {
          const start = snapped(parameter, parameter.min + share * (parameter.max - parameter.min), system);
          const up = stepped(parameter, start, 1, system);
          fc.pre(up < parameter.max);
          expect(up).toBeGreaterThan(start);
          const back = stepped(parameter, up, -1, system);
          const step = displayScale(parameter, system).toStored(displayScale(parameter, system).step);
          // Stored to nine digits: a millionth of a step is far above that and far below anything that counts.
          expect(Math.abs(back - start)).toBeLessThanOrEqual(1e-6 * step);
        },
      ),
      { seed: 13, numRuns: 1000 },
    );
  });

  test('a slider can reach every step and both limits', () => {
    for (const system of SYSTEMS) {
      for (const parameter of NUMBERS) {
        expect(snapped(parameter, parameter.min, system)).toBeGreaterThanOrEqual(parameter.min);
        expect(snapped(parameter, parameter.max, system)).toBeLessThanOrEqual(parameter.max);
      }
      for (const parameter of NUMBERS.filter((row) => row.integer)) {
        expect(Number.isInteger(snapped(parameter, parameter.min + 1.4, system))).toBe(true);
      }
    }
  });
});

describe('what is shown', () => {
  test('has the digits of the parameter, and more only where more were typed', () => {
    const metric = displayScale(kerf, 'metric');
    expect(numberText(0.58, metric, 'metric')).toBe('0.580');
    expect(numberText(0.5835, metric, 'metric')).toBe('0.5835');
    expect(numberText(0.5842, displayScale(kerf, 'inch'), 'inch')).toBe('0.0230');
    expect(quantityText(32, displayScale(number('endBevelDegrees'), 'metric'), 'metric')).toBe('32°');
    expect(quantityText(-2, displayScale(number('boardMoistureChange'), 'metric'), 'metric')).toBe('−2.0\u00a0% MC');
  });

  test('every printed limit can itself be typed', () => {
    for (const system of SYSTEMS) {
      for (const parameter of NUMBERS) {
        const shown = displayScale(parameter, system);
        for (const kind of ['min', 'max'] as const) {
          const typed = parseTyped(limitText(parameter[kind], kind, shown, system), parameter, system)!;
          expect(outOfRange(typed, named(parameter), system)).toBeUndefined();
        }
      }
    }
  });

  test('a range names both limits and the unit', () => {
    expect(rangeText(kerf.min, kerf.max, displayScale(kerf, 'metric'), 'metric')).toBe('0.3 to 1.2\u00a0mm');
    expect(rangeText(kerf.min, kerf.max, displayScale(kerf, 'inch'), 'inch')).toBe('0.0119 to 0.0472\u00a0in');
  });
});

describe('a refusal', () => {
  test('names the value, the range and the unit', () => {
    expect(outOfRange(3, named(kerf), 'metric')).toBe('Kerf cannot be 3.000\u00a0mm: it takes 0.3 to 1.2\u00a0mm.');
    expect(outOfRange(22.5, named(frets), 'metric')).toBe('Frets cannot be 22.5: it takes a whole number, 12 to 36.');
    expect(outOfRange(0.58, named(kerf), 'metric')).toBeUndefined();
    expect(outOfRange(Number.NaN, named(kerf), 'metric')).toBeDefined();
  });
});
