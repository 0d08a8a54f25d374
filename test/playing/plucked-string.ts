/**
 * A plucked string, two other ways: as a sum of standing waves over a period, and as pieces of string with the forces on
 * them integrated in time. Length, tension, mass per length and height of the pluck are 1.
 */
import type { PluckDirection } from '../../src/playing/swing.ts';

const upwards = (direction: PluckDirection) => (direction === 'away' ? 1 : -1);

/** Depth of the lowest line over a period at places u from the fretted end, pluck at p from the other end. */
export function lowestByFourier(p: number, places: readonly number[], direction: PluckDirection): number[] {
  const partials = 400;
  const moments = 400;
  return places.map((u) => {
    // From the saddle's end: the corner is at p, the place at 1 − u.
    const waves = Array.from({ length: partials }, (_, index) => {
      const turns = (index + 1) * Math.PI;
      return (2 * Math.sin(turns * p) * Math.sin(turns * (1 - u))) / (turns ** 2 * p * (1 - p));
    });
    const heights = Array.from({ length: moments }, (_, moment) =>
      waves.reduce((y, wave, index) => y + wave * Math.cos((2 * Math.PI * (index + 1) * moment) / moments), 0),
    );
    return -Math.min(...heights.map((y) => upwards(direction) * y));
  });
}

/**
 * y_tt = y_xx − κ·y_xxxx on hinged ends, in equal pieces, by the leapfrog rule with a step at half its limit
 * (Courant, Friedrichs & Lewy: Δt²·(1/Δx² + 4κ/Δx⁴) < 1; at the limit itself without stiffness, where the rule is exact);
 * over twenty periods of the ideal string.
 * @param stiffness κ = E·I/(T·ℓ²)
 */
export function lowestInTime(
  p: number,
  stiffness: number,
  direction: PluckDirection,
): { readonly places: readonly number[]; readonly depth: readonly number[] } {
  const pieces = stiffness === 0 ? 120 : 60;
  const dx = 1 / pieces;
  const dt = (stiffness === 0 ? 1 : 0.5) / Math.sqrt(1 / dx ** 2 + (4 * stiffness) / dx ** 4);
  // Index from the fretted end; the corner of the pluck at 1 − p.
  const start = Float64Array.from({ length: pieces + 1 }, (_, i) => {
    const u = i * dx;
    return upwards(direction) * (u < 1 - p ? u / (1 - p) : (1 - u) / p);
  });
  // Hinged: the string goes on past its ends as its own mirror image, upside down; two more places at either end hold it.
  const mirrored = new Float64Array(pieces + 5);
  const acceleration = new Float64Array(pieces + 1);
  const perSecond = 1 / dx ** 2;
  const perFourth = stiffness / dx ** 4;
  const accelerate = (y: Float64Array): void => {
    mirrored.set(y, 2);
    for (const beyond of [1, 2]) {
      mirrored[2 - beyond] = -y[beyond];
      mirrored[pieces + 2 + beyond] = -y[pieces - beyond];
    }
    for (let i = 1; i < pieces; i += 1) {
      const near = mirrored[i + 1] + mirrored[i + 3];
      const middle = mirrored[i + 2];
      const far = mirrored[i] + mirrored[i + 4];
      acceleration[i] = perSecond * (near - 2 * middle) - perFourth * (far - 4 * near + 6 * middle);
    }
  };
  const squared = dt ** 2;
  const lowest = start.slice();
  let y = start;
  accelerate(y);
  let before = start.map((value, i) => value + 0.5 * squared * acceleration[i]);
  for (let time = 0; time < 40; time += dt) {
    accelerate(y);
    for (let i = 0; i <= pieces; i += 1) before[i] = 2 * y[i] - before[i] + squared * acceleration[i];
    [before, y] = [y, before];
    for (let i = 0; i <= pieces; i += 1) if (y[i] < lowest[i]) lowest[i] = y[i]!;
  }
  const inner = Array.from({ length: pieces - 1 }, (_, i) => i + 1).filter((i) => i % 3 === 0);
  return { places: inner.map((i) => i * dx), depth: inner.map((i) => -(lowest[i] ?? 0)) };
}
