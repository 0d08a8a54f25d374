/** The judge of solids notices what it is there for: boxes that are whole, open, inside out, and run through each other. */
import { expect, test } from 'vitest';
import { createMeshWriter, type Mesh } from '../../src/geometry/mesh.ts';
import { mergeMeshes } from '../../src/geometry/merge.ts';
import { judge, looseEdges, solidOf } from './solid.ts';

type Span = readonly [from: number, to: number];

/** A box; `faces` of its six are there. */
function box([x0, x1]: Span, [y0, y1]: Span, [z0, z1]: Span, faces = 6, outward = true): Mesh {
  const writer = createMeshWriter();
  const all: readonly (readonly [number, number, number])[][] = [
    [[x0, y0, z0], [x0, y0, z1], [x0, y1, z1], [x0, y1, z0]], // prettier-ignore
    [[x1, y0, z0], [x1, y1, z0], [x1, y1, z1], [x1, y0, z1]], // prettier-ignore
    [[x0, y0, z0], [x1, y0, z0], [x1, y0, z1], [x0, y0, z1]], // prettier-ignore
    [[x0, y1, z0], [x0, y1, z1], [x1, y1, z1], [x1, y1, z0]], // prettier-ignore
    [[x0, y0, z0], [x0, y1, z0], [x1, y1, z0], [x1, y0, z0]], // prettier-ignore
    [[x0, y0, z1], [x1, y0, z1], [x1, y1, z1], [x0, y1, z1]], // prettier-ignore
  ];
  for (const corners of all.slice(0, faces)) {
    const [a, b, c, d] = corners.map(([x, y, z]) => writer.vertex(x, y, z, 1, 0, 0));
    if (outward) writer.quad(a, b, c, d);
    else writer.quad(d, c, b, a);
  }
  return writer.finish();
}

const whole = box([0, 100], [0, 10], [0, 20]);

test('a whole box is closed, does not cross itself, and has its volume', () => {
  const { loose, crossings, signedVolumeMm3, solid } = judge(whole);
  expect([loose, crossings, signedVolumeMm3]).toEqual([[], [], 20_000]);
  expect([solid.status, solid.genus]).toEqual(['NoError', 0]);
});

test('a box without a lid has loose edges', () => {
  const open = box([0, 100], [0, 10], [0, 20], 5);
  expect(looseEdges(open)).toHaveLength(4);
  expect(() => solidOf(open)).toThrow('Not manifold');
});

test('a box that is inside out has a volume less than nothing', () => {
  expect(judge(box([0, 100], [0, 10], [0, 20], 6, false)).signedVolumeMm3).toBe(-20_000);
});

test.each<[string, Span, Span, Span, boolean]>([
  ['a corner that reaches in by 5 µm', [99.995, 150], [-5, 9], [-5, 19], true],
  ['a bar through its sides', [40, 60], [2, 8], [-30, 50], true],
  ['a bar along it, through both ends', [-20, 120], [2, 8], [5, 15], true],
  ['one far away', [200, 300], [0, 10], [0, 20], false],
  ['one that lies against its end', [100, 150], [2, 8], [5, 15], false],
  ['one that stands on it', [20, 30], [10, 40], [5, 15], false],
  ['one beside it, as long as it is', [0, 100], [0, 10], [30, 50], false],
])('crossings of a box and %s', (_, x, y, z, crosses) => {
  const both = mergeMeshes([whole, box(x, y, z)]);
  expect(judge(both).crossings.length > 0).toBe(crosses);
});
