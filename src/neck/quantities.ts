/**
 * One key for each quantity that the house speaks of: the same in `predict`, in CSV, in checks and tables, in the tests
 * that hold all surfaces to one value, and in speech (speech/en/quantities.ts has the words for each).
 *
 * A key is written in camel case and carries its unit where it has one: `kerfMm`, `pullOutForceN`. The numbers of a build
 * are quantities too, under the id of their row in parameters.ts; what stands here is everything that is computed.
 */
import { parameterById, type ParameterRow } from './parameters.ts';
import type { Unit } from './units.ts';

export interface QuantityKind {
  /** The unit in which the value is stored, handed on and written to files. */
  readonly unit: Unit;
  /** Digits after the point that the value deserves where people read it, in that unit. */
  readonly digits: number;
  /** What it is, for whoever works on the house. */
  readonly meaning: string;
  /** Heading of mechanics/MODEL.md under which it is derived; what has none is geometry, told at the head of its file. */
  readonly model?: string;
}

const mm = (meaning: string, digits = 2, model?: string): QuantityKind => ({
  unit: 'mm',
  digits,
  meaning,
  ...(model === undefined ? {} : { model }),
});
const plain = (unit: Unit, digits: number, meaning: string, model?: string): QuantityKind => ({
  ...mm(meaning, digits, model),
  unit,
});
const count = (meaning: string): QuantityKind => plain('', 0, meaning);
const force = (meaning: string, model: string): QuantityKind => plain('N', 0, meaning, model);

const RELIEF = '2. Coordinates, signs, units';
const MOMENTS = '9. Moments of the job';
const SEATING = '7. Seating';
const ROD = '11. Rod';

