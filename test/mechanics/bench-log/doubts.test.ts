/** A posterior says so when it cannot be trusted: at the end of its grid, from identical rows, from opposite ones. */
import { describe, expect, it, test } from 'vitest';
import { chiSquared999 } from '../../../src/mechanics/bench-log/doubts.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { bitePosterior } from '../../../src/mechanics/bench-log/posterior.ts';
import { normalQuantile, seededRandom } from '../../../src/mechanics/uncertainty/normal.ts';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { draw } from '../../draw.ts';
import { expectNear } from '../../expect-near.ts';
import { ENTRY } from './entries.ts';

const fretted = (measuredFrettedMm: number, change: Partial<LogEntry> = {}): LogEntry => ({
  ...ENTRY,
  measuredStrungMm: null,
  predictedFrettedMm: -0.2,
  measuredFrettedMm,
  ...change,
});
const codes = (entries: readonly LogEntry[]) => bitePosterior(entries).doubts.map(({ code }) => code);

/** Necks of one workshop whose studs bite `factor` times as hard, with the scatter that the model says. */
function necks(factor: number, count: number, seed: number, predictedMm = -0.2): LogEntry[] {
  const random = seededRandom(seed);
  const normal = () => normalQuantile(uniformFloat64(random) * (1 - 1e-12) + 5e-13);
  return Array.from({ length: count }, () => {
    const measured = predictedMm * factor * Math.exp(ENTRY.fretShift + ENTRY.fretScatter * normal()) + 0.02 * normal();
    return fretted(measured, { predictedFrettedMm: predictedMm });
  });
}

test('the 99.9 % point of chi-squared is that of the tables', () => {
  // Abramowitz and Stegun, Table 26.8 (from memory).
  for (const [degrees, value, tolerance] of [
    [1, 10.828, 0.031],
    [5, 20.515, 0.012],
    [20, 45.315, 0.003],
  ] as const) {
    expectNear(chiSquared999(degrees), value, tolerance, 'the approximation of Wilson and Hilferty');
  }
});

describe('a sound log', () => {
  const count = draw(200, 200);

  it(`has no doubts: ${count} workshops from a third to three times as hard, 2 to 20 necks each`, () => {
    const doubtful = Array.from({ length: count }, (_, seed) => {
      const factor = Math.exp(((seed % 21) / 10 - 1) * Math.log(3));
      return codes(necks(factor, 2 + (seed % 19), 6100 + seed));
    }).filter((found) => found.length > 0);
    // One in a thousand by its own limit.
    expect(doubtful.length).toBeLessThanOrEqual(count / 100);
  });

  it('has none when two necks agree to the hundredth, and none without entries', () => {
    expect(codes([fretted(-0.25), fretted(-0.25, { neck: 'No. 42' })])).toEqual([]);
    expect(codes([])).toEqual([]);
  });
});

describe('the truth outside the grid', () => {
  it.each([
    [30, -0.05, 'hard'],
    [0.02, -2, 'soft'],
  ] as const)('%s times as hard: the end of the grid is said, and which', (factor, predictedMm, side) => {
    const { doubts } = bitePosterior(necks(factor, 40, 7, predictedMm));
    expect(doubts).toContainEqual({ code: 'end-of-grid', side });
  });

  it('just inside it is not', () => {
    expect(codes(necks(5, 40, 8, -0.2))).toEqual([]);
    expect(codes(necks(0.2, 40, 9, -1))).toEqual([]);
  });
});

describe('identical rows', () => {
  it('are told apart from necks that happen to agree: three or more with all numbers the same', () => {
    const same = Array.from({ length: 10 }, (_, at) => fretted(-0.25, { neck: `No. ${at}` }));
    expect(bitePosterior(same).doubts).toEqual([{ code: 'identical', entries: 10 }]);
    expect(bitePosterior([...same.slice(0, 3), ...necks(1.2, 5, 10)]).doubts).toEqual([
      { code: 'identical', entries: 3 },
    ]);
    expect(codes(same.map((entry, at) => ({ ...entry, measuredFrettedMm: -0.25 - at / 100 })))).toEqual([]);
  });
});

describe('rows that contradict', () => {
  it('by their sign: a hump where a hollow was read cannot come from any bite', () => {
    const { doubts } = bitePosterior([fretted(-0.3), fretted(0.3)]);
    expect(doubts).toEqual([{ code: 'unexplained', entries: 1 }]);
    // The slip of the hand that this is about: 0.14 for a hump.
    expect(codes([fretted(0.14)])).toContain('unexplained');
  });

  it('by their size: no one bite makes both', () => {
    const opposite = [...necks(0.3, 4, 11, -0.4), ...necks(3.5, 4, 12, -0.4)];
    expect(codes(opposite)).toContain('contradicting');
  });

  it('strung: no bite explains what strings alone could not', () => {
    const strung = { ...ENTRY, measuredFrettedMm: null, predictedFrettedMm: null };
    expect(codes([{ ...strung, measuredStrungMm: 1.4 }])).toContain('unexplained');
    expect(codes([{ ...strung, measuredStrungMm: 0.05 }])).toEqual([]);
  });
});

it('a neck measured with its rod snug says nothing: the prediction is that of a slack one', () => {
  expect(bitePosterior([fretted(-0.4, { rod: 'snug' })])).toEqual(bitePosterior([]));
});

it('many necks are resolved: the spread goes on falling with the root of their number', () => {
  const few = bitePosterior(necks(1.4, 100, 13));
  const many = bitePosterior(necks(1.4, 1600, 14));
  expectNear(many.logSpread, few.logSpread / 4, 0.15, 'the standard error of a mean');
  expect(many.p05).toBeLessThan(1.45);
  expect(many.p95).toBeGreaterThan(1.35);
});
