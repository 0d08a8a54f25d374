/**
 * How hard a maker plays, from necks that just buzz.
 *
 *   force of one match       F_i = c_i/d_i          c_i room under the string at rest over fret i, d_i depth of the ideal swing there
 *                                                   per newton (room.ts); it just buzzes where F_i is least
 *   its standard deviation   σ² = (∂F/∂r·σ_r)² + (∂F/∂h·σ_h)² + (σ_t/d)²·(1 + (1 − u)²)
 *                            r relief, h action, t height of a fret's top: of the one that is touched, and of the one that the
 *                            string is stopped at, whose share at u is 1 − u; all measured apart from each other
 *   several matches          mean of ln F with weights 1/(s² + τ²), s = σ/F; τ² what they scatter beyond their own errors,
 *                            (Q − (k − 1))/(Σw − Σw²/Σw) with w = 1/s², no less than nothing (DerSimonian & Laird 1986, from memory)
 *
 * Assumed: the bow between fret 1 and the joint is an arc, and goes straight on; the tops are on one line but for their error;
 * the pluck is where the chart has it. Each match must have been set up and measured anew, or its errors are not its own.
 */
import { defaultBuild, type Build } from '../neck/build.ts';
import { fallAwayAtMm, fretPositionMm } from '../neck/neck-shape.ts';
import type { BuzzMatch } from './buzz-match.ts';
import { eachPlace, type Playing } from './room.ts';
import { setUp, type TopLine } from './set-up.ts';

export interface MatchForce {
  readonly forceN: number;
  /** Standard deviation, and what of it comes from relief, action and the heights of the frets, N. */
  readonly errorN: number;
  readonly fromReliefN: number;
  readonly fromActionN: number;
  readonly fromFretsN: number;
}

/**
 * Why a reading cannot be.
 *
 *   not-beyond    the fret is not beyond the one at which the string is stopped
 *   lies-on       at rest the string lies on the fret already: it buzzes at no pluck, or at any
 *   other-first   before it comes to this fret it buzzes on another, at whatever strength
 *   too-unsure    the errors are as large as the strength
 */
export type MatchRefusal =
  | { readonly code: 'not-beyond' | 'too-unsure' }
  | { readonly code: 'lies-on'; readonly roomMm: number }
  | { readonly code: 'other-first'; readonly fret: number; readonly forceN: number; readonly wouldTakeN: number };

export type MatchAnswer = ({ readonly ok: true } & MatchForce) | { readonly ok: false; readonly refusal: MatchRefusal };

/** An arc of the measured relief between fret 1 and the joint, straight on from there, with the fall-away of the neck. */
function lineOf(build: Build, reliefMm: number): TopLine {
  const x = (fret: number) => fretPositionMm(build.scaleLengthMm, fret);
  const [from, to] = [x(1), x(build.bodyJointFret)];
  const stationXMm = Float64Array.from({ length: build.fretCount + 1 }, (_, fret) => x(fret));
  return {
    stationXMm,
    reliefMm: stationXMm.map((at) => {
      const s = (Math.min(at, to) - from) / (to - from);
      const beyond = Math.max(0, at - to) / (to - from);
      return 4 * reliefMm * (s * (1 - s) - beyond) + fallAwayAtMm(build, at);
    }),
  };
}

interface Touch {
  readonly fret: number;
  readonly share: number;
  readonly gapMm: number;
  readonly depthMmN: number;
}

/** Every fret beyond, with the room at rest and the depth of the swing. */
function touchesOf(match: BuzzMatch, playing: Playing, reliefMm: number, actionMm: number): Touch[] {
  const { neck, string, note } = match;
  // The action was measured under this string.
  const stringHeightFret12Mm = actionMm + neck.crownHeightMm;
  const build: Build = { ...defaultBuild(), ...neck, bassHigherMm: 0, stringHeightFret12Mm };
  const touches: Touch[] = [];
  const { strings } = setUp(build, lineOf(build, reliefMm));
  eachPlace({ strings: [strings[string]] }, playing, (place) => {
    if (place.note !== note) return;
    touches.push({ fret: place.fret, share: place.share, gapMm: place.gapMm, depthMmN: place.idealMmN });
  });
  return touches;
}

const forceOf = ({ gapMm, depthMmN }: Touch) => gapMm / depthMmN;

