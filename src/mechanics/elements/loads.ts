/**
 * Load cases as nodal forces, each in equilibrium by itself.
 *
 *   wedge i      1 N on each wall of slot i, uniform over the contact depth and the width
 *   pull         1 N along the neck on the line y = 0 (the board's crown), entering at the nut, leaving at the joint
 *   couple       1 N·mm between the nut and the joint
 *   slope        1 N across at the nut, with the couple that balances it at the joint
 *   rod pull     1 N along y = 0 between the rod's anchors
 *   rod couple   1 N·mm between the anchors
 *   rod curve    a bar under 1 N whose middle lies 1 mm below the line of its anchors: its transverse push
 *   board strain a free strain of 1 of the board along the grain (climate)
 *
 * The strings with pull T, height h₀ above the crown at the nut and slope s are T·(pull − h₀·couple − s·slope): their
 * force at the nut is T·(1, −s) at y = −h₀.
 * Axial loads act on the section as a strain linear in depth, so traction is E·(a + b·y), with a and b from
 * Σ F = N and Σ F·y = M. Transverse loads are shared out over the depth by the shear stiffness (Saint-Venant).
 */
import type { Assembly } from './assembly.ts';
import { GAUSS } from './element.ts';
import { loadColumn, nodeAt, type Mesh } from './mesh.ts';

/** The order of the load cases after the n wedges. */
export const CASES = ['pull', 'couple', 'slope', 'rodPull', 'rodCouple', 'rodCurve', 'boardStrain'] as const;
export type CaseName = (typeof CASES)[number];

/** The nodal forces of a load case: `forceN[k]` on the degree of freedom `freedoms[k]`; several on one add up. */
export interface NodalForces {
  readonly freedoms: readonly number[];
  readonly forceN: readonly number[];
}

/** Load cases solved together: either all, or the named ones without the wedges. */
export interface LoadBlock {
  /** Number of wedges, which come first; the named cases follow. */
  readonly wedges: number;
  readonly cases: readonly NodalForces[];
}

/** Where a named case stands after the wedges. */
export function caseColumn(wedges: number, name: CaseName): number {
  return wedges + CASES.indexOf(name);
}

/**
 * Weight of each wall node of a slot in the mean over the contact depth: Σ = 1. Of a row that the contact ends in, the part
 * that it covers counts. Length = slot rows + 1.
 */
export function contactWeights(mesh: Mesh, slot: number): Float64Array {
  const weights = new Float64Array(mesh.slotRows + 1);
  const column = mesh.slotLeftColumn[slot];
  const y = (row: number) => mesh.nodeYMm[nodeAt(mesh, column, row)];
  const floor = mesh.section.contactFloorMm(mesh.section.description.fretXMm[slot]);
  const depth = floor - y(0);
  for (let row = 0; row < mesh.slotRows; row += 1) {
    const height = y(row + 1) - y(row);
    const covered = Math.min(1, (floor - y(row)) / height);
    if (covered <= 0) break;
    // ∫ of the two linear shape functions from the row's top down to where the contact ends.
    const lower = (height * covered * covered) / 2;
    weights[row] += (height * covered - lower) / depth;
    weights[row + 1] += lower / depth;
  }
  return weights;
}

/**
 * The weights with which a wedge over the tang pushes the wall's nodes, and with which they tell how far the slot opens along
 * the tang: those of the contact, times what a slot that does not open alike across the board makes of them.
 */
export function wedgeWeights({ mesh, holds }: Pick<Assembly, 'mesh' | 'holds'>, slot: number): Float64Array {
  const weights = contactWeights(mesh, slot);
  const wedge = holds?.[slot].wedge ?? 1;
  return wedge === 1 ? weights : weights.map((weight) => wedge * weight);
}

interface EdgePoint {
  readonly node: number;
  readonly yMm: number;
  /** Gauss weight × shape function × c11 or c66 at the point. */
  readonly axial: number;
  readonly shear: number;
}

/** Every Gauss point of a column's edges, twice: once for each of the edge's two nodes. */
function edgePoints(mesh: Mesh, column: number): EdgePoint[] {
  const c = new Float64Array(4);
  const { barFloorsMm } = mesh.section;
  const x = mesh.columnXMm[column];
  const points: EdgePoint[] = [];
  for (let row = 0; row < mesh.rows; row += 1) {
    const a = nodeAt(mesh, column, row);
    const upper = mesh.nodeYMm[a];
    const lower = mesh.nodeYMm[a + 1];
    // An edge within which layers of stiff bars end is several.
    const ends = [upper, ...barFloorsMm.filter((floor) => floor > upper && floor < lower), lower];
    for (let part = 1; part < ends.length; part += 1) {
      const from = ends[part - 1];
      const height = ends[part] - from;
      for (const eta of [-GAUSS, GAUSS]) {
        const yMm = from + (height * (1 + eta)) / 2;
        mesh.section.stiffness(x, yMm, c, 0);
        const along = (yMm - upper) / (lower - upper);
        [a, a + 1].forEach((node, end) => {
          const weight = (end === 0 ? 1 - along : along) * (height / 2);
          points.push({ node, yMm, axial: weight * c[0], shear: weight * c[3] });
        });
      }
    }
  }
  return points;
}

