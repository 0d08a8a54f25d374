/** Whatever is typed into the field of a number: a number within its range and taken as typed, or refused in words. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NumberParameter, Parameter } from '../../src/neck/parameter-kinds.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { parseTyped } from '../../src/speech/scale.ts';
import { notANumber, outOfRange } from '../../src/speech/refusal.ts';
import { hold } from '../sweep/invariant.ts';
import { hostileText } from './hostile.ts';
import { RUNS } from './runs.ts';
import { parameterName } from '../../src/speech/names.ts';
import { draw } from '../draw.ts';

const NUMBERS = (PARAMETERS as readonly Parameter[]).filter(
  (parameter): parameter is NumberParameter => parameter.kind === 'number',
);

const typed = fc.oneof(
  hostileText,
  fc.double({ noNaN: true }).map(String),
  fc
    .tuple(
      fc.constantFrom('', '-', '+', '−'),
      fc.double({ min: 0, max: 2000, noNaN: true }),
      fc.constantFrom('', ' mm', 'in', '"', ' thou', ' N', '%', ' lbf', '°', ' parsec'),
    )
    .map(([sign, value, unit]) => `${sign}${value.toFixed(3)}${unit}`),
  fc.tuple(fc.nat(30), fc.nat(9), fc.nat(64)).map(([whole, top, bottom]) => `${whole} ${top}/${bottom}`),
);

test(`anything typed is a finite number or none (seed ${RUNS.typed.seed})`, () => {
  let numbers = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...NUMBERS),
      fc.constantFrom('metric' as const, 'inch' as const),
      typed,
      (drawn, system, text) => {
        const parameter = { ...drawn, label: parameterName(drawn.id) };
        const value = parseTyped(text, parameter, system);
        if (value === undefined) {
          hold(notANumber(text, parameter, system).includes(parameter.label), () => 'not said of which number');
          return;
        }
        numbers += 1;
        const refusal = outOfRange(value, parameter, system);
        if (refusal === undefined) {
          hold(value >= parameter.min && value <= parameter.max, () => `${value} was taken`);
          return;
        }
        hold(refusal.includes(parameter.label) && !/NaN|undefined/.test(refusal), () => refusal);
      },
    ),
    RUNS.typed,
  );
  expect(numbers).toBeGreaterThan(RUNS.typed.numRuns / 4);
});

test(`the fuzz tests together draw more than ${draw(10_000)} inputs`, () => {
  const total = Object.values(RUNS).reduce((sum, { numRuns }) => sum + numRuns, 0);
  expect(total).toBeGreaterThanOrEqual(draw(10_000));
  expect(new Set(Object.values(RUNS).map(({ seed }) => seed)).size).toBe(Object.keys(RUNS).length);
});
