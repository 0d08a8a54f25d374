/**
 * What the body of a tang does beside the studs where the kerf is narrower than it, and what that asks of the board.
 *
 *   share      F_b/F                 of the wedge force of a fret, F_b = (p/f_c)·F_max: from the pressure that the seating left
 *   shear      τ = F/(w·ℓ)           F wedge force, N; w length of tang, ℓ of the wood along the grain from the slot to the
 *                                    next one or to an end of the board, the shorter, mm; MPa. A slot beside it is empty, as it
 *                                    may be while frets go in. The mean over that plane; peaks at the slot are not in it
 *   strength   f_v = 21.9·G^1.13     MPa; G = ρ/1120, specific gravity of a wood of ρ kg/m³ at 12 % moisture. Wood Handbook
 *                                    Table 5-11, regression for hardwoods (from memory)
 */
import type { Build } from '../../neck/build.ts';
import { seatAt } from '../../neck/kerf.ts';
import { boardEndMm } from '../../neck/neck-shape.ts';
import { AS_STATED } from '../deviations.ts';
import { addRows } from '../elements/rows.ts';
import { boardProperties } from '../elements/materials.ts';
import type { Prediction } from '../prediction-types.ts';
import { describeLine } from '../states.ts';
import { contactsOf, tangLengthsMm } from './wire-contact.ts';

/** Shear strength along the grain of a hardwood, MPa. @param densityKgM3 at 12 % moisture */
export function shearStrengthMPa(densityKgM3: number): number {
  return 21.9 * (densityKgM3 / 1120) ** 1.13;
}

/** Share of the wedge force of each fret that the tang's body bears, 0 to 1. */
export function bodyShares(build: Build, prediction: Prediction): number[] {
  const { wedgeForceN, wallPressureShare } = prediction.methods[build.method];
  return contactsOf(build, AS_STATED).map(({ bodyLimitN }, i) =>
    wedgeForceN[i] > 0 ? Math.min(1, (wallPressureShare[i] * bodyLimitN) / wedgeForceN[i]) : 0,
  );
}

/** Greatest relief with the frets in, as it would be if the studs alone held them as they do now, mm. */
export function frettedWithoutBodyMm(build: Build, prediction: Prediction): number {
  const { basis, fretted } = prediction.methods[build.method];
  const line = Float64Array.from(fretted.reliefMm);
  const shares = bodyShares(build, prediction);
  addRows(
    basis.wedgeMm,
    shares.map((_, i) => i),
    shares.map((share) => -share),
    line,
  );
  return describeLine(prediction, line).extremeMm;
}

/** Shear in the wood beside each slot over its strength, per cent. */
export function wallShearPercent(build: Build, { methods, fretXMm }: Prediction): number[] {
  const strength = shearStrengthMPa(boardProperties(build).densityKgM3);
  const { wedgeForceN } = methods[build.method];
  const half = (index: number) => seatAt(build, index + 1).kerfMm / 2;
  return tangLengthsMm(build).map((lengthMm, i) => {
    const before = i === 0 ? 0 : fretXMm[i - 1] + half(i - 1);
    const after = i + 1 === fretXMm.length ? boardEndMm(build) : fretXMm[i + 1] - half(i + 1);
    const wallMm = Math.min(fretXMm[i] - before, after - fretXMm[i]) - half(i);
    return (100 * wedgeForceN[i]) / (lengthMm * wallMm * strength);
  });
}
