/**
 * From a build to its prediction. The mesh and its influence vectors are kept between calls, so that a change of wire,
 * kerf, tuning, rod or time costs no new factorisation of the matrix with empty slots.
 *
 *   press fit       wedges on empty slots; under string load the studs act as springs in the empty slots
 *   glue fit        the kerf takes the studs without force; strings on filled slots
 *   press and glue  wedges on empty slots at seating; the filler sets without stress; strings on filled slots, in which the
 *                   studs go on holding as in a press fit, beside glue and metal
 */
import type { Build } from '../neck/build.ts';
import { glueStiffness } from '../neck/glues.ts';
import { workingKerfMm } from '../neck/kerf.ts';
import { fretPositionsMm, stringHeightAtNutMm } from '../neck/neck-shape.ts';
import { metalById } from '../neck/metals.ts';
import { boardFirst, forcesAt, frettedBoard, slideShare, type BoardFirst, type FrettedBoard } from './board-first.ts';
import { LatestCache } from './cache.ts';
import { mismatchStrain } from './climate.ts';
import { seatedAt, studBiteMm, wallPressureShare, type Contact, type Seated } from './seating/contact.ts';
import { AS_STATED, type Deviations } from './deviations.ts';
import { describeNeck, MESH_KERF_MM } from './describe.ts';
import { EMPTY, UNCUT, type NeckDescription, type SlotFilling } from './description.ts';
import {
  combineLine,
  combineOpening,
  createNeckModel,
  rodWork,
  solveInfluence,
  stringCases,
  type Combination,
  type Influence,
  type NeckModel,
} from './influence.ts';
import { METHODS, type Method, type MethodPrediction, type Prediction } from './prediction-types.ts';
import { extractionForceN, seatingForceN } from './seating/forces.ts';
import { extremeRelief, reliefFromDepth } from './relief.ts';
import { rodSetting } from './inversion/rod.ts';
import { predictRod, rodCases, turnsAtLimit } from './rod.ts';
import { fallLine, startingRelief } from './starting.ts';
import { seat, type Seating } from './seating/seating.ts';
import { wedgeForceLeft } from './time.ts';
import { filedLine, lineWithAllFrets, straightedgeOf, sumWedges } from './states.ts';
import { predictString } from './strings.ts';
import { STRESS_WINDOW_MM, stressAround, stressDepthMm, type StressField } from './elements/stress.ts';
import { contactsOf, tangLengthsMm } from './seating/wire-contact.ts';

export interface Predictor {
  /** @throws {RangeError} only for a build that validation refuses. */
  predict(build: Build, deviations?: Deviations): Prediction;
  /** Stress in the wood around one slot right after all frets went in with the build's method (none in a glue fit). */
  stress(build: Build, fret: number): StressField;
}

interface SolvedNeck {
  readonly model: NeckModel;
  /**
   * What each unit load does, its lines against the straightedge: relief is linear in the displacements.
   * @param which with the wedges or without them; empty slots always with them.
   */
  influence(filling: SlotFilling, which?: 'all' | 'named'): Influence;
  /** What its board does when it is fretted by itself, lines against the straightedge. */
  boardFirst(): BoardFirst;
}

/** Meshes and fillings kept: one neck in hand, its neighbours in a comparison, and what undo brings back. */
const MODELS_KEPT = 6;
const FILLINGS_KEPT = 12;

export function createPredictor(): Predictor {
  const necks = new LatestCache<SolvedNeck>(MODELS_KEPT);
  const solvedNeck = (description: NeckDescription): SolvedNeck =>
    necks.get(JSON.stringify(description), () => {
      const model = createNeckModel(description);
      const influences = new LatestCache<Influence>(FILLINGS_KEPT);
      let fretted: BoardFirst | undefined;
      return {
        boardFirst: () => (fretted ??= boardAgainstStraightedge(boardFirst(model), description)),
        model,
        influence: (filling, which = filling.kind === 'empty' ? 'all' : 'named') =>
          influences.get(JSON.stringify([filling, which]), () =>
            againstStraightedge(solveInfluence(model, filling, which), description.fretXMm[0], description.jointMm),
          ),
      };
    });
  return {
    predict: (build, deviations = AS_STATED) =>
      predictOn(solvedNeck(describeNeck(build, deviations)), build, deviations),
    stress: (build, fret) => {
      const neck = solvedNeck(describeNeck(build, AS_STATED));
      const contacts = contactsOf(build, AS_STATED);
      const wedgeN =
        build.method === 'glue' ? new Float64Array(contacts.length) : seatedIn(neck, build, AS_STATED, contacts).forceN;
      return stressAround(neck.model, { wedgeN }, fret, STRESS_WINDOW_MM, stressDepthMm(build));
    },
  };
}

