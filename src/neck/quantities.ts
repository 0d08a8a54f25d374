/**
 * One key for each quantity that the house speaks of: the same in `predict`, in CSV, in checks and tables, in the tests
 * that hold all surfaces to one value, and in speech (speech/en/quantities.ts has the words for each).
 *
 * A key is written in camel case and carries its unit where it has one: `kerfMm`, `pullOutForceN`. The numbers of a build
 * are quantities too, under the id of their row in parameters.ts; what stands here is everything that is computed. What each
 * of them means is in verdict/quantity-meanings.ts, which the page does not need.
 */
import { parameterById, type ParameterRow } from './parameters.ts';
import type { Unit } from './units.ts';

export interface QuantityKind {
  /** The unit in which the value is stored, handed on and written to files. */
  readonly unit: Unit;
  /** Digits after the point that the value deserves where people read it, in that unit. */
  readonly digits: number;
}

const plain = (unit: Unit, digits: number): QuantityKind => ({ unit, digits });
const mm = (digits = 2): QuantityKind => plain('mm', digits);
const COUNT = plain('', 0);
const FORCE = plain('N', 0);

const COMPUTED = {
  // Fret by fret
  fret: COUNT,
  frets: COUNT,
  fretXMm: mm(),
  fromLastFretMm: mm(),
  fromPreviousFretMm: mm(),

  // Slots
  boardWidthMm: mm(),
  boardRadiusMm: mm(0),
  slotLengthMm: mm(),
  slotDepthNeededMm: mm(),
  slotDepthAtEndMm: mm(),
  boardLeftCentreMm: mm(),
  boardLeftLeastMm: mm(),
  boardEdgeThicknessMm: mm(),
  chamferLimitMm: mm(),
  glueGapMm: mm(),

  // Wire
  arcLengthMm: mm(),
  cutLengthMm: mm(1),
  nipMm: mm(),
  tangLengthMm: mm(),
  shelfMm: mm(),
  bevelLossMm: mm(),
  filedLengthMm: mm(),
  wantedWireRadiusMm: mm(0),
  bendToRadiusMm: mm(0),
  bendStaysPercent: plain('%', 0),
  middleStandsOffMm: mm(),
  besideStringMm: mm(),
  wireTotalMm: mm(0),
  stick: COUNT,
  pieceLengthsMm: mm(1),
  stickLeftMm: mm(1),

  // Seating
  studBiteMm: mm(3),
  seatingTurn: COUNT,
  quarter: COUNT,
  fretsIn: COUNT,
  fretsInQuarter: COUNT,
  seatingForceN: FORCE,
  caulPressureMPa: plain('MPa', 1),
  wedgeForceN: FORCE,
  pullOutForceN: FORCE,
  glueVolumeMm3: plain('mm³', 0),
  glueTotalMm3: plain('mm³', 0),
  glueBeadMm: mm(1),
  openTimeMin: plain('min', 1),
  clampTimeMin: plain('min', 0),
  clampPressureMPa: plain('MPa', 2),
  freeBoardBowMm: mm(2),
  clampedForceN: FORCE,
  glueFullHours: plain('h', 0),
  slotOpeningMm: mm(4),
  meanWedgeForceN: FORCE,
  meanSeatingForceN: FORCE,
  meanPullOutForceN: FORCE,
  wedgeForceStrungN: FORCE,
  wallShearPercent: plain('%', 0),

  // Bow
  reliefMm: mm(),
  frettedReliefMm: mm(),
  strungReliefMm: mm(),
  settledReliefMm: mm(),
  rodSetReliefMm: mm(),
  atXMm: mm(0),
  atFret7Mm: mm(),
  atFret8Mm: mm(),
  levellingReliefMm: mm(),
  missMm: mm(),
  bandWidthMm: mm(),
  bandRemovedMm: mm(3),
  errorPercent: plain('%', 0),
  measuringMin: plain('min', 0),
  reliefP05Mm: mm(),
  reliefP95Mm: mm(),
  rodReachReliefMm: mm(),
  rodTightReliefMm: mm(),
  reliefMeasuredMm: mm(),
  lineReliefMm: mm(),
  wantedLineReliefMm: mm(),
  planeOffMm: mm(),
  heatSprungBackPercent: plain('%', 0),

  // Rod and strings
  rodRangePercent: plain('%', 0),
  turnsOfNut: plain('', 2),
  rodTurnsAtLimit: plain('', 2),
  rodSetPercent: plain('%', 0),
  nutTorqueNm: plain('N·m', 1),
  quarterTurnReliefMm: mm(),
  stringTensionN: FORCE,
  stringStressMPa: plain('MPa', 0),
  stringStressPercent: plain('%', 0),
  stringPullN: FORCE,
  flatAfterDays: plain('day', 1),
  settlingMoveMm: mm(),
  extraFlexibilityPercent: plain('%', 0),

  // Playing
  stringRoomMm: mm(),
  stringRoomBoundMm: mm(),
  buzzForceN: plain('N', 1),
  string: COUNT,
  frettedAt: COUNT,
  touchedFret: COUNT,
  notesBuzzing: COUNT,
  notesMayBuzz: COUNT,
  bestRoomMm: mm(),
  roomCostMm: mm(),
  moreReliefMm: mm(),
  actionMm: mm(),
  lowestActionMm: mm(),
  actionChangeMm: mm(),
  roomStrungMm: mm(),
  roomSettledMm: mm(),
  stringActionMm: mm(),
  stringReliefMm: mm(),
  nutOverFret1Mm: mm(),
  saddleOverFretsMm: mm(),
  actionPerTurnMm: mm(),
  pluckForceN: plain('N', 1),
  ownForceN: plain('N', 2),
  pluckFromSaddleMm: mm(0),

  // Levelling
  aboveLineMm: mm(3),
  takenOffMm: mm(3),
  crownLeftMm: mm(),
  levellingsLeft: COUNT,
  crownMeasuredMm: mm(),
  bindingThicknessMm: mm(),
  stringDiameterMm: mm(3),
  besidePreviousMm: mm(2),
  stringSpacingMm: mm(),

  // Wood and metal
  blankModulusGPa: plain('GPa', 1),
  hardnessHV: plain('', 0),
  wearLifeRatio: plain('', 2),
  modulusGPa: plain('GPa', 0),
  yieldMPa: plain('MPa', 0),
} as const satisfies Readonly<Record<string, QuantityKind>>;

