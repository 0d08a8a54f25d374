/**
 * Area and second moment of convex outlines by matter-js, a general-purpose library of plane bodies.
 *
 * It gives a body's polar moment about its centre, J = ∫ (y² + z²) dA. Stretched across by a factor s the same outline has
 * J(s) = s·I_y + s³·I_z, so two stretches give the moment about the lateral axis alone, I_y = ∫ y² dA.
 */
import { Vertices } from 'matter-js';

export interface Point {
  /** Across. */
  readonly x: number;
  /** Depth. */
  readonly y: number;
}

export interface Properties {
  readonly area: number;
  /** Depth of the centroid. */
  readonly depth: number;
  /** About the lateral axis through the centroid. */
  readonly secondMoment: number;
}

function polarMoment(points: readonly Point[], stretch: number): number {
  const outline = points.map(({ x, y }) => ({ x: x * stretch, y }));
  // matter-js writes the centre into nothing and returns a new point; the moment is taken about the origin.
  const { x, y } = Vertices.centre(outline);
  const centred = outline.map((point) => ({ x: point.x - x, y: point.y - y }));
  const area = Vertices.area(outline, false);
  return Vertices.inertia(centred, area);
}

export function polygonProperties(points: readonly Point[]): Properties {
  const area = Vertices.area(points as never, false);
  const once = polarMoment(points, 1);
  const twice = polarMoment(points, 2);
  // once = I_y + I_z, twice = 2·I_y + 8·I_z.
  return { area, depth: Vertices.centre(points as never).y, secondMoment: (8 * once - twice) / 6 };
}

/** Properties of a sum of parts, each with a factor (−1 removes it): the parallel-axis rule. */
export function combineProperties(parts: readonly (readonly [factor: number, part: Properties])[]): Properties {
  const area = parts.reduce((sum, [factor, part]) => sum + factor * part.area, 0);
  const depth = parts.reduce((sum, [factor, part]) => sum + factor * part.area * part.depth, 0) / area;
  const secondMoment = parts.reduce(
    (sum, [factor, part]) => sum + factor * (part.secondMoment + part.area * (part.depth - depth) ** 2),
    0,
  );
  return { area, depth, secondMoment };
}
