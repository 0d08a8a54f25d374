import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GLUES, glueById } from '../../src/neck/glues.ts';
import { glueNeeded } from '../../src/fretwork/glue.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, FLAT_CUT_TIGHT, UNBOUND_FLAT } from './boards.ts';
import { expectNear } from './near.ts';

const QUADRATURE = 'Simpson with 200 intervals';
const GLUED = {
  method: 'both',
  kerfMm: 0.6,
  tangWidthMm: 0.5,
  studWidthMm: 0.76,
  studAreaMm2: 0.48,
  studPitchMm: 2.5,
  tangDepthMm: 2,
  chamferMm: 0,
  glueReachPercent: 100,
} as const;

describe('worked by hand', () => {
  it('unbound flat board, fret 12', () => {
    // slot 0.6·3·51.66667 = 93; tang 0.5·2·51.66667 = 51.66667
    // studs stand out 0.13 but the gap is 0.05 a side: 2·(51.66667/2.5)·0.48·0.05 = 0.992
    // volume 93 − 51.66667 − 0.992 = 40.34133 mm³; bead √(4·40.34133/(π·51.66667)) = √0.994157 = 0.997074
    const slot = glueNeeded({ ...UNBOUND_FLAT, ...GLUED }).slots[11];
    expectNear(slot.volumeMm3, 40.34133, 1e-6, 'worked by hand to five decimals');
    expectNear(slot.beadMm, 0.99707, 1e-5, 'worked by hand to five decimals');
    expect(slot.reachMm).toBe(3);
  });

  it('with a chamfer of 0.3 mm and glue to half the depth', () => {
    // fill 1.5 deep: slot 0.6·1.5·51.66667 = 46.5; tang to 1.5: 0.5·1.5·51.66667 = 38.75; chamfer 0.09·51.66667 = 4.65
    // studs in proportion 1.5/2 of 0.992 = 0.744; volume 46.5 − 38.75 + 4.65 − 0.744 = 11.656
    const build = { ...UNBOUND_FLAT, ...GLUED, chamferMm: 0.3, glueReachPercent: 50 };
    expectNear(glueNeeded(build).slots[11].volumeMm3, 11.656, 1e-6, 'worked by hand to three decimals');
  });

  it('bound conical board, fret 12: the nipped ends are filled too', () => {
    // slot 2·24.86527 = 49.73054 long: 0.6·3·49.73054 = 89.51497; tang 2·24.36527 = 48.73054: 48.73054
    // studs 2·(48.73054/2.5)·0.48·0.05 = 0.93563; volume 39.84880
    const slot = glueNeeded({ ...BOUND_CONICAL, ...GLUED }).slots[11];
    expectNear(slot.volumeMm3, 39.8488, 1e-6, 'worked by hand to four decimals');
  });

  it('straight cut on a tight radius, fret 12: the mean sagitta of the slot is missing', () => {
    // Area under the arc over the half width 28.91962 of R = 184: mean drop = R − (h·√(R² − h²) + R²·asin(h/R))/(2h)
    //   = 184 − (28.91962·181.71311 + 33856·0.15782627)/57.83925 = 184 − (5255.07390 + 5343.36620)/57.83925
    //   = 184 − 183.23965 = 0.76035 (a third of the sagitta 2.28689 is 0.76230)
    // slot 0.6·(4.7 − 0.76035)·57.83925 = 136.7196; tang 57.83925; studs 2·(57.83925/2.5)·0.48·0.05 = 1.11051
    // volume 77.770
    const slot = glueNeeded({ ...FLAT_CUT_TIGHT, ...GLUED }).slots[11];
    expectNear(slot.volumeMm3, 77.77, 5e-5, 'worked by hand to five digits');
  });
});

it('a press fit takes none', () => {
  const glue = glueNeeded({ ...UNBOUND_FLAT, ...GLUED, method: 'press' });
  expect([glue.totalMm3, glue.totalMl, glue.dropsPerSlot]).toEqual([0, 0, 0]);
  expect(glue.slots.every((slot) => slot.beadMm === 0 && slot.reachMm === 0)).toBe(true);
});

