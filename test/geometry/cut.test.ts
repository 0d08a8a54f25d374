import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { fretEnd } from '../../src/fretwork/ends.ts';
import { seatAt } from '../../src/neck/kerf.ts';
import { slots } from '../../src/fretwork/slots.ts';
import { boardMeshes } from '../../src/geometry/board.ts';
import { mergeMeshes } from '../../src/geometry/merge.ts';
import { crownAreaMm2, loopAreaMm2 } from './areas.ts';
import { cutFace } from '../../src/geometry/cut-face.ts';
import { cutLoops, type CutPlane } from '../../src/geometry/cut.ts';
import { crownMesh, tangMesh } from '../../src/geometry/frets.ts';
import type { Mesh } from '../../src/geometry/mesh.ts';
import { neckMesh } from '../../src/geometry/neck.ts';
import { studShape } from '../../src/geometry/tang.ts';
import { expectNear } from '../expect-near.ts';
import { sliceAreaMm2 } from './solid.ts';

const boardMesh = (build: Parameters<typeof boardMeshes>[0]) => mergeMeshes(boardMeshes(build));

const area = (mesh: Mesh, plane: CutPlane): number =>
  cutLoops(mesh, plane).reduce((sum, loop) => sum + loopAreaMm2(loop, plane.axis), 0);

describe.each(PRESETS.map(({ id, build }) => [id, build] as const))('%s', (_, build) => {
  const end = fretEnd(build, 5);

  test('cut faces have the area that manifold-3d finds for its own slice', () => {
    for (const mesh of [
      neckMesh(build),
      boardMesh(build),
      crownMesh(build, end, 'seated'),
      tangMesh(build, end, 'cut'),
    ]) {
      for (const plane of [
        { axis: 'x', atMm: end.xMm },
        { axis: 'z', atMm: 1.1 },
      ] as const) {
        expectNear(
          area(mesh, plane),
          sliceAreaMm2(mesh, plane.axis, plane.atMm + 1e-4),
          1e-4,
          'single precision of the corners',
        );
      }
    }
  });

  test('all loops of these solids are outsides', () => {
    for (const loop of cutLoops(boardMesh(build), { axis: 'z', atMm: 1.1 }))
      expect(loopAreaMm2(loop, 'z')).toBeGreaterThan(0);
  });

  test('across a slot: kerf, depth and what is left are the fretwork numbers', () => {
    const slot = slots(build)[4];
    const [loop] = cutLoops(boardMesh(build), { axis: 'z', atMm: 0 });
    const near = Array.from({ length: loop.points.length / 3 }, (_, i) => [
      loop.points[3 * i],
      loop.points[3 * i + 1],
    ]).filter(([x]) => Math.abs(x - slot.xMm) < slot.kerfMm);
    const floor = near.filter(([, y]) => Math.abs(y + slot.depthMm) < 0.01);
    const xs = floor.map(([x]) => x);
    expectNear(Math.max(...xs) - Math.min(...xs), slot.kerfMm, 1e-3, 'single precision at half a metre, 0.06 µm');
    expectNear(build.boardThicknessMm + floor[0][1], slot.leftAtCentreMm, 1e-3, 'the cut is nudged by 0.1 µm');
  });

  test('across a crown: its profile; through a stud: the width over the studs', () => {
    expectNear(
      area(crownMesh(build, end, 'seated'), { axis: 'z', atMm: 0 }),
      crownAreaMm2(build.crownWidthMm, build.crownHeightMm),
      0.01,
      'eighteen facets',
    );
    const stud = studShape(build, 5);
    const place = build.studPitchMm / 2;
    expect(stud.lengthMm).toBeLessThan(build.studPitchMm);
    const loops = cutLoops(tangMesh(build, end, 'cut'), { axis: 'z', atMm: place * 0.999 });
    const xs = loops.flatMap(({ points }) => [...points].filter((_, i) => i % 3 === 0));
    expectNear(Math.max(...xs) - Math.min(...xs), seatAt(build, 5).studWidthMm, 1e-3, 'single precision');
  });
});