const COMPUTED = {
  // Fret by fret
  fret: count('number of a fret, 1 the first'),
  frets: count('numbers of the frets that it is about'),
  fretXMm: mm('from the front of the nut along the centre line', 2, '3. Shape and section'),
  fromLastFretMm: mm('from a fret to the last one'),
  fromPreviousFretMm: mm('from a fret to the one before it, or to the nut'),

  // Slots
  boardWidthMm: mm('width of the board at a fret', 2, '3. Shape and section'),
  boardRadiusMm: mm('radius of the board at a fret', 0, '3. Shape and section'),
  slotLengthMm: mm('length of a slot, end to end, seen from above'),
  slotDepthNeededMm: mm('least depth at the centre line that clears the tang with the air wanted'),
  slotDepthAtEndMm: mm('depth below the surface at the end of the slot'),
  boardLeftCentreMm: mm('board below the slot at the centre line'),
  boardLeftLeastMm: mm('board below the slot where it is least'),
  boardEdgeThicknessMm: mm('thickness of the board at its edge'),
  chamferLimitMm: mm('widest chamfer that the crown covers'),
  glueGapMm: mm('gap beside the tang of a glue fit, both sides together'),

  // Wire
  arcLengthMm: mm('along the arc of the board, edge to edge'),
  cutLengthMm: mm('length to cut a piece of wire to', 1),
  nipMm: mm('tang nipped off at each end of a piece as cut'),
  tangLengthMm: mm('tang that stays, along the wire'),
  shelfMm: mm('crown that rests on binding left whole, at each end'),
  bevelLossMm: mm('how much shorter the crown is at its top than at its foot, at each end'),
  filedLengthMm: mm('length of the finished fret at its foot, along the arc'),
  wantedWireRadiusMm: mm('radius that the free wire should have', 0),
  bendToRadiusMm: mm('radius to bend to, springback counted; negative: past straight', 0),
  bendStaysPercent: plain('%', 0, 'share of a bend that stays'),
  middleStandsOffMm: mm('how far the middle of bent wire stands off when its ends touch'),
  besideStringMm: mm('top of the crown left beside an outer string'),
  wireTotalMm: mm('wire in all: frets, spare and loss at the cuts', 0),
  stick: count('number of a stick of wire'),
  pieceLengthsMm: mm('lengths cut from a stick', 1),
  stickLeftMm: mm('left over of a stick', 1),

  // Seating
  studBiteMm: mm('how far the studs bite into each wall', 3, SEATING),
  seatingTurn: count('when a fret goes in: 1 is the first'),
  quarter: count('quarter of the frets, in the order of seating'),
  fretsIn: count('frets that are in'),
  fretsInQuarter: count('frets of one quarter'),
  seatingForceN: force('force to press one fret in', SEATING),
  caulPressureMPa: plain('MPa', 1, 'pressure of that force on the foot of the crown'),
  wedgeForceN: force('force with which a fret wedges its slot', SEATING),
  pullOutForceN: force('force to lift one fret whole', SEATING),
  glueVolumeMm3: plain('mm³', 0, 'room for glue in one slot'),
  glueTotalMm3: plain('mm³', 0, 'room for glue in all slots together'),
  glueBeadMm: mm('round bead along the slot that fills it', 1),
  openTimeMin: plain('min', 1, 'from spreading the glue to the fret being home'),
  clampTimeMin: plain('min', 0, 'time under the clamp'),
  glueFullHours: plain('h', 0, 'until the glue has set through'),
  slotOpeningMm: mm('how far a slot is wedged open', 4, SEATING),
  meanWedgeForceN: force('force with which a fret wedges its slot, mean of all frets', SEATING),
  meanSeatingForceN: force('force to press one fret in, mean of all frets', SEATING),
  meanPullOutForceN: force('force to lift one fret whole, mean of all frets', SEATING),
  wedgeForceStrungN: force('force with which a fret wedges its slot, once the strings are on', SEATING),

  // Bow
  reliefMm: mm('greatest distance of the fret tops below the straightedge; plus a hollow, minus a hump', 2, RELIEF),
  frettedReliefMm: mm('relief with all frets in, before the strings', 2, MOMENTS),
  strungReliefMm: mm('relief on the day the strings go on, rod slack', 2, MOMENTS),
  settledReliefMm: mm('relief strung and settled, rod slack', 2, MOMENTS),
  rodSetReliefMm: mm('relief settled, with the rod as it is set', 2, MOMENTS),
  atXMm: mm('where the relief is greatest, from the nut', 0, RELIEF),
  atFret7Mm: mm('relief at fret 7', 2, RELIEF),
  atFret8Mm: mm('relief at fret 8', 2, RELIEF),
  levellingReliefMm: mm('relief of a fret top in the state in which the crowns are levelled', 2, MOMENTS),
  missMm: mm('relief that the rod leaves over what is wanted; minus: short of it', 2, ROD),
  reliefP05Mm: mm('lower end of the band of the relief', 2, '13. How sure, and the way back'),
  reliefP95Mm: mm('upper end of the band of the relief', 2, '13. How sure, and the way back'),
  rodReachReliefMm: mm('relief nearest to the one wanted that the rod can reach', 2, ROD),
  rodTightReliefMm: mm('relief with the rod as tight as it may be', 2, ROD),
  reliefMeasuredMm: mm('relief as measured'),
  lineReliefMm: mm('relief of the fret tops at one fret, with the board planed straight', 2, RELIEF),
  wantedLineReliefMm: mm('relief wanted at one fret', 2, '13. How sure, and the way back'),
  planeOffMm: mm('wood to plane off the board', 2, '13. How sure, and the way back'),

  // Rod and strings
  rodRangePercent: plain('%', 0, 'share of the range of the rod that the relief wanted takes', ROD),
  turnsOfNut: plain('', 2, 'turns of the nut from where it is snug', ROD),
  rodTurnsAtLimit: plain('', 2, 'turns of the nut from where it is snug to the limit of the rod', ROD),
  rodSetPercent: plain('%', 0, 'how the rod is set: as the build says, else for the relief wanted', ROD),
  nutTorqueNm: plain('N·m', 1, 'torque on the nut', ROD),
  quarterTurnReliefMm: mm('what each quarter turn of the nut adds to the relief', 2, ROD),
  stringTensionN: force('tension of a string', '10. Strings'),
  stringStressMPa: plain('MPa', 0, 'stress in the wire of a string, or in its core', '10. Strings'),
  stringStressPercent: plain('%', 0, 'stress over the least strength of the wire of a string', '10. Strings'),
  stringPullN: force('pull of all strings together', '10. Strings'),
  flatAfterDays: plain('day', 1, 'days until the neck has settled flat', MOMENTS),
  settlingMoveMm: mm('how far the relief moves from the day of stringing until the neck has settled', 2, MOMENTS),
  extraFlexibilityPercent: plain('%', 0, 'how much more the neck gives than with unsawn slots', '8. Methods'),

  // Levelling
  aboveLineMm: mm('top of a fret above the levelling line', 3),
  takenOffMm: mm('taken off a crown in all', 3),
  crownLeftMm: mm('height of a crown after levelling'),
  levellingsLeft: count('later levellings that a crown still takes'),
  crownMeasuredMm: mm('height of a crown as measured'),

  bindingThicknessMm: mm('thickness of one line of binding'),
  stringDiameterMm: mm('diameter of a string, outside', 3),
  stringSpacingMm: mm('from the middle of a string to the middle of the next at the nut, evenly spread'),

  // Wood and metal
  blankModulusGPa: plain('GPa', 1, 'stiffness along the grain of a blank that was measured', '4. Woods'),
  hardnessHV: plain('', 0, 'Vickers hardness of a wire'),
  wearLifeRatio: plain('', 2, 'wear life over that of the chosen metal'),
  modulusGPa: plain('GPa', 0, 'stiffness of a metal'),
  yieldMPa: plain('MPa', 0, 'yield strength of a metal'),
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

/** What a computed quantity means, and where it is derived. */
export function computedQuantity(key: ComputedKey): QuantityKind {
  return COMPUTED[key];
}

/**
 * Unit and digits of a quantity, computed or given.
 * @throws {RangeError} when no quantity has that key
 */
export function quantityOf(key: QuantityKey): Pick<QuantityKind, 'unit' | 'digits'> {
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
