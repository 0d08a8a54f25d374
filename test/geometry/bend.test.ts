import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { bodyJointMm } from '../../src/neck/neck-shape.ts';
import { createBender, createBowReader, type BowLine } from '../../src/geometry/bend.ts';
import { fretsMesh } from '../../src/geometry/frets.ts';
import { mergeMeshes } from '../../src/geometry/merge.ts';
import { neckMesh } from '../../src/geometry/neck.ts';
import { boardMeshes } from '../../src/geometry/board.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { expectNear } from '../expect-near.ts';
import { looseEdges, worstNormal } from './solid.ts';

const boardMesh = (build: Parameters<typeof boardMeshes>[0]) => mergeMeshes(boardMeshes(build));

const build = defaultBuild();

/** Relief of a circular back-bow with this much height over the span. */
function hump(spanMm: number, heightMm: number, stations: number, factor: number): BowLine {
  const xMm = Float64Array.from({ length: stations }, (_, i) => (spanMm * i) / (stations - 1));
  return { xMm, reliefMm: xMm.map((x) => (-4 * heightMm * x * (spanMm - x)) / spanMm ** 2), factor };
}

describe('reading a line', () => {
  test('passes through its stations, times the factor, hollow downwards', () => {
    const line = hump(400, 0.3, 31, 40);
    const reader = createBowReader();
    reader.load(line);
    for (let i = 0; i < line.xMm.length; i++) {
      reader.at(line.xMm[i]);
      expect(Math.abs(reader.height + 40 * line.reliefMm[i])).toBeLessThan(1e-9);
    }
  });

  test('a parabola is reproduced between uneven stations, with its slope', () => {
    const xMm = [0, 10, 14, 40, 90, 100];
    const reader = createBowReader();
    reader.load({ xMm, reliefMm: xMm.map((x) => x * x), factor: -1 });
    for (const x of [11, 13.5, 20, 39]) {
      reader.at(x);
      expectNear(reader.height, x * x, 1e-9, 'a cubic piece holds a parabola');
      expectNear(reader.slope, 2 * x, 1e-9, 'a cubic piece holds a parabola');
    }
  });

  test('runs on straight beyond its ends', () => {
    const reader = createBowReader();
    reader.load({ xMm: [0, 10, 20], reliefMm: [0, 1, 4], factor: 1 });
    reader.at(50);
    expectNear(reader.height, -4 - 30 * 0.3, 1e-12, 'rounding');
    reader.at(-10);
    expectNear(reader.height, 1, 1e-12, 'rounding');
  });

  test('stations and values must be equally many', () => {
    expect(() => createBowReader().load({ xMm: [0, 1], reliefMm: [0], factor: 1 })).toThrow('2 stations but 1 values');
  });
});