/**
 * The bar lies on y = 4c·s(1 − s) and pushes the wood up by its pull × curvature. Cut into chords between the columns,
 * each node of the chain carries the difference of the slopes of its two chords: in equilibrium by construction,
 * together with the couple of the end slopes, which is zero because both ends lie at the same depth.
 * @param start column of one end of the rod, `end` that of the other
 * @param push adds a force to a node, across the neck's length, N
 */
function pushAlongRod(mesh: Mesh, start: number, end: number, push: (node: number, forceN: number) => void): void {
  const x0 = mesh.columnXMm[start];
  const length = mesh.columnXMm[end] - x0;
  const yAt = (column: number) => {
    const s = (mesh.columnXMm[column] - x0) / length;
    return 4 * s * (1 - s);
  };
  /** The rod bears in the neck: its push is shared over the neck's nodes, clear of the slots above. */
  const pushAt = (column: number, force: number) => {
    for (let row = mesh.boardRows; row < mesh.rows; row += 1)
      push(nodeAt(mesh, column, row), force / (mesh.rows - mesh.boardRows));
  };
  for (let column = start; column < end; column += 1) {
    const slope = (yAt(column + 1) - yAt(column)) / (mesh.columnXMm[column + 1] - mesh.columnXMm[column]);
    pushAt(column, slope);
    pushAt(column + 1, -slope);
  }
}

/** A wedge of 1 N over the tang in each slot. */
export function wedgeLoads(assembly: Pick<Assembly, 'mesh' | 'holds'>): NodalForces[] {
  const { mesh } = assembly;
  return Array.from(mesh.slotLeftColumn, (left, slot) => {
    const weights = [...wedgeWeights(assembly, slot)];
    return {
      freedoms: weights.flatMap((_, row) => [2 * nodeAt(mesh, left, row), 2 * nodeAt(mesh, left + 1, row)]),
      forceN: weights.flatMap((weight) => [-weight, weight]),
    };
  });
}

export function createLoads(assembly: Assembly): LoadBlock {
  const { mesh } = assembly;
  const wedges = wedgeLoads(assembly);
  const namedCases = CASES.map(() => ({ freedoms: [] as number[], forceN: [] as number[] }));
  const add = (node: number, axis: 0 | 1, loadCase: number, value: number) => {
    const { freedoms, forceN } = namedCases[loadCase];
    freedoms.push(2 * node + axis);
    forceN.push(value);
  };

  const edges = new Map<number, EdgePoint[]>();
  const edgeOf = (column: number): EdgePoint[] => {
    const known = edges.get(column) ?? edgePoints(mesh, column);
    edges.set(column, known);
    return known;
  };

  /** Axial force N and moment M = Σ F·y about the crown's line, on a column of nodes. */
  const axial = (loadCase: number, column: number, force: number, moment: number) => {
    const points = edgeOf(column);
    let s0 = 0, s1 = 0, s2 = 0; // prettier-ignore
    const yOf = (node: number) => mesh.nodeYMm[node];
    for (const p of points) {
      s0 += p.axial;
      s1 += p.axial * p.yMm;
      s2 += p.axial * p.yMm * yOf(p.node);
    }
    // Σ F = a·s0 + b·s1, Σ F·y_node = a·s1 + b·s2: linear shape functions carry Σ y exactly.
    const determinant = s0 * s2 - s1 * s1;
    const a = (force * s2 - moment * s1) / determinant;
    const b = (moment * s0 - force * s1) / determinant;
    for (const p of points) add(p.node, 0, loadCase, p.axial * (a + b * p.yMm));
  };
  const across = (loadCase: number, column: number, force: number) => {
    const points = edgeOf(column);
    const total = points.reduce((sum, p) => sum + p.shear, 0);
    for (const p of points) add(p.node, 1, loadCase, (force * p.shear) / total);
  };

  const joint = mesh.jointColumn;
  const span = mesh.columnXMm[joint];
  const named = (name: CaseName) => caseColumn(0, name);
  axial(named('pull'), 0, 1, 0);
  axial(named('pull'), joint, -1, 0);
  axial(named('couple'), 0, 0, 1);
  axial(named('couple'), joint, 0, -1);
  // A push of 1 N down at the nut turns about the joint with x·F = span; a couple Σ F_x·y = −span there balances it.
  across(named('slope'), 0, 1);
  across(named('slope'), joint, -1);
  axial(named('slope'), joint, 0, -span);

  const rod = mesh.section.description.rod;
  if (rod !== null) {
    const start = loadColumn(mesh, rod.startMm);
    const end = loadColumn(mesh, rod.endMm);
    axial(named('rodPull'), start, 1, 0);
    axial(named('rodPull'), end, -1, 0);
    axial(named('rodCouple'), start, 0, 1);
    axial(named('rodCouple'), end, 0, -1);
    pushAlongRod(mesh, start, end, (node, forceN) => add(node, 1, named('rodCurve'), forceN));
  }

  const strain = named('boardStrain');
  assembly.boardStrainForce.forEach((force, row) => {
    if (force !== 0) add(row >> 1, (row & 1) as 0 | 1, strain, force);
  });
  return { wedges: wedges.length, cases: [...wedges, ...namedCases] };
}

/** The named cases of a block alone, for meshes in which nothing is pressed. */
export function namedLoads({ wedges, cases }: LoadBlock): LoadBlock {
  return { wedges: 0, cases: cases.slice(wedges) };
}
