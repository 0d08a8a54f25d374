/** Every load case is in equilibrium by itself, and the solution balances it. */
import { describe, expect, it } from 'vitest';
import { hold, multiply, withSlots, type Assembly } from '../../../src/mechanics/elements/assembly.ts';
import { EMPTY, UNCUT, type SlotFilling } from '../../../src/mechanics/description.ts';
import { createNeckModel } from '../../../src/mechanics/influence.ts';
import {
  CASES,
  caseColumn,
  contactWeights,
  type CaseName,
  type LoadBlock,
} from '../../../src/mechanics/elements/loads.ts';
import { loadColumn, nodeAt } from '../../../src/mechanics/elements/mesh.ts';
import { expectNear, expectNothing, ROUNDING } from '../../expect-near.ts';
import { displacementsOf, forcesOf } from '../load-cases.ts';
import { ALL_NECKS, DEFAULT_NECK } from '../necks.ts';

const FILLED: SlotFilling = { kind: 'filled', modulusMPa: 12_000, reach: 0.7 };

/** Sums of forces, and of moments about the nut end of the crown's line; and the sizes of what was summed. */
function resultant({ mesh }: Assembly, force: Float64Array) {
  let along = 0, across = 0, moment = 0, size = 0, leverage = 0; // prettier-ignore
  for (let c = 0; c < mesh.columnXMm.length; c += 1) {
    for (let row = 0; row <= mesh.rows; row += 1) {
      const node = nodeAt(mesh, c, row);
      const fx = force[2 * node];
      const fy = force[2 * node + 1];
      const x = mesh.columnXMm[c];
      const y = mesh.nodeYMm[node];
      along += fx;
      across += fy;
      moment += x * fy - y * fx;
      size += Math.abs(fx) + Math.abs(fy);
      leverage += Math.abs(x * fy) + Math.abs(y * fx);
    }
  }
  return { along, across, moment, size, leverage };
}

/** The slots first, then the named cases. */
function namesOf(loads: LoadBlock): string[] {
  return loads.cases.map((_, c) => (c < loads.wedges ? `wedge ${c + 1}` : CASES[c - loads.wedges]));
}

/** Cases with a load, by their column; a neck without a rod leaves those of the rod empty. */
function loadedCases(loads: LoadBlock, hasRod: boolean): (readonly [name: string, column: number])[] {
  return namesOf(loads)
    .map((name, c) => [name, c] as const)
    .filter(([name]) => hasRod || !name.startsWith('rod'));
}

describe.each(ALL_NECKS)('the load cases of %s', (_name, neck) => {
  const model = createNeckModel(neck);
  const { assembly, loads } = model;
  const { order } = assembly.shape;
  const cases = loadedCases(loads, neck.rod !== null);

  it('balance by themselves', () => {
    cases.forEach(([name, c]) => {
      const sum = resultant(assembly, forcesOf(loads, c, order));
      expectNothing(sum.along, sum.size, 1e-11, `${name}: forces along the neck`);
      expectNothing(sum.across, sum.size, 1e-11, `${name}: forces across the neck`);
      expectNothing(sum.moment, sum.leverage, 1e-11, `${name}: moments`);
    });
  });

  it.each([
    ['empty', EMPTY],
    ['uncut', UNCUT],
    ['filled', FILLED],
  ] as const)('are balanced by the solution, supports included: slots %s', (_slots, filling) => {
    const band = withSlots(assembly, filling);
    const stiffness = Float64Array.from(band);
    const displacements = displacementsOf(assembly, loads, hold(assembly, band));
    let worst = 0;
    cases.forEach(([, c]) => {
      const u = displacements[c];
      const force = forcesOf(loads, c, order);
      const inner = multiply(assembly.shape, stiffness, u);
      const load = force.reduce((sum, f) => sum + Math.abs(f), 0);
      // Held or not: a load in equilibrium leaves nothing for determinate supports to carry.
      inner.forEach((f, row) => (worst = Math.max(worst, Math.abs(f - force[row]) / load)));
    });
    // The greatest nodal force that K·u − f leaves, beside all that was put on.
    expect(worst).toBeLessThan(1e-9);
    expect(worst).toBeGreaterThan(0);
  });
});

it('a neck without a rod has no load from one', () => {
  const { assembly, loads } = createNeckModel({ ...DEFAULT_NECK, rod: null });
  expect(loadedCases(loads, false)).toHaveLength(loads.cases.length - 3);
  for (const name of ['rodPull', 'rodCouple', 'rodCurve'] as const) {
    expect(resultant(assembly, forcesOf(loads, caseColumn(loads.wedges, name), assembly.shape.order)).size).toBe(0);
  }
});

