import { describe, expect, it } from 'vitest';
import { createMesh, loadColumn, nodeAt, type Mesh } from '../../../src/mechanics/elements/mesh.ts';
import { createSection } from '../../../src/mechanics/elements/section.ts';
import { ALL_NECKS, DEFAULT_NECK, neckWith } from '../necks.ts';

function heights(mesh: Mesh, column: number): number[] {
  return Array.from(
    { length: mesh.rows },
    (_, row) => mesh.nodeYMm[nodeAt(mesh, column, row + 1)] - mesh.nodeYMm[nodeAt(mesh, column, row)],
  );
}

const widths = (mesh: Mesh) => Array.from(mesh.columnXMm.slice(1), (x, column) => x - mesh.columnXMm[column]);

describe.each([
  ...ALL_NECKS,
  ['36 frets', neckWith({ scaleLengthMm: 900, fretCount: 36, bodyJointFret: 24, rodEndMm: 600 })] as const,
])('the mesh of %s', (_name, neck) => {
  const section = createSection(neck);
  const mesh = createMesh(section);

  it('runs from the nut to the end of the board in columns that are neither slivers nor wide', () => {
    expect(mesh.columnXMm[0]).toBe(0);
    expect(mesh.columnXMm.at(-1)).toBe(neck.lengthMm);
    expect(Math.min(...widths(mesh))).toBeGreaterThan(0.25);
    expect(Math.max(...widths(mesh))).toBeLessThanOrEqual(6 + 1e-9);
  });

  it('has one column for each kerf, with the fret in its middle', () => {
    expect(mesh.slotLeftColumn).toHaveLength(neck.fretXMm.length);
    const middles = [...mesh.slotLeftColumn].map((left) => (mesh.columnXMm[left] + mesh.columnXMm[left + 1]) / 2);
    const kerfs = [...mesh.slotLeftColumn].map((left) => mesh.columnXMm[left + 1] - mesh.columnXMm[left]);
    middles.forEach((x, slot) => expect(Math.abs(x - neck.fretXMm[slot])).toBeLessThan(1e-9));
    kerfs.forEach((kerf) => expect(Math.abs(kerf - neck.slot.kerfMm)).toBeLessThan(1e-9));
    expect([...mesh.slotOfColumn].filter((slot) => slot >= 0)).toEqual(neck.fretXMm.map((_, slot) => slot));
  });

  it('has fine columns beside every slot', () => {
    const beside = [...mesh.slotLeftColumn].flatMap((left) => [
      mesh.columnXMm[left] - mesh.columnXMm[left - 1],
      mesh.columnXMm[left + 2] - mesh.columnXMm[left + 1],
    ]);
    expect(Math.max(...beside)).toBeLessThanOrEqual(1);
  });

  it('has rows on the top, the floor of the slot, the glue line and the back', () => {
    for (let column = 0; column < mesh.columnXMm.length; column += 1) {
      const x = mesh.columnXMm[column];
      const y = (row: number) => mesh.nodeYMm[nodeAt(mesh, column, row)];
      expect(Math.abs(y(0) - section.topMm(x))).toBeLessThan(0.01);
      expect(Math.abs(y(mesh.slotRows) - section.slotFloorMm(x))).toBeLessThan(0.025);
      expect(Math.abs(y(mesh.boardRows) - neck.boardThicknessMm)).toBeLessThan(1e-9);
      expect(Math.abs(y(mesh.rows) - mesh.section.bottomMm(x))).toBeLessThan(1e-9);
      expect(Math.min(...heights(mesh, column))).toBeGreaterThan(0);
    }
  });

  it('keeps a column for the joint and for the anchors of the rod, beside no sawn slot', () => {
    const clear = (column: number) => [column - 1, column].every((element) => (mesh.slotOfColumn[element] ?? -1) < 0);
    expect(clear(mesh.jointColumn)).toBe(true);
    expect(Math.abs(mesh.columnXMm[mesh.jointColumn] - neck.jointMm)).toBeLessThan(3);
    const anchors = neck.rod === null ? [] : [neck.rod.startMm, neck.rod.endMm];
    const columns = anchors.map((x) => loadColumn(mesh, x));
    expect(columns.every((column) => column === 0 || clear(column))).toBe(true);
    columns.forEach((column, at) => expect(Math.abs(mesh.columnXMm[column] - anchors[at])).toBeLessThan(3));
  });
});

