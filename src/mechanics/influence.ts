/**
 * Influence vectors: what each unit load case does to the line of the neck and to the slots. Everything that does not
 * change the mesh (wire, kerf, method, tuning, rod setting, time) is a combination of these.
 */
import { assemble, hold, withSlots, type Assembly } from './assembly.ts';
import { blockIndex, solveBlocks, type BandFactor } from './banded.ts';
import type { NeckDescription, SlotFilling } from './description.ts';
import { CASES, caseColumn, contactWeights, createLoads, type CaseName, type LoadBlock } from './loads.ts';
import { createMesh, nodeAt, type Refinement } from './mesh.ts';
import { createSection } from './section.ts';

export interface NeckModel {
  readonly assembly: Assembly;
  /** All load cases, for the mesh on which frets are pressed in. */
  readonly loads: LoadBlock;
  /** The named cases only, for meshes in which nothing is pressed. */
  readonly namedLoads: LoadBlock;
}

export function createNeckModel(description: NeckDescription, refinement: Refinement = 1): NeckModel {
  const assembly = assemble(createMesh(createSection(description), refinement));
  return { assembly, loads: createLoads(assembly, 'all'), namedLoads: createLoads(assembly, 'named') };
}

export interface Influence {
  readonly stationXMm: Float64Array;
  readonly slots: number;
  /** Wedge load cases in the tables below: `slots` of them, or none. The named cases follow. */
  readonly wedges: number;
  /** Depth displacement (down positive) of the glue line at each station: loads × stations, one row a load case. */
  readonly lineMm: Float64Array;
  /** Mean opening of each slot over the contact depth: loads × slots. */
  readonly openingMm: Float64Array;
}

/** Solves all load cases together, or the named ones only. */
export function solveInfluence(model: NeckModel, filling: SlotFilling, which: 'all' | 'named' = 'all'): Influence {
  const factor = hold(model.assembly, withSlots(model.assembly, filling));
  const loads = which === 'all' ? model.loads : model.namedLoads;
  return influenceOf(model.assembly, loads, solveDisplacements(model.assembly, loads, factor));
}

/** Displacements of every load case, in blocks (see banded.ts). */
export function solveDisplacements(assembly: Assembly, loads: LoadBlock, factor: BandFactor): Float64Array {
  const values = Float64Array.from(loads.forces);
  for (const dof of assembly.held) {
    for (let c = 0; c < loads.columns; c += 1) values[blockIndex(factor.order, dof, c)] = 0;
  }
  solveBlocks(factor, values, loads.columns, loads.firstRow);
  return values;
}

function influenceOf({ mesh, shape }: Assembly, loads: LoadBlock, displacements: Float64Array): Influence {
  const stations = mesh.columnXMm.length;
  const slots = mesh.slotLeftColumn.length;
  const { columns, wedges } = loads;
  const at = (node: number, axis: 0 | 1, column: number) =>
    displacements[blockIndex(shape.order, 2 * node + axis, column)]!;
  const lineMm = new Float64Array(columns * stations);
  for (let station = 0; station < stations; station += 1) {
    const node = nodeAt(mesh, station, mesh.boardRows);
    for (let c = 0; c < columns; c += 1) lineMm[c * stations + station] = at(node, 1, c);
  }
  const openingMm = new Float64Array(columns * slots);
  for (let slot = 0; slot < slots; slot += 1) {
    const left = mesh.slotLeftColumn[slot]!;
    contactWeights(mesh, slot).forEach((weight, row) => {
      const a = nodeAt(mesh, left, row);
      const b = nodeAt(mesh, left + 1, row);
      for (let c = 0; c < columns; c += 1) openingMm[c * slots + slot]! += weight * (at(b, 0, c) - at(a, 0, c));
    });
  }
  return { stationXMm: mesh.columnXMm, slots, wedges, lineMm, openingMm };
}

/** A combination of load cases: wedge forces in N, and an amount of each named case. */
export interface Combination {
  readonly wedgeN?: ArrayLike<number>;
  readonly cases?: Partial<Readonly<Record<CaseName, number>>>;
}

function combine(table: Float64Array, width: number, wedges: number, combination: Combination): Float64Array {
  if (combination.wedgeN && wedges === 0) throw new RangeError('these load cases were solved without the wedges');
  const out = new Float64Array(width);
  const add = (row: number, amount: number) => {
    if (amount === 0) return;
    for (let i = 0; i < width; i += 1) out[i]! += amount * table[row * width + i]!;
  };
  for (let i = 0; combination.wedgeN && i < wedges; i += 1) add(i, combination.wedgeN[i]!);
  for (const name of CASES) add(caseColumn(wedges, name), combination.cases?.[name] ?? 0);
  return out;
}

/** Depth displacement of the line under a combination, mm. */
export function combineLine(influence: Influence, combination: Combination): Float64Array {
  return combine(influence.lineMm, influence.stationXMm.length, influence.wedges, combination);
}

/** Opening of each slot under a combination, mm. */
export function combineOpening(influence: Influence, combination: Combination): Float64Array {
  return combine(influence.openingMm, influence.slots, influence.wedges, combination);
}

/** The strings as a combination: pull in N, height above the crown at the nut, rise per mm along the neck. */
export function stringCases(pullN: number, heightNutMm: number, slope: number): Combination['cases'] {
  return { pull: pullN, couple: -heightNutMm * pullN, slope: -slope * pullN };
}
