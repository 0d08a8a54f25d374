/**
 * The element by itself: patch test, rigid bodies, symmetry, and beams of it against beam theory.
 * Patch test: Irons & Razzaque 1972; the QM6 element passes it in any shape (Taylor, Beresford & Wilson 1976, from memory).
 */
import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { elementStiffness, elementWork } from '../../../src/mechanics/elements/element.ts';
import { expectNear, expectNothing } from '../../expect-near.ts';
import { edgeTraction, isotropic, orthotropic, planeModel, type Stiffness } from './plane-model.ts';

/** Sugar maple LT, about. */
const WOOD = orthotropic(13_000, 0.065, 0.063, 0.45);
const ACROSS = [0, 3, 5.5, 9];
const DOWN = [0, 2, 4.5, 6];

/** Elastic constants of a wood or a metal; the condition on Poisson's ratio keeps the matrix positive definite. */
const material: fc.Arbitrary<Stiffness> = fc
  .record({
    modulus: fc.double({ min: 5e3, max: 2e5, noNaN: true }),
    depth: fc.double({ min: 0.04, max: 1, noNaN: true }),
    shear: fc.double({ min: 0.02, max: 0.45, noNaN: true }),
    poisson: fc.double({ min: 0, max: 0.45, noNaN: true }),
  })
  .map(({ modulus, depth, shear, poisson }) => orthotropic(modulus, depth, shear, poisson));

/** Moves of the four inner nodes, up to a third of an element. */
const moves = fc.array(
  fc.tuple(fc.double({ min: -0.6, max: 0.6, noNaN: true }), fc.double({ min: -0.6, max: 0.6, noNaN: true })),
  {
    minLength: 4,
    maxLength: 4,
  },
);

describe('patch test (seed 1301)', () => {
  it('distorted elements carry any constant strain exactly', () => {
    const strain = fc.double({ min: -1e-3, max: 1e-3, noNaN: true });
    fc.assert(
      fc.property(material, moves, strain, strain, strain, (c, inner, ex, ey, gamma) => {
        fc.pre(Math.max(Math.abs(ex), Math.abs(ey), Math.abs(gamma)) > 1e-5);
        const model = planeModel({
          xs: ACROSS,
          ys: DOWN,
          stiffness: () => c,
          move: (column, row) => (column % 3 === 0 || row % 3 === 0 ? [0, 0] : inner[(column - 1) * 2 + row - 1]),
        });
        const exact = (x: number, y: number) => [ex * x + gamma * y, ey * y] as const;
        const held = new Map<number, number>();
        for (let column = 0; column < 4; column += 1) {
          for (let row = 0; row < 4; row += 1) {
            if (column % 3 !== 0 && row % 3 !== 0) continue;
            const { x, y, dof } = model.node(column, row);
            const [u, v] = exact(x, y);
            held.set(dof, u);
            held.set(dof + 1, v);
          }
        }
        const u = model.solve(new Float64Array(model.shape.order), held);
        const scale = 9 * Math.max(Math.abs(ex), Math.abs(ey), Math.abs(gamma));
        for (const [column, row] of [
          [1, 1],
          [1, 2],
          [2, 1],
          [2, 2],
        ] as const) {
          const { x, y, dof } = model.node(column, row);
          const [ux, uy] = exact(x, y);
          expectNothing(u[dof] - ux, scale, 1e-9, 'exact but for rounding');
          expectNothing(u[dof + 1] - uy, scale, 1e-9, 'exact but for rounding');
        }
      }),
      { seed: 1301, numRuns: 100 },
    );
  });
});