/**
 * The filled slot of a method as one material of the mesh's kerf width:
 * kerf_mesh/E = gap/E_glue + body/E_metal, gap = working kerf − tang body.
 */
export function fillingOf(build: Build, method: Method, deviations: Deviations = AS_STATED): SlotFilling {
  if (method === 'press' || build.glueReachPercent === 0) return EMPTY;
  const gap = Math.max(0, workingKerfMm(build, method) + deviations.kerfMm - build.tangWidthMm);
  const metal = 1000 * metalById(build.wireMetal).modulusGPa;
  return {
    kind: 'filled',
    modulusMPa:
      MESH_KERF_MM / (gap / (glueStiffness(build).modulusMPa * deviations.glueModulus) + build.tangWidthMm / metal),
    reach: build.glueReachPercent / 100,
  };
}

function predictOn(neck: SolvedNeck, build: Build, deviations: Deviations): Prediction {
  const { section } = neck.model.assembly.mesh;
  const empty = neck.influence(EMPTY);
  const { stationXMm } = empty;
  const fretXMm = fretPositionsMm(build.scaleLengthMm, build.fretCount);
  const edge = straightedgeOf(build);

  const strings = build.strings.map((string) => predictString(string, build.scaleLengthMm));
  const stringPullN = strings.reduce((sum, string) => sum + string.tensionN, 0);
  const heightMm = stringHeightAtNutMm(build);
  const rise = (build.stringHeightFret12Mm - heightMm) / (build.scaleLengthMm / 2);
  const pull = stringCases(stringPullN, heightMm, rise)!;
  const rod = predictRod(build);
  const rodAtLimit = rodCases(build, rod, section);
  const strain = build.climateOn ? mismatchStrain(build.boardMoistureChange, build.neckMoistureChange) : 0;

  const tangLengthMm = tangLengthsMm(build);
  const contacts = contactsOf(build, deviations);
  const pressed = seatedIn(neck, build, deviations, contacts);
  const pressedWedgeMm = pressed.wedgeMm;
  const pressedTogetherMm = sumWedges({ wedgeMm: pressedWedgeMm }, fretXMm.length, stationXMm.length);
  const bowOf = (reliefMm: Float64Array) => extremeRelief(stationXMm, reliefMm, edge.fromXMm, edge.toXMm).extremeMm;
  const uncutBow = bowOf(combineLine(neck.influence(UNCUT), { cases: pull }));

  const head = {
    fretXMm,
    stationXMm,
    straightedge: { fromFret: edge.fromFret, toFret: edge.toFret },
    strings,
    stringPullN,
    rod,
    frettedBoard: boardFigures(pressed.board),
    startingMm: startingRelief(build, stationXMm),
    fallMm: fallLine(build, stationXMm),
    levelledIn: build.levelledIn,
    time: {
      restDays: build.restDays,
      settleDays: build.settleDays,
      wedgeRelaxation: build.wedgeRelaxation * deviations.relaxation,
      creepFactor: deviations.creep,
    },
  };

  const forceLeft = wedgeForceLeft(head.time.restDays, head.time.wedgeRelaxation);
  const { standing, seatedN } = restedIn(pressed, contacts, forceLeft);
  const predictMethod = (method: Method): MethodPrediction => {
    const presses = method !== 'glue';
    const filling = fillingOf(build, method, deviations);
    const holds = presses && areFelt(standing, filling, tangLengthMm, build.slotDepthMm);
    const influence = neck.influence(filling, holds ? 'all' : undefined);
    const seating = presses ? pressed : idle(contacts.length);
    const springs = holds ? springsOf(contacts, seating, standing, influence, seatedN) : undefined;
    const response = (cases: Combination['cases']) => respond(influence, cases, springs);
    const underStrings = response(pull);

    const underRod = response(rodAtLimit);
    const bite = contacts.map((contact, i) => (presses ? studBiteMm(contact, seating.openingMm[i]) : 0));
    const forceInputs = { build, method, contacts, wedgeForceN: seating.forceN, biteMm: bite, fretXMm, tangLengthMm };

    const partial = {
      method,
      kerfMm: workingKerfMm(build, method),
      wedgeForceN: [...seating.forceN],
      wedgeForceStrungN: Array.from(seating.forceN, (force, i) => force + (underStrings.changeN?.[i] ?? 0)),
      biteMm: bite,
      openingMm: [...seating.openingMm],
      wallPressureShare: contacts.map((contact, i) => (presses ? wallPressureShare(contact, seating.openingMm[i]) : 0)),
      seatingForceN: seatingForceN(forceInputs),
      pullOutForceN: extractionForceN(forceInputs),
      extraFlexibility: bowOf(underStrings.line) / uncutBow - 1,
      rodTurnsAtLimit: turnsAtLimit(build, rod, workOfRod(influence, rodAtLimit, underRod.changeN)),
      basis: {
        wedgeMm: presses ? pressedWedgeMm : new Float64Array(pressedWedgeMm.length),
        stringsMm: underStrings.line,
        rodMm: underRod.line,
        climateMm: response({ boardStrain: strain }).line,
      },
    };
    return withStates(head, partial, presses ? pressedTogetherMm : new Float64Array(stationXMm.length), build);
  };

  const methods = Object.fromEntries(METHODS.map((method) => [method, predictMethod(method)])) as Record<
    Method,
    MethodPrediction
  >;
  return { ...head, methods };
}

