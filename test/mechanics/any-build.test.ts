/** Random valid builds over the whole parameter table: finite numbers, right signs, and laws that hold for each of them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { extremeRelief } from '../../src/mechanics/relief.ts';
import { lineAt, straightedgeOf } from '../../src/mechanics/states.ts';
import { anyBuild } from '../arbitrary/any-build.ts';
import { draw } from '../draw.ts';

const predictor = createPredictor();

/** Everything in a prediction that is a number. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value instanceof Float64Array) return [...value];
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersOf);
  return [];
}

/** A new neck that nothing was filed off: what remains is frets, strings, rod. */
const plainBuild = anyBuild.map((build): Build => ({ ...build, job: 'new', levelledIn: 'none', climateOn: false }));

/** The extreme of one line of the basis under the straightedge. */
function extremeOf(build: Build, prediction: Prediction, line: Float64Array): number {
  const { fromXMm, toXMm } = straightedgeOf(build);
  return extremeRelief(prediction.stationXMm, line, fromXMm, toXMm).extremeMm;
}

/** Sum of what all frets do. */
function allFrets(prediction: Prediction, method: 'press' | 'both'): Float64Array {
  return lineAt(prediction, method, { strung: false, days: 0, rodPercent: 0 }).reliefMm;
}

/** Local dents beside a wedged slot under the straightedge's end, mm for each mm of bow. */
const DENT = 0.12;

describe('random valid builds (seed 1501)', () => {
  it('every number is finite, and lengths are the neck’s', () => {
    fc.assert(
      fc.property(anyBuild, (build) => {
        const prediction = predictor.predict(build);
        const numbers = numbersOf(prediction);
        expect(numbers.length).toBeGreaterThan(1000);
        expect(numbers.every((value) => Number.isFinite(value))).toBe(true);
        for (const method of METHODS) {
          expect(prediction.methods[method].wedgeForceN).toHaveLength(build.fretCount);
          expect(prediction.methods[method].strung.reliefMm).toHaveLength(prediction.stationXMm.length);
        }
      }),
      { seed: 1501, numRuns: draw(25, 8) },
    );
  });

  it('frets push and never pull, strings pull forward, a rod bends backwards', () => {
    fc.assert(
      fc.property(plainBuild, (build) => {
        const prediction = predictor.predict(build);
        for (const method of METHODS) {
          const { basis, wedgeForceN, wedgeForceStrungN, biteMm, seatingForceN, pullOutForceN } =
            prediction.methods[method];
          for (const values of [wedgeForceN, wedgeForceStrungN, biteMm, seatingForceN, pullOutForceN]) {
            for (const value of values) expect(value).toBeGreaterThanOrEqual(0);
          }
          expect(extremeOf(build, prediction, basis.stringsMm)).toBeGreaterThan(0);
        }
        const fretted = extremeOf(build, prediction, allFrets(prediction, 'press'));
        const pressed = prediction.methods.press.wedgeForceN.some((force) => force > 1);
        expect(pressed ? fretted < 0 : fretted <= 1e-6).toBe(true);
        expect(prediction.methods.glue.fretted.extremeMm).toBe(0);
        const twoWay = build.rodKind === 'two-way';
        expect(!twoWay || extremeOf(build, prediction, prediction.methods.glue.basis.rodMm) < 0).toBe(true);
      }),
      { seed: 1501, numRuns: draw(25, 8) },
    );
  });

  it('more frets, never less back-bow', () => {
    fc.assert(
      fc.property(plainBuild, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (build, share) => {
        const prediction = predictor.predict(build);
        const some = Math.max(1, Math.round(share * build.fretCount));
        const bow = (count: number) =>
          lineAt(prediction, 'press', {
            strung: false,
            days: 0,
            rodPercent: 0,
            fretsIn: Array.from({ length: count }, (_, i) => i + 1),
          }).extremeMm;
        const all = bow(build.fretCount);
        // A fret at the joint, under the end of the straightedge, dents the line by a little.
        expect(all).toBeLessThanOrEqual(Math.min(0, bow(some)) + DENT * Math.abs(all) + 1e-9);
      }),
      { seed: 1501, numRuns: draw(15, 6) },
    );
  });

  it('a thicker neck never bows more, under frets or strings', () => {
    fc.assert(
      fc.property(plainBuild, fc.double({ min: 0.3, max: 3, noNaN: true }), (build, more) => {
        const thicker = {
          ...build,
          thicknessFret1Mm: build.thicknessFret1Mm + more,
          thicknessFret12Mm: build.thicknessFret12Mm + more,
        };
        fc.pre(checkBuild(thicker).ok);
        const [thin, thick] = [predictor.predict(build), predictor.predict(thicker)];
        for (const method of METHODS) {
          expect(extremeOf(thicker, thick, thick.methods[method].basis.stringsMm)).toBeLessThan(
            extremeOf(build, thin, thin.methods[method].basis.stringsMm),
          );
        }
        expect(thick.methods.press.fretted.extremeMm).toBeGreaterThanOrEqual(
          thin.methods.press.fretted.extremeMm - 1e-9,
        );
      }),
      { seed: 1501, numRuns: draw(12, 5) },
    );
  });

  it('heavier strings, never less relief', () => {
    fc.assert(
      fc.property(plainBuild, fc.double({ min: 1.02, max: 1.3, noNaN: true }), (build, factor) => {
        const heavier = {
          ...build,
          strings: build.strings.map((string) => ({
            ...string,
            diameterMm: string.diameterMm * factor,
            coreMm: string.coreMm * factor,
          })),
        };
        fc.pre(checkBuild(heavier).ok);
        const [light, heavy] = [predictor.predict(build), predictor.predict(heavier)];
        for (const method of METHODS) {
          const at = (prediction: Prediction) =>
            lineAt(prediction, method, { strung: true, days: 0, rodPercent: 0 }).reliefMm;
          const { fromXMm, toXMm } = straightedgeOf(build);
          // At every station under the straightedge, not only at the extreme.
          const before = at(light);
          at(heavy).forEach((value, i) => {
            const x = light.stationXMm[i];
            const inside = x > fromXMm + 15 && x < toXMm - 15;
            expect(!inside || value >= before[i] - 2e-4).toBe(true);
          });
        }
      }),
      { seed: 1501, numRuns: draw(12, 5) },
    );
  });

  it('a wider kerf never takes more force or bows more', () => {
    fc.assert(
      fc.property(plainBuild, fc.double({ min: 0.005, max: 0.2, noNaN: true }), (build, wider) => {
        const loose = { ...build, kerfMm: build.kerfMm + wider, regions: [] };
        const tight = { ...build, regions: [] };
        fc.pre(checkBuild(loose).ok);
        const [a, b] = [predictor.predict(tight).methods.press, predictor.predict(loose).methods.press];
        const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
        expect(total(b.wedgeForceN)).toBeLessThanOrEqual(total(a.wedgeForceN) + 1e-6);
        expect(b.fretted.extremeMm).toBeGreaterThanOrEqual(a.fretted.extremeMm - 1e-6);
      }),
      { seed: 1501, numRuns: draw(12, 5) },
    );
  });
});
