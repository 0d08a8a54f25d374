/**
 * The rule of three, which the advice of the library is held against: everything in proportion to the first quarters.
 *
 *   neck over prediction       m = measured so far/predicted so far
 *   expected at the end        e = measured + m·(predicted full − predicted so far)
 *   the rest must make         s = (target − measured)/(m·(predicted full − predicted so far))      of its bow
 *   kerf for the rest          k' = w − s·(w − k)
 *
 * w = width over the studs, k = kerf, mm; bows in mm with the sign of the relief (back-bow negative). Linear in the bite:
 * the studs' curve bends over, so k' asks for a little too much change; saw or shave one slot, seat one fret, look again.
 * Source: superposition; the linear step is an engineering approximation.
 */

export type ProportionAdvice =
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

export interface InProportion {
  readonly ratio: number;
  /** Bow when the rest goes in unchanged. */
  readonly expectedFullMm: number;
  /** Share of its bow that the rest may make. */
  readonly restShare: number;
  /** Kerf for the remaining slots; undefined where no kerf does it. */
  readonly kerfMm?: number;
  readonly advice: ProportionAdvice;
}

export interface ProportionInput {
  /** Bow after the frets that are in, predicted and measured, and with all in as predicted; sign of the relief. */
  readonly predictedSoFarMm: number;
  readonly measuredSoFarMm: number;
  readonly predictedFullMm: number;
  /** Bow wanted with all frets in; the predicted one when omitted. */
  readonly targetFullMm?: number;
  /** How far measured and predicted may differ before it matters, as a share; half the band is a good choice. */
  readonly tolerance: number;
  readonly kerfMm: number;
  readonly studWidthMm: number;
}

/** @throws {RangeError} when the prediction so far is zero or of another sign than the whole, or a number is not finite. */
export function inProportion(input: ProportionInput): InProportion {
  const { predictedSoFarMm, measuredSoFarMm, predictedFullMm, tolerance, kerfMm, studWidthMm } = input;
  const targetFullMm = input.targetFullMm ?? predictedFullMm;
  for (const [name, value] of Object.entries({ ...input, targetFullMm })) {
    if (!Number.isFinite(value)) throw new RangeError(`${name} is ${value}; it must be a finite number`);
  }
  if (!(predictedSoFarMm * predictedFullMm > 0)) {
    throw new RangeError(
      `predicted bow so far is ${predictedSoFarMm} mm and ${predictedFullMm} mm with all frets in; both must bow the same way and not be 0 mm`,
    );
  }
  const ratio = measuredSoFarMm / predictedSoFarMm;
  const rest = ratio * (predictedFullMm - predictedSoFarMm);
  const expectedFullMm = measuredSoFarMm + rest;
  const restShare = rest === 0 ? 1 : (targetFullMm - measuredSoFarMm) / rest;

  const sense = Math.sign(predictedFullMm);
  const excess = (expectedFullMm - targetFullMm) * sense;
  const allowed = tolerance * Math.abs(predictedFullMm);
  const overNow = (measuredSoFarMm - targetFullMm) * sense;
  const advice: ProportionAdvice =
    Math.abs(excess) <= allowed
      ? 'go-on'
      : excess < 0
        ? 'behind'
        : overNow > allowed
          ? 'past-target'
          : restShare <= 0.1
            ? 'glue-the-rest'
            : 'widen-kerf';
  return {
    ratio,
    expectedFullMm,
    restShare,
    ...(advice === 'widen-kerf' ? { kerfMm: studWidthMm - restShare * (studWidthMm - kerfMm) } : {}),
    advice,
  };
}
