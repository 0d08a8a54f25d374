import { scaleLinear } from 'd3-scale';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { linearScale, ticksBetween } from '../../../src/pages/workshop/chart/linear-scale.ts';

const end = fc.double({ min: -1e4, max: 1e4, noNaN: true });
const ends = fc.tuple(end, end).filter(([a, b]) => Math.abs(b - a) > 1e-3);

it('maps as a library does, ends onto ends, and back (seed 4401)', () => {
  fc.assert(
    fc.property(ends, ends, fc.double({ min: -1, max: 2, noNaN: true }), (domain, range, share) => {
      const scale = linearScale(domain, range);
      expect([scale.domain(), scale.range()]).toEqual([domain, range]);
      expect([scale(domain[0]) + 0, scale(domain[1]) + 0]).toEqual(range.map((end) => end + 0));
      const value = domain[0] + share * (domain[1] - domain[0]);
      const library = scaleLinear(domain, range);
      // Rounding of ends of up to 1e4, magnified where a range of 1e-3 is spread over 2e4 and back.
      const steep = Math.abs((range[1] - range[0]) / (domain[1] - domain[0]));
      expect(Math.abs(scale(value) - library(value))).toBeLessThan(1e-10 * (1 + steep));
      expect(Math.abs(scale.invert(scale(value)) - value)).toBeLessThan(1e-10 * (1 + steep) * (1 + 1 / steep));
    }),
    { seed: 4401, numRuns: 1000 },
  );
});

it('puts everything into the middle where the range is a point', () => {
  expect(linearScale([2, 2], [10, 30])(2)).toBe(20);
});

it('has ticks where a library has them (seed 4402)', () => {
  const relief = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(
      relief,
      fc.double({ min: 0.02, max: 6, noNaN: true }),
      fc.integer({ min: 3, max: 20 }),
      (low, size, count) => {
        const high = low + size;
        expect(ticksBetween(low, high, count)).toEqual(
          scaleLinear()
            .domain([low, high])
            .ticks(count)
            .map((tick) => tick + 0),
        );
      },
    ),
    { seed: 4402, numRuns: 2000 },
  );
});

it.each([
  [-0.25, 0.25, 5, [-0.2, -0.1, 0, 0.1, 0.2]],
  [0, 0.3, 3, [0, 0.1, 0.2, 0.3]],
  [0, 700, 3, [0, 200, 400, 600]],
  [1, 1, 5, []],
])('from %s to %s, about %s', (low, high, count, ticks) => {
  expect(ticksBetween(low, high, count)).toEqual(ticks);
});
