/**
 * Any moment of the job as a sum of the prediction's basis lines; cheap enough for every frame.
 *
 *   r(x) = b(x) + ω(t)·Σ_i w_i(x) + [strung]·((1 + φ(τ))·s(x) + (setting/100)·k(x) + c(x) − l(x))
 *
 * b the bow before fretting; l what levelling has taken out of the line of the fret tops: their line in the state in
 * which they were filed, with all frets in and the rod neutral, either bare or on the day of stringing.
 *
 * w_i what fret i does, s the strings, k the rod at its limit, c the climate; τ days since stringing, t = rest + τ days
 * since the frets went in; ω and φ from time.ts. The rod counts as set at the moment that is shown.
 */
import { say } from '../build/language.ts';
import { fretPositionMm } from '../build/neck-shape.ts';
import type { Method, Moment, Prediction, ReliefLine } from './prediction-types.ts';
import { extremeRelief, sampleLine } from './relief.ts';
import { stringLineGrowth, wedgeLineLeft } from './time.ts';

/** Relief of a line at a fret, against the prediction's straightedge; NaN where there is no such fret. */
function atFret(prediction: Prediction, reliefMm: Float64Array, fret: number): number {
  const x = prediction.fretXMm[fret - 1];
  return x === undefined ? Number.NaN : sampleLine(prediction.stationXMm, reliefMm, x);
}

/** A relief line with its extreme and its values at frets 7 and 8. */
export function describeLine(
  prediction: Pick<Prediction, 'fretXMm' | 'stationXMm' | 'straightedge'>,
  reliefMm: Float64Array,
): ReliefLine {
  const { fromFret, toFret } = prediction.straightedge;
  const from = prediction.fretXMm[fromFret - 1]!;
  const to = prediction.fretXMm[toFret - 1]!;
  return {
    reliefMm,
    ...extremeRelief(prediction.stationXMm, reliefMm, from, to),
    atFret7Mm: atFret(prediction as Prediction, reliefMm, 7),
    atFret8Mm: atFret(prediction as Prediction, reliefMm, 8),
  };
}

/** How much of each basis line a moment holds. */
export function momentShares(
  prediction: Pick<Prediction, 'time'>,
  moment: Moment,
): { readonly wedges: number; readonly strings: number; readonly rod: number; readonly climate: number } {
  const { restDays, wedgeRelaxation, creepFactor } = prediction.time;
  if (!moment.strung) return { wedges: 1, strings: 0, rod: 0, climate: 0 };
  return {
    wedges: wedgeLineLeft(restDays + moment.days, wedgeRelaxation, creepFactor),
    strings: stringLineGrowth(moment.days, creepFactor),
    rod: moment.rodPercent / 100,
    climate: 1,
  };
}

/**
 * The fret-top line at a moment.
 * @param out a line of an earlier call for the same prediction, whose buffer is used again.
 * @throws {RangeError} for a fret that the neck does not have, a negative time or a rod setting outside ±100 %.
 */
export function lineAt(prediction: Prediction, method: Method, moment: Moment, out?: ReliefLine): ReliefLine {
  const { basis } = prediction.methods[method];
  const stations = prediction.stationXMm.length;
  const frets = prediction.fretXMm.length;
  if (!(moment.days >= 0)) throw new RangeError(say`days since stringing is ${moment.days}; it must be 0 or more days`);
  if (!(Math.abs(moment.rodPercent) <= 100)) {
    throw new RangeError(say`rod setting is ${moment.rodPercent}; it must be −100 to 100 %`);
  }
  const line = out?.reliefMm.length === stations ? out.reliefMm : new Float64Array(stations);
  line.fill(0);
  const shares = momentShares(prediction, moment);
  const addRow = (table: Float64Array, row: number, share: number) => {
    if (share === 0) return;
    const start = row * stations;
    for (let i = 0; i < stations; i += 1) line[i]! += share * table[start + i]!;
  };
  const fretsIn = moment.fretsIn ?? prediction.fretXMm.map((_, index) => index + 1);
  for (const fret of fretsIn) {
    if (!Number.isInteger(fret) || fret < 1 || fret > frets)
      throw new RangeError(say`fret ${fret} is not on this neck: frets are 1 to ${frets}`);
    addRow(basis.wedgeMm, fret - 1, shares.wedges);
  }
  addRow(basis.stringsMm, 0, shares.strings);
  addRow(basis.rodMm, 0, shares.rod);
  addRow(basis.climateMm, 0, shares.climate);
  addRow(prediction.startingMm, 0, 1);
  if (moment.strung && !moment.ofWood && prediction.levelledIn !== 'none') {
    const filed = lineAt(prediction, method, levellingMoment(prediction.levelledIn));
    addRow(filed.reliefMm, 0, -1);
  }
  return describeLine(prediction, line);
}

/** The moment in which the crowns are filed: rod neutral, and not yet filed. */
export function levellingMoment(levelledIn: 'bare' | 'strung'): Moment {
  return { strung: levelledIn === 'strung', days: 0, rodPercent: 0, ofWood: true };
}

/** The straightedge of a build: fret 1 to the fret at the body joint. */
export function straightedgeOf(build: { readonly bodyJointFret: number; readonly scaleLengthMm: number }): {
  readonly fromFret: number;
  readonly toFret: number;
  readonly fromXMm: number;
  readonly toXMm: number;
} {
  return {
    fromFret: 1,
    toFret: build.bodyJointFret,
    fromXMm: fretPositionMm(build.scaleLengthMm, 1),
    toXMm: fretPositionMm(build.scaleLengthMm, build.bodyJointFret),
  };
}
