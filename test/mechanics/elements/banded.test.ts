/**
 * The banded solver beside the dense factorisations of ml-matrix, a general-purpose matrix library.
 */
import fc from 'fast-check';
import { CholeskyDecomposition, Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { assemble, hold, multiply, withSlots } from '../../../src/mechanics/elements/assembly.ts';
import {
  bandLength,
  bandStride,
  blockIndex,
  createBlock,
  factorise,
  LANES,
  solveBlock,
  type BandFactor,
  type BandShape,
} from '../../../src/mechanics/elements/banded.ts';
import { solveDense } from '../../../src/mechanics/elements/dense.ts';
import { EMPTY } from '../../../src/mechanics/description.ts';
import { createLoads } from '../../../src/mechanics/elements/loads.ts';
import { createMesh } from '../../../src/mechanics/elements/mesh.ts';
import { createSection } from '../../../src/mechanics/elements/section.ts';
import { expectNothing } from '../../expect-near.ts';
import { displacementsOf, forcesOf } from '../load-cases.ts';
import { SMALL_NECK } from '../necks.ts';

function toDense(shape: BandShape, band: ArrayLike<number>): Matrix {
  const dense = Matrix.zeros(shape.order, shape.order);
  for (let j = 0; j < shape.order; j += 1) {
    for (let k = 0; k <= shape.halfBandwidth && j + k < shape.order; k += 1) {
      dense.set(j + k, j, band[j * bandStride(shape) + k]);
      dense.set(j, j + k, band[j * bandStride(shape) + k]);
    }
  }
  return dense;
}

interface System {
  readonly shape: BandShape;
  readonly band: Float64Array;
  readonly right: readonly (readonly number[])[];
}

/** Entries in −1 … 1 and a diagonal that outweighs them: symmetric, positive definite, not too well conditioned. */
const system: fc.Arbitrary<System> = fc
  .record({
    order: fc.integer({ min: 1, max: 40 }),
    most: fc.integer({ min: 1, max: 12 }),
    columns: fc.integer({ min: 1, max: 9 }),
  })
  .chain(({ order, most, columns }) => {
    const halfBandwidth = Math.min(most, Math.max(1, order - 1));
    const shape = { order, halfBandwidth };
    const entry = fc.double({ min: -1, max: 1, noNaN: true });
    return fc
      .record({
        entries: fc.array(entry, { minLength: order * (halfBandwidth + 1), maxLength: order * (halfBandwidth + 1) }),
        right: fc.array(fc.array(entry, { minLength: order, maxLength: order }), {
          minLength: columns,
          maxLength: columns,
        }),
      })
      .map(({ entries, right }) => {
        const band = new Float64Array(bandLength(shape));
        const weight = new Float64Array(order).fill(0.01);
        for (let j = 0; j < order; j += 1) {
          for (let k = 1; k <= halfBandwidth && j + k < order; k += 1) {
            const value = entries[j * (halfBandwidth + 1) + k];
            band[j * bandStride(shape) + k] = value;
            weight[j] += Math.abs(value);
            weight[j + k] += Math.abs(value);
          }
        }
        for (let j = 0; j < order; j += 1) band[j * bandStride(shape)] = weight[j]!;
        return { shape, band, right };
      });
  });

/** Solves for right-hand sides, four at a time. @param firstRow of all of them. */
function solveColumns(factor: BandFactor, right: readonly (readonly number[])[], firstRow?: number): number[][] {
  const solved: number[][] = [];
  for (let c = 0; c < right.length; c += LANES) {
    const together = right.slice(c, c + LANES);
    const block = createBlock(factor.order);
    together.forEach((column, lane) => column.forEach((value, row) => (block[blockIndex(row, lane)] = value)));
    solveBlock(factor, block, firstRow);
    solved.push(...together.map((column, lane) => column.map((_, row) => block[blockIndex(row, lane)])));
  }
  return solved;
}

describe('random symmetric positive definite systems (seed 1201)', () => {
  it('solves them as the dense Cholesky factorisation of ml-matrix does', () => {
    fc.assert(
      fc.property(system, ({ shape, band, right }) => {
        const dense = new CholeskyDecomposition(toDense(shape, band));
        const expected = dense.solve(new Matrix(right.map((column) => [...column])).transpose());
        const solved = solveColumns(factorise(shape, Float64Array.from(band)), right);
        const scale = Math.max(1e-300, ...expected.to1DArray().map(Math.abs));
        right.forEach((column, c) =>
          column.forEach((_, row) =>
            expectNothing(
              solved[c][row] - expected.get(row, c),
              scale,
              1e-9,
              'two factorisations in double precision; condition numbers up to 1e5',
            ),
          ),
        );
      }),
      { seed: 1201, numRuns: 150 },
    );
  });

  it('multiplies as the dense matrix does', () => {
    fc.assert(
      fc.property(system, ({ shape, band, right }) => {
        const expected = toDense(shape, band).mmul(Matrix.columnVector([...right[0]]));
        const actual = multiply(shape, band, right[0]);
        actual.forEach((value, row) =>
          expectNothing(
            value - expected.get(row, 0),
            1 + Math.abs(expected.get(row, 0)),
            1e-13,
            'sums of a few products',
          ),
        );
      }),
      { seed: 1201, numRuns: 100 },
    );
  });

  it('starts the substitution at the first row with a load, with the same result', () => {
    fc.assert(
      fc.property(system, fc.double({ min: 0, max: 0.99, noNaN: true }), ({ shape, band, right }, share) => {
        const first = Math.floor(share * shape.order);
        const loaded = right.map((column) => column.map((value, row) => (row < first ? 0 : value)));
        const factor = factorise(shape, Float64Array.from(band));
        const whole = solveColumns(factor, loaded);
        const late = solveColumns(factor, loaded, first);
        expect(late).toEqual(whole);
      }),
      { seed: 1201, numRuns: 60 },
    );
  });

  it('solves small dense systems from their lower triangle', () => {
    fc.assert(
      fc.property(system, ({ shape, band, right }) => {
        const dense = toDense(shape, band);
        const flat = Float64Array.from(dense.to1DArray());
        for (let i = 0; i < shape.order; i += 1) flat.fill(Number.NaN, i * shape.order + i + 1, (i + 1) * shape.order);
        const x = Float64Array.from(right[0]);
        solveDense(flat, x);
        const expected = solve(dense, Matrix.columnVector([...right[0]]));
        const scale = Math.max(1e-300, ...expected.to1DArray().map(Math.abs));
        x.forEach((value, row) =>
          expectNothing(value - expected.get(row, 0), scale, 1e-9, 'two factorisations in double precision'),
        );
      }),
      { seed: 1201, numRuns: 60 },
    );
  });
});

describe('a small neck', () => {
  it('has the displacements that the dense factorisation of ml-matrix gives it', () => {
    const assembly = assemble(createMesh(createSection(SMALL_NECK)));
    const loads = createLoads(assembly);
    const columns = loads.cases.length;
    const { order } = assembly.shape;
    expect(order).toBeGreaterThan(300);
    expect(order).toBeLessThan(1500);
    const displacements = displacementsOf(assembly, loads, hold(assembly, withSlots(assembly, EMPTY)));

    const dense = toDense(assembly.shape, withSlots(assembly, EMPTY));
    const right = Matrix.zeros(order, columns);
    for (let c = 0; c < columns; c += 1) right.setColumn(c, forcesOf(loads, c, order));
    for (const dof of assembly.held) {
      for (let i = 0; i < order; i += 1) {
        dense.set(dof, i, 0);
        dense.set(i, dof, 0);
      }
      dense.set(dof, dof, 1);
      for (let c = 0; c < columns; c += 1) right.set(dof, c, 0);
    }
    const cholesky = new CholeskyDecomposition(dense);
    expect(cholesky.isPositiveDefinite()).toBe(true);
    const expected = cholesky.solve(right);
    for (let c = 0; c < columns; c += 1) {
      const column = expected.getColumn(c);
      const scale = Math.max(...column.map(Math.abs));
      const worst = Math.max(...column.map((value, row) => Math.abs(value - displacements[c][row])));
      // Without a rod its three load cases are empty.
      const empty = column.every((value) => value === 0);
      expectNothing(worst, empty ? 1 : scale, empty ? 0 : 1e-8, 'condition number of a slender beam, about 1e7');
    }
  });
});

describe('what cannot be factorised', () => {
  it('is refused by the number of its pivot', () => {
    const shape = { order: 3, halfBandwidth: 1 };
    const band = new Float64Array(bandLength(shape));
    const stride = bandStride(shape);
    // [[1, 2, 0], [2, 1, 0], [0, 0, 1]] has the eigenvalue −1.
    band[0] = 1;
    band[1] = 2;
    band[stride] = 1;
    band[2 * stride] = 1;
    expect(() => factorise(shape, band)).toThrow('matrix-not-positive, row 1, pivot -3');
  });

  it('is refused when it holds no numbers', () => {
    const shape = { order: 2, halfBandwidth: 1 };
    expect(() => factorise(shape, new Float64Array(bandLength(shape)).fill(Number.NaN))).toThrow(RangeError);
  });
});