describe('what the cases are', () => {
  const { assembly, loads } = createNeckModel(DEFAULT_NECK);
  const { order } = assembly.shape;
  const { mesh } = assembly;

  /** Force and moment about y = 0 that a case puts on one column of nodes. */
  function onColumn(name: CaseName, at: number) {
    const force = forcesOf(loads, caseColumn(loads.wedges, name), order);
    let along = 0, across = 0, moment = 0; // prettier-ignore
    for (let row = 0; row <= mesh.rows; row += 1) {
      const node = nodeAt(mesh, at, row);
      along += force[2 * node];
      across += force[2 * node + 1];
      moment += force[2 * node] * mesh.nodeYMm[node];
    }
    return { along, across, moment };
  }

  it('the pull enters at the nut on the line of the crown', () => {
    const { along, across, moment } = onColumn('pull', 0);
    expectNear(along, 1, ROUNDING, 'by construction');
    expectNothing(across, 1, 1e-12, 'none');
    expectNothing(moment, 20, 1e-11, 'on y = 0');
    expectNear(onColumn('pull', mesh.jointColumn).along, -1, ROUNDING, 'and leaves at the joint');
  });

  it('the couple is one newton-millimetre', () => {
    expectNear(onColumn('couple', 0).moment, 1, ROUNDING, 'by construction');
    expectNothing(onColumn('couple', 0).along, 1, 1e-12, 'no force');
  });

  it('the slope pushes down at the nut and is held with its couple at the joint', () => {
    expectNear(onColumn('slope', 0).across, 1, ROUNDING, 'by construction');
    expectNear(onColumn('slope', mesh.jointColumn).moment, -mesh.columnXMm[mesh.jointColumn], ROUNDING, 'force × span');
  });

  it('a wedge presses both walls over the contact depth alone, one newton each', () => {
    const force = forcesOf(loads, 4, order);
    const left = mesh.slotLeftColumn[4];
    const wall = (c: number) => Array.from({ length: mesh.rows + 1 }, (_, row) => force[2 * nodeAt(mesh, c, row)]);
    const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
    expectNear(sum(wall(left)), -1, ROUNDING, 'towards the nut');
    expectNear(sum(wall(left + 1)), 1, ROUNDING, 'towards the body');
    // Of the rows on the wall two are the contact's.
    expect(
      wall(left)
        .slice(3)
        .every((value) => value === 0),
    ).toBe(true);
    expectNear(sum([...contactWeights(mesh, 4)]), 1, ROUNDING, 'weights of a mean');
  });

  it.each([1.2, 0.5, 0.1, 0.06, 0])(
    'a wedge presses half way down the tang, %d mm above the floor of its slot',
    (airMm) => {
      const slot = { ...DEFAULT_NECK.slot, contactDepthMm: DEFAULT_NECK.slot.depthMm - airMm };
      const { mesh: other } = createNeckModel({ ...DEFAULT_NECK, slot }).assembly;
      const left = other.slotLeftColumn[4];
      const weights = [...contactWeights(other, 4)];
      const y = weights.map((_, row) => other.nodeYMm[nodeAt(other, left, row)]);
      const middle = weights.reduce((total, weight, row) => total + weight * (y[row] - y[0]), 0);
      expectNear(middle, slot.contactDepthMm / 2, ROUNDING, 'an even pressure');
    },
  );

  it('a curved rod of 1 N bears up on the wood by its curvature, 8·c/L² for each mm, shared below the board', () => {
    // The bar lies on y = 4·c·s(1 − s), c = 1 mm: along the neck its push is 8·c/L² N/mm. A column takes half of what lies
    // between its neighbours; the two anchors take the end slopes, 4·c/L less half an interval each: all of it together none.
    const force = forcesOf(loads, caseColumn(loads.wedges, 'rodCurve'), order);
    const across = (column: number) =>
      Array.from({ length: mesh.rows + 1 }, (_, row) => force[2 * nodeAt(mesh, column, row) + 1]);
    const start = loadColumn(mesh, mesh.section.description.rod!.startMm);
    const end = loadColumn(mesh, mesh.section.description.rod!.endMm);
    const x = mesh.columnXMm;
    const length = x[end] - x[start];
    for (let column = start + 1; column < end; column += 1) {
      const push = -(8 / length ** 2) * ((x[column + 1] - x[column - 1]) / 2);
      const nodes = across(column);
      const bearing = nodes.slice(mesh.boardRows, mesh.rows);
      // Even over the wood below the board, from the glue line to the last row of nodes above the back.
      bearing.forEach((value) => expectNear(value, push / bearing.length, 1e-9, 'worked by hand'));
      expect([...nodes.slice(0, mesh.boardRows), nodes.at(-1)!].every((value) => value === 0)).toBe(true);
    }
    const anchor = (column: number, next: number) => {
      const expected = 4 / length - (8 / length ** 2) * (Math.abs(x[next] - x[column]) / 2);
      expectNear(
        across(column).reduce((total, value) => total + value, 0),
        expected,
        1e-9,
        'worked by hand',
      );
    };
    anchor(start, start + 1);
    anchor(end, end - 1);
    // A bar pushes across alone.
    expect(force.every((value, freedom) => freedom % 2 === 1 || value === 0)).toBe(true);
  });
});
