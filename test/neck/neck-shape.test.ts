import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import {
  backChordMm,
  backDepthMm,
  boardEndMm,
  boardRadiusMm,
  boardWidthMm,
  bodyJointMm,
  fretPositionMm,
  fretPositionsMm,
  heelDepthMm,
  lastFretMm,
  meanSagittaMm,
  sagittaMm,
  tangLengthMm,
  totalThicknessMm,
} from '../../src/neck/neck-shape.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';

const BUILD = { ...defaultBuild(), scaleLengthMm: 650, fretCount: 24 };

describe('frets', () => {
  it('each is 2^(1/12) nearer to the bridge than the one before; the rule of 17.817', () => {
    const frets = fretPositionsMm(650, 24);
    expect(frets).toHaveLength(24);
    expect(fretPositionMm(650, 0)).toBe(0);
    frets
      .slice(1)
      .forEach((x, i) => expectNear((650 - frets[i]) / (650 - x), 2 ** (1 / 12), ROUNDING, 'equal temperament'));
    // 17.8172: the number that fret rules print (from memory).
    expectNear(650 / frets[0], 17.8172, 3e-6, 'printed with six digits');
    expectNear(lastFretMm(BUILD), 487.5, ROUNDING, 'two octaves: three quarters of the scale');
    expectNear(bodyJointMm({ ...BUILD, bodyJointFret: 12 }), 325, ROUNDING, 'an octave: half of it');
    expectNear(boardEndMm(BUILD), 487.5 + BUILD.boardBeyondLastFretMm, ROUNDING, 'a sum');
  });
});

describe('the board', () => {
  it('is as wide and as thick as stated where it is stated', () => {
    expectNear(boardWidthMm(BUILD, 0), BUILD.widthNutMm, ROUNDING, 'at the nut');
    expectNear(boardWidthMm(BUILD, lastFretMm(BUILD)), BUILD.widthLastFretMm, ROUNDING, 'at the last fret');
    expectNear(totalThicknessMm(BUILD, fretPositionMm(650, 1)), BUILD.thicknessFret1Mm, ROUNDING, 'at fret 1');
    expectNear(totalThicknessMm(BUILD, 325), BUILD.thicknessFret12Mm, ROUNDING, 'at fret 12');
  });

  it('flat, of one radius, or a cone', () => {
    expect(boardRadiusMm({ ...BUILD, boardShape: 'flat' }, 200)).toBe(Infinity);
    expect(boardRadiusMm({ ...BUILD, boardShape: 'cylinder', radiusNutMm: 305 }, 200)).toBe(305);
    const cone = { ...BUILD, boardShape: 'cone' as const, radiusNutMm: 254, radiusLastFretMm: 406 };
    expectNear(boardRadiusMm(cone, 0), 254, ROUNDING, 'at the nut');
    expectNear(boardRadiusMm(cone, lastFretMm(cone) / 2), 330, ROUNDING, 'halfway');
  });
});

describe('the arc (seed 1605)', () => {
  const radius = fc.double({ min: 100, max: 1500, noNaN: true });

  it('drops by R − √(R² − z²); by nothing on a flat board', () => {
    expect(sagittaMm(Infinity, 25)).toBe(0);
    expect(meanSagittaMm(Infinity, 50)).toBe(0);
    // 254 mm radius, 26 mm from the middle: 254 − √(64 516 − 676) = 1.334213
    expectNear(sagittaMm(254, 26), 1.334213, 2e-6, 'worked by hand to seven digits');
    fc.assert(
      fc.property(radius, fc.double({ min: 1, max: 40, noNaN: true }), (r, z) => {
        expectNear(
          sagittaMm(r, z),
          r - Math.sqrt(r * r - z * z),
          1e-6,
          'the plain formula loses digits to cancellation',
        );
      }),
      { seed: 1605, numRuns: 100 },
    );
  });

  it('its mean drop is the mean of its drops', () => {
    fc.assert(
      fc.property(radius, fc.double({ min: 20, max: 80, noNaN: true }), (r, width) => {
        const steps = 2000;
        let sum = 0;
        for (let k = 0; k < steps; k += 1) sum += sagittaMm(r, (width / 2) * ((k + 0.5) / steps));
        expectNear(
          meanSagittaMm(r, width),
          sum / steps,
          1e-6,
          'midpoint rule; the closed form loses digits to cancellation on flat arcs',
        );
      }),
      { seed: 1605, numRuns: 100 },
    );
  });
});