describe('bowing', () => {
  test('factor 0 leaves every shape as it is', () => {
    const mesh = neckMesh(build);
    const bender = createBender(mesh);
    const reader = createBowReader();
    reader.load(hump(400, 0.3, 50, 0));
    bender.bend(reader);
    expect(bender.positions).toEqual(mesh.positions);
    for (let i = 0; i < mesh.normals.length; i++)
      expect(Math.abs(bender.normals[i] - mesh.normals[i])).toBeLessThan(1e-6);
  });

  test('the crown line of the board is the line times the factor', () => {
    const prediction = createPredictor().predict(build);
    const line: BowLine = {
      xMm: prediction.stationXMm,
      reliefMm: prediction.methods.press.fretted.reliefMm,
      factor: 40,
    };
    const mesh = boardMesh(build);
    const bender = createBender(mesh);
    const reader = createBowReader();
    reader.load(line);
    bender.bend(reader);
    let compared = 0;
    for (let i = 0; i < mesh.positions.length; i += 3) {
      if (mesh.positions[i + 1] !== 0 || Math.abs(mesh.positions[i + 2]) > 1e-6) continue;
      reader.at(mesh.positions[i]);
      // Single precision at half a metre is 0.03 µm; the line is drawn 40 times.
      expect(Math.abs(bender.positions[i + 1] - reader.height)).toBeLessThan(1e-4);
      compared++;
    }
    expect(compared).toBeGreaterThan(100);
  });

  test('in the arrays of a bender that is used no more, it is the same shape', () => {
    const reader = createBowReader();
    reader.load(hump(400, 0.3, 50, 40));
    const old = createBender(boardMesh(build));
    old.bend(reader);
    const mesh = boardMesh({ ...build, kerfMm: build.kerfMm + 0.02 });
    const [own, reused] = [createBender(mesh), createBender(mesh, old)];
    expect(reused.positions).toBe(old.positions);
    expect(reused.positions).toEqual(mesh.positions);
    for (const bender of [own, reused]) bender.bend(reader);
    expect(reused.positions).toEqual(own.positions);
    expect(reused.normals).toEqual(own.normals);
  });

  test('at true scale a fret keeps its size: pieces are turned, not stretched', () => {
    const mesh = fretsMesh(build, 'seated');
    const bender = createBender(mesh);
    const reader = createBowReader();
    reader.load(hump(bodyJointMm(build), 0.5, 60, 200));
    bender.bend(reader);
    for (let v = 0; v + 1 < mesh.fretOf!.length; v += 37) {
      if (mesh.fretOf![v] !== mesh.fretOf![v + 1]) continue;
      const apart = (p: Float32Array): number =>
        Math.hypot(p[3 * v] - p[3 * v + 3], p[3 * v + 1] - p[3 * v + 4], p[3 * v + 2] - p[3 * v + 5]);
      expect(Math.abs(apart(mesh.positions) - apart(bender.positions))).toBeLessThan(2e-4);
    }
  });

  test('normals stay square to what is drawn, and solids closed, at ×200', () => {
    for (const mesh of [neckMesh(build), boardMesh(build), fretsMesh(build, 'seated')]) {
      const bender = createBender(mesh);
      const reader = createBowReader();
      reader.load(hump(bodyJointMm(build), 0.5, 60, 200));
      bender.bend(reader);
      const bowed = { ...mesh, positions: bender.positions, normals: bender.normals };
      expect(looseEdges(bowed)).toEqual([]);
      // As straight (0.5), less the turn of one section against its neighbour.
      expect(worstNormal(bowed)).toBeGreaterThan(0.45);
    }
  });

  test('a smooth surface keeps analytic normals under the bow', () => {
    // The flat underside of the board: after bowing, its normal is square to the bowed line at its depth.
    const mesh = boardMesh({ ...build, boardShape: 'flat' });
    const bender = createBender(mesh);
    const reader = createBowReader();
    reader.load(hump(bodyJointMm(build), 0.5, 60, 200));
    bender.bend(reader);
    for (let i = 0; i < mesh.positions.length; i += 3) {
      if (mesh.normals[i + 1] !== -1) continue;
      reader.at(mesh.positions[i]);
      const slope = -bender.normals[i] / bender.normals[i + 1];
      expect(Math.abs(slope - reader.slope)).toBeLessThan(1e-5);
    }
  });

  test('a lifted fret stands square to the board, an absent one has no area', () => {
    const mesh = fretsMesh(build, 'loose');
    const bender = createBender(mesh);
    const reader = createBowReader();
    reader.load(hump(bodyJointMm(build), 0.5, 60, 100));
    const lift = new Float64Array(build.fretCount).fill(Infinity);
    lift[4] = 10;
    bender.bend(reader, lift);
    const at = mesh.anchorsMm[4];
    reader.at(at);
    const cosine = 1 / Math.hypot(1, reader.slope);
    const vertices = Array.from(mesh.fretOf ?? [], (fret, v) => ({ fret, v }));
    for (const { v } of vertices.filter(({ fret }) => fret !== 5)) {
      expect(bender.positions[3 * v]).toBe(Math.fround(mesh.anchorsMm[mesh.anchorOf[v]]));
    }
    for (const { v } of vertices.filter(({ fret }) => fret === 5)) {
      // Height over the board along the turned section.
      const raised =
        (bender.positions[3 * v + 1] - reader.height) * cosine - (bender.positions[3 * v] - at) * reader.slope * cosine;
      expect(Math.abs(raised - mesh.positions[3 * v + 1] - 10)).toBeLessThan(1e-3);
    }
  });

  test('two meshes in one bow as they do apart', () => {
    const [a, b] = [neckMesh(build), boardMesh(build)];
    const reader = createBowReader();
    reader.load(hump(400, 0.3, 40, 50));
    const bent = [a, b, mergeMeshes([a, b])].map((mesh) => {
      const bender = createBender(mesh);
      bender.bend(reader);
      return bender.positions;
    });
    expect(bent[2].slice(0, bent[0].length)).toEqual(bent[0]);
    expect(bent[2].slice(bent[0].length)).toEqual(bent[1]);
  });
});
