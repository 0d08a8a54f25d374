/**
 * From what a player wants to a set-up: the lowest action for a relief, the best relief and fall-away for an action.
 *
 * Every clearance is linear in the height of the saddle, in how much of a line the neck takes on, and in the fall-away. So
 * the lowest action is the greatest of what each place asks for, exactly; and the least clearance, a least of straight
 * lines, has one best value, which a search in thirds cannot miss.
 */
import type { Build } from '../neck/build.ts';
import type { FallAway } from '../neck/neck-shape.ts';
import { eachPlace, type Playing } from './room.ts';
import { setUp, type SetUp, type TopLine } from './set-up.ts';

/** Least clearance of all notes, mm, with the ideal string. */
export function leastClearanceMm(neck: SetUp, playing: Playing): number {
  let least = Infinity;
  eachPlace(neck, playing, ({ gapMm, idealMmN }) => {
    least = Math.min(least, gapMm - playing.forceN * idealMmN);
  });
  return least;
}

/** Share of the scale at fret 12; the action is set there. */
const AT_FRET_12 = 1 - 2 ** (-12 / 12);

/**
 * How much higher (or, below nothing, lower) the action at fret 12 must be for every note to keep a clearance, mm.
 * @param keptMm 0 = it just does not touch
 */
export function actionChangeMm(neck: SetUp, playing: Playing, keptMm = 0): number {
  let change = -Infinity;
  // 1 mm more at fret 12 lifts the saddle by 1/AT_FRET_12, and the string over a fret by its share of that.
  eachPlace(neck, playing, ({ share, gapMm, idealMmN }) => {
    change = Math.max(change, ((keptMm - gapMm + playing.forceN * idealMmN) * AT_FRET_12) / share);
  });
  return change;
}

/** Clearances of all places, in the order of `eachPlace`. */
function clearances(neck: SetUp, playing: Playing): Float64Array {
  const all: number[] = [];
  eachPlace(neck, playing, ({ gapMm, idealMmN }) => all.push(gapMm - playing.forceN * idealMmN));
  return Float64Array.from(all);
}

/** The greatest of a concave function between two ends, and where; to a ten-thousandth of the way. */
function greatest(
  from: number,
  to: number,
  of: (at: number) => number,
): { readonly at: number; readonly value: number } {
  let [low, high] = [from, to];
  for (let step = 0; step < 48 && high - low > 1e-9 * (to - from); step += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (of(a) < of(b)) low = a;
    else high = b;
  }
  const at = (low + high) / 2;
  return { at, value: of(at) };
}

/** The lines that a neck can take on: `base` and any amount of `turn` between two amounts, such as that of the rod. */
export interface Lines {
  readonly stationXMm: Float64Array;
  readonly baseMm: ArrayLike<number>;
  readonly turnMm: ArrayLike<number>;
  readonly least: number;
  readonly most: number;
}

export interface BestRelief {
  /** Amount of `turn`. */
  readonly amount: number;
  readonly leastMm: number;
  /** Fall-away at the last fret, mm; 0 where none was asked for. */
  readonly fallMm: number;
}

/** The line with an amount of its turn. */
export function lineWith({ stationXMm, baseMm, turnMm }: Lines, amount: number): TopLine {
  return { stationXMm, reliefMm: Float64Array.from(baseMm, (base, i) => base + amount * (turnMm[i] ?? 0)) };
}

/**
 * The amount of a turn, and of fall-away, that leave the greatest least clearance at the action of the build.
 * @param fall from which fret the last ones may be filed lower, and by how much at most; none when omitted
 */
export function bestRelief(build: Build, lines: Lines, playing: Playing, fall?: FallAway): BestRelief {
  const at = (amount: number, fallMm: number) =>
    clearances(setUp(build, lineWith(lines, amount), { fromFret: fall?.fromFret ?? 0, atLastFretMm: fallMm }), playing);
  const none = at(0, 0);
  const perTurn = at(1, 0).map((value, i) => value - (none[i] ?? 0));
  const perFall = fall ? at(0, 1).map((value, i) => value - (none[i] ?? 0)) : none.map(() => 0);
  const least = (amount: number, fallMm: number): number => {
    let value = Infinity;
    for (let i = 0; i < none.length; i += 1)
      value = Math.min(value, (none[i] ?? 0) + amount * (perTurn[i] ?? 0) + fallMm * (perFall[i] ?? 0));
    return value;
  };
  const withFall = (amount: number) =>
    fall && fall.atLastFretMm > 0
      ? greatest(0, fall.atLastFretMm, (fallMm) => least(amount, fallMm))
      : { at: 0, value: least(amount, 0) };
  const { at: amount, value } = greatest(lines.least, lines.most, (turn) => withFall(turn).value);
  return { amount, leastMm: value, fallMm: withFall(amount).at };
}
