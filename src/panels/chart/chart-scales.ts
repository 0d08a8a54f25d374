/** Scales of the chart: x along the neck in mm, y the relief in mm with the hump above the straightedge. */
import { scaleLinear, type ScaleLinear } from 'd3-scale';

export interface ChartSize {
  readonly width: number;
  readonly height: number;
}

/** Space around the drawing, px. */
export const MARGIN = { top: 22, right: 16, bottom: 26, left: 58 } as const;

/** Heights are never drawn finer than this range, mm, so that noise does not look like a bow. */
const LEAST_HALF_RANGE_MM = 0.1;

export interface ChartScales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/**
 * @param endXMm end of the board
 * @param reliefs every relief that must fit in, mm
 */
export function chartScales(size: ChartSize, endXMm: number, reliefs: Iterable<number>): ChartScales {
  let [low, high] = [-LEAST_HALF_RANGE_MM, LEAST_HALF_RANGE_MM];
  for (const relief of reliefs) {
    if (relief < low) low = relief;
    if (relief > high) high = relief;
  }
  const pad = (high - low) * 0.12;
  return {
    x: scaleLinear([0, endXMm], [MARGIN.left, size.width - MARGIN.right]),
    // A hump is negative and stands up, as it does on the bench.
    y: scaleLinear([low - pad, high + pad], [MARGIN.top, size.height - MARGIN.bottom]),
  };
}

/** Numbers of frets to print, thinned out where they would touch. */
export function printedFrets(fretXpx: readonly number[], leastGapPx: number): number[] {
  const printed: number[] = [];
  let last = -Infinity;
  fretXpx.forEach((at, index) => {
    const fret = index + 1;
    const keep = at - last >= leastGapPx;
    if (!keep) return;
    printed.push(fret);
    last = at;
  });
  return printed;
}

/** Moves labels apart, keeping their order. @param wanted heights, px; @returns heights at least `gap` apart */
export function spread(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]! - wanted[b]!);
  const placed = [...wanted];
  let floor = low;
  for (const index of order) {
    placed[index] = Math.max(placed[index]!, floor);
    floor = placed[index]! + gap;
  }
  let ceiling = high;
  for (const index of order.toReversed()) {
    placed[index] = Math.min(placed[index]!, ceiling);
    ceiling = placed[index]! - gap;
  }
  return placed;
}