test('an open mesh is refused where it is cut', () => {
  const { build } = PRESETS[0];
  const mesh = crownMesh(build, fretEnd(build, 5), 'seated');
  const open = { ...mesh, indices: mesh.indices.slice(0, -600) };
  expect(() => cutLoops(open, { axis: 'x', atMm: fretEnd(build, 5).xMm })).toThrow(/open where it is cut at x/);
});

describe('cut faces', () => {
  const { build } = PRESETS[1];
  const end = fretEnd(build, 5);

  /** Area of the triangles of a face, each counter-clockwise seen from the side that is taken away. */
  function faceAreaMm2({ positions: p, indices }: Mesh, axis: CutPlane['axis']): number {
    const right = (v: number): number => (axis === 'z' ? p[3 * v] : -p[3 * v + 2]);
    let twice = 0;
    for (let t = 0; t < indices.length; t += 3) {
      const [a, b, c] = [indices[t], indices[t + 1], indices[t + 2]];
      const part =
        (right(b) - right(a)) * (p[3 * c + 1] - p[3 * a + 1]) - (right(c) - right(a)) * (p[3 * b + 1] - p[3 * a + 1]);
      expect(part).toBeGreaterThan(-1e-4);
      twice += part;
    }
    return twice / 2;
  }

  test('are filled exactly, facing the side that is taken away', () => {
    for (const mesh of [
      neckMesh(build),
      boardMesh(build),
      crownMesh(build, end, 'seated'),
      tangMesh(build, end, 'cut'),
    ]) {
      for (const plane of [
        { axis: 'x', atMm: end.xMm },
        { axis: 'z', atMm: 1.1 },
      ] as const) {
        const face = cutFace([{ mesh }], plane);
        expectNear(faceAreaMm2(face.mesh, plane.axis), area(mesh, plane), 1e-4, 'single precision of the corners');
      }
    }
  });

  test('no triangle is longer than the sections of the neck are apart, so it bows with it', () => {
    const { mesh } = cutFace([{ mesh: boardMesh(build) }], { axis: 'z', atMm: 1.1 });
    const spans: number[] = [];
    for (let t = 0; t < mesh.indices.length; t += 3) {
      const xs = [0, 1, 2].map((k) => mesh.positions[3 * mesh.indices[t + k]]);
      spans.push(Math.max(...xs) - Math.min(...xs));
    }
    expect(Math.max(...spans)).toBeLessThan(10);
  });

  test('the outline of the wire leaves out the joint of crown and tang, and nothing else', () => {
    const half = seatAt(build, 5).tangWidthMm / 2;
    const plane: CutPlane = { axis: 'z', atMm: 0 };
    const joint = () => ({
      on: (_x: number, y: number) => Math.abs(y) < 1e-3,
      from: end.xMm - half,
      to: end.xMm + half,
    });
    const pieces = [crownMesh(build, end, 'seated'), tangMesh(build, end, 'seated')];
    const lengthOf = (face: ReturnType<typeof cutFace>): number =>
      face.outlines.reduce((sum, { first, count, closed }) => {
        const at = (i: number): [number, number] => {
          const v = first + (i % count);
          return [face.mesh.positions[3 * v], face.mesh.positions[3 * v + 1]];
        };
        let length = 0;
        for (let i = 0; i < (closed ? count : count - 1); i++) {
          const [[x0, y0], [x1, y1]] = [at(i), at(i + 1)];
          length += Math.hypot(x1 - x0, y1 - y0);
        }
        return sum + length;
      }, 0);
    const whole = lengthOf(
      cutFace(
        pieces.map((mesh) => ({ mesh })),
        plane,
      ),
    );
    const without = lengthOf(
      cutFace(
        pieces.map((mesh) => ({ mesh, joint })),
        plane,
      ),
    );
    // The joint is drawn twice, once by each piece.
    expectNear(whole - without, 4 * half, 1e-3, 'single precision at half a metre');
  });
});