it('a glue fit is sawn to the studs, so it takes more', () => {
  const both = glueNeeded({ ...UNBOUND_FLAT, ...GLUED });
  const glue = glueNeeded({ ...UNBOUND_FLAT, ...GLUED, method: 'glue' });
  // fret 12: slot 0.76·3·51.66667 = 117.8 − 51.66667 − studs 2·20.66667·0.48·0.13 = 2.5792 → 63.55413
  expectNear(glue.slots[11].volumeMm3, 63.55413, 1e-6, 'worked by hand to five decimals');
  expect(glue.totalMm3).toBeGreaterThan(both.totalMm3);
  expectNear(glue.totalMl * 1000, glue.totalMm3, 1e-12, 'same number');
});

describe('properties (seed 6501)', () => {
  it('the volume is never negative, grows with the reach, and is no more than slot and chamfer', () => {
    fc.assert(
      fc.property(validBuild, (drawn) => {
        const build = { ...drawn, method: drawn.method === 'press' ? ('both' as const) : drawn.method };
        const glue = glueNeeded(build);
        const full = glueNeeded({ ...build, glueReachPercent: 100 });
        for (const [index, slot] of glue.slots.entries()) {
          expect(slot.volumeMm3).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(slot.beadMm)).toBe(true);
          expect(slot.volumeMm3).toBeLessThanOrEqual(full.slots[index].volumeMm3 + 1e-9);
        }
        const kerf = build.method === 'glue' ? Math.max(build.kerfMm, build.studWidthMm) : build.kerfMm;
        const most = build.fretCount * 80 * (kerf * build.slotDepthMm + build.chamferMm ** 2);
        expect(full.totalMm3).toBeLessThanOrEqual(most);
        expect(glueNeeded({ ...build, glueReachPercent: 0 }).totalMm3).toBe(0);
      }),
      { seed: 6501, numRuns: 80 },
    );
  });

  it(`matches the closed form of a straight cut around a bare tang (${QUADRATURE})`, () => {
    // Studs as wide as the body take nothing, and a tang of 0.8 mm is wetted everywhere.
    const build = { ...FLAT_CUT_TIGHT, ...GLUED, studWidthMm: 0.5, tangDepthMm: 0.8 };
    const R = 184;
    for (const [index, slot] of glueNeeded(build).slots.entries()) {
      const half = (52 + (8 * (650 * (1 - 2 ** (-(index + 1) / 12)))) / (650 * (1 - 2 ** (-20 / 12)))) / 2;
      const underArc = half * Math.sqrt(R * R - half * half) + R * R * Math.asin(half / R);
      const area = 2 * half * 4.7 - (2 * half * R - underArc);
      expectNear(slot.volumeMm3, 0.6 * area - 0.5 * 0.8 * 2 * half, 1e-9, QUADRATURE);
    }
  });
});

it('a body that fills the kerf leaves no room, and no bead that is not a number', () => {
  const build = { ...UNBOUND_FLAT, ...GLUED, kerfMm: 0.3, tangWidthMm: 0.3, studWidthMm: 0.3, tangDepthMm: 3 };
  for (const reach of [100, 37, 1.5e-211]) {
    const slot = glueNeeded({ ...build, glueReachPercent: reach }).slots[3];
    expect([slot.volumeMm3 < 1e-9, Number.isFinite(slot.beadMm)]).toEqual([true, true]);
  }
});

it('every glue has its times, its way out and its caution', () => {
  for (const glue of GLUES) {
    expect(glue.openMinutes[0]).toBeLessThan(glue.openMinutes[1]);
    expect(glue.fullHours * 60).toBeGreaterThan(glue.clampMinutes);
    expect(glueById(glue.id)).toBe(glue);
  }
  expect(() => glueById('paste')).toThrow(/glue "paste" is not in the table/);
});
