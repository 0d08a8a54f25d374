/**
 * The 3D file: accepted by the glTF validator of the standard's own body, and read back by a general-purpose glTF library
 * it is the neck that the program draws.
 */
import { WebIO, type Accessor, type Document, type Primitive } from '@gltf-transform/core';
import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../tools/presets.ts';
import { fretPositionMm } from '../../../src/neck/neck-shape.ts';
import { seatingSequence } from '../../../src/fretwork/plan/seating-order.ts';
import { createBender, createBowReader } from '../../../src/geometry/bend.ts';
import { writeGlb } from '../../../src/geometry/export/glb.ts';
import { neckSurfaces, type Drawn } from '../../../src/geometry/export/neck-surfaces.ts';
import type { Surface } from '../../../src/geometry/export/surface.ts';
import { PARTS } from '../../../src/geometry/parts.ts';

const WORDS = {
  neck: 'Neck',
  board: 'Board',
  binding: 'Binding',
  nut: 'Nut',
  frets: 'Frets',
  strings: 'Strings',
  marks: 'Position marks',
  wood: (id: string) => (id === 'own' ? 'own wood' : id),
  metal: (id: string) => id,
};

/** A back-bow of 0.3 mm with its top at 240 mm, drawn ×40. */
const LINE = {
  xMm: Array.from({ length: 61 }, (_, i) => i * 8),
  reliefMm: Array.from({ length: 61 }, (_, i) => -0.3 * Math.sin((Math.PI * i) / 60)),
  factor: 40,
};
const DRAWN: Drawn = { line: LINE, strung: true, words: WORDS, ownWoodColour: '#b98d5c' };

const presetBuild = (id: string): Build => PRESETS.find((preset) => preset.id === id)!.build;
const glbOf = (surfaces: readonly Surface[], extras = {}) => writeGlb(surfaces, 'A neck', 'Backbow test', extras);

function primitivesOf(document: Document, part: string): Primitive[] {
  const mesh = document
    .getRoot()
    .listMeshes()
    .find((candidate) => candidate.getName() === part);
  return mesh?.listPrimitives() ?? [];
}

/** The numbers of an accessor. */
const numbersOf = (accessor: Accessor | null): number[] =>
  Array.from((accessor?.getArray() ?? []) as ArrayLike<number>);

/** Area of triangles, in the square of the positions' unit. */
function areaOf(positions: ArrayLike<number>, indices: ArrayLike<number>): number {
  let area = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => [0, 1, 2].map((axis) => positions[3 * indices[i + corner] + axis])) as [
      number[],
      number[],
      number[],
    ];
    const [u, v] = [b, c].map((point) => point.map((value, axis) => value - a[axis])) as [number[], number[]];
    area += Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
  }
  return area;
}

test.each(PRESETS.map(({ id, build }) => [id, build] as const))(
  '%s: the validator finds nothing wrong',
  async (_id, build) => {
    const glb = await glbOf(neckSurfaces(build, DRAWN), { bowFactor: 40 });
    const report = await validateBytes(glb, { maxIssues: 0 });
    expect(report.issues.messages).toEqual([]);
    expect(report.mimeType).toBe('model/gltf-binary');
    expect(report.info.totalTriangleCount).toBeGreaterThan(10_000);
  },
);

test('the validator would have found something', async () => {
  const [first] = neckSurfaces(presetBuild('bolt-on-maple'), DRAWN);
  const bad = { ...first, normals: first.normals.map((part) => part * 3) };
  const report = await validateBytes(await glbOf([bad]));
  expect(report.issues.numErrors).toBeGreaterThan(0);
});

test('read back, the board is where the picture has it, in metres', async () => {
  const build = presetBuild('bolt-on-maple');
  const document = await new WebIO().readBinary(await glbOf(neckSurfaces(build, DRAWN)));
  const [board] = primitivesOf(document, 'Board');
  const positions = numbersOf(board.getAttribute('POSITION'));
  const indices = numbersOf(board.getIndices());

  const mesh = PARTS.board.make(build);
  const bender = createBender(mesh);
  const reader = createBowReader();
  reader.load(LINE);
  bender.bend(reader);
  expect(indices.length).toBe(mesh.indices.length);
  let worst = 0;
  for (let i = 0; i < indices.length; i += 1) {
    for (let axis = 0; axis < 3; axis += 1) {
      const wanted = bender.positions[3 * mesh.indices[i] + axis] / 1000;
      worst = Math.max(worst, Math.abs(positions[3 * indices[i] + axis] - wanted));
    }
  }
  // Single precision at half a metre: 2⁻²⁴ × 0.5 m = 30 nm.
  expect(worst).toBeLessThan(6e-8);
});

