/**
 * Influence vectors: what each unit load case does to the line of the neck and to the slots. Everything that does not
 * change the mesh (wire, kerf, method, tuning, rod setting, time) is a combination of these.
 */
import { linearAt } from './description.ts';
import { assemble, hold, withSlots, type Assembly } from './elements/assembly.ts';
import { isPositive } from './elements/dense.ts';
import { blockIndex, type BandFactor } from './elements/banded.ts';
import { EMPTY, slantAt, type Fan, type NeckDescription, type SlotFilling } from './description.ts';
import {
  CASES,
  caseColumn,
  createLoads,
  namedLoads,
  type CaseName,
  type LoadBlock,
  type NodalForces,
} from './elements/loads.ts';
import { createMesh, type Refinement } from './elements/mesh.ts';
import { addRows } from './elements/rows.ts';
import { createSection } from './elements/section.ts';
import { caseReader, solveCases } from './elements/solve-cases.ts';
import { createTwist, evenOf, solveTwist, type TwistCase, type TwistModel } from './elements/twist.ts';

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
  /** Wedge load cases in the tables below: `slots` of them, or none. The named cases follow. */
  readonly wedges: number;
  /** Depth displacement (down positive) of the glue line at each station: loads × stations, one row a load case. */
  readonly lineMm: Float64Array;
  /** Mean opening of each slot over the contact depth: loads × slots. */
  readonly openingMm: Float64Array;
  /** Tilt of the neck at each station (elements/twist.ts), rad: loads × stations. Absent where every fret stands square. */
  readonly tiltRad?: Float64Array;
  /** Work of the rod's unit loads in the displacements of each other, N·mm: 3 × 3, in the order of `ROD_CASES`. */
  readonly rodWorkNmm: Float64Array;
}

export const ROD_CASES = ['rodPull', 'rodCouple', 'rodCurve'] as const;

/**
 * Room for the matrix that is being factorised: a solve is done with it before the next begins. Two megabytes made anew for
 * each, cleared by the system and collected again, cost about a millisecond, nearly as much as factorising them.
 */
let factorRoom = new Float64Array(0);

function roomFor(band: Float64Array): Float64Array {
  if (factorRoom.length < band.length) factorRoom = new Float64Array(band.length);
  return factorRoom.subarray(0, band.length);
}

/** Solves all load cases, or the named ones only. */
export function solveInfluence(model: NeckModel, filling: SlotFilling, which: 'all' | 'named' = 'all'): Influence {
  const room = roomFor(model.assembly.band);
  const factor = hold(model.assembly, withSlots(model.assembly, filling, room));
  return influenceOf(model.assembly, which === 'all' ? model.loads : namedLoads(model.loads), factor, filling);
}

/** Lines and openings of any load cases with the slots empty: cases × stations, cases × slots. */
export function solveCasesOnEmpty(
  { assembly }: NeckModel,
  cases: readonly NodalForces[],
): Pick<Influence, 'lineMm' | 'openingMm'> {
  const { mesh } = assembly;
  const factor = hold(assembly, withSlots(assembly, EMPTY, roomFor(assembly.band)));
  const read = caseReader(assembly);
  const lineMm = new Float64Array(cases.length * mesh.columnXMm.length);
  const openingMm = new Float64Array(cases.length * mesh.slotLeftColumn.length);
  solveCases(assembly, { cases }, factor, (loadCase, block, lane) => read(loadCase, block, lane, lineMm, openingMm));
  return { lineMm, openingMm };
}

/**
 * The influence vectors of load cases, from the factor of the matrix. What a wedge opens its own slot beyond the plane model is
 * the give of an empty slot. Beside a filling k a give W becomes W/(1 + kW), so that a change of W comes to (1 − s)² of itself,
 * s = kW/(1 + kW) being the share of the wedge's force that the filling takes.
 */
export function influenceOf(
  assembly: Assembly,
  loads: LoadBlock,
  factor: BandFactor,
  filling: SlotFilling = { kind: 'empty' },
): Influence {
  const { mesh } = assembly;
  const stations = mesh.columnXMm.length;
  const slots = mesh.slotLeftColumn.length;
  const read = caseReader(assembly);
  const lineMm = new Float64Array(loads.cases.length * stations);
  const openingMm = new Float64Array(loads.cases.length * slots);
  const slant = slantedSlots(mesh.section.description);
  const twist = slant && createTwist(assembly, slant.fan, filling);
  const twistCases: TwistCase[] = [];
  const rodWorkNmm = new Float64Array(ROD_CASES.length ** 2);
  const rodForces = ROD_CASES.map((name) => loads.cases[caseColumn(loads.wedges, name)]);
  solveCases(assembly, loads, factor, (loadCase, block, lane) => {
    read(loadCase, block, lane, lineMm, openingMm);
    if (twist) twistCases.push(twistCase(twist, slant, loadCase < loads.wedges ? loadCase : undefined, block, lane));
    const ofRod = rodForces.indexOf(loads.cases[loadCase]);
    if (ofRod < 0) return;
    rodForces.forEach(({ freedoms, forceN }, by) => {
      rodWorkNmm[ofRod * ROD_CASES.length + by] = freedoms.reduce(
        (work, freedom, k) => work + forceN[k] * block[blockIndex(freedom, lane)],
        0,
      );
    });
  });
  if (assembly.holds && loads.wedges > 0)
    giveOwn(
      openingMm,
      assembly.holds.map(({ ownMm }, slot) => {
        const taken = takenByFilling(assembly, filling, slot, openingMm[slot * slots + slot]);
        return ownMm * (1 - taken) ** 2;
      }),
    );
  if (slant) lessenBySlant(slant, { wedges: loads.wedges, stations, lineMm, openingMm });
  return {
    stationXMm: mesh.columnXMm,
    slots,
    wedges: loads.wedges,
    lineMm,
    openingMm,
    ...(twist ? { tiltRad: solveTwist(twist, twistCases) } : {}),
    rodWorkNmm,
  };
}

