/** Numbers of lessons: computed from the build and its prediction by the library, and written in the reader's units. */
import type { Build } from '../../neck/build.ts';
import { workingKerfMm, workingValue } from '../../neck/kerf.ts';
import { parameterById } from '../../neck/parameters.ts';
import type { Unit, UnitSystem } from '../../neck/units.ts';
import { formatNumber, formatQuantity } from '../../speech/quantity.ts';
import { fretEnd } from '../../fretwork/ends.ts';
import { seatingSequence } from '../../fretwork/plan/seating-order.ts';
import type { Method, Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import { extremeRelief, reliefFromDepth, rockedGapMm, sampleLine } from '../../mechanics/relief.ts';
import { lineAt } from '../../mechanics/states.ts';
import { momentAt, type RailPosition } from '../../verdict/rail.ts';
import { bowText } from '../../speech/bow.ts';
import type { NeckQuantity, Quantity } from './types.ts';
import { actionsOf, roomFor } from '../../verdict/string-aim.ts';
import { playingOf, stringRoom, type Hand } from '../../verdict/string-room.ts';
import { meanOfFrets } from '../../verdict/job-figures.ts';

/** A build with the prediction that is true of it, and what earlier steps have remembered. */
export interface Bench {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly remembered: Readonly<Record<string, Measure>>;
}

/** How a number is written. */
export interface Form {
  readonly unit: Unit;
  /** Digits after the point in the stored unit. */
  readonly digits: number;
  /** A relief, said as back-bow or relief instead of with a sign. */
  readonly isBow: boolean;
  /** A number of times. */
  readonly isRatio: boolean;
}

/** A number with what is needed to write it. */
export interface Measure extends Form {
  readonly value: number;
}

const STANDARD_GRAVITY = 9.80665;

const plain = (unit: Unit, digits: number): Form => ({ unit, digits, isBow: false, isRatio: false });
const BOW: Form = { ...plain('mm', 2), isBow: true };

const FORMS: Readonly<Record<Exclude<NeckQuantity['q'], 'parameter'>, Form>> = {
  relief: BOW,
  lightUnder: plain('mm', 2),
  lightRocked: plain('mm', 2),
  edgeEnd: plain('', 0),
  rodReach: BOW,
  rodTravel: plain('mm', 2),
  wedgeForce: plain('N', 0),
  pullOut: plain('N', 0),
  seatingForce: plain('N', 0),
  extraFlexibility: plain('%', 0),
  stringPull: plain('N', 0),
  stringPullKg: plain('', 0),
  nip: plain('mm', 2),
  shelf: plain('mm', 2),
  wholeLines: plain('', 0),
  chamferRoom: plain('mm', 2),
  nthFret: plain('', 0),
  leastRoom: plain('mm', 2),
  roomWith: plain('mm', 2),
  worstFret: plain('', 0),
  action: plain('mm', 2),
  lowestAction: plain('mm', 2),
};

/** Lessons speak of ordinary playing. */
const HAND: Hand = { strength: 'medium', direction: 'along' };

/**
 * How a number of the neck is written, whatever it is.
 *
 * @throws {RangeError} for a parameter that is no number
 */
export function formOf(quantity: NeckQuantity): Form {
  if (quantity.q !== 'parameter') return FORMS[quantity.q];
  const parameter = parameterById(quantity.id);
  if (parameter.kind !== 'number') throw new RangeError(`parameter "${quantity.id}" is no number`);
  return plain(parameter.unit, parameter.digits);
}

function settledAt({ build, prediction }: Bench, method: Method, rodPercent: number): number {
  return lineAt(prediction, method, { strung: true, days: build.settleDays, rodPercent }).extremeMm;
}

/** The line of the fret tops at a stop of the way through the job. */
export function lineOfTops({ build, prediction }: Bench, at: RailPosition, method: Method = build.method): ReliefLine {
  return lineAt(prediction, method, momentAt(build, at, prediction.methods[method].rodSetPercent));
}

function lightUnder(bench: Bench, at: RailPosition, fromFret: number, toFret: number): number {
  const { fretXMm, stationXMm } = bench.prediction;
  const [from, to] = [fretXMm[fromFret - 1], fretXMm[toFret - 1]];
  const underEdge = reliefFromDepth(stationXMm, lineOfTops(bench, at).reliefMm, from, to);
  return Math.abs(extremeRelief(stationXMm, underEdge, from, to).extremeMm);
}

function lightRocked(bench: Bench, at: RailPosition): number {
  const { fretXMm, stationXMm, straightedge } = bench.prediction;
  const { reliefMm } = lineOfTops(bench, at);
  const xMm = [...fretXMm].slice(straightedge.fromFret - 1, straightedge.toFret);
  return rockedGapMm(
    xMm,
    xMm.map((x) => sampleLine(stationXMm, reliefMm, x)),
  );
}

/** In the unit of its form. */
function valueOf(quantity: NeckQuantity, bench: Bench): number {
  const { build, prediction } = bench;
  const method = ('method' in quantity ? quantity.method : undefined) ?? build.method;
  const of = prediction.methods[method];
  const { leastPercent, mostPercent } = prediction.rod;
  switch (quantity.q) {
    case 'relief':
      return lineOfTops(bench, quantity.at, method).extremeMm;
    case 'lightUnder':
      return lightUnder(bench, quantity.at, quantity.fromFret, quantity.toFret);
    case 'lightRocked':
      return lightRocked(bench, quantity.at);
    case 'edgeEnd':
      return prediction.straightedge.toFret;
    case 'rodReach':
      return settledAt(bench, method, quantity.end === 'least' ? leastPercent : mostPercent);
    case 'rodTravel':
      return Math.abs(settledAt(bench, method, leastPercent) - settledAt(bench, method, mostPercent));
    case 'wedgeForce':
      return meanOfFrets(of.wedgeForceN);
    case 'pullOut':
      return meanOfFrets(of.pullOutForceN);
    case 'seatingForce':
      return meanOfFrets(of.seatingForceN);
    case 'extraFlexibility':
      return 100 * of.extraFlexibility;
    case 'stringPull':
      return prediction.stringPullN;
    case 'stringPullKg':
      return prediction.stringPullN / STANDARD_GRAVITY;
    case 'nip':
      return fretEnd(build, quantity.fret).nipMm;
    case 'shelf':
      return fretEnd(build, quantity.fret).shelfMm;
    case 'wholeLines':
      return fretEnd(build, quantity.fret).linesWhole;
    case 'chamferRoom':
      return (build.crownWidthMm - workingKerfMm(build, build.method)) / 2;
    case 'nthFret':
      return seatingSequence(build)[quantity.n - 1] ?? Number.NaN;
    case 'leastRoom':
      return stringRoom(bench, HAND).least.leastMm;
    case 'worstFret':
      return stringRoom(bench, HAND).least.atFret;
    case 'roomWith':
      return roomFor(bench, quantity.reliefMm, playingOf(build, HAND)).roomMm;
    case 'action':
      return actionsOf(bench, HAND).actionMm;
    case 'lowestAction':
      return actionsOf(bench, HAND).lowestActionMm;
    case 'parameter':
      return workingValue(build, quantity.id) as number;
  }
}

/** @throws {RangeError} for a parameter that is no number, and for a fret that the neck has not */
export function measure(quantity: Quantity, bench: Bench): Measure {
  switch (quantity.q) {
    case 'remembered':
      // A learner who hurries on before a step was computed sees a dash.
      return bench.remembered[quantity.name] ?? { ...plain('', 0), value: Number.NaN };
    case 'ratio': {
      const value = measure(quantity.of, bench).value / measure(quantity.to, bench).value;
      return { ...plain('', Math.abs(value) < 10 ? 1 : 0), isRatio: true, value };
    }
    default: {
      const form = formOf(quantity);
      return { ...form, value: valueOf(quantity, bench) };
    }
  }
}

/** "0.21 mm back-bow", "0.50 mm", "463 N", "7.5 times"; a ratio to nothing is a dash. */
export function measureText({ value, unit, digits, isBow, isRatio }: Measure, system: UnitSystem): string {
  if (!Number.isFinite(value)) return '–';
  if (isBow) return bowText(value, system);
  return isRatio ? formatNumber(value, digits) : formatQuantity(value, unit, digits, system);
}

/** Replaces names in braces by what `say` makes of them. */
export function filled(text: string, say: (name: string) => string): string {
  return text.replace(/\{(\w+)\}/g, (_all, name: string) => say(name));
}
