import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { METALS, metalById, type Metal } from '../../src/neck/metals.ts';
import { bendFor, fretBends, bendTo, endMisfitMm, springbackRatio, WRONG_RADII } from '../../src/fretwork/bending.ts';
import { FLAT_CUT_TIGHT, UNBOUND_FLAT } from './boards.ts';
import { WRONG_RADIUS_TEXTS } from '../../src/speech/en/fretwork/wire.ts';
import { expectNear, ROUNDING } from './near.ts';

/** Radius that wire has after being bent and let go: the springback formula forwards, as a check on its inverse. */
function radiusAfterMm(
  bentRadiusMm: number,
  startRadiusMm: number,
  metal: Pick<Metal, 'modulusGPa' | 'yieldMPa'>,
  heightMm: number,
): number {
  const start = 1 / startRadiusMm;
  const change = 1 / bentRadiusMm - start;
  if (change === 0) return startRadiusMm;
  const limit = metal.yieldMPa / (metal.modulusGPa * 1000 * heightMm);
  const after = start + change * springbackRatio(limit / Math.abs(change));
  return after === 0 ? Infinity : 1 / after;
}

describe('springback (reference row "springback")', () => {
  // Elastic–perfectly-plastic rectangle; same form as the sheet-bending formula of Kalpakjian & Schmid (from memory).
  it.each([
    [0.05, 0.8505],
    [0.1, 0.704],
    [0.2, 0.432],
    [0.3, 0.208],
  ])('ξ = %d keeps %d of the bend', (xi, kept) => {
    expectNear(springbackRatio(xi), kept, 1e-12, 'a cubic with exact decimals');
  });

  it('keeps nothing from ξ = 1/2 on, all at ξ = 0', () => {
    expect(springbackRatio(0.5)).toBe(0);
    expect(springbackRatio(3)).toBe(0);
    expect(springbackRatio(0)).toBe(1);
  });

  it('agrees with the bending moment integrated over the section', () => {
    // Unit height, curvature 1, strain = y; stress = min(|y|, ξ) in units of E·H·κ: κ_after = 1 − 12·∫ stress·y dy
    for (const xi of [0.07, 0.23, 0.41, 0.49]) {
      const n = 20_000;
      let moment = 0;
      for (let i = 0; i < n; i += 1) {
        const y = (i + 0.5) / (2 * n);
        moment += (2 * Math.min(y, xi) * y) / (2 * n);
      }
      expectNear(springbackRatio(xi), 1 - 12 * moment, 1e-4, 'midpoint rule with 20 000 steps, small remainder');
    }
  });

  it('refuses what is no ratio', () => {
    expect(() => springbackRatio(-0.1)).toThrow(/ξ is -0.1; it must be 0 or more/);
    expect(() => springbackRatio(Number.NaN)).toThrow(RangeError);
  });
});

describe('the radius to bend to, worked by hand', () => {
  const metal = metalById('nickel-silver-18'); // E 124 GPa, Y 510 MPa
  const heightMm = 3.2; // crown 1.2 + tang 2.0
  // Y/(E·H) = 510/(124 000·3.2) = 1.285282e-3 per mm

  it('straight wire for a 305 mm board at 90 %', () => {
    // wanted 274.5: q = (1/274.5)/1.285282e-3 = 2.834387; 4ξ³ − 5.834387·ξ + 1 = 0
    //   ξ = 0.175: 0.0214375 − 1.0210177 + 1 = 0.0004198; slope 12ξ² − 5.834387 = −5.4669; ξ = 0.1750768
    //   R = ξ/1.285282e-3 = 136.2167; stays 1 − 3·0.1750768 + 4·0.1750768³ = 0.496235
    const bend = bendTo(274.5, Infinity, metal, heightMm);
    expectNear(bend.bendToRadiusMm, 136.2167, 2e-6, 'worked by hand to four decimals');
    expectNear(bend.stays, 0.496235, 2e-6, 'worked by hand to six decimals');
    expect(bend.direction).toBe('tighter');
  });

  it('a coil of 150 mm is bent open to just past straight', () => {
    // Δκ = 1/274.5 − 1/150 = −3.0236794e-3; q = 2.352541; ξ = 0.192127; Δκ_bent = 1.285282e-3/0.192127 = 6.689753e-3
    // κ = 6.666667e-3 − 6.689753e-3 = −2.3086e-5 per mm: all but straight, 43 m the other way
    const bend = bendTo(274.5, 150, metal, heightMm);
    expect(bend.direction).toBe('straighter');
    expectNear(1 / bend.bendToRadiusMm, -2.3086e-5, 1e-4, 'small difference, worked by hand to five digits');
    expectNear(bend.stays, 0.451987, 2e-6, 'worked by hand to six decimals');
  });

  it('follows the build: share of the board radius, alloy, stick or coil, flat board', () => {
    const build = { ...FLAT_CUT_TIGHT, wireRadiusPercent: 90 };
    expectNear(bendFor(build, 305).bendToRadiusMm, 136.2167, 2e-6, 'as above');
    expectNear(
      1 / bendFor({ ...build, wireForm: 'coil', coilRadiusMm: 150 }, 305).bendToRadiusMm,
      -2.3086e-5,
      1e-4,
      'as above',
    );
    expect(bendFor(UNBOUND_FLAT, Infinity)).toMatchObject({ direction: 'none', bendToRadiusMm: Infinity, stays: 1 });
    expect(bendFor({ ...UNBOUND_FLAT, wireForm: 'coil' }, Infinity).direction).toBe('straighter');
    expect(bendFor(build, 305, 'brass').bendToRadiusMm).not.toBe(bendFor(build, 305).bendToRadiusMm);
  });

  it('refuses radii that are none', () => {
    expect(() => bendTo(0, Infinity, metal, 3)).toThrow(/wanted radius is 0 mm; it must be more than 0 mm/);
    expect(() => bendTo(200, -5, metal, 3)).toThrow(/radius as it comes is -5 mm/);
    expect(() => bendTo(200, 300, metal, 0)).toThrow(/height of the wire is 0 mm/);
  });
});

