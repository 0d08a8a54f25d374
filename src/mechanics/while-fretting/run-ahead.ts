/**
 * What to do when the bow of the first frets is not the bow that was predicted, by the law of the grip.
 *
 *   bow of a set of frets     Σ_i w_i·F_i(c, k)/F_i        w_i what fret i does at the place of the greatest bow, as predicted
 *   F_i(c, k)                 one slot by itself (uncertainty/one-slot.ts): bite factor c, kerf wider by k
 *   c                         with which the frets that are in make the bow that was measured
 *   kerf for the rest         with which the rest makes, at that c, what is left to the bow wanted
 *
 * All of it is laid to the bite. Neighbouring slots are held as the prediction has them. Bows in mm with the sign of the relief.
 */
import { slotAndTang, type Build } from '../../neck/build.ts';
import { AS_STATED } from '../deviations.ts';
import type { Prediction } from '../prediction-types.ts';
import { sampleLine } from '../relief.ts';
import { contactsOf } from '../seating/wire-contact.ts';
import { deviatedContact, seatOne } from '../uncertainty/one-slot.ts';

export type RunAheadAdvice =
  /** Within the band: go on. */
  | 'go-on'
  /** Widen the kerf of the slots that are still empty. */
  | 'widen-kerf'
  /** The rest must not wedge at all: seat it as a glue fit. */
  | 'glue-the-rest'
  /** Even without any wedge from the rest the bow is past the target. */
  | 'past-target'
  /** Less bow than predicted: nothing to mend now, look at the studs' bite. */
  | 'behind';

export interface RunAhead {
  /** Measured over predicted. */
  readonly ratio: number;
  /** Bite factor that explains it, over the build's. */
  readonly biteTimes: number;
  /** What the frets do when the rest goes in unchanged, mm. */
  readonly expectedFullMm: number;
  /** Kerf for the remaining slots; undefined where no kerf does it. */
  readonly kerfMm?: number;
  readonly advice: RunAheadAdvice;
}

/** Bites that are thought of, over the build's. */
const LEAST_BITE = 0.02;
const MOST_BITE = 50;
const BISECTIONS = 50;
/** A rest that may make no more than this share of its bow is glued. */
const HARDLY = 0.1;

/** Where a function that does not fall passes a value, between two ends. */
function passes(from: number, to: number, value: number, at: (x: number) => number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < BISECTIONS; i += 1) {
    const middle = (low + high) / 2;
    if (at(middle) < value) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Bow of a set of frets at one place, as a function of the bite factor and of what the kerf is wider by. */
function bowsAt(build: Build, prediction: Prediction, xMm: number) {
  const { basis, wedgeForceN, openingMm } = prediction.methods[build.method];
  const { stationXMm } = prediction;
  const stations = stationXMm.length;
  const contacts = contactsOf(build, AS_STATED);
  const unit = contacts.map((_, i) => {
    const row = basis.wedgeMm.subarray(i * stations, (i + 1) * stations);
    return wedgeForceN[i] > 0 ? sampleLine(stationXMm, row, xMm) / wedgeForceN[i] : 0;
  });
  return (frets: readonly number[], bite: number, widerMm: number): number =>
    frets.reduce((sum, fret) => {
      const i = fret - 1;
      if (wedgeForceN[i] <= 0) return sum;
      const contact = deviatedContact(contacts[i], { ...AS_STATED, bite, kerfMm: widerMm });
      return sum + unit[i] * seatOne(contact, openingMm[i] / wedgeForceN[i]);
    }, 0);
}

export interface Ahead {
  readonly seated: readonly number[];
  readonly rest: readonly number[];
  /** Measured over predicted, of what the frets that are in do. */
  readonly ratio: number;
  /** Where the neck bows most with all frets in, mm from the nut. */
  readonly xMm: number;
  /** How far measured and predicted may differ in the end before it matters, as a share of the bow predicted. */
  readonly tolerance: number;
}

/** @throws {RangeError} where the frets that are in do nothing, or bow the other way than all of them */
export function runAhead(
  build: Build,
  prediction: Prediction,
  { seated, rest, ratio, xMm, tolerance }: Ahead,
): RunAhead {
  const bow = bowsAt(build, prediction, xMm);
  const full = bow([...seated, ...rest], 1, 0);
  const soFar = bow(seated, 1, 0);
  if (!(soFar * full > 0)) {
    throw new RangeError(
      `predicted bow so far is ${soFar} mm and ${full} mm with all frets in; both must bow the same way and not be 0 mm`,
    );
  }
  const sense = Math.sign(full);
  const measured = ratio * soFar;
  const biteTimes = Math.exp(
    passes(Math.log(LEAST_BITE), Math.log(MOST_BITE), sense * measured, (ln) => sense * bow(seated, Math.exp(ln), 0)),
  );
  const unchanged = bow(rest, biteTimes, 0);
  const expectedFullMm = measured + unchanged;
  const left = full - measured;
  const allowed = tolerance * Math.abs(full);
  const excess = (expectedFullMm - full) * sense;
  const told = (advice: RunAheadAdvice): RunAhead => ({ ratio, biteTimes, expectedFullMm, advice });
  if (Math.abs(excess) <= allowed) return told('go-on');
  if (excess < 0) return told('behind');
  if (-left * sense > allowed) return told('past-target');
  if (left / unchanged <= HARDLY) return told('glue-the-rest');
  const slots = rest.map((fret) => slotAndTang(build, fret));
  const widest = Math.max(...slots.map(({ kerfMm, studWidthMm }) => studWidthMm - kerfMm));
  const widerMm = passes(0, widest, -left * sense, (wider) => -sense * bow(rest, biteTimes, wider));
  return { ...told('widen-kerf'), kerfMm: build.kerfMm + widerMm };
}
