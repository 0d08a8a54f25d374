/**
 * Influence vectors: what each unit load case does to the line of the neck and to the slots. Everything that does not
 * change the mesh (wire, kerf, method, tuning, rod setting, time) is a combination of these.
 */
import { assemble, hold, withSlots, type Assembly } from './assembly.ts';
import { solveBlock, type BandFactor } from './banded.ts';
import type { NeckDescription, SlotFilling } from './description.ts';
import { CASES, caseColumn, contactWeights, createLoads, type CaseName, type LoadBlock } from './loads.ts';
import { createMesh, nodeAt, type Refinement } from './mesh.ts';
import { createSection } from './section.ts';

export interface NeckModel {
  readonly assembly: Assembly;
  readonly loads: LoadBlock;
}

export function createNeckModel(description: NeckDescription, refinement: Refinement = 1): NeckModel {
  const assembly = assemble(createMesh(createSection(description), refinement));
  return { assembly, loads: createLoads(assembly) };
}

export interface Influence {
  readonly stationXMm: Float64Array;
  readonly slots: number;
  /** Depth displacement (down positive) of the glue line at each station: loads × stations, one row a load case. */
  readonly lineMm: Float64Array;
  /** Mean opening of each slot over the contact depth: loads × slots. */
  readonly openingMm: Float64Array;
}

/** All load cases, solved together. Empty slots' wedge columns are only of use where slots can be opened. */
export function solveInfluence(model: NeckModel, filling: SlotFilling): Influence {
  const factor = hold(model.assembly, withSlots(model.assembly, filling));
  return influenceOf(model, solveDisplacements(model, factor));
}

/** Displacements of every load case: order × columns, row-major. */
export function solveDisplacements({ assembly, loads }: NeckModel, factor: BandFactor): Float64Array {
  const values = Float64Array.from(loads.forces);
  for (const dof of assembly.held) values.fill(0, dof * loads.columns, (dof + 1) * loads.columns);
  solveBlock(factor, values, loads.columns, loads.firstRow);
  return values;
}

function influenceOf({ assembly, loads }: NeckModel, displacements: Float64Array): Influence {
  const { mesh } = assembly;
  const stations = mesh.columnXMm.length;
  const { columns, slots } = loads;
  const lineMm = new Float64Array(columns * stations);
  for (let station = 0; station < stations; station += 1) {
    const row = (2 * nodeAt(mesh, station, mesh.boardRows) + 1) * columns;
    for (let c = 0; c < columns; c += 1) lineMm[c * stations + station] = displacements[row + c]!;
  }
  const openingMm = new Float64Array(columns * slots);
  for (let slot = 0; slot < slots; slot += 1) {
    const left = mesh.slotLeftColumn[slot]!;
    contactWeights(mesh, slot).forEach((weight, row) => {
      const a = 2 * nodeAt(mesh, left, row) * columns;
      const b = 2 * nodeAt(mesh, left + 1, row) * columns;
      for (let c = 0; c < columns; c += 1)
        openingMm[c * slots + slot]! += weight * (displacements[b + c]! - displacements[a + c]!);
    });
  }
  return { stationXMm: mesh.columnXMm, slots, lineMm, openingMm };
}

/** A combination of load cases: wedge forces in N, and an amount of each named case. */
export interface Combination {
  readonly wedgeN?: ArrayLike<number>;
  readonly cases?: Partial<Readonly<Record<CaseName, number>>>;
}

function combine(table: Float64Array, width: number, slots: number, combination: Combination): Float64Array {
  const out = new Float64Array(width);
  const add = (row: number, amount: number) => {
    if (amount === 0) return;
    for (let i = 0; i < width; i += 1) out[i]! += amount * table[row * width + i]!;
  };
  for (let i = 0; combination.wedgeN && i < slots; i += 1) add(i, combination.wedgeN[i]!);
  for (const name of CASES) add(caseColumn(slots, name), combination.cases?.[name] ?? 0);
  return out;
}

/** Depth displacement of the line under a combination, mm. */
export function combineLine(influence: Influence, combination: Combination): Float64Array {
  return combine(influence.lineMm, influence.stationXMm.length, influence.slots, combination);
}

/** Opening of each slot under a combination, mm. */
export function combineOpening(influence: Influence, combination: Combination): Float64Array {
  return combine(influence.openingMm, influence.slots, influence.slots, combination);
}

/** The strings as a combination: pull in N, height above the crown at the nut, rise per mm along the neck. */
export function stringCases(pullN: number, heightNutMm: number, slope: number): Combination['cases'] {
  return { pull: pullN, couple: -heightNutMm * pullN, slope: -slope * pullN };
}