describe('properties (seed 6401)', () => {
  const radius = fc.double({ min: 60, max: 3000, noNaN: true });
  const metals = fc.constantFrom(...METALS);
  const heights = fc.double({ min: 1.4, max: 4.8, noNaN: true });

  it('bent to that radius and let go, every alloy springs back to the wanted one', () => {
    fc.assert(
      fc.property(radius, fc.oneof(fc.constant(Infinity), radius), metals, heights, (wanted, start, metal, height) => {
        const bend = bendTo(wanted, start, metal, height);
        const after = radiusAfterMm(bend.bendToRadiusMm, start, metal, height);
        expectNear(after, wanted, 1e-6, 'the root is ill-conditioned near ξ = 1/2, where it is double');
        // Over-bent in its own direction: the bend passes the wanted curvature on the side away from the start.
        expect((1 / bend.bendToRadiusMm - 1 / wanted) * (1 / wanted - 1 / start)).toBeGreaterThanOrEqual(0);
        expect(bend.direction).toBe(wanted === start ? 'none' : wanted < start ? 'tighter' : 'straighter');
        expect(bend.stays).toBeGreaterThanOrEqual(0);
        expect(bend.stays).toBeLessThanOrEqual(1);
      }),
      { seed: 6401, numRuns: 500 },
    );
  });

  it('stronger or more slender wire must be bent further', () => {
    fc.assert(
      fc.property(radius, metals, heights, (wanted, metal, height) => {
        const here = bendTo(wanted, Infinity, metal, height).bendToRadiusMm;
        const stronger = { ...metal, yieldMPa: metal.yieldMPa * 1.2 };
        expect(bendTo(wanted, Infinity, stronger, height).bendToRadiusMm).toBeLessThan(here);
        expect(bendTo(wanted, Infinity, metal, height * 0.9).bendToRadiusMm).toBeLessThan(here);
      }),
      { seed: 6401, numRuns: 200 },
    );
  });
});

describe('misfit', () => {
  it('is the difference of two sagittas', () => {
    // half length 27: 305 − √(305² − 27²) = 1.19743; 274.5: 1.33110; the middle stands off by 0.13366
    expectNear(endMisfitMm(305, 274.5, 27), -0.13366, 3e-5, 'small difference, worked by hand to five decimals');
    expect(endMisfitMm(305, 305, 27)).toBe(0);
    expectNear(endMisfitMm(305, Infinity, 27), 1.19743, 5e-6, 'worked by hand to five decimals');
  });

  it('of each fret: the ends touch first when the wire is tighter than the board', () => {
    // Fret 12: board 184, wire 165.6, half length 28.91962 − 0.1 = 28.81962:
    // 165.6 − √(165.6² − 28.81962²) = 2.52704; 184 − √(184² − 28.81962²) = 2.27100; 0.25604
    const [bend] = fretBends({ ...FLAT_CUT_TIGHT, wireRadiusPercent: 90 }).slice(11);
    expectNear(bend.middleStandsOffMm, 0.25604, 1e-4, 'small difference, worked by hand to five decimals');
    expect(fretBends(UNBOUND_FLAT).every((flat) => flat.middleStandsOffMm === 0)).toBe(true);
    expect(fretBends({ ...FLAT_CUT_TIGHT, wireRadiusPercent: 115 })[0].middleStandsOffMm).toBeLessThan(0);
  });

  it('has a remedy for every wrong radius', () => {
    expect(WRONG_RADII.toSorted()).toEqual(['flatter', 'straight', 'tighter', 'twisted']);
    for (const wrong of WRONG_RADII) expect(WRONG_RADIUS_TEXTS[wrong].remedy.length).toBeGreaterThan(20);
  });

  it('a wire that bends too little to yield stays as it came', () => {
    const metal = metalById('stainless');
    const limit = metal.yieldMPa / (metal.modulusGPa * 1000 * 3);
    expect(radiusAfterMm(1 / (1.9 * limit), Infinity, metal, 3)).toBe(Infinity);
    expectNear(radiusAfterMm(1 / (1 / 400 + 1.9 * limit), 400, metal, 3), 400, ROUNDING, 'elastic');
  });
});
