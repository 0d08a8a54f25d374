/**
 * What a choice means for the player, as numbers and plain classes of numbers. The sentences are made from these alone.
 *
 * The limits between the classes are common practice, no source: a player feels about a twentieth of a millimetre in the
 * height of the strings over the middle of the neck, and a rod is turned again when the relief is off by a tenth.
 */
import type { Build } from '../neck/build.ts';
import { glueById } from '../neck/glues.ts';
import { metalById } from '../neck/metals.ts';
import { nickelConstructions, type StringConstruction } from '../neck/strings.ts';
import { LEAST_CHAMFER_MM } from '../fretwork/checks/limits.ts';
import type { Method, Prediction } from '../mechanics/prediction-types.ts';
import { lineAt } from '../mechanics/states.ts';
import { glueFullHours, settlingMoveMm, waitDays } from './job-figures.ts';
import { overMonths, type OverMonths } from './over-months.ts';
import type { OwnStrength } from '../playing/own-strength.ts';
import { setUpFigures, USUAL_DIRECTION, type OwnFigures } from './set-up-figures.ts';
import type { Strength } from './string-room.ts';
import type { Band } from '../mechanics/uncertainty/band.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';

/** How much the neck moves while it settles. */
export type Movement = 'hardly' | 'a-little' | 'clearly';
/** What the rod has to do with the relief that is wanted. */
export type RodTask =
  /** There is none. */
  | 'none'
  /** Less than half of its range. */
  | 'easy'
  | 'within'
  /** It gets there in some necks like this and not in others. */
  | 'doubtful'
  | 'beyond';
/** How the next person gets the frets out. */
export type Refret = 'easy' | 'careful' | 'hard';
export type Nickel = 'none' | 'bound' | 'contains';

/** What needs no mechanics: it is known as soon as the neck is. */
export interface BuiltFacts {
  readonly method: Method;
  /** Days from the frets to the strings. */
  readonly waitDays: number;
  /** Hours that the glue takes until the neck may be strung; 0 without glue. */
  readonly glueHours: number;
  readonly refret: Refret;
  readonly nickel: Nickel;
  /** Constructions of its strings that give nickel off. */
  readonly nickelStrings: readonly StringConstruction[];
  /** Hardness of the wire over that of common nickel silver: about how much longer it lasts. */
  readonly wearRatio: number;
  /** Id of its metal. */
  readonly wire: Build['wireMetal'];
}

export interface ChoiceFacts extends BuiltFacts {
  /** Relief of greatest size, mm, and its band; null while the band is being computed. */
  readonly frettedMm: number;
  readonly frettedBand: Band | null;
  readonly strungMm: number;
  readonly settledMm: number;
  readonly settledBand: Band | null;
  /** How far it moves between stringing and settled, mm. */
  readonly movesMm: number;
  readonly movement: Movement;
  readonly settleDays: number;
  readonly targetMm: number;
  readonly rodTask: RodTask;
  /** Share of such necks, 0 to 1, in which the rod gives the relief that is wanted; null without rod or band. */
  readonly rodChance: number | null;
  /** Height of the strings over the top of fret 12, mm. */
  readonly actionMm: number;
  /** The hardest playing at which no note buzzes; null where some do even softly played. */
  readonly cleanTo: Strength | null;
  /** What a pluck as hard as the maker's makes of it; null where the device that shows it has not accepted any. */
  readonly own: Pick<OwnFigures, 'own' | 'buzzing' | 'buzzingAtMost'> | null;
  /** What the first months make of a set-up on the day of stringing. */
  readonly overMonths: OverMonths;
}

/** Relief that moves less than this is not felt; more than the second is. */
const FELT_MM = 0.05;
const CLEARLY_FELT_MM = 0.15;
/** Per cent of the rod's range that counts as easy. */
const EASY_PERCENT = 50;
/** Chances above which the rod is trusted, and below which it is not. */
const SURE = 0.95;
const UNLIKELY = 0.5;

