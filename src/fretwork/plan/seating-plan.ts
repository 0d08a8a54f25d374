/**
 * Seating fret by fret: order, force, pressure under the caul, and the bow to expect after each quarter.
 *
 *   pressure   p = F/(w_c·ℓ)      F force to press one fret in, N; w_c crown width, ℓ length of the crown at its foot, mm; MPa
 *
 * Forces and bows come from the mechanics. Source of the pressure: force over area.
 */
import type { Build } from '../../neck/build.ts';
import { arcMm } from '../arc.ts';
import type { FretEnd } from '../ends.ts';
import { seatingQuarters } from './seating-order.ts';

/** What the mechanics found for the build's way of seating. */
export interface SeatingNumbers {
  /** One per fret. */
  readonly seatingForceN: readonly number[];
  readonly wedgeForceN: readonly number[];
  readonly pullOutForceN: readonly number[];
  /** Relief under the straightedge after each quarter of the frets, mm; and its band where known. */
  readonly bowAfterQuarterMm: readonly number[];
  readonly bowBandMm?: readonly (readonly [number, number])[];
}

export interface FretForces {
  readonly fret: number;
  readonly seatingForceN: number;
  readonly wedgeForceN: number;
  readonly pullOutForceN: number;
  /** Under the caul, on the foot of the crown. */
  readonly pressureMPa: number;
}

export interface Quarter {
  /** In the order of seating. */
  readonly frets: readonly number[];
  /** Frets that are in when this quarter is done. */
  readonly fretsIn: number;
  readonly expectedBowMm?: number;
  readonly bandMm?: readonly [number, number];
}

export interface SeatingPlan {
  readonly quarters: readonly Quarter[];
  /** By fret number; undefined when the mechanics were not asked. */
  readonly forces?: readonly FretForces[];
}

function expectLength(name: string, list: readonly unknown[] | undefined, length: number): void {
  if (list && list.length !== length) {
    throw new RangeError(`${name} has ${list.length} entries; it must have ${length}`);
  }
}

export function seatingPlan(build: Build, ends: readonly FretEnd[], numbers?: SeatingNumbers): SeatingPlan {
  expectLength('seatingForceN', numbers?.seatingForceN, ends.length);
  expectLength('wedgeForceN', numbers?.wedgeForceN, ends.length);
  expectLength('pullOutForceN', numbers?.pullOutForceN, ends.length);
  expectLength('bowAfterQuarterMm', numbers?.bowAfterQuarterMm, 4);
  expectLength('bowBandMm', numbers?.bowBandMm, 4);

  let fretsIn = 0;
  const quarters = seatingQuarters(build).map((frets, index): Quarter => {
    fretsIn += frets.length;
    const band = numbers?.bowBandMm?.[index];
    return {
      frets,
      fretsIn,
      ...(numbers ? { expectedBowMm: numbers.bowAfterQuarterMm[index] } : {}),
      ...(band ? { bandMm: band } : {}),
    };
  });
  if (!numbers) return { quarters };
  return {
    quarters,
    forces: ends.map((end, index): FretForces => {
      const seatingForceN = numbers.seatingForceN[index];
      const foot = 2 * arcMm(end.radiusMm, end.crownFootHalfMm);
      return {
        fret: end.fret,
        seatingForceN,
        wedgeForceN: numbers.wedgeForceN[index],
        pullOutForceN: numbers.pullOutForceN[index],
        pressureMPa: seatingForceN / (build.crownWidthMm * foot),
      };
    }),
  };
}