describe('one element (seed 1302)', () => {
  const corners = fc
    .array(
      fc.tuple(fc.double({ min: -0.25, max: 0.25, noNaN: true }), fc.double({ min: -0.25, max: 0.25, noNaN: true })),
      { minLength: 4, maxLength: 4 },
    )
    .map((off) => ({
      x: [0, 2, 2, 0].map((x, i) => x + off[i][0]),
      y: [0, 0, 1, 1].map((y, i) => y + off[i][1]),
    }));

  function stiffnessOf(x: readonly number[], y: readonly number[], c: Stiffness): Matrix {
    const work = elementWork();
    elementStiffness(x, y, [...c, ...c, ...c, ...c], 0, work);
    return Matrix.from1DArray(8, 8, [...work.stiffness]);
  }

  it('has three rigid motions, and resists every other', () => {
    fc.assert(
      fc.property(corners, material, ({ x, y }, c) => {
        const stiffness = stiffnessOf(x, y, c);
        expect(stiffness.isSymmetric()).toBe(true);
        // Eigenvalues by ml-matrix.
        const values = new EigenvalueDecomposition(stiffness, { assumeSymmetric: true }).realEigenvalues.toSorted(
          (a, b) => a - b,
        );
        const most = values.at(-1)!;
        for (const value of values.slice(0, 3)) expectNothing(value, most, 1e-11, 'rounding');
        expect(values[3] / most).toBeGreaterThan(1e-5);
        const rigid = [x.flatMap(() => [1, 0]), x.flatMap(() => [0, 1]), x.flatMap((xi, i) => [-y[i], xi])];
        for (const motion of rigid) {
          const force = stiffness.mmul(Matrix.columnVector(motion)).to1DArray();
          for (const f of force) expectNothing(f, most, 1e-11, 'no force from a rigid motion but rounding');
        }
      }),
      { seed: 1302, numRuns: 200 },
    );
  });

  it('is as stiff as its modulus, wherever it lies', () => {
    fc.assert(
      fc.property(corners, material, ({ x, y }, c) => {
        const once = stiffnessOf(x, y, c);
        const twice = stiffnessOf(
          x.map((xi) => xi + 400),
          y,
          [2 * c[0], 2 * c[1], 2 * c[2], 2 * c[3]],
        );
        const most = Math.max(...once.to1DArray().map(Math.abs));
        once
          .to1DArray()
          .forEach((value, at) =>
            expectNothing(twice.to1DArray()[at] - 2 * value, most, 1e-9, 'coordinates of 400 mm cost three digits'),
          );
      }),
      { seed: 1302, numRuns: 50 },
    );
  });

  it('strains freely without force: the free-strain force is the stiffness times that strain', () => {
    fc.assert(
      fc.property(corners, material, ({ x, y }, c) => {
        const work = elementWork();
        elementStiffness(x, y, [...c, ...c, ...c, ...c], 2e-3, work);
        const displacement = Matrix.columnVector(x.flatMap((xi) => [2e-3 * xi, 0]));
        const force = Matrix.from1DArray(8, 8, [...work.stiffness])
          .mmul(displacement)
          .to1DArray();
        const scale = Math.max(...force.map(Math.abs));
        force.forEach((f, at) =>
          expectNothing(f - work.freeStrainForce[at], scale, 1e-10, 'two sums of the same products'),
        );
      }),
      { seed: 1302, numRuns: 100 },
    );
  });

  it('does not know which way is up: turned with its material, it is as stiff', () => {
    const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    fc.assert(
      fc.property(corners, turn, fc.double({ min: 0, max: 0.45, noNaN: true }), ({ x, y }, angle, poisson) => {
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        const c = isotropic(10_000, poisson);
        const turned = stiffnessOf(
          x.map((xi, i) => cos * xi - sin * y[i]),
          x.map((xi, i) => sin * xi + cos * y[i]),
          c,
        );
        const rotation = Matrix.zeros(8, 8);
        for (let a = 0; a < 8; a += 2)
          rotation.setSubMatrix(
            [
              [cos, -sin],
              [sin, cos],
            ],
            a,
            a,
          );
        const expected = rotation.mmul(stiffnessOf(x, y, c)).mmul(rotation.transpose());
        const most = Math.max(...expected.to1DArray().map(Math.abs));
        turned
          .to1DArray()
          .forEach((value, at) => expectNothing(value - expected.to1DArray()[at], most, 1e-10, 'rounding'));
      }),
      { seed: 1302, numRuns: 100 },
    );
  });

  it('is refused when it is turned inside out', () => {
    expect(() => stiffnessOf([0, 2, 2, 0], [1, 1, 0, 0], WOOD)).toThrow('element-inside-out, xMm 0, yMm 1');
    expect(() => stiffnessOf([0, 2, 0.1, 0], [0, 0, 0.1, 1], WOOD)).toThrow(RangeError);
  });
});