const COMMON_WIRE = 'nickel-silver-18';

export function movementOf(movesMm: number): Movement {
  const size = Math.abs(movesMm);
  return size < FELT_MM ? 'hardly' : size < CLEARLY_FELT_MM ? 'a-little' : 'clearly';
}

/** The rod's share without a band: from what it reaches at the ends of its range. */
function statedRodTask(build: Build, prediction: Prediction): RodTask {
  const { leastPercent, mostPercent } = prediction.rod;
  const settledAt = (rodPercent: number) =>
    lineAt(prediction, build.method, { strung: true, days: build.settleDays, rodPercent }).extremeMm;
  const isBetween = (one: number, other: number) =>
    Math.min(one, other) <= build.targetReliefMm && build.targetReliefMm <= Math.max(one, other);
  if (!isBetween(settledAt(leastPercent), settledAt(mostPercent))) return 'beyond';
  const half = (percent: number) => (percent * EASY_PERCENT) / 100;
  return isBetween(settledAt(half(leastPercent)), settledAt(half(mostPercent))) ? 'easy' : 'within';
}

export function rodTaskOf(build: Build, prediction: Prediction, uncertainty: Uncertainty | null): RodTask {
  if (prediction.rod.kind === 'none') return 'none';
  const band = uncertainty?.methods[build.method].rodPercentForTarget;
  if (!band) return statedRodTask(build, prediction);
  if (band.chance < UNLIKELY) return 'beyond';
  if (band.chance < SURE) return 'doubtful';
  return Math.abs(band.p50) <= EASY_PERCENT ? 'easy' : 'within';
}

export function refretOf({ method, glueKind, chamferMm }: Pick<Build, 'method' | 'glueKind' | 'chamferMm'>): Refret {
  const isSharp = chamferMm < LEAST_CHAMFER_MM;
  if (method === 'press') return isSharp ? 'careful' : 'easy';
  return glueById(glueKind).isHard.is || isSharp || method === 'both' ? 'hard' : 'careful';
}

export function nickelOf(wireMetal: string): Nickel {
  const nickel = metalById(wireMetal).nickel.is;
  return nickel === 'released' ? 'contains' : nickel;
}

export function builtFacts(build: Build): BuiltFacts {
  const metal = metalById(build.wireMetal);
  return {
    method: build.method,
    waitDays: waitDays(build),
    glueHours: glueFullHours(build),
    refret: refretOf(build),
    nickel: nickelOf(build.wireMetal),
    nickelStrings: nickelConstructions(build.strings),
    wearRatio: metal.hardnessHV / metalById(COMMON_WIRE).hardnessHV,
    wire: metal.id,
  };
}

export function choiceFacts(
  build: Build,
  prediction: Prediction,
  uncertainty: Uncertainty | null,
  accepted: OwnStrength | null = null,
): ChoiceFacts {
  const predicted = prediction.methods[build.method];
  const bands = uncertainty?.methods[build.method] ?? null;
  const movesMm = settlingMoveMm(predicted);
  const { actionMm, strengths, own } = setUpFigures({ build, prediction }, accepted);
  return {
    ...builtFacts(build),
    frettedMm: predicted.fretted.extremeMm,
    frettedBand: bands?.fretted ?? null,
    strungMm: predicted.strung.extremeMm,
    settledMm: predicted.settled.extremeMm,
    settledBand: bands?.settled ?? null,
    movesMm,
    movement: movementOf(movesMm),
    settleDays: build.settleDays,
    targetMm: build.targetReliefMm,
    rodTask: rodTaskOf(build, prediction, uncertainty),
    rodChance: bands?.rodPercentForTarget?.chance ?? null,
    actionMm,
    overMonths: overMonths({ build, prediction }, USUAL_DIRECTION),
    own,
    cleanTo: strengths.findLast(({ buzzing }) => buzzing === 0)?.strength ?? null,
  };
}
