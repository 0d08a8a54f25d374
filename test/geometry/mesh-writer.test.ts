import { expect, test } from 'vitest';
import { createMeshWriter } from '../../src/geometry/mesh.ts';

/** A fan of triangles, larger than a writer's first room. */
function fan(writer: ReturnType<typeof createMeshWriter>, from: number, count: number): void {
  for (let i = from; i < from + count; i++) {
    const a = writer.vertex(i, 0, 1, 0, 1, 0);
    if (a >= 2) writer.triangle(0, a - 1, a);
  }
}

test('a finished mesh stays as it is while others are written in the same room', () => {
  const writer = createMeshWriter();
  fan(writer, 0, 3000);
  const mesh = writer.finish();
  const before = structuredClone(mesh);
  const other = createMeshWriter();
  other.colour('#102030');
  other.fret(3);
  other.shade(0.5, 0.5);
  fan(other, 10_000, 5000);
  other.finish();
  expect(mesh).toEqual(before);
  // Nothing of the earlier one is left in a later one.
  const last = createMeshWriter();
  fan(last, 0, 3000);
  expect(last.finish()).toEqual(before);
});

test('two meshes written at once do not mix', () => {
  const [one, other] = [createMeshWriter(), createMeshWriter()];
  for (let i = 0; i < 4; i++) {
    fan(one, i, 1);
    fan(other, 100 + i, 1);
  }
  expect([...one.finish().anchorsMm]).toEqual([0, 1, 2, 3]);
  expect([...other.finish().anchorsMm]).toEqual([100, 101, 102, 103]);
});
