import { describe, expect, it } from 'vitest';
import { ownWoodsWith } from '../../../src/neck/materials/own-woods.ts';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import {
  bodyShares,
  frettedWithoutBodyMm,
  shearStrengthMPa,
  wallShearPercent,
} from '../../../src/mechanics/seating/body.ts';
import { checksOf } from '../../../src/verdict/checks.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';

const predictor = createPredictor();
const of = (change: Partial<Build> = {}) => {
  const build: Build = { ...defaultBuild(), ...change };
  return { build, prediction: predictor.predict(build) };
};

describe('the body of a tang', () => {
  it('bears nothing in a kerf as wide as it is, and more of the force the narrower the kerf', () => {
    const shares = [0.5, 0.48, 0.46, 0.44].map((kerfMm) => {
      const { build, prediction } = of({ kerfMm });
      return bodyShares(build, prediction);
    });
    expect(Math.max(...shares[0])).toBe(0);
    for (const [i, narrower] of shares.entries()) {
      if (i === 0) continue;
      narrower.forEach((share, fret) => expect(share).toBeGreaterThan(shares[i - 1][fret]));
    }
    expect(Math.max(...shares.at(-1)!)).toBeLessThan(1);
  });

  it('bows the neck back by what its share does: without it the bow is near that of walls that give way to it', () => {
    for (const kerfMm of [0.48, 0.45]) {
      const { build, prediction } = of({ kerfMm });
      const soft = of({ kerfMm, wallStiffnessNMm3: 50 });
      const without = frettedWithoutBodyMm(build, prediction);
      expect(without).toBeGreaterThan(prediction.methods.press.fretted.extremeMm);
      const left = frettedWithoutBodyMm(soft.build, soft.prediction);
      // A body that bears leaves the studs a little less bite: the slot stands open by some 0.02 mm of their 0.13.
      expectNear(without, left, 0.1, 'the studs bite less deep beside a body that bears');
    }
    const { build, prediction } = of();
    expectNear(
      frettedWithoutBodyMm(build, prediction),
      prediction.methods.press.fretted.extremeMm,
      ROUNDING,
      'a body with air beside it bears nothing',
    );
  });
});

describe('shear beside a slot', () => {
  it('is force over the plane to the next slot or to the end, against the strength of the wood', () => {
    // Wood Handbook Table 5-3a: sugar maple 16.1 MPa, black walnut 9.4 MPa; the regression of all hardwoods lies within a third.
    expectNear(shearStrengthMPa(705), 16.1, 1 / 3, 'one line for all hardwoods');
    expectNear(shearStrengthMPa(616), 9.4, 1 / 3, 'one line for all hardwoods');
    const { build, prediction } = of({
      kerfMm: 0.48,
      boardBeyondLastFretMm: 5,
      boardWood: 'own',
      ownWoods: ownWoodsWith({ densityKgM3: 1120 }),
    });
    const shear = wallShearPercent(build, prediction);
    const force = prediction.methods.press.wedgeForceN;
    // By hand: 22 frets of 648 mm. The last has 5 mm to the end less half its kerf; the board is 56 mm wide there.
    expectNear(
      shear[21],
      (100 * force[21]) / (56 * (5 - 0.24) * 21.9),
      0.01,
      'the tang ends a little short of the edge',
    );
    // Fret 20 at 648·(1 − 2^(−20/12)) = 443.898, fret 21 at 455.349: 11.451 less a kerf.
    const width = 43 + (13 * 443.898) / (648 * (1 - 2 ** (-22 / 12)));
    expectNear(shear[19], (100 * force[19]) / (width * (11.451 - 0.48) * 21.9), 0.01, 'the tang ends a little short');
  });

  it('falls with a longer end and a denser wood, and rises with a narrower kerf', () => {
    const last = (change: Partial<Build>) => {
      const { build, prediction } = of({ kerfMm: 0.48, ...change });
      return wallShearPercent(build, prediction).at(-1)!;
    };
    expect(last({ boardBeyondLastFretMm: 8 })).toBeLessThan(last({ boardBeyondLastFretMm: 4 }));
    // Beyond the distance of the slots before it the end counts no longer.
    expectNear(
      last({ boardBeyondLastFretMm: 40 }),
      last({ boardBeyondLastFretMm: 20 }),
      0.02,
      'the board’s mesh is longer',
    );
    expect(last({ kerfMm: 0.4 })).toBeGreaterThan(1.5 * last({}));
  });
});

describe('a kerf a little under the body', () => {
  const severities = (change: Partial<Build>) =>
    checksOf(of(change))
      .filter(({ code }) => code === 'body-wedges')
      .map(({ variant, severity }) => `${variant} ${severity}`);

  it('is a note on the preset that is sawn so, which has nothing to heed', () => {
    const { build } = PRESETS.find(({ id }) => id === 'bolt-on-tight')!;
    const checks = checksOf({ build, prediction: predictor.predict(build) });
    expect(checks.filter(({ severity }) => severity !== 'note')).toEqual([]);
    const [note] = checks.filter(({ code }) => code === 'body-wedges');
    expect(note.variant).toBe('bears');
    expect(note.value).toBeLessThan(note.limit!);
  });

  it('is more than a note where the neck cannot be brought to its relief, the end shears off or the hammer is too small', () => {
    expect(severities({ kerfMm: 0.48 })).toEqual(['bears note']);
    expect(severities({ kerfMm: 0.47, rodKind: 'none' })).toEqual(['bow warn']);
    expect(severities({ kerfMm: 0.44, boardBeyondLastFretMm: 3 })).toContain('split warn');
    expect(severities({ kerfMm: 0.3, tangWidthMm: 0.7, boardBeyondLastFretMm: 3 })).toContain('split stop');
    expect(severities({ kerfMm: 0.43, seatingTool: 'hammer' })).toEqual(['force warn']);
    expect(severities({ kerfMm: 0.43, seatingTool: 'press' })).toEqual(['bears note']);
  });
});