/** Cosine and sine of the slant of each slot. */
interface SlantedSlots {
  readonly fan: Fan;
  readonly cos: readonly number[];
  readonly sin: readonly number[];
}

function slantedSlots({ fan, fretXMm }: NeckDescription): SlantedSlots | undefined {
  if (fan === undefined) return undefined;
  const cos = fretXMm.map((x) => 1 / Math.hypot(1, slantAt(fan, x)));
  return { fan, cos, sin: cos.map((c, slot) => c * slantAt(fan, fretXMm[slot])) };
}

/** @param slot of a wedge, which pushes square to its walls: less along the neck, and across it */
function twistCase(
  twist: TwistModel,
  { cos, sin }: SlantedSlots,
  slot: number | undefined,
  block: Float64Array,
  lane: number,
): TwistCase {
  if (slot === undefined) return { even: evenOf(twist.grid, block, lane, 1) };
  const acrossN = sin[slot] * cos[slot];
  return {
    even: evenOf(twist.grid, block, lane, cos[slot] ** 2),
    sideways: { slot, nutSideN: acrossN, bodySideN: -acrossN },
  };
}

/**
 * The plane model's wedges on slanted slots, cos² of their line each (elements/twist.ts); by Maxwell, what other loads open a slot
 * by is as much less. A slot that is 1/cos as long gives cos as much under its own wedge.
 */
function lessenBySlant(
  { cos }: SlantedSlots,
  of: {
    readonly wedges: number;
    readonly stations: number;
    readonly lineMm: Float64Array;
    readonly openingMm: Float64Array;
  },
): void {
  const { wedges, stations, lineMm, openingMm } = of;
  const slots = cos.length;
  for (let k = 0; k < wedges * stations; k += 1) lineMm[k] *= cos[Math.floor(k / stations)] ** 2;
  for (let k = 0; k < openingMm.length; k += 1) {
    const [load, slot] = [Math.floor(k / slots), k % slots];
    openingMm[k] *= load < wedges ? Math.sqrt(cos[load] * cos[slot]) : cos[slot] ** 2;
  }
}

/** Share of a wedge's force that what fills its slot takes, when 1 N opens it by so much. */
function takenByFilling({ mesh }: Assembly, filling: SlotFilling, slot: number, openingMm: number): number {
  if (filling.kind !== 'filled') return filling.kind === 'empty' ? 0 : 1;
  const { fretXMm, widthMm, slot: cut, ends } = mesh.section.description;
  const lengthMm = linearAt(widthMm, fretXMm[slot]) - 2 * (ends?.slotShortMm ?? 0);
  const stiffness = (filling.modulusMPa * filling.reach * cut.depthMm * lengthMm) / cut.kerfMm;
  return Math.min(1, Math.max(0, stiffness * openingMm));
}

/** Least share of what the ends take from a slot's own give that is tried before it is left out. */
const LEAST_TAKEN = 1 / 64;

/**
 * Adds what each slot opens by itself beyond the plane model to the openings under the wedges. It is less than nothing where
 * the ends hold the slot closed. The piece that it comes from stands alone: where slots lie nearer than some 6 mm, together
 * they would take more than they have, and a wedge would do negative work. Then they take half of it, a quarter, …
 */
export function giveOwn(openingMm: Float64Array, ownMm: readonly number[]): void {
  const n = ownMm.length;
  const given = (taken: number) => {
    const matrix = openingMm.slice(0, n * n);
    for (let i = 0; i < n; i += 1) {
      for (let j = 0; j < i; j += 1) matrix[i * n + j] = (matrix[i * n + j] + matrix[j * n + i]) / 2;
      matrix[i * n + i] += ownMm[i] < 0 ? taken * ownMm[i] : ownMm[i];
    }
    return matrix;
  };
  let taken = 1;
  while (taken > 0 && !isPositive(given(taken), n)) taken = taken > LEAST_TAKEN ? taken / 2 : 0;
  for (let i = 0; i < n; i += 1) openingMm[i * n + i] += ownMm[i] < 0 ? taken * ownMm[i] : ownMm[i];
}

/** A combination of load cases: wedge forces in N, and an amount of each named case. */
export interface Combination {
  readonly wedgeN?: ArrayLike<number>;
  readonly cases?: Partial<Readonly<Record<CaseName, number>>>;
}

function combine(table: Float64Array, width: number, wedges: number, combination: Combination): Float64Array {
  if (combination.wedgeN && wedges === 0) throw new RangeError('these load cases were solved without the wedges');
  const rows: number[] = [];
  const amounts: number[] = [];
  const add = (row: number, amount: number) => {
    if (amount === 0) return;
    rows.push(row);
    amounts.push(amount);
  };
  for (let i = 0; combination.wedgeN && i < wedges; i += 1) add(i, combination.wedgeN[i]);
  for (const name of CASES) add(caseColumn(wedges, name), combination.cases?.[name] ?? 0);
  const out = new Float64Array(width);
  addRows(table, rows, amounts, out);
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

/** Work of a rod's loads in the displacements that they cause, N·mm. */
export function rodWork(influence: Influence, cases: Combination['cases']): number {
  const amounts = ROD_CASES.map((name) => cases?.[name] ?? 0);
  return amounts.reduce(
    (sum, amount, i) =>
      sum + amounts.reduce((work, other, j) => work + amount * other * influence.rodWorkNmm[i * amounts.length + j], 0),
    0,
  );
}
