/** Numbers of lessons: computed from the build and its prediction by the library, and written in the reader's units. */
import type { Build } from '../../build/build.ts';
import { parameterById } from '../../build/parameters.ts';
import { formatNumber, formatQuantity, type Unit, type UnitSystem } from '../../build/units.ts';
import { fretEnd } from '../../fretwork/ends.ts';
import { seatingSequence } from '../../fretwork/seating-order.ts';
import type { Method, Prediction } from '../../mechanics/prediction-types.ts';
import { lineAt } from '../../mechanics/states.ts';
import { momentAt } from '../../state/rail.ts';
import { bowText } from '../words/bow.ts';
import type { Quantity } from './types.ts';

/** A build with the prediction that is true of it, and what earlier steps have remembered. */
export interface Bench {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly remembered: Readonly<Record<string, Measure>>;
}

/** A number with what is needed to write it. */
export interface Measure {
  readonly value: number;
  readonly unit: Unit;
  /** Digits after the point in the stored unit. */
  readonly digits: number;
  /** A relief, said as back-bow or relief instead of with a sign. */
  readonly isBow: boolean;
  /** A number of times. */
  readonly isRatio: boolean;
}

const STANDARD_GRAVITY = 9.80665;

const plain = (value: number, unit: Unit, digits: number): Measure => ({
  value,
  unit,
  digits,
  isBow: false,
  isRatio: false,
});
const bow = (value: number): Measure => ({ ...plain(value, 'mm', 2), isBow: true });
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function settledAt({ build, prediction }: Bench, method: Method, rodPercent: number): number {
  return lineAt(prediction, method, { strung: true, days: build.settleDays, rodPercent }).extremeMm;
}

/** @throws {RangeError} for a parameter that is no number, and for a fret that the neck has not */
export function measure(quantity: Quantity, bench: Bench): Measure {
  const { build, prediction, remembered } = bench;
  const method = ('method' in quantity ? quantity.method : undefined) ?? build.method;
  const of = prediction.methods[method];
  switch (quantity.q) {
    case 'relief':
      return bow(lineAt(prediction, method, momentAt(build, quantity.at)).extremeMm);
    case 'rodReach': {
      const { leastPercent, mostPercent } = prediction.rod;
      return bow(settledAt(bench, method, quantity.end === 'least' ? leastPercent : mostPercent));
    }
    case 'rodTravel': {
      const { leastPercent, mostPercent } = prediction.rod;
      const travel = settledAt(bench, method, leastPercent) - settledAt(bench, method, mostPercent);
      return plain(Math.abs(travel), 'mm', 2);
    }
    case 'wedgeForce':
      return plain(mean(of.wedgeForceN), 'N', 0);
    case 'pullOut':
      return plain(mean(of.pullOutForceN), 'N', 0);
    case 'seatingForce':
      return plain(mean(of.seatingForceN), 'N', 0);
    case 'extraFlexibility':
      return plain(100 * of.extraFlexibility, '%', 0);
    case 'stringPull':
      return plain(prediction.stringPullN, 'N', 0);
    case 'stringPullKg':
      return plain(prediction.stringPullN / STANDARD_GRAVITY, '', 0);
    case 'nip':
      return plain(fretEnd(build, quantity.fret).nipMm, 'mm', 2);
    case 'shelf':
      return plain(fretEnd(build, quantity.fret).shelfMm, 'mm', 2);
    case 'wholeLines':
      return plain(fretEnd(build, quantity.fret).linesWhole, '', 0);
    case 'chamferRoom':
      return plain((build.crownWidthMm - build.kerfMm) / 2, 'mm', 2);
    case 'nthFret':
      return plain(seatingSequence(build)[quantity.n - 1] ?? Number.NaN, '', 0);
    case 'parameter': {
      const parameter = parameterById(quantity.id);
      const value = build[quantity.id];
      if (parameter.kind !== 'number' || typeof value !== 'number') {
        throw new RangeError(`parameter "${quantity.id}" is no number`);
      }
      return plain(value, parameter.unit, parameter.digits);
    }
    case 'remembered':
      // A learner who hurries on before a step was computed sees a dash.
      return remembered[quantity.name] ?? plain(Number.NaN, '', 0);
    case 'ratio': {
      const ratio = measure(quantity.of, bench).value / measure(quantity.to, bench).value;
      return { ...plain(ratio, '', Math.abs(ratio) < 10 ? 1 : 0), isRatio: true };
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
