/** Conversion beside mathjs, a general-purpose library. */
import fc from 'fast-check';
import { unit as quantity } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { displayUnit, fromDisplay, toDisplay, type Unit } from '../../src/neck/units.ts';
import { expectNear } from '../expect-near.ts';

const CONVERTED: readonly (readonly [stored: Unit, theirs: string, shown: string])[] = [
  ['mm', 'mm', 'in'],
  ['mm²', 'mm^2', 'in^2'],
  ['mm³', 'mm^3', 'in^3'],
  ['N', 'N', 'lbf'],
  ['µm', 'um', 'mil'],
];

describe('inches and pounds (seed 1604)', () => {
  it.each(CONVERTED)('%s as mathjs converts it', (stored, theirs, shown) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e5, noNaN: true }), (value) => {
        expectNear(
          toDisplay(value, stored, 'inch'),
          quantity(value, theirs).toNumber(shown),
          1e-9,
          'mathjs rounds the pound-force to ten digits',
        );
        expectNear(fromDisplay(toDisplay(value, stored, 'inch'), stored, 'inch'), value, 1e-14, 'there and back');
        expect(toDisplay(value, stored, 'metric')).toBe(value);
      }),
      { seed: 1604, numRuns: 50 },
    );
  });

  it('what has no inch counterpart is shown as stored', () => {
    for (const stored of ['MPa', 'GPa', '%', '°', 'day', 'Hz', 'g', ''] as const) {
      expect(displayUnit(stored, 'inch')).toEqual({ symbol: stored, factor: 1, extraDigits: 0 });
    }
  });

  it('a thousandth of an inch is 25.4 micrometres, by definition', () => {
    expectNear(toDisplay(25.4, 'µm', 'inch'), 1, 1e-15, 'exact');
    expectNear(fromDisplay(1, 'mm', 'inch'), 25.4, 1e-15, 'exact');
  });
});