/** Frets as they were pressed in: into the finished neck, or into the board before it was glued on. */
interface SeatedIn extends Seating {
  /** What each fret does by itself with its wedge force: relief, frets × stations. */
  readonly wedgeMm: Float64Array;
  /** The contacts as they stand when time has left a share of their force. */
  standing(forceLeft: number): Seated[];
  /** Clamps that came off have let the slots open since the frets went in. */
  readonly isReleased: boolean;
  readonly board: FrettedBoard | null;
}

function seatedIn(neck: SolvedNeck, build: Build, deviations: Deviations, contacts: readonly Contact[]): SeatedIn {
  const empty = neck.influence(EMPTY);
  const flexibility = slotFlexibility(empty);
  if (build.workOrder === 'neck-first') {
    const pressed = seat(contacts, flexibility);
    return {
      ...pressed,
      wedgeMm: wedgeLines(empty, pressed.forceN),
      standing: (forceLeft) => contacts.map((contact, i) => seatedAt(contact, pressed.openingMm[i], forceLeft)),
      isReleased: false,
      board: null,
    };
  }
  const { fretXMm } = neck.model.assembly.mesh.section.description;
  const share = slideShare(build, deviations);
  const board = frettedBoard(neck.boardFirst(), contacts, empty, flexibility, share, fretXMm);
  return { ...board, isReleased: true, board };
}

/** The contacts as they stand when time has left a share of their force, and their forces there. */
function restedIn(pressed: SeatedIn, contacts: readonly Contact[], forceLeft: number) {
  const standing = pressed.standing(forceLeft);
  const seatedN = pressed.isReleased
    ? forcesAt(contacts, standing, pressed.openingMm)
    : pressed.forceN.map((force) => forceLeft * force);
  return { standing, seatedN };
}

/** C: how far a force of 1 N in slot j opens slot i, mm; row j, column i (it is symmetric). */
function slotFlexibility(empty: Influence): Float64Array {
  return empty.openingMm.subarray(0, empty.slots ** 2);
}

/** The influence with the lines of its load cases as relief. */
function againstStraightedge(influence: Influence, fromXMm: number, toXMm: number): Influence {
  return { ...influence, lineMm: asRelief(influence.stationXMm, influence.lineMm, fromXMm, toXMm) };
}

/** Rows of lines as relief against a straightedge. */
function asRelief(stationXMm: Float64Array, lineMm: Float64Array, fromXMm: number, toXMm: number): Float64Array {
  const stations = stationXMm.length;
  const reliefMm = new Float64Array(lineMm.length);
  for (let start = 0; start < lineMm.length; start += stations)
    reliefMm.set(reliefFromDepth(stationXMm, lineMm.subarray(start, start + stations), fromXMm, toXMm), start);
  return reliefMm;
}

/** The same of a board that is let go on the neck; that of the free board is against its own first and last fret. */
function boardAgainstStraightedge(unit: BoardFirst, { fretXMm, jointMm }: NeckDescription): BoardFirst {
  const { stationXMm, slideLineMm } = unit;
  return { ...unit, slideLineMm: asRelief(stationXMm, slideLineMm, fretXMm[0], jointMm) };
}

/** What each fret does by itself with its wedge force: relief, frets × stations. */
function wedgeLines(empty: Influence, forceN: Float64Array): Float64Array {
  const stations = empty.stationXMm.length;
  const lines = empty.lineMm.slice(0, forceN.length * stations);
  for (let i = 0; i < forceN.length; i += 1)
    for (let at = i * stations; at < (i + 1) * stations; at += 1) lines[at] *= forceN[i];
  return lines;
}

