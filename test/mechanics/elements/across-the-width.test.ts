/**
 * Which state of stress holds across the width: derived from a model that lets the width strain as it likes
 * (wide-model.ts), and held to the solids.
 */
import { describe, expect, it } from 'vitest';
import { createSection } from '../../../src/mechanics/elements/section.ts';
import { contactWeights } from '../../../src/mechanics/elements/loads.ts';
import { createMesh } from '../../../src/mechanics/elements/mesh.ts';
import { solidFeCase, describeSolidFeCase, solveSolidFeCase } from '../../reference/solid-fe-case.ts';
import { expectNear } from '../../expect-near.ts';
import { solveWide, stiffnessOf, type Across, type Push, type Solid } from './wide-model.ts';

/** The wood of the solid cases; G_xz and G_yz as their files have them. */
const SOLID: Solid = {
  modulusMPa: 1,
  depthRatio: 0.065,
  widthRatio: 0.132,
  shearXY: 0.063,
  shearXZ: 0.111,
  shearYZ: 0.03,
  poissonXY: 0.45,
  poissonXZ: 0.42,
  poissonYZ: 0.2955,
};

/** Moment on the end of a bar 10 mm deep: its curvature, times E·I over the moment. */
function curvature(widthMm: number, across: Across): number {
  const columnXMm = Array.from({ length: 41 }, (_, i) => 4 * i);
  const ys = Array.from({ length: 9 }, (_, i) => 1.25 * i);
  const solid = stiffnessOf({ ...SOLID, modulusMPa: 10_000 });
  const grid = {
    columnXMm,
    nodeYMm: columnXMm.flatMap(() => ys),
    rows: 8,
    present: () => true,
    at: () => ({ widthMm, solid }),
    across,
  };
  // A stress linear in depth, on the nodes; its moment is what the nodes carry.
  const forces = ys.map((y, row) => (y - 5) * (row === 0 || row === 8 ? 0.5 : 1));
  const moment = forces.reduce((sum, force, row) => sum + force * (ys[row] - 5), 0);
  const [at] = solveWide(grid, [forces.map((forceN, row): Push => ({ column: 0, row, forceN }))]);
  const [a, b, c] = [15, 20, 25].map((column) => at(column, 4, 1)) as [number, number, number];
  return (Math.abs(a - 2 * b + c) / 20 ** 2) * ((10_000 * widthMm * 1000) / 12 / moment);
}

describe('the companion', () => {
  it('bends a narrow bar as a beam, and a wide one as well: the width is free in bending', () => {
    for (const width of [5, 60]) expectNear(curvature(width, 'free'), 1, 2e-3, 'E·I of a beam; springs at the clamp');
    // Plane strain would be stiffer by 1 − ν_xz·ν_zx.
    expectNear(curvature(60, 'strain'), 1 - 0.42 ** 2 * 0.132, 3e-3, 'plane strain; the same');
    expectNear(curvature(60, 'stress'), 1, 2e-3, 'plane stress');
  });
});

/** Bow of a solid case, mm: all wedges, and its strings. */
function bows(id: string, across: Across): { readonly wedges: number; readonly strings: number } {
  const solid = solidFeCase(id);
  const neck = describeSolidFeCase(solid);
  const section = createSection(neck);
  const mesh = createMesh(section);
  const slots = new Set(mesh.slotLeftColumn);
  const unit = stiffnessOf(SOLID);
  const scaled = (modulus: number) => ({
    normal: unit.normal.map((row) => row.map((value) => value * modulus)),
    gxy: unit.gxy * modulus,
    gxz: unit.gxz * modulus,
    gyz: unit.gyz * modulus,
  });
  const c = new Float64Array(4);
  const grid = {
    columnXMm: mesh.columnXMm,
    nodeYMm: mesh.nodeYMm,
    rows: mesh.rows,
    present: (column: number, row: number) => !(slots.has(column) && row < mesh.slotRows),
    at: (x: number, y: number) => {
      section.stiffness(x, y, c, 0);
      const widthMm = section.chordMm(x, y);
      return { widthMm, solid: scaled(c[3] / (widthMm * neck.board.shearRatio)) };
    },
    across,
  };
  const wedge = (left: number, slot: number): Push[] =>
    [...contactWeights(mesh, slot)].flatMap((weight, row): Push[] => [
      { column: left, row, forceN: -weight * solid.wedgeN },
      { column: left + 1, row, forceN: weight * solid.wedgeN },
    ]);
  const [wedged, strung] = solveWide(grid, [
    [...mesh.slotLeftColumn].flatMap(wedge),
    stringPush(solid.pullN, solid.aboveCrownMm),
  ]);
  return { wedges: bow(wedged), strings: bow(strung) };

  function stringPush(pullN: number, aboveMm: number): Push[] {
    // Pull on a line above the crown, as a stress of a strain linear in depth, lumped on the nodes of the first column.
    const ys = Array.from({ length: mesh.rows + 1 }, (_, row) => mesh.nodeYMm[row]);
    const weights = ys.map((y, row) => {
      const height = ((ys[row + 1] ?? y) - (ys[row - 1] ?? y)) / 2;
      section.stiffness(0, Math.min(y, ys.at(-1)! - 1e-6), c, 0);
      return c[3] * height;
    });
    const sum = (power: number) => weights.reduce((total, weight, row) => total + weight * ys[row] ** power, 0);
    const [s0, s1, s2] = [sum(0), sum(1), sum(2)];
    const moment = -aboveMm * pullN;
    const determinant = s0 * s2 - s1 * s1;
    const [a, b] = [(pullN * s2 - moment * s1) / determinant, (moment * s0 - pullN * s1) / determinant];
    return weights.map((weight, row) => ({ column: 0, row, forceN: weight * (a + b * ys[row]) }));
  }

  function bow(at: (column: number, row: number, axis: 0 | 1) => number): number {
    const [from, to] = [neck.fretXMm[0], neck.fretXMm.at(-1)!];
    const xs = [...mesh.columnXMm];
    const line = xs.map((_, column) => at(column, mesh.boardRows, 1));
    const value = (x: number) => {
      const i = Math.max(
        1,
        xs.findIndex((other) => other >= x),
      );
      return line[i - 1] + ((line[i] - line[i - 1]) * (x - xs[i - 1])) / (xs[i] - xs[i - 1]);
    };
    const [a, b] = [value(from), value(to)];
    return xs
      .map((x, i) => (x < from || x > to ? 0 : a + ((b - a) * (x - from)) / (to - from) - line[i]))
      .reduce((most, offset) => (Math.abs(offset) > Math.abs(most) ? offset : most), 0);
  }
}

describe.each(['A-reference', 'D-slim-light'])('across the width of %s', (id) => {
  const free = bows(id, 'free');
  const ours = solveSolidFeCase(solidFeCase(id));

  it('wedges find it held, strings find it free', () => {
    const stress = bows(id, 'stress');
    const strain = bows(id, 'strain');
    const between = (key: 'wedges' | 'strings') => (free[key] - strain[key]) / (stress[key] - strain[key]);
    expect(between('wedges')).toBeLessThan(0.2);
    expect(between('strings')).toBeGreaterThan(0.55);
  });

  it('the constants of the program serve both', () => {
    expectNear(
      ours.wedgeAllMm,
      free.wedges,
      0.018,
      'S11 is that of plane stress around the slots too, 2.3 % of their share',
    );
    expectNear(ours.stringsSlotsEmptyMm, free.strings, 0.008, 'the same where the slots give way under the strings');
  });
});
