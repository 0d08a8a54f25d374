import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { fretEnd } from '../../src/fretwork/ends.ts';
import { bindingMeshes, boardMeshes } from '../../src/geometry/board.ts';
import { crownMesh, tangMesh } from '../../src/geometry/frets.ts';
import type { Mesh } from '../../src/geometry/mesh.ts';
import { neckMesh } from '../../src/geometry/neck.ts';
import { markersMesh } from '../../src/geometry/markers.ts';
import { nutMesh } from '../../src/geometry/nut.ts';
import { channelFloorMm, channelMesh, rodMesh, rodRunMm } from '../../src/geometry/rod.ts';
import { straightedgeMesh } from '../../src/geometry/straightedge.ts';
import { stringsMesh } from '../../src/geometry/strings.ts';
import { bodyJointMm, channelWidthMm } from '../../src/neck/neck-shape.ts';
import type { Build } from '../../src/neck/build.ts';
import { expectNear } from '../expect-near.ts';
import { corners, type Corner } from './corners.ts';
import { judge, type Judgement } from './solid.ts';

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
    ...boardMeshes(build).map((mesh, index): [string, Mesh] => [`board ${index}`, mesh]),
    ['nut', nutMesh(build)],
    ['strings', stringsMesh(build)],
    ['marks', markersMesh(build, '#ffffff')],
    ['straightedge', straightedgeMesh(20, bodyJointMm(build))],
    ...bindingMeshes(build).map(({ mesh }, index): [string, Mesh] => [`binding ${index}`, mesh]),
    ...frets,
  ];
}

const LEFT: Build = { ...PRESETS[0].build, leftHanded: true };
const all: Corner[] = [
  ...corners(),
  ...PRESETS.map(({ id, build }) => ({ label: id, build })),
  { label: 'left-handed', build: LEFT },
];

test('a left-handed neck is the mirror image of a right-handed one, and nothing but strings and marks is another', () => {
  /** Corners of a mesh as text, each once. */
  const places = ({ positions }: Mesh, side: 1 | -1) => {
    const found = new Set<string>();
    for (let i = 0; i < positions.length; i += 3)
      found.add(
        [positions[i], positions[i + 1], side * positions[i + 2]]
          .map((mm) => (mm + 0).toFixed(3).replace('-0.000', '0.000'))
          .join(),
      );
    return [...found].toSorted();
  };
  const right = { ...LEFT, leftHanded: false, bassHigherMm: 0.4 };
  const left = { ...right, leftHanded: true };
  for (const make of [stringsMesh, (build: Build) => markersMesh(build, '#ffffff')]) {
    expect(places(make(left), 1)).toEqual(places(make(right), -1));
    expect(places(make(left), 1)).not.toEqual(places(make(right), 1));
  }
  for (const make of [neckMesh, nutMesh]) expect(make(left)).toEqual(make(right));
});

test('the corners reach most ends of the ranges', () => {
  expect(all.length).toBeGreaterThan(80);
});

describe.each(all)('$label', ({ build }) => {
  const made = solids(build).map(([name, mesh]) => ({ name, ...judge(mesh) }));

  /** Names of the solids for which something is wrong, with what it is. */
  const wrong = (find: (judgement: Judgement & { name: string }) => string | false): string[] =>
    made.flatMap((judgement) => {
      const found = find(judgement);
      return found ? [`${judgement.name}: ${String(found)}`] : [];
    });

  test('every solid is closed and consistently oriented, inside in', () => {
    expect(wrong(({ loose }) => loose.join('; '))).toEqual([]);
    expect(wrong(({ signedVolumeMm3 }) => !(signedVolumeMm3 > 0) && `volume ${signedVolumeMm3}`)).toEqual([]);
  });

  test('manifold-3d takes every solid, in one piece without holes', () => {
    expect(wrong(({ solid }) => solid.status !== 'NoError' && solid.status)).toEqual([]);
    expect(
      wrong(({ name, solid }) => !['strings', 'marks'].includes(name) && solid.genus !== 0 && `genus ${solid.genus}`),
    ).toEqual([]);
  });

  test('no solid crosses itself', () => {
    expect(wrong(({ crossings }) => crossings.join('; '))).toEqual([]);
  });

  test('normals point to the outside of their triangles', () => {
    // Rounded and eased edges share normals, at most 60° from either face; the thin rim of a mark a little more.
    expect(
      wrong(({ name, worstNormal }) => !(worstNormal > (name === 'marks' ? 0.4 : 0.5)) && `cosine ${worstNormal}`),
    ).toEqual([]);
  });
});

test('rods and bars are closed and oriented; they go into the blocks at their ends', () => {
  const kinds = PRESETS.flatMap(({ build }) =>
    (['one-way', 'two-way'] as const).flatMap((rodKind) =>
      [0, 1, 2].map((barCount) => ({ ...build, rodKind, barCount })),
    ),
  );
  for (const build of kinds) {
    const { loose, signedVolumeMm3, worstNormal } = judge(rodMesh(build));
    expect(loose).toEqual([]);
    expect(signedVolumeMm3).toBeGreaterThan(0);
    expect(worstNormal).toBeGreaterThan(0.5);
  }
  expect(rodMesh({ ...PRESETS[0].build, rodKind: 'none', barCount: 0 }).indices).toHaveLength(0);
});

test('the channel is closed and holds what its width, depth and length say', () => {
  const withRod = PRESETS.flatMap(({ build }) => {
    const run = rodRunMm(build);
    return run ? [{ build, run }] : [];
  });
  expect(withRod.length).toBeGreaterThan(3);
  for (const {
    build,
    run: [from, to],
  } of withRod) {
    const { loose, signedVolumeMm3 } = judge(channelMesh(build));
    expect(loose).toEqual([]);
    const area = (x: number) => channelWidthMm(build, x) * (channelFloorMm(build, x) - build.boardThicknessMm);
    const volume = ((to - from) * (area(from) + 4 * area((from + to) / 2) + area(to))) / 6;
    expectNear(signedVolumeMm3, volume, 0.01, 'Simpson’s rule beside steps of 9 mm, and a bend of the floor');
  }
  expect(channelMesh({ ...PRESETS[0].build, channelWidthMm: 0 }).indices).toHaveLength(0);
  expect(channelMesh({ ...PRESETS[0].build, rodKind: 'none' }).indices).toHaveLength(0);
});
