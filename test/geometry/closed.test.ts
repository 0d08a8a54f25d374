import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../src/build/presets.ts';
import { fretEnd } from '../../src/fretwork/ends.ts';
import { bindingMeshes, boardMesh } from '../../src/geometry/board.ts';
import { crownMesh, tangMesh } from '../../src/geometry/frets.ts';
import type { Mesh } from '../../src/geometry/mesh.ts';
import { neckMesh } from '../../src/geometry/neck.ts';
import { nutMesh } from '../../src/geometry/nut.ts';
import type { Build } from '../../src/build/build.ts';
import { corners, type Corner } from './corners.ts';
import { judge } from './solid.ts';

/** Every closed solid of a build, two frets standing for all. */
function solids(build: Build): [string, Mesh][] {
  const frets = [1, build.fretCount].flatMap((fret): [string, Mesh][] => {
    const end = fretEnd(build, fret);
    return (['seated', 'loose'] as const).flatMap((state): [string, Mesh][] => [
      [`crown ${fret} ${state}`, crownMesh(build, end, state)],
      [`tang ${fret} ${state}`, tangMesh(build, end, state)],
    ]);
  });
  return [
    ['neck', neckMesh(build)],
    ['board', boardMesh(build)],
    ['nut', nutMesh(build)],
    ...bindingMeshes(build).map((mesh, index): [string, Mesh] => [`binding ${index}`, mesh]),
    ...frets,
  ];
}

const all: Corner[] = [...corners(), ...PRESETS.map(({ id, build }) => ({ label: id, build }))];

test('the corners reach most ends of the ranges', () => {
  expect(all.length).toBeGreaterThan(80);
});

describe.each(all)('$label', ({ build }) => {
  const made = solids(build).map(([name, mesh]) => ({ name, ...judge(mesh) }));

  test('every solid is closed and consistently oriented, inside in', () => {
    for (const { name, loose, signedVolumeMm3 } of made) {
      expect(loose, name).toEqual([]);
      expect(signedVolumeMm3, name).toBeGreaterThan(0);
    }
  });

  test('manifold-3d takes every solid, in one piece without holes', () => {
    for (const { name, solid } of made) {
      expect(solid.status, name).toBe('NoError');
      expect(solid.genus, name).toBe(0);
    }
  });

  test('no solid crosses itself', () => {
    for (const { name, crossings } of made) expect(crossings, name).toEqual([]);
  });

  test('normals point to the outside of their triangles', () => {
    // Rounded and eased edges share normals, at most 60° from either face.
    for (const { name, worstNormal } of made) expect(worstNormal, name).toBeGreaterThan(0.5);
  });
});
