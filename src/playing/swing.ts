/**
 * How far a plucked string swings towards the board.
 *
 *   height of the pluck      a = F·q·(ℓ − q)/(T·ℓ)              F force of the pluck N, q from the saddle mm, ℓ speaking length mm, T tension N
 *   ideal string             half a period after the release it lies in the same triangle turned end for end: its lowest
 *                            line has its corner at q from the fretted fret when it was pulled away from the board, and at
 *                            q from the saddle, where it started, when it was pushed towards it
 *   at any time              y(u, t) = ½·(F(u + 2t) + F(u − 2t)), t in periods, F the triangle of the pluck, mirrored upside
 *                            down at both ends and so on without end (d'Alembert)
 *   any string               y(x, t) = Σ aₙ·sin(nπu)·cos(2π·fₙ·t),  aₙ = 2a·sin(nπp)/(n²π²·p·(1 − p)),  p = q/ℓ, u = x/ℓ;
 *                            whatever its partials fₙ are, it stays within Σ |aₙ·sin(nπu)|
 *
 * Source: Fletcher & Rossing, The Physics of Musical Instruments, 2nd ed., section 2.9, and Smith, Physical Audio Signal
 * Processing, chapter on the plucked string (both from memory); the tests hold the formulas to a Fourier sum and to the
 * motion of a stiff string integrated in time. Assumed: the finger lets go from a corner, the ends do not give, nothing is
 * lost in the first half period, tension does not rise with the swing. Partials beyond PARTIALS are left out of the bound:
 * they are gone within a few periods.
 */

/** Which way the string is pulled before it is let go, seen from the board. */
export type PluckDirection = 'away' | 'towards' | 'along';

/**
 * Share of its swing that a string plucked along the board is taken to turn towards it: the plane of the swing does not
 * stay where it was. An assumption, no source.
 */
export const TURNING_SHARE = 0.5;

/** Partials in the bound. */
export const PARTIALS = 100;

/**
 * Height of the triangle that a pluck pulls a string into, mm.
 * @param forceN of the pluck; @param pluckMm from the saddle; @param lengthMm that speaks; @param tensionN of the string
 * @throws {RangeError} where the string is not plucked between its ends, or is not taut.
 */
export function pluckHeightMm(forceN: number, pluckMm: number, lengthMm: number, tensionN: number): number {
  if (!(pluckMm > 0 && pluckMm < lengthMm))
    throw new RangeError(`pluck at ${pluckMm} mm on ${lengthMm} mm of string; it must lie between its ends`);
  if (!(tensionN > 0)) throw new RangeError(`tension is ${tensionN} N; it must be more than 0 N`);
  return (forceN * pluckMm * (lengthMm - pluckMm)) / (tensionN * lengthMm);
}

/** A triangle of height 1 over 0 … 1 with its corner at `corner`. */
function triangle(u: number, corner: number): number {
  return u < corner ? u / corner : (1 - u) / (1 - corner);
}

/**
 * Depth of the ideal string's lowest line below its rest, as a share of the height of the pluck.
 * @param u place over the speaking length, 0 at the fretted fret, 1 at the saddle
 * @param p distance of the pluck from the saddle over the speaking length
 */
export function idealDepth(u: number, p: number, direction: PluckDirection): number {
  if (direction === 'away') return triangle(u, p);
  if (direction === 'towards') return triangle(u, 1 - p);
  return TURNING_SHARE * Math.max(triangle(u, p), triangle(u, 1 - p));
}

/**
 * Height of the ideal string over its rest some time after it was let go, as a share of the height of the pluck; of one that
 * is plucked along the board, what turns towards it. Arguments as in `idealDepth`.
 * @param periods since the release
 */
export function idealHeight(u: number, p: number, direction: PluckDirection, periods: number): number {
  const mirrored = (at: number): number => {
    const within = at - 2 * Math.floor(at / 2);
    return within <= 1 ? triangle(within, 1 - p) : -triangle(2 - within, 1 - p);
  };
  const height = (mirrored(u + 2 * periods) + mirrored(u - 2 * periods)) / 2;
  if (direction === 'along') return TURNING_SHARE * height;
  return direction === 'away' ? height : -height;
}

/**
 * The depth that a string keeps within whatever its stiffness does to its partials, as a share of the height of the
 * pluck; the same for each direction but for what turns towards the board. Arguments as in `idealDepth`.
 */
export function boundDepth(u: number, p: number, direction: PluckDirection): number {
  const turnsU = 2 * Math.cos(Math.PI * u);
  const turnsP = 2 * Math.cos(Math.PI * p);
  let [u0, u1] = [0, Math.sin(Math.PI * u)];
  let [p0, p1] = [0, Math.sin(Math.PI * p)];
  let sum = 0;
  for (let n = 1; n <= PARTIALS; n += 1) {
    sum += Math.abs(u1 * p1) / (n * n);
    // sin((n + 1)x) = 2·cos x·sin(nx) − sin((n − 1)x)
    [u0, u1] = [u1, turnsU * u1 - u0];
    [p0, p1] = [p1, turnsP * p1 - p0];
  }
  const depth = (2 * sum) / (Math.PI ** 2 * p * (1 - p));
  // The corner of the ideal line is made of all partials.
  return Math.max(idealDepth(u, p, direction), direction === 'along' ? TURNING_SHARE * depth : depth);
}