function boardFigures(board: FrettedBoard | null): Prediction['frettedBoard'] {
  if (board === null) return null;
  const { clampedForceN, freeBowMm, clampPressureMPa } = board;
  return { clampedForceN: [...clampedForceN], freeBowMm, clampPressureMPa };
}

function idle(count: number): Seating {
  const zero = () => new Float64Array(count);
  return { forceN: zero(), openingMm: zero(), stiffnessNMm: zero() };
}

/** The studs of pressed frets as springs in their slots, from the state after seating. */
interface Springs {
  /** How the wedge forces change when other loads open or close the slots by `openingMm`. */
  changesN(openingMm: Float64Array): Float64Array;
}

/** Below this share of what fills the slot, a contact is left out: it would move a line by a few ten-thousandths. */
const LEAST_FELT = 0.01;

/** Do seated tangs hold their slots noticeably beside what fills them? Glue and metal are mostly some hundreds of times as stiff. */
function areFelt(
  standing: readonly Seated[],
  filling: SlotFilling,
  lengthMm: readonly number[],
  depthMm: number,
): boolean {
  if (filling.kind !== 'filled') return true;
  const perLength = (filling.modulusMPa * filling.reach * depthMm) / MESH_KERF_MM;
  return standing.some(({ stiffnessNMm }, i) => stiffnessNMm > LEAST_FELT * perLength * lengthMm[i]);
}

/**
 * @param standing the contacts as they stand when the other loads come on; slots stay as far open as seating left them
 * @param influence of the slots as they are then
 * @param seatedN their forces there
 */
function springsOf(
  contacts: readonly Contact[],
  seating: Seating,
  standing: readonly Seated[],
  influence: Influence,
  seatedN: Float64Array,
): Springs {
  const flexibility = slotFlexibility(influence);
  // Of seated studs in empty slots nothing is left.
  const ownMm = combineOpening(influence, { wedgeN: seatedN });
  const restMm = seating.openingMm.map((opening, i) => opening - ownMm[i]);
  return {
    changesN: (openingMm) => {
      const outsideMm = openingMm.map((opening, i) => opening + restMm[i]);
      const { forceN } = seat(contacts, flexibility, outsideMm, standing, seatedN);
      return forceN.map((force, i) => force - seatedN[i]);
    },
  };
}

/** Work of the rod's loads at its limit in the displacements of the wood, N·mm: studs that answer as springs hold some back. */
function workOfRod(influence: Influence, cases: Combination['cases'], changeN: Float64Array | undefined): number {
  const opening = changeN && combineOpening(influence, { cases });
  const ofStuds = opening ? opening.reduce((work, mm, i) => work + mm * changeN[i], 0) : 0;
  return rodWork(influence, cases) + ofStuds;
}

/** What named loads add to the line, and to the wedge forces where studs answer as springs. */
function respond(
  influence: Influence,
  cases: Combination['cases'],
  springs: Springs | undefined,
): { readonly line: Float64Array; readonly changeN?: Float64Array } {
  const loaded = Object.values(cases ?? {}).some((amount) => amount !== 0);
  if (!springs || !loaded) return { line: combineLine(influence, { cases }) };
  const changeN = springs.changesN(combineOpening(influence, { cases }));
  return { line: combineLine(influence, { cases, wedgeN: changeN }), changeN };
}

/** @param wedgesMm what all frets do together, over the stations. */
function withStates(
  head: Omit<Prediction, 'methods'>,
  partial: Omit<MethodPrediction, 'fretted' | 'strung' | 'settled' | 'rodSet' | 'rodSetPercent'>,
  wedgesMm: Float64Array,
  build: Build,
): MethodPrediction {
  const parts = { ...head, basis: partial.basis };
  const filedMm = filedLine(parts, wedgesMm);
  const at = (strung: boolean, days: number, rodPercent: number) =>
    lineWithAllFrets(parts, { strung, days, rodPercent }, wedgesMm, filedMm);
  const settled = at(true, build.settleDays, 0);
  const rodSetPercent =
    build.rodKind === 'none'
      ? 0
      : build.rodSettingPercent || rodSetting(parts, settled, partial.basis.rodMm, build.targetReliefMm).percent;
  return {
    ...partial,
    fretted: at(false, 0, 0),
    strung: at(true, 0, 0),
    settled,
    rodSet: at(true, build.settleDays, rodSetPercent),
    rodSetPercent,
  };
}
