/** The soft shadow of the neck on the bench below it: a ribbon along the neck, wider and fainter the higher the neck stands. */
import { BufferAttribute, BufferGeometry, DynamicDrawUsage, Mesh, type Material } from 'three';
import type { Build } from '../neck/build.ts';
import { boardEndMm, boardWidthMm, heelDepthMm, totalThicknessMm } from '../neck/neck-shape.ts';
import type { BowReader } from '../geometry/bend.ts';
import { HEAD_STUB_MM } from '../geometry/neck.ts';

const COLUMNS = 56;
const ROWS = [-1, -0.45, 0, 0.45, 1];
const STRENGTH = 0.34;
/** Air between the lowest point of the neck and the bench. */
const AIR_MM = 3;

export interface BenchShadow {
  readonly object: Mesh;
  /** Height of the bench. */
  benchY(): number;
  update(build: Build, reader: BowReader): void;
  dispose(): void;
}

export function createBenchShadow(material: Material): BenchShadow {
  const positions = new Float32Array(COLUMNS * ROWS.length * 3);
  const across = new Float32Array(COLUMNS * ROWS.length);
  const strength = new Float32Array(COLUMNS * ROWS.length);
  const undersides = new Float64Array(COLUMNS);
  const xs = new Float64Array(COLUMNS);
  const index: number[] = [];
  for (let c = 0; c < COLUMNS; c++) {
    ROWS.forEach((row, r) => {
      across[c * ROWS.length + r] = row;
      if (c + 1 < COLUMNS && r + 1 < ROWS.length) {
        const a = c * ROWS.length + r;
        const b = a + ROWS.length;
        index.push(a, a + 1, b + 1, a, b + 1, b);
      }
    });
  }
  const geometry = new BufferGeometry();
  const position = new BufferAttribute(positions, 3).setUsage(DynamicDrawUsage);
  const strengths = new BufferAttribute(strength, 1).setUsage(DynamicDrawUsage);
  geometry.setAttribute('position', position);
  geometry.setAttribute('across', new BufferAttribute(across, 1));
  geometry.setAttribute('strength', strengths);
  geometry.setIndex(index);
  const object = new Mesh(geometry, material);
  object.frustumCulled = false;
  object.renderOrder = -1;
  object.matrixAutoUpdate = false;
  let bench = 0;
  return {
    object,
    benchY: () => bench,
    update(build, reader) {
      const from = -HEAD_STUB_MM;
      const to = boardEndMm(build);
      let lowest = Infinity;
      for (let c = 0; c < COLUMNS; c++) {
        const x = from + ((to - from) * c) / (COLUMNS - 1);
        reader.at(x);
        const depth = totalThicknessMm(build, Math.max(0, x)) + heelDepthMm(build, x);
        xs[c] = x + depth * reader.slope;
        undersides[c] = reader.height - depth;
        lowest = Math.min(lowest, undersides[c]);
      }
      bench = lowest - AIR_MM;
      for (let c = 0; c < COLUMNS; c++) {
        const x = from + ((to - from) * c) / (COLUMNS - 1);
        const air = undersides[c] - bench;
        const head = x < -14 ? 1 + 0.42 * Math.min(1, (-14 - x) / 56) : 1;
        const half = (boardWidthMm(build, Math.max(0, x)) / 2) * head + 3 + 0.55 * air;
        const atEnds = Math.min(1, Math.min(c, COLUMNS - 1 - c) / 2.5);
        const dark = (STRENGTH * atEnds) / (1 + air / 26);
        for (let r = 0; r < ROWS.length; r++) {
          const v = c * ROWS.length + r;
          positions[3 * v] = xs[c];
          positions[3 * v + 1] = bench;
          positions[3 * v + 2] = ROWS[r] * half + 0.12 * air;
          strength[v] = dark;
        }
      }
      position.needsUpdate = true;
      strengths.needsUpdate = true;
    },
    dispose: () => geometry.dispose(),
  };
}
