/** Scales of the chart: x along the neck in mm, y the relief in mm with the hump above the straightedge. */
import { linearScale, type LinearScale } from './linear-scale.ts';

export interface ChartSize {
  readonly width: number;
  readonly height: number;
}

/** Space around the drawing, px. */
export const MARGIN = { top: 22, right: 16, bottom: 26, left: 58 } as const;

/** Heights are never drawn finer than this range, mm, so that noise does not look like a bow. */
const LEAST_HALF_RANGE_MM = 0.1;

export interface ChartScales {
  readonly x: LinearScale;
  readonly y: LinearScale;
}

/**
 * @param endXMm end of the board, or of the part of it that is shown
 * @param reliefs every relief that must fit in, mm
 * @param startXMm where the part begins that is shown
 */
export function chartScales(size: ChartSize, endXMm: number, reliefs: Iterable<number>, startXMm = 0): ChartScales {
  let [low, high] = [-LEAST_HALF_RANGE_MM, LEAST_HALF_RANGE_MM];
  for (const relief of reliefs) {
    if (relief < low) low = relief;
    if (relief > high) high = relief;
  }
  const pad = (high - low) * 0.12;
  return {
    x: linearScale([startXMm, endXMm], [MARGIN.left, size.width - MARGIN.right]),
    // A hump is negative and stands up, as it does on the bench.
    y: linearScale([low - pad, high + pad], [MARGIN.top, size.height - MARGIN.bottom]),
  };
}

/** Numbers of frets to print, thinned out where they would touch; the last fret always has its number. */
export function printedFrets(fretXpx: readonly number[], leastGapPx: number): number[] {
  const last = fretXpx.length;
  const printed: number[] = [];
  fretXpx.forEach((at, index) => {
    const before = printed.at(-1);
    const clearBefore = before === undefined || at - fretXpx[before - 1] >= leastGapPx;
    const clearAfter = fretXpx[last - 1] - at >= leastGapPx;
    if (index + 1 === last || (clearBefore && clearAfter)) printed.push(index + 1);
  });
  return printed;
}