describe('the back (seed 1606)', () => {
  const back = fc.record({
    depth: fc.double({ min: 8, max: 28, noNaN: true }),
    width: fc.double({ min: 34, max: 80, noNaN: true }),
    shoulder: fc.double({ min: 0.5, max: 6, noNaN: true }),
    exponent: fc.double({ min: 1.4, max: 4, noNaN: true }),
  });

  it('an exponent of 2 is half an ellipse', () => {
    const [depth, width, shoulder] = [15, 50, 2.5];
    for (const z of [0, 5, 12, 20]) {
      expectNear(
        backDepthMm(z, depth, width, shoulder, 2),
        shoulder + (depth - shoulder) * Math.sqrt(1 - (z / 25) ** 2),
        ROUNDING,
        'an ellipse',
      );
    }
    expect(backDepthMm(25, depth, width, shoulder, 2)).toBe(shoulder);
    expect(backDepthMm(30, depth, width, shoulder, 2)).toBe(shoulder);
  });

  it('depth at a place across and width at a depth are inverse to each other', () => {
    fc.assert(
      fc.property(
        back,
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        ({ depth, width, shoulder, exponent }, share) => {
          const z = (share * width) / 2;
          const below = backDepthMm(z, depth, width, shoulder, exponent);
          expectNothing(
            backChordMm(below, depth, width, shoulder, exponent) / 2 - z,
            width,
            1e-6,
            'two roots; the middle of the back is flat',
          );
          expect(backChordMm(shoulder / 2, depth, width, shoulder, exponent)).toBe(width);
          expect(backChordMm(depth + 0.1, depth, width, shoulder, exponent)).toBe(0);
          // Towards the edge the back is never deeper.
          expect(backDepthMm(z * 1.01, depth, width, shoulder, exponent)).toBeLessThanOrEqual(below);
        },
      ),
      { seed: 1606, numRuns: 200 },
    );
  });

  it('a greater exponent is a fuller back', () => {
    fc.assert(
      fc.property(
        back,
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        ({ depth, width, shoulder, exponent }, share) => {
          const z = (share * width) / 2;
          expect(backDepthMm(z, depth, width, shoulder, exponent + 0.3)).toBeGreaterThan(
            backDepthMm(z, depth, width, shoulder, exponent),
          );
        },
      ),
      { seed: 1606, numRuns: 100 },
    );
  });
});

describe('the heel', () => {
  const build = { ...BUILD, bodyJointFret: 16, heelThicknessMm: 20, heelLengthMm: 30 };
  const joint = bodyJointMm(build);

  it('adds its thickness over its length before the joint', () => {
    expect(heelDepthMm(build, joint - 31)).toBe(0);
    expectNear(heelDepthMm(build, joint - 15), 10, ROUNDING, 'halfway');
    expectNear(heelDepthMm(build, joint), 20, ROUNDING, 'at the joint');
    expect(heelDepthMm(build, joint + 50)).toBe(20);
  });
});

describe('the length of tang in its slot', () => {
  const line = (thicknessMm: number) => ({ thicknessMm, colour: '#ffffff' });
  const binding = [line(0.5), line(0.5), line(1.5), line(0.5), line(0.5)];

  it('is the board’s width without binding, and stops short of the lines left whole', () => {
    expectNear(tangLengthMm({ ...BUILD, bindingLineCount: 0 }, 0), BUILD.widthNutMm, ROUNDING, 'unbound');
    const bound = { ...BUILD, binding, bindingLineCount: 3, linesSawnThrough: 2, nipClearanceMm: 0.5 };
    // 1.5 mm of whole line and 0.5 mm of air on each side
    expectNear(tangLengthMm(bound, 0), BUILD.widthNutMm - 4, ROUNDING, 'nipped');
    expectNear(tangLengthMm({ ...bound, linesSawnThrough: 3 }, 0), BUILD.widthNutMm, ROUNDING, 'sawn through');
  });
});
