/**
 * Where the camera stands, as plain numbers: it looks at `target` from a direction and a distance.
 *
 *   position = target + distance·(sin az·cos el, sin el, cos az·cos el)
 *
 * Azimuth 0 looks across the neck from the lowest string's side; elevation 90° looks straight down. Radians, mm.
 */
export interface Orbit {
  readonly target: readonly [number, number, number];
  readonly azimuth: number;
  readonly elevation: number;
  readonly distance: number;
  /** Vertical field of view, rad. */
  readonly field: number;
}

export const MOST_ELEVATION = (89 * Math.PI) / 180;
export const NEAREST_MM = 4;
export const FARTHEST_MM = 60_000;

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

export function turned(orbit: Orbit, byAzimuth: number, byElevation: number): Orbit {
  return {
    ...orbit,
    azimuth: orbit.azimuth + byAzimuth,
    elevation: clamp(orbit.elevation + byElevation, -MOST_ELEVATION, MOST_ELEVATION),
  };
}

/** @param by larger than 1 goes away, smaller comes near */
export function zoomed(orbit: Orbit, by: number): Orbit {
  return { ...orbit, distance: clamp(orbit.distance * by, NEAREST_MM, FARTHEST_MM) };
}

/** The camera's axes: to the right, upwards, towards the viewer. */
export function axes(orbit: Orbit): Record<'right' | 'up' | 'back', [number, number, number]> {
  const [sa, ca] = [Math.sin(orbit.azimuth), Math.cos(orbit.azimuth)];
  const [se, ce] = [Math.sin(orbit.elevation), Math.cos(orbit.elevation)];
  return { right: [ca, 0, -sa], up: [-sa * se, ce, -ca * se], back: [sa * ce, se, ca * ce] };
}

/** Moves the target in the plane of the picture, by shares of the picture's height. */
export function panned(orbit: Orbit, right: number, up: number): Orbit {
  const size = 2 * orbit.distance * Math.tan(orbit.field / 2);
  const { right: r, up: u } = axes(orbit);
  const target = orbit.target.map((value, axis) => value + size * (right * r[axis] + up * u[axis]));
  return { ...orbit, target: target as unknown as Orbit['target'] };
}

export function positionOf(orbit: Orbit): [number, number, number] {
  const { back } = axes(orbit);
  return [0, 1, 2].map((axis) => orbit.target[axis] + orbit.distance * back[axis]) as [number, number, number];
}

/** On the way from one place to another, 0…1: the size of the picture changes evenly by ratio, the angle the short way. */
export function between(from: Orbit, to: Orbit, share: number): Orbit {
  if (share <= 0) return from;
  if (share >= 1) return to;
  const t = share * share * (3 - 2 * share);
  const mix = (a: number, b: number): number => a + (b - a) * t;
  const field = mix(from.field, to.field);
  const size = (orbit: Orbit): number => Math.log(orbit.distance * Math.tan(orbit.field / 2));
  const turn = Math.atan2(Math.sin(to.azimuth - from.azimuth), Math.cos(to.azimuth - from.azimuth));
  return {
    target: [0, 1, 2].map((axis) => mix(from.target[axis], to.target[axis])) as unknown as Orbit['target'],
    azimuth: from.azimuth + turn * t,
    elevation: mix(from.elevation, to.elevation),
    field,
    distance: Math.exp(mix(size(from), size(to))) / Math.tan(field / 2),
  };
}

/** Shares of the picture's width and height kept free at each side. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The nearest place from which all points are in the picture, looking in the direction of `orbit`.
 * @param points x, y, z one after another
 */
export function fitted(orbit: Orbit, points: ArrayLike<number>, aspect: number, margins: Margins): Orbit {
  const { right, up, back } = axes(orbit);
  const tanY = Math.tan(orbit.field / 2);
  const tanX = tanY * aspect;
  // The free window of the picture, in the range −1…1.
  const [xLow, xHigh] = [-1 + 2 * margins.left, 1 - 2 * margins.right];
  const [yLow, yHigh] = [-1 + 2 * margins.bottom, 1 - 2 * margins.top];
  const count = points.length / 3;
  const local = Array.from({ length: count }, (_, i) => {
    const p = [points[3 * i], points[3 * i + 1], points[3 * i + 2]];
    const along = (axis: readonly number[]): number => p[0] * axis[0] + p[1] * axis[1] + p[2] * axis[2];
    return [along(right), along(up), along(back)];
  });
  // Each point asks d ≥ depth + (x − cx)/(tan·edge) on both sides; the best centre balances the two sides.
  const side = (axis: 0 | 1, tan: number, low: number, high: number): { centre: number; distance: number } => {
    let [most, least] = [-Infinity, Infinity];
    for (const point of local) {
      most = Math.max(most, point[axis] + tan * high * point[2]);
      least = Math.min(least, point[axis] + tan * low * point[2]);
    }
    // x ≤ c + tan·high·(d − depth) and x ≥ c + tan·low·(d − depth)
    const distance = (most - least) / (tan * (high - low));
    return { centre: most - tan * high * distance, distance };
  };
  const horizontal = side(0, tanX, xLow, xHigh);
  const vertical = side(1, tanY, yLow, yHigh);
  const depths = local.map((point) => point[2]);
  const [nearest, farthest] = [Math.max(...depths), Math.min(...depths)];
  // Nothing may stand beside or behind the camera.
  const eye = Math.max(horizontal.distance, vertical.distance, nearest + NEAREST_MM);
  // The looser axis gets its slack shared evenly.
  const settle = (found: { centre: number; distance: number }, tan: number, low: number, high: number): number =>
    found.centre - (tan * (high + low) * (eye - found.distance)) / 2;
  const cx = settle(horizontal, tanX, xLow, xHigh);
  const cy = settle(vertical, tanY, yLow, yHigh);
  const middle = (nearest + farthest) / 2;
  const target = [0, 1, 2].map((axis) => cx * right[axis] + cy * up[axis] + middle * back[axis]);
  return {
    ...orbit,
    target: target as unknown as Orbit['target'],
    distance: clamp(eye - middle, NEAREST_MM, FARTHEST_MM),
  };
}
