/** A share of `npm run sweep` in every test run, and that the sweep notices what it is there to notice. */
import { describe, expect, test } from 'vitest';
import { hold, holdFinite, holdText } from './invariant.ts';
import { mendedBuild } from './mended.ts';
import { holdSteps } from './steps.ts';
import { buildOfSeed, INVARIANTS, sweep } from './sweep.ts';
import { draw } from '../draw.ts';

const BUILDS = draw(2000, 200);
const FIRST_SEED = 100_000;
/** Builds that once broke a law (mended.ts), each with the beginning of its name. */
const MENDED = [
  [100_473, 'a build at the ends of its ranges'],
  [101_062, 'a build at the ends of its ranges'],
  [101_466, 'a build at the ends of its ranges'],
  [101_974, 'a build at the ends of its ranges'],
  [101_698, 'a tang comes down to the floor of its slot'],
  [101_405, 'frets bend backwards'],
  [101_477, 'a build at the ends of its ranges'],
  [101_858, 'frets bend backwards'],
  [103_650, 'no advice raises'],
  [105_870, 'no advice raises'],
] as const;

test(
  `what holds of every build holds of ${BUILDS} drawn at random, seeds ${FIRST_SEED} and up`,
  async () => {
    const { counts, failures } = await sweep(BUILDS, FIRST_SEED);
    expect(failures.map(({ seed, invariant, message }) => `seed ${seed}: ${invariant}: ${message}`)).toEqual([]);
    // Every law has been tried, the dear ones too.
    expect(counts.filter(({ checked }) => checked === 0).map(({ invariant }) => invariant)).toEqual([]);
  },
  draw(3_000_000, 600_000),
);

test.each(MENDED)('mended/%i: %s', async (seed, name) => {
  const invariants = INVARIANTS.filter((law) => law.name.startsWith(name));
  const { counts, failures } = await sweep(1, seed, { invariants, thorough: true, buildOf: mendedBuild });
  expect(counts.map(({ checked }) => checked)).toEqual([1, 1]);
  expect(failures.map(({ invariant, message }) => `${invariant}: ${message}`)).toEqual([]);
});

test('a jump of a line is noticed, and the side that its extreme is on is none', () => {
  const rising = [0, 1, 2, 3, 4].map((share) => [0, 0.041, 0.04 - 0.03 * share, -0.035 - 0.003 * share, 0]);
  expect(() => holdSteps(rising, 1e-3, 'x')).not.toThrow();
  const jumping = rising.map((line, i) => (i < 2 ? line : line.map((mm) => mm - 0.2)));
  expect(() => holdSteps(jumping, 1e-3, 'x')).toThrow('x: steps of');
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