test('the bow stands in the file as many times larger than life as it says', async () => {
  const build = presetBuild('nylon-flat');
  const topOf = async (factor: number) => {
    const surfaces = neckSurfaces(build, { ...DRAWN, line: { ...LINE, factor } });
    const document = await new WebIO().readBinary(await glbOf(surfaces));
    const box = primitivesOf(document, 'Board')[0].getAttribute('POSITION')!.getMax([]);
    return box[1] * 1000;
  };
  // A flat board: its highest point is the top of the bow itself, 0.3 mm at 240 mm, between two stations' pieces.
  const [once, many] = [await topOf(1), await topOf(40)];
  expect(Math.abs(once / 0.3 - 1)).toBeLessThan(1e-4);
  expect(Math.abs(many / 12 - 1)).toBeLessThan(1e-4);
});

test('frets that are not in yet are not in the file', async () => {
  const build = presetBuild('bolt-on-maple');
  const fretsIn = seatingSequence(build).slice(0, 6);
  const surfaces = neckSurfaces(build, { ...DRAWN, line: { ...LINE, factor: 0 }, fretsIn, strung: false });
  expect(surfaces.some(({ part }) => part === 'Strings')).toBe(false);
  const [wire] = surfaces.filter(({ part }) => part === 'Frets');
  const places = new Set<number>();
  for (let i = 0; i < wire.positionsMm.length; i += 3) {
    const x = wire.positionsMm[i];
    const nearest = Array.from({ length: build.fretCount }, (_, index) => index + 1).find(
      (fret) => Math.abs(fretPositionMm(build.scaleLengthMm, fret) - x) < build.crownWidthMm,
    );
    places.add(nearest ?? 0);
  }
  expect([...places].sort((a, b) => a - b)).toEqual([...fretsIn].sort((a, b) => a - b));
  expect(neckSurfaces(build, { ...DRAWN, fretsIn: [], strung: false }).some(({ part }) => part === 'Frets')).toBe(
    false,
  );
});

test('laminates: cut along their joints, nothing lost, each in its own wood', async () => {
  const build = presetBuild('thick-five-piece');
  const straight = { ...DRAWN, line: { ...LINE, factor: 0 } };
  const pieces = neckSurfaces(build, straight).filter(({ part }) => part === 'Neck');
  expect(pieces.map(({ material }) => material)).toEqual(['wenge', 'purpleheart', 'wenge']);
  const mesh = PARTS.neck.make(build);
  const whole = areaOf(mesh.positions, mesh.indices);
  const sum = pieces.reduce((total, piece) => total + areaOf(piece.positionsMm, piece.indices), 0);
  // The cut leaves the surface where it was: single precision of some 10 000 triangles.
  expect(Math.abs(sum / whole - 1)).toBeLessThan(1e-5);
  // The middle piece, shares 0.4 of the width: at the nut ±0.2 × 43 mm.
  const nutHalf = Math.max(
    ...Array.from({ length: pieces[0].positionsMm.length / 3 }, (_, i) => i)
      .filter((i) => Math.abs(pieces[0].positionsMm[3 * i]) < 1e-3)
      .map((i) => Math.abs(pieces[0].positionsMm[3 * i + 2])),
  );
  expect(Math.abs(nutHalf / (0.2 * build.widthNutMm) - 1)).toBeLessThan(1e-5);
  const document = await new WebIO().readBinary(await glbOf(neckSurfaces(build, DRAWN)));
  expect(primitivesOf(document, 'Neck').map((primitive) => primitive.getMaterial()?.getName())).toEqual([
    'wenge',
    'purpleheart',
    'wenge',
  ]);
});

test('what the file is stands in its asset', async () => {
  const extras = { bowFactor: 40, units: 'metres', frets: [1, 5, 9] };
  const glb = await glbOf(neckSurfaces(presetBuild('slim-soft'), DRAWN), extras);
  const { json } = await new WebIO().binaryToJSON(glb);
  expect(json.asset).toMatchObject({ version: '2.0', generator: 'Backbow test', extras });
});

test('colours are linear in the file', async () => {
  const build = presetBuild('bolt-on-maple');
  const document = await new WebIO().readBinary(await glbOf(neckSurfaces(build, DRAWN)));
  const factor = primitivesOf(document, 'Frets')[0].getMaterial()!.getBaseColorFactor();
  // #d9d4c5; IEC 61966-2-1: 0xd9 = 217 → ((217/255 + 0.055)/1.055)^2.4 = 0.693872.
  expect(Math.abs(factor[0] / 0.693872 - 1)).toBeLessThan(1e-5);
});

test('nothing to write is an error', async () => {
  await expect(glbOf([])).rejects.toThrow(RangeError);
});
