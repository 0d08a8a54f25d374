/**
 * Full-size pages for a browser to print. Browsers snap the box of a picture to whole pixels and stretch the picture to it:
 * a page of 297 mm, 1122.52 pixels, comes out 0.04 % long, a tenth of a millimetre over a neck. So the page is cut, not
 * scaled, to the whole pixels that it holds.
 *
 *   pixels   ⌊size·96/25.4⌋          1 in = 96 px (CSS Values and Units Level 4)
 *   window   pixels·25.4/96 mm       what is left off at the far edges is less than 0.27 mm of an empty margin
 */
import { MM_PER_INCH } from '../../neck/units.ts';

const PIXELS_PER_MM = 96 / MM_PER_INCH;

export interface PixelPage {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

const HEAD = /^<svg ([^>]*?)width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/;

/** @throws {RangeError} when the drawing is not one page in millimetres at full size */
export function inWholePixels(svg: string): PixelPage {
  const [head, before, ...sizes] = HEAD.exec(svg) ?? [];
  const [width, height, boxWidth, boxHeight] = sizes.map(Number);
  if (head === undefined || before === undefined || width !== boxWidth || height !== boxHeight) {
    throw new RangeError('a page to print must be an SVG of so many mm with a viewBox of the same numbers');
  }
  const [widthPx, heightPx] = [width, height].map((mm) => Math.floor(mm * PIXELS_PER_MM + 1e-9)) as [number, number];
  const box = `0 0 ${widthPx / PIXELS_PER_MM} ${heightPx / PIXELS_PER_MM}`;
  return {
    svg: `<svg ${before}width="${widthPx}" height="${heightPx}" viewBox="${box}"${svg.slice(head.length)}`,
    widthPx,
    heightPx,
  };
}