describe('beams of few elements', () => {
  const LENGTH = 200;
  const HEIGHT = 10;

  /** A beam held at x = 0, with tractions on both ends; returns the depth displacement of the axis at the far end. */
  function tipDepth(columns: number, rows: number, c: Stiffness, traction: (y: number) => number, slant = 0): number {
    const xs = Array.from({ length: columns + 1 }, (_, i) => (LENGTH * i) / columns);
    const ys = Array.from({ length: rows + 1 }, (_, i) => (HEIGHT * i) / rows);
    const model = planeModel({
      xs,
      ys,
      stiffness: () => c,
      move: (column, row) => (column > 0 && column < columns ? [slant * (row / rows - 0.5), 0] : [0, 0]),
    });
    const held = new Map<number, number>();
    for (let row = 0; row <= rows; row += 1) held.set(model.node(0, row).dof, 0);
    const middle = rows / 2;
    held.set(model.node(0, middle).dof + 1, 0);
    const u = model.solve(edgeTraction(model, columns, ys, traction), held);
    return u[model.node(columns, middle).dof + 1];
  }

  it.each([
    ['isotropic', isotropic(10_000, 0.3), 10_000],
    ['wood', WOOD, 13_000],
  ] as const)('two elements through the depth carry pure bending exactly: %s', (_name, c, modulus) => {
    // Moment of the traction: ∫ s·(2(y − h/2)/h)·y dy = s·h²/6, so κ = 2s/(E·h), v = κ·L²/2.
    const stress = 5;
    const expected = ((2 * stress) / (modulus * HEIGHT)) * (LENGTH ** 2 / 2);
    const depth = tipDepth(10, 2, c, (y) => (stress * 2 * (y - HEIGHT / 2)) / HEIGHT);
    expectNear(
      Math.abs(depth),
      expected,
      1e-6,
      'the element contains uniform bending; a condition number of 1e8 costs digits',
    );
  });

  it('slanted elements still bend, by less: a plain bilinear element would lock to a few per cent', () => {
    const stress = 5;
    const straight = tipDepth(20, 2, isotropic(10_000, 0.3), (y) => (stress * 2 * (y - HEIGHT / 2)) / HEIGHT);
    const slanted = tipDepth(20, 2, isotropic(10_000, 0.3), (y) => (stress * 2 * (y - HEIGHT / 2)) / HEIGHT, 3);
    expect(slanted / straight).toBeGreaterThan(0.8);
    expect(slanted / straight).toBeLessThan(1.0001);
  });

  it.each([
    ['isotropic', isotropic(10_000, 0.3), 10_000, 10_000 / 2.6],
    ['wood', WOOD, 13_000, 0.063 * 13_000],
  ] as const)('a cantilever sinks as Timoshenko’s beam does: %s', (_name, c, modulus, shear) => {
    // v = P·L³/(3·E·I) + P·L/(k·G·A), k = 5/6 for a rectangle (Timoshenko & Gere, from memory); thickness 1 mm.
    const xs = Array.from({ length: 41 }, (_, i) => (LENGTH * i) / 40);
    const ys = Array.from({ length: 9 }, (_, i) => (HEIGHT * i) / 8);
    const model = planeModel({ xs, ys, stiffness: () => c });
    const held = new Map<number, number>([[model.node(0, 4).dof + 1, 0]]);
    for (let row = 0; row <= 8; row += 1) held.set(model.node(0, row).dof, 0);
    const forces = new Float64Array(model.shape.order);
    // Parabolic shear on the end, by nodes.
    const weights = ys.map((y, row) => (row === 0 || row === 8 ? 0.5 : 1) * y * (HEIGHT - y));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    weights.forEach((weight, row) => (forces[model.node(40, row).dof + 1] = weight / total));
    const tip = model.solve(forces, held)[model.node(40, 4).dof + 1];
    const inertia = HEIGHT ** 3 / 12;
    const expected = LENGTH ** 3 / (3 * modulus * inertia) + LENGTH / ((5 / 6) * shear * HEIGHT);
    expectNear(tip, expected, 3e-3, 'eight elements through the depth; the clamp holds the warping of its section');
  });
});