/** A step for slopes: the forces are straight lines in both. */
const STEP_MM = 0.01;
/** Beyond so many standard deviations another fret is taken to come first. */
const SURE = 2;
/** Above this share of the strength its error says that nothing is known. */
const MOST_SHARE = 0.6;

interface Slopes {
  readonly relief: number;
  readonly action: number;
}

/** @param pluckMm where the string is plucked, from the saddle */
export function matchForce(match: BuzzMatch, pluckMm: number): MatchAnswer {
  const playing: Playing = { forceN: 1, pluckMm, direction: match.direction };
  const { reliefMm, actionMm, fret, reliefErrorMm, actionErrorMm, fretErrorMm } = match;
  const touches = touchesOf(match, playing, reliefMm, actionMm);
  const refused = (refusal: MatchRefusal): MatchAnswer => ({ ok: false, refusal });
  const index = touches.findIndex((touch) => touch.fret === fret);
  if (index < 0) return refused({ code: 'not-beyond' });
  const moreRelief = touchesOf(match, playing, reliefMm + STEP_MM, actionMm);
  const moreAction = touchesOf(match, playing, reliefMm, actionMm + STEP_MM);
  const slopes = touches.map((touch, i): Slopes => ({
    relief: (forceOf(moreRelief[i]) - forceOf(touch)) / STEP_MM,
    action: (forceOf(moreAction[i]) - forceOf(touch)) / STEP_MM,
  }));
  const own = touches[index];
  if (own.gapMm <= 0) return refused({ code: 'lies-on', roomMm: own.gapMm });
  const forceN = forceOf(own);
  // How sure it is that another fret comes first: relief and action move both forces together.
  for (const [i, other] of touches.entries()) {
    if (i === index) continue;
    const [a, b] = [own, other].map(({ depthMmN, share }) => [1 / depthMmN, (1 - share) / depthMmN]);
    const difference = Math.hypot(
      (slopes[index].relief - slopes[i].relief) * reliefErrorMm,
      (slopes[index].action - slopes[i].action) * actionErrorMm,
      a[0] * fretErrorMm,
      b[0] * fretErrorMm,
      (a[1] - b[1]) * fretErrorMm,
    );
    if (forceN - forceOf(other) > SURE * difference)
      return refused({
        code: 'other-first',
        fret: other.fret,
        forceN: Math.max(0, forceOf(other)),
        wouldTakeN: forceN,
      });
  }
  const fromReliefN = Math.abs(slopes[index].relief) * reliefErrorMm;
  const fromActionN = Math.abs(slopes[index].action) * actionErrorMm;
  const fromFretsN = (fretErrorMm / own.depthMmN) * Math.hypot(1, 1 - own.share);
  const errorN = Math.hypot(fromReliefN, fromActionN, fromFretsN);
  if (errorN > MOST_SHARE * forceN) return refused({ code: 'too-unsure' });
  return { ok: true, forceN, errorN, fromReliefN, fromActionN, fromFretsN };
}

export interface OwnStrength {
  readonly forceN: number;
  /** 90 of 100. */
  readonly p05N: number;
  readonly p95N: number;
  readonly matches: number;
}

/** Half of a band of 90 in 100, in standard deviations. */
const HALF_BAND = 1.645;

/** Several matches joined; null for none. */
export function joinedStrength(forces: readonly Pick<MatchForce, 'forceN' | 'errorN'>[]): OwnStrength | null {
  if (forces.length === 0) return null;
  const logs = forces.map(({ forceN }) => Math.log(forceN));
  const squares = forces.map(({ forceN, errorN }) => (errorN / forceN) ** 2);
  const meanOf = (weights: readonly number[]) => {
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return { sum, mean: logs.reduce((total, log, i) => total + log * weights[i], 0) / sum };
  };
  const weights = squares.map((square) => 1 / square);
  const { sum, mean } = meanOf(weights);
  const scatter = logs.reduce((total, log, i) => total + weights[i] * (log - mean) ** 2, 0);
  const freedom = forces.length - 1;
  const beyond = sum - weights.reduce((total, weight) => total + weight ** 2, 0) / sum;
  const between = freedom > 0 ? Math.max(0, (scatter - freedom) / beyond) : 0;
  const joined = meanOf(squares.map((square) => 1 / (square + between)));
  const half = HALF_BAND / Math.sqrt(joined.sum);
  return {
    forceN: Math.exp(joined.mean),
    p05N: Math.exp(joined.mean - half),
    p95N: Math.exp(joined.mean + half),
    matches: forces.length,
  };
}
