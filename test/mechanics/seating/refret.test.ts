import { describe, expect, it } from 'vitest';
import { defaultBuild, slotAndTang, type Build } from '../../../src/neck/build.ts';
import { checkBuild } from '../../../src/neck/schema.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { chooseTangs, equalStretches, withTangs, type TangChoice } from '../../../src/mechanics/seating/refret.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { expectNear } from '../../expect-near.ts';

const predictor = createPredictor();
const TANGS: readonly TangChoice[] = [
  { tangWidthMm: 0.5, studWidthMm: 0.72 },
  { tangWidthMm: 0.54, studWidthMm: 0.78 },
  { tangWidthMm: 0.6, studWidthMm: 0.86 },
];
const OLD: Build = { ...defaultBuild(), job: 'refret', startingBowMm: 0.3, kerfMm: 0.58 };
const FRETTED = { strung: false, days: 0, rodPercent: 0 };

describe('stretches', () => {
  it('cover every fret once, nearly alike', () => {
    for (const [frets, count] of [
      [22, 3],
      [24, 4],
      [21, 5],
      [19, 19],
      [12, 1],
    ] as const) {
      const stretches = equalStretches(frets, count);
      expect(
        stretches.flatMap(({ fromFret, toFret }) =>
          Array.from({ length: toFret - fromFret + 1 }, (_, i) => fromFret + i),
        ),
      ).toEqual(Array.from({ length: frets }, (_, i) => i + 1));
      const lengths = stretches.map(({ fromFret, toFret }) => toFret - fromFret);
      expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
    }
  });

  it('are refused when there are none, or more than frets', () => {
    expect(() => equalStretches(22, 0)).toThrow('stretches-beyond-range, stretches 0, most 22');
    expect(() => equalStretches(22, 23)).toThrow(RangeError);
    expect(() => equalStretches(22, 2.5)).toThrow(RangeError);
  });
});

describe('tangs in a build', () => {
  it('leave each slot its kerf', () => {
    const odd: Build = {
      ...OLD,
      regions: [{ fromFret: 4, toFret: 4, kerfMm: 0.64, tangWidthMm: 0.5, studWidthMm: 0.76 }],
    };
    const changed = withTangs(odd, equalStretches(22, 2), [TANGS[0], TANGS[2]]);
    expect(checkBuild(changed).ok).toBe(true);
    for (let fret = 1; fret <= 22; fret += 1) {
      const here = slotAndTang(changed, fret);
      expect(here.kerfMm).toBe(fret === 4 ? 0.64 : 0.58);
      expect(here.tangWidthMm).toBe(fret <= 11 ? 0.5 : 0.6);
    }
  });
});

describe('taking out an old bow', () => {
  it('finds the best mixture: none of all the others, predicted exactly, comes closer', () => {
    const stretches = equalStretches(22, 2);
    const [best] = chooseTangs(predictor, OLD, 'press', FRETTED, 0, stretches, TANGS);
    const misses = TANGS.flatMap((first) =>
      TANGS.map((second) => {
        const prediction = predictor.predict(withTangs(OLD, stretches, [first, second]));
        const line = lineAt(prediction, 'press', FRETTED);
        const frets = prediction.fretXMm.slice(0, OLD.bodyJointFret);
        const at = (x: number) => {
          const i = prediction.stationXMm.findIndex((station) => station >= x);
          const [a, b] = [prediction.stationXMm[i - 1], prediction.stationXMm[i]];
          return line.reliefMm[i - 1] + ((line.reliefMm[i] - line.reliefMm[i - 1]) * (x - a)) / (b - a);
        };
        return Math.max(...frets.map((x) => Math.abs(at(x))));
      }),
    );
    expectNear(best.missMm, Math.min(...misses), 1e-6, 'the best of nine, tried one by one');
    expectNear(
      best.reliefMm,
      lineAt(predictor.predict({ ...OLD, regions: best.regions }), 'press', FRETTED).extremeMm,
      1e-9,
      'the plan it gives',
    );
  });

  it('an old forward bow asks for fatter tangs than a flat neck', () => {
    const width = (startingBowMm: number) => {
      const [best] = chooseTangs(
        predictor,
        { ...OLD, startingBowMm },
        'press',
        FRETTED,
        0,
        equalStretches(22, 1),
        TANGS,
      );
      return best.tangs[0].studWidthMm;
    };
    expect(width(0.5)).toBeGreaterThan(width(0.02));
  });

  it('lists the plans from best to worst, and refuses what cannot be tried', () => {
    const plans = chooseTangs(
      predictor,
      OLD,
      'both',
      { strung: true, days: 90, rodPercent: 0 },
      0.1,
      equalStretches(22, 3),
      TANGS,
    );
    expect(plans.length).toBeGreaterThan(1);
    plans.slice(1).forEach((plan, i) => expect(plan.missMm).toBeGreaterThanOrEqual(plans[i].missMm));
    expect(() => chooseTangs(predictor, OLD, 'press', FRETTED, 0, [], TANGS)).toThrow('no-stretch-or-tang');
    expect(() => chooseTangs(predictor, OLD, 'press', FRETTED, 0, equalStretches(22, 11), TANGS)).toThrow(
      'too-many-combinations, tangs 3, stretches 11, combinations 177147, most 20000',
    );
  });
});
