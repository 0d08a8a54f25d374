/** Strokes that the small drawings share. Millimetres of the thing are units of the drawing, enlarged. */
import type { ReactNode } from 'react';

/** What stands out is drawn in the accent's colour; the rest recedes. */
export function mark(isMarked: boolean): 'marked' | 'plain' {
  return isMarked ? 'marked' : 'plain';
}

interface DrawingProps {
  readonly children: ReactNode;
}

export const WIDTH = 120;
export const HEIGHT = 76;

/** The word beside it says what it shows, so the drawing itself is silent. */
export function Drawing({ children }: DrawingProps) {
  return (
    <svg className="term-drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      {children}
    </svg>
  );
}

interface DimensionProps {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** A dimension line with short strokes across its ends. */
export function Dimension({ from, to }: DimensionProps) {
  const [x0, y0] = from;
  const [x1, y1] = to;
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [ax, ay] = [(-(y1 - y0) / length) * 3, ((x1 - x0) / length) * 3];
  return (
    <path
      className="dimension"
      d={`M${x0} ${y0}L${x1} ${y1}M${x0 - ax} ${y0 - ay}L${x0 + ax} ${y0 + ay}M${x1 - ax} ${y1 - ay}L${x1 + ax} ${y1 + ay}`}
    />
  );
}
