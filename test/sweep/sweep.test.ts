/** A share of `npm run sweep` in every test run, and that the sweep notices what it is there to notice. */
import { describe, expect, test } from 'vitest';
import { hold, holdFinite, holdText } from './invariant.ts';
import { buildOfSeed, INVARIANTS, sweep } from './sweep.ts';
import { draw } from '../draw.ts';

const BUILDS = draw(2000, 200);
const FIRST_SEED = 100_000;
/** Builds of the long draw that are known to break a law; each is expected to, so that mending one shows here. */
const OPEN = [101_698, 101_858];

test(
  `what holds of every build holds of ${BUILDS} drawn at random, seeds ${FIRST_SEED} and up`,
  async () => {
    const { counts, failures: all } = await sweep(BUILDS, FIRST_SEED);
    const failures = all.filter(({ seed }) => !OPEN.includes(seed));
    expect(failures.map(({ seed, invariant, message }) => `seed ${seed}: ${invariant}: ${message}`)).toEqual([]);
    // Every law has been tried, the dear ones too.
    expect(counts.filter(({ checked }) => checked === 0).map(({ invariant }) => invariant)).toEqual([]);
  },
  draw(1_800_000, 300_000),
);

test.fails.each(OPEN)('seed %i breaks no law', async (seed) => {
  const { failures } = await sweep(1, seed);
  expect(failures.map(({ invariant, message }) => `${invariant}: ${message}`)).toEqual([]);
});

test('one seed makes one build', () => {
  expect(buildOfSeed(5)).toEqual(buildOfSeed(5));
  expect(buildOfSeed(5)).not.toEqual(buildOfSeed(6));
});

test('a law that does not hold is counted, with its seed', async () => {
  const never = { name: 'never', every: 2, check: () => hold(false, () => 'it does not') };
  const { counts, failures } = await sweep(4, 10, { invariants: [never] });
  expect(failures).toEqual([
    { seed: 10, invariant: 'never', message: 'it does not' },
    { seed: 12, invariant: 'never', message: 'it does not' },
  ]);
  expect(counts.at(-1)).toEqual({ invariant: 'never', checked: 2, failed: 2 });
});

test('laws have names of their own', () => {
  expect(new Set(INVARIANTS.map(({ name }) => name)).size).toBe(INVARIANTS.length);
});

describe('numbers that are none', () => {
  test.each([
    [{ a: [1, { b: Number.NaN }] }, 'x: a[1].b is NaN'],
    [{ a: new Float64Array([0, Infinity]) }, 'x: a[1] is Infinity'],
    [[-Infinity], 'x: [0] is -Infinity'],
  ])('are found', (value, message) => {
    expect(() => holdFinite(value, 'x')).toThrow(message);
  });

  test('are let through where they may be', () => {
    expect(() => holdFinite({ radiusMm: Infinity, name: 'NaN' }, 'x', /radiusMm/)).not.toThrow();
  });

  test.each(['NaN mm', '−Infinity', 'undefined', '[object Object]'])('are found in a text: %s', (text) => {
    expect(() => holdText(`kerf ${text}`, 'x')).toThrow(text);
  });
});