describe('refinement', () => {
  it('halves every element but the kerf', () => {
    const section = createSection(DEFAULT_NECK);
    const coarse = createMesh(section);
    const fine = createMesh(section, 2);
    expect(fine.rows).toBe(2 * coarse.rows);
    const slots = coarse.slotLeftColumn.length;
    expect(fine.columnXMm.length - 1).toBe(2 * (coarse.columnXMm.length - 1) - slots);
    expect(fine.slotLeftColumn).toHaveLength(slots);
    expect(coarse.columnXMm.every((x) => fine.columnXMm.includes(x))).toBe(true);
  });
});

it('the floor of a slot stays where it is as the tang comes down to it, and no row is flat', () => {
  const { depthMm } = DEFAULT_NECK.slot;
  for (const airMm of [0.3, 0.11, 0.1, 0.09, 0.02, 0]) {
    const neck = { ...DEFAULT_NECK, slot: { ...DEFAULT_NECK.slot, contactDepthMm: depthMm - airMm } };
    const mesh = createMesh(createSection(neck));
    const left = mesh.slotLeftColumn[3];
    const x = neck.fretXMm[3];
    const floor = mesh.nodeYMm[nodeAt(mesh, left, mesh.slotRows)];
    expect(Math.abs(floor - mesh.section.slotFloorMm(x))).toBeLessThan(1e-9);
    expect(Math.min(...heights(mesh, left))).toBeGreaterThan(0.01);
  }
});

it.each([1e-200, 0.05, 0.2])('a channel %d mm deep leaves no flat elements', (depthMm) => {
  const neck = { ...DEFAULT_NECK, channel: { ...DEFAULT_NECK.channel!, depthMm } };
  const mesh = createMesh(createSection(neck));
  expect(Math.min(...Array.from(mesh.columnXMm, (_, column) => Math.min(...heights(mesh, column))))).toBeGreaterThan(
    0.05,
  );
});

describe('a steep heel', () => {
  // Found by the sweep (seed 780): the heel began between two columns, and the elements there held no wood at all.
  it('begins on a column, or within a kerf at its wall, half a millimetre at most from where it is stated', () => {
    for (let lengthMm = 5; lengthMm < 9; lengthMm += 0.1) {
      for (const bodyJointFret of [12, 13, 16]) {
        const neck = neckWith({ bodyJointFret, heelThicknessMm: 50, heelLengthMm: lengthMm, backExponent: 1.5 });
        const mesh = createMesh(createSection(neck));
        const begin = neck.jointMm - mesh.section.description.heel!.lengthMm;
        expect([...mesh.columnXMm].some((x) => Math.abs(x - begin) < 1e-9)).toBe(true);
        expect(Math.abs(begin - (neck.jointMm - lengthMm))).toBeLessThanOrEqual(0.5);
        for (let column = 0; column < mesh.columnXMm.length - 1; column += 1) {
          const x = (mesh.columnXMm[column] + mesh.columnXMm[column + 1]) / 2;
          const bottom = [column, column + 1].map((at) => mesh.nodeYMm[nodeAt(mesh, at, mesh.rows)]);
          // The middle of the last element's bottom edge lies in the wood, or as near to it as straight tapers let it.
          expect((bottom[0] + bottom[1]) / 2).toBeLessThanOrEqual(mesh.section.bottomMm(x) + 1e-9);
        }
      }
    }
  });
});
