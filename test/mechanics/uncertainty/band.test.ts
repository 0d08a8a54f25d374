import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bandOf } from '../../../src/mechanics/uncertainty/band.ts';

it('the points are those of the sorted values (seed 5101)', () => {
  const value = fc.oneof(fc.integer({ min: -50, max: 50 }), fc.constantFrom(0, 1, Infinity, -Infinity));
  fc.assert(
    fc.property(fc.array(value, { minLength: 1, maxLength: 300 }), (values) => {
      const sorted = values.toSorted((a, b) => a - b);
      const at = (part: number) => sorted[Math.round(part * (values.length - 1))] + 0;
      const band = bandOf(Float64Array.from(values));
      expect([band.p05 + 0, band.p50 + 0, band.p95 + 0]).toEqual([at(0.05), at(0.5), at(0.95)]);
      expect(band.p05).toBeLessThanOrEqual(band.p50);
      expect(band.p50).toBeLessThanOrEqual(band.p95);
    }),
    { seed: 5101 },
  );
});
