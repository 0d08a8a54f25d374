/**
 * Any moment of the job as a sum of the prediction's basis lines; cheap enough for every frame.
 *
 *   r(x) = b(x) + ω(t)·Σ_i w_i(x) + [strung]·((1 + φ(τ))·s(x) + (setting/100)·k(x) + c(x) − l(x) + f(x))
 *
 * b the bow before fretting; l what levelling has taken out of the line of the fret tops: their line in the state in
 * which they were filed, with all frets in and the rod neutral, either bare or on the day of stringing; f the fall-away of
 * the last frets (neck/neck-shape.ts), against the straightedge.
 *
 * w_i what fret i does, s the strings, k the rod at its limit, c the climate; τ days since stringing, t = rest + τ days
 * since the frets went in; ω and φ from time.ts. The rod counts as set at the moment that is shown.
 */
import { Refused } from './refusal.ts';
import { fretPositionMm } from '../neck/neck-shape.ts';
import type { Method, MethodPrediction, Moment, Prediction, ReliefLine } from './prediction-types.ts';
import { extremeRelief, sampleLine } from './relief.ts';
import { addRows } from './elements/rows.ts';
import { stringLineGrowth, wedgeLineLeft } from './time.ts';

/** Relief of a line at a fret, against the prediction's straightedge; NaN where there is no such fret. */
function atFret(prediction: Pick<Prediction, 'fretXMm' | 'stationXMm'>, reliefMm: Float64Array, fret: number): number {
  const x = prediction.fretXMm[fret - 1];
  return x === undefined ? Number.NaN : sampleLine(prediction.stationXMm, reliefMm, x);
}

/** A relief line with its extreme and its values at frets 7 and 8. */
export function describeLine(
  prediction: Pick<Prediction, 'fretXMm' | 'stationXMm' | 'straightedge'>,
  reliefMm: Float64Array,
): ReliefLine {
  const { fromFret, toFret } = prediction.straightedge;
  const from = prediction.fretXMm[fromFret - 1];
  const to = prediction.fretXMm[toFret - 1];
  return {
    reliefMm,
    ...extremeRelief(prediction.stationXMm, reliefMm, from, to),
    atFret7Mm: atFret(prediction, reliefMm, 7),
    atFret8Mm: atFret(prediction, reliefMm, 8),
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

/** What the lines of a method at its moments are made of. */
export type LineParts = Pick<
  Prediction,
  'fretXMm' | 'stationXMm' | 'straightedge' | 'startingMm' | 'fallMm' | 'levelledIn' | 'time'
> & {
  readonly basis: MethodPrediction['basis'];
};

/**
 * Adds up what frets do with their seating force, over the stations.
 * @param fretsIn undefined = all of them. @param out room for the sum.
 * @throws {RangeError} for a fret that the neck does not have.
 */
export function sumWedges(
  { wedgeMm }: Pick<LineParts['basis'], 'wedgeMm'>,
  frets: number,
  stations: number,
  fretsIn?: Moment['fretsIn'],
  out: Float64Array = new Float64Array(stations),
): Float64Array {
  const rows: number[] = [];
  if (fretsIn === undefined) for (let fret = 1; fret <= frets; fret += 1) rows.push(fret - 1);
  fretsIn?.forEach((fret) => {
    if (!Number.isInteger(fret) || fret < 1 || fret > frets) throw new Refused({ code: 'fret-not-there', fret, frets });
    rows.push(fret - 1);
  });
  out.fill(0);
  addRows(
    wedgeMm,
    rows,
    rows.map(() => 1),
    out,
  );
  return out;
}

/**
 * The line at a moment, from what the wedges that are in add up to.
 * @param line in: from `sumWedges`; out: the line itself.
 * @param filedMm what levelling took out of it, if it did.
 */
function mixLine(parts: LineParts, moment: Moment, line: Float64Array, filedMm: Float64Array | undefined): void {
  const { stringsMm, rodMm, climateMm } = parts.basis;
  const shares = momentShares(parts, moment);
  for (let i = 0; i < line.length; i += 1) {
    line[i] =
      shares.wedges * line[i] +
      shares.strings * stringsMm[i] +
      shares.rod * rodMm[i] +
      shares.climate * climateMm[i] +
      parts.startingMm[i] -
      (filedMm?.[i] ?? 0);
  }
}

/** Is the line of the fret tops under the strings another than that of the wood? */
function isFiled({ levelledIn, fallMm }: Pick<LineParts, 'levelledIn' | 'fallMm'>): boolean {
  return levelledIn !== 'none' || fallMm.some((mm) => mm !== 0);
}

/** What the file takes out of the line, where it does: levelling, less the fall-away. @param wedgesMm of all frets, from `sumWedges`. */
export function filedLine(parts: LineParts, wedgesMm: Float64Array): Float64Array | undefined {
  if (!isFiled(parts)) return undefined;
  if (parts.levelledIn === 'none') return parts.fallMm.map((mm) => -mm);
  const line = wedgesMm.slice();
  mixLine(parts, levellingMoment(parts.levelledIn), line, parts.fallMm);
  return line;
}

/** The line at a moment with all frets in. @param wedgesMm from `sumWedges`; @param filedMm from `filedLine`. */
export function lineWithAllFrets(
  parts: LineParts,
  moment: Omit<Moment, 'fretsIn' | 'ofWood'>,
  wedgesMm: Float64Array,
  filedMm: Float64Array | undefined,
): ReliefLine {
  const line = wedgesMm.slice();
  mixLine(parts, moment, line, moment.strung ? filedMm : undefined);
  return describeLine(parts, line);
}

/**
 * The fret-top line at a moment.
 * @param out a line of an earlier call for the same prediction, whose buffer is used again.
 * @throws {RangeError} for a fret that the neck does not have, a negative time or a rod setting outside ±100 %.
 */
export function lineAt(prediction: Prediction, method: Method, moment: Moment, out?: ReliefLine): ReliefLine {
  const parts: LineParts = { ...prediction, basis: prediction.methods[method].basis };
  const stations = prediction.stationXMm.length;
  const frets = prediction.fretXMm.length;
  if (!(moment.days >= 0)) throw new Refused({ code: 'days-negative', days: moment.days });
  if (!(Math.abs(moment.rodPercent) <= 100)) {
    throw new Refused({ code: 'rod-beyond-range', rodPercent: moment.rodPercent, mostPercent: 100 });
  }
  const room = out?.reliefMm.length === stations ? out.reliefMm : undefined;
  const line = sumWedges(parts.basis, frets, stations, moment.fretsIn, room);
  const filed = moment.strung && !moment.ofWood && isFiled(prediction);
  mixLine(parts, moment, line, filed ? filedLine(parts, sumWedges(parts.basis, frets, stations)) : undefined);
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
