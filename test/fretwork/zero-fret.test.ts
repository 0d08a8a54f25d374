/** A zero fret: one more fret to saw, cut and bend, at the end of the board, on whose crown the strings lie. */
import { describe, expect, it } from 'vitest';
import { fretEnds, zeroEnds } from '../../src/fretwork/ends.ts';
import { checkFretwork } from '../../src/fretwork/checks/checks.ts';
import { fretworkPlan } from '../../src/fretwork/plan/plan.ts';
import { seatingTable, slotTable, wireTable } from '../../src/fretwork/plan/tables.ts';
import { templateShapes } from '../../src/fretwork/plan/template-shapes.ts';
import { fretsMesh } from '../../src/geometry/frets.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { stringHeightAtNutMm } from '../../src/neck/neck-shape.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { expectNear, ROUNDING } from './near.ts';

const plain = defaultBuild();
const zero: Build = { ...plain, zeroFret: true, zeroFretHigherMm: 0.1 };

describe('a zero fret', () => {
  it('is sawn, cut and bent like the others, at the end of the board', () => {
    const [plan, before] = [fretworkPlan(zero), fretworkPlan(plain)];
    expect(zeroEnds(zero).map(({ fret, xMm }) => [fret, xMm])).toEqual([[0, 0]]);
    expect(zeroEnds(plain)).toEqual([]);
    expect(fretEnds(zero)).toEqual(fretEnds(plain));
    for (const table of [slotTable, wireTable]) {
      expect(table(plan).rows.map(([fret]) => fret)).toEqual(Array.from({ length: 23 }, (_, fret) => fret));
      expect(table(plan).rows.slice(1)).toEqual(table(before).rows);
    }
    // Across the nut, and the oversize on either side, on an arc of 305 mm.
    expectNear(plan.wire[0].cutMm, 2 * 305 * Math.asin(21.5 / 305) + 4, ROUNDING, 'arc over chord');
    expect(seatingTable(plan).rows).toEqual(seatingTable(before).rows);
    expect(
      templateShapes(zero, { nut: 'nut', position: String }).lines.filter(({ kind }) => kind === 'slot'),
    ).toHaveLength(23);
  });

  it('is drawn where it is', () => {
    const [mesh, before] = [fretsMesh(zero, 'seated'), fretsMesh(plain, 'seated')];
    expect(mesh.positions.length).toBeGreaterThan(before.positions.length);
    expect(new Set(mesh.fretOf).has(0)).toBe(true);
  });

  it('carries the strings on its crown, a little above the others', () => {
    expectNear(stringHeightAtNutMm(zero), 1.2 + 0.1, ROUNDING, 'crown and what it stands higher');
    expect(stringHeightAtNutMm(plain)).toBe(1.7);
    const predictor = createPredictor();
    const asNut: Build = { ...plain, stringHeightNutMm: 1.3 };
    const [one, other] = [zero, asNut].map((build) => predictor.predict(build).methods.press);
    expect(one.basis.stringsMm).toEqual(other.basis.stringsMm);
    expect(one.basis.wedgeMm).toEqual(other.basis.wedgeMm);
    const line = { stationXMm: predictor.predict(plain).stationXMm, reliefMm: one.strung.reliefMm };
    expect(setUp(zero, line)).toEqual(setUp(asNut, line));
  });

  it('takes away what is said of a nut that is too low', () => {
    const codes = (build: Build) => checkFretwork(build).map(({ code }) => code);
    expect(codes({ ...plain, stringHeightNutMm: 1 })).toContain('strings-below-frets');
    expect(codes({ ...zero, stringHeightNutMm: 1 })).not.toContain('strings-below-frets');
  });
});
