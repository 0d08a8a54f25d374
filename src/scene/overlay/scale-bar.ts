/**
 * A bar of known length. The picture is in perspective, so it holds for things as far away as what the camera looks at,
 * across the line of sight; the note beside it says so.
 *
 *   pixels per mm    k = h/(2·d·tan(φ/2))        h height of the picture in pixels, d distance, φ vertical field of view
 */
import { MM_PER_INCH, type UnitSystem } from '../../neck/units.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import type { Orbit } from '../camera/orbit.ts';
import { stroke, textWidth, write, type Ink } from './ink.ts';

export interface ScaleBar {
  readonly lengthMm: number;
  /** As it is written beside the bar. */
  readonly label: string;
}

/** Page pixels per millimetre at the point that the camera looks at. */
export function pixelsPerMm(orbit: Pick<Orbit, 'distance' | 'field'>, heightPx: number): number {
  return heightPx / (2 * orbit.distance * Math.tan(orbit.field / 2));
}

/** Lengths that a bar may have: 1, 2 or 5 of a power of ten, of the reader's unit. */
const MANTISSAS = [5, 2, 1] as const;

/** The longest bar of a round length that is no longer than `mostPx`. @throws {RangeError} when the scale is not positive */
export function scaleBarOf(pxPerMm: number, mostPx: number, units: UnitSystem): ScaleBar {
  if (!(pxPerMm > 0 && mostPx > 0)) {
    throw new RangeError(`scale is ${pxPerMm} px per mm over ${mostPx} px; both must be more than 0`);
  }
  const unitMm = units === 'inch' ? MM_PER_INCH : 1;
  const most = mostPx / pxPerMm / unitMm;
  const power = Math.floor(Math.log10(most) + 1e-9);
  const mantissa = MANTISSAS.find((candidate) => candidate * 10 ** power <= most * (1 + 1e-9)) ?? 1;
  const lengthMm = mantissa * 10 ** power * unitMm;
  // Digits of the stored unit; the display adds its own for inches.
  const digits = Math.max(0, -power) - (units === 'inch' ? 1 : 0);
  return { lengthMm, label: formatQuantity(lengthMm, 'mm', digits, units) };
}

/** Draws the bar with its right end at `right`, its line at `y`. @param note what stands after the length */
export function drawScaleBar(
  ink: Ink,
  orbit: Pick<Orbit, 'distance' | 'field'>,
  units: UnitSystem,
  [right, y]: readonly [number, number],
  note: string,
): void {
  const scale = pixelsPerMm(orbit, ink.height);
  const bar = scaleBarOf(scale, Math.min(260, ink.width * 0.3), units);
  const length = bar.lengthMm * scale;
  const left = right - length;
  const text = `${bar.label} ${note}`;
  stroke(ink, [
    [left, y - 4],
    [left, y + 4],
    [left, y],
    [right, y],
    [right, y - 4],
    [right, y + 4],
  ]);
  const wide = textWidth(ink, text, { size: 12 }) > length;
  write(ink, text, [wide ? right : left, y - 8], { size: 12, align: wide ? 'right' : 'left' });
}
