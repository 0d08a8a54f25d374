/** The computed stress as a flat mesh on the cut across a slot; values are averaged at the corners that elements share. */
import type { StressField } from '../../mechanics/elements/stress.ts';
import { createMeshWriter, type Mesh } from '../../geometry/mesh.ts';

export interface StressFace {
  readonly mesh: Mesh;
  /** MPa at each vertex. */
  readonly valuesMPa: Float32Array;
  /** Round number that bounds all but the peaks; colours end there. */
  readonly limitMPa: number;
}

/** 1, 2 or 5 times a power of ten, at least the value. */
export function roundLimit(value: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(value, 1e-6)));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= value * 0.999) ?? 10 * power;
}

export function stressFace(field: StressField, zMm: number): StressFace {
  const writer = createMeshWriter();
  const known = new Map<string, number>();
  const sums: number[] = [];
  const counts: number[] = [];
  const { cornersMm, alongMPa } = field;
  alongMPa.forEach((value, element) => {
    const corners = [0, 1, 2, 3].map((corner) => {
      const [x, depth] = [cornersMm[8 * element + 2 * corner], cornersMm[8 * element + 2 * corner + 1]];
      const key = `${x.toFixed(5)} ${depth.toFixed(5)}`;
      let vertex = known.get(key);
      if (vertex === undefined) {
        vertex = writer.vertex(x, -depth, zMm, 0, 0, 1);
        known.set(key, vertex);
        sums.push(0);
        counts.push(0);
      }
      sums[vertex] += value;
      counts[vertex] += 1;
      return vertex;
    });
    // Nut side top, body side top, body side bottom, nut side bottom: the other way round faces the viewer.
    writer.quad(corners[0], corners[3], corners[2], corners[1]);
  });
  const sizes = alongMPa.map(Math.abs).toSorted();
  const bulk = sizes[Math.floor(0.98 * (sizes.length - 1))] ?? 0;
  return {
    mesh: writer.finish(),
    valuesMPa: Float32Array.from(sums, (sum, i) => sum / counts[i]),
    limitMPa: roundLimit(bulk),
  };
}