/** Quantities that are computed, as against given in a build. */
export type ComputedKey = keyof typeof COMPUTED;
/** Numbers of a build. */
export type GivenKey = Extract<ParameterRow, { readonly kind: 'number' }>['id'];
export type QuantityKey = ComputedKey | GivenKey;

export const COMPUTED_KEYS = Object.keys(COMPUTED) as readonly ComputedKey[];

export function isComputed(key: string): key is ComputedKey {
  return Object.hasOwn(COMPUTED, key);
}

/**
 * Unit and digits of a quantity, computed or given.
 * @throws {RangeError} when no quantity has that key
 */
export function quantityOf(key: QuantityKey): QuantityKind {
  if (isComputed(key)) return COMPUTED[key];
  const parameter = parameterById(key);
  if (parameter.kind !== 'number') throw new RangeError(`"${key}" is no quantity: it has no number`);
  return parameter;
}

/** Digits after the point that a value keeps in files: a tenth of a micrometre, a tenth of a newton. */
const FILE_DIGITS: Partial<Record<Unit, number>> = { N: 1, 'mm³': 1, '%': 2, day: 2, min: 2, h: 2, '°': 2 };
const OTHER_FILE_DIGITS = 4;
/** Digits in all beyond which a sum of decimals is noise. */
const EXACT_DIGITS = 12;

export function fileDigits(unit: Unit): number {
  return FILE_DIGITS[unit] ?? OTHER_FILE_DIGITS;
}

/**
 * A value as files and `predict` hold it: in its stored unit, with the digits that mean something. Texts are made of this
 * value too (speech/quantity.ts), so that whoever rounds the number of a file comes to what the page shows.
 */
export function filedValue(value: number, unit: Unit): number {
  const filed = Number(value.toFixed(fileDigits(unit)));
  return filed === 0 ? 0 : filed;
}

/**
 * A value as files and `predict` hold it under its key. What was given in a build stays as it was given.
 * @throws {RangeError} when no quantity has that key
 */
export function filedQuantity(key: QuantityKey, value: number): number {
  return isComputed(key) ? filedValue(value, COMPUTED[key].unit) : filedExactly(value);
}

/** A value beside its limit as files hold both: digits enough to tell them apart, without the noise of a sum. */
export function filedExactly(value: number): number {
  const filed = Number(value.toPrecision(EXACT_DIGITS));
  return filed === 0 ? 0 : filed;
}
