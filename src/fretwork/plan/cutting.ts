/**
 * Cutting pieces of wire from sticks of one length with the fewest sticks (the one-dimensional bin packing problem).
 *
 *   a stick of length S takes pieces l₁…l_m when  Σ l + (m − 1)·c ≤ S,   i.e.  Σ (l + c) ≤ S + c
 *
 * c = length lost at a cut; all mm. Method: first-fit decreasing and best-fit decreasing give a plan; if it uses more sticks
 * than the lower bound, a depth-first search tries to pack the pieces into fewer, and proves that it cannot or gives up
 * after a fixed number of steps. The plan is therefore never worse than first-fit decreasing.
 * Sources: Johnson 1973 (first-fit decreasing); lower bound L₂: Martello & Toth, Knapsack Problems, 1990,
 * ch. 8 (from memory).
 * Assumed: a piece keeps its length when cut; sticks are alike and straight to their ends.
 */

export interface Piece {
  readonly fret: number;
  readonly lengthMm: number;
  /** A spare, not meant for this fret in particular but long enough for it. */
  readonly spare?: true;
}

export interface Stick {
  /** Longest first. */
  readonly pieces: readonly Piece[];
  /** What is left of the stick after the last piece. */
  readonly leftMm: number;
}

export interface CuttingPlan {
  readonly stickLengthMm: number;
  readonly cutLossMm: number;
  /** Fullest first. */
  readonly sticks: readonly Stick[];
  /** No plan can do with fewer sticks than this. */
  readonly fewestPossible: number;
  /** Fewer sticks are proven impossible. */
  readonly provenFewest: boolean;
  readonly piecesMm: number;
  /** Everything bought that does not end up in a piece. */
  readonly wasteMm: number;
}

/** Slack for sums in double precision, mm: far below anything a saw knows. */
const SLACK_MM = 1e-9;
const SEARCH_STEPS = 200_000;

/** Bin index of each size (descending), by first fit or best fit. */
function fit(sizes: readonly number[], capacity: number, best: boolean): number[] {
  const room: number[] = [];
  return sizes.map((size) => {
    let chosen = -1;
    for (const [bin, free] of room.entries()) {
      if (free + SLACK_MM < size) continue;
      if (chosen === -1 || (best && free < room[chosen])) chosen = bin;
      if (!best) break;
    }
    if (chosen === -1) chosen = room.push(capacity) - 1;
    room[chosen] -= size;
    return chosen;
  });
}

function binCount(assignment: readonly number[]): number {
  return assignment.reduce((most, bin) => Math.max(most, bin + 1), 0);
}

/** Lower bound L₂ of Martello and Toth on the number of bins. */
export function fewestBins(sizes: readonly number[], capacity: number): number {
  let bound = 0;
  for (const threshold of [0, ...sizes.filter((size) => size <= capacity / 2)]) {
    let alone = 0;
    let large = 0;
    let largeSum = 0;
    let smallSum = 0;
    for (const size of sizes) {
      if (size > capacity - threshold + SLACK_MM) alone += 1;
      else if (size > capacity / 2 + SLACK_MM) {
        large += 1;
        largeSum += size;
      } else if (size >= threshold) smallSum += size;
    }
    const beside = large * capacity - largeSum;
    const extra = Math.max(0, Math.ceil((smallSum - beside) / capacity - 1e-9));
    bound = Math.max(bound, alone + large + extra);
  }
  return bound;
}

/**
 * Packs sizes (descending) into `bins` bins by depth-first search.
 * @returns the bin of each size; undefined = impossible; 'gave-up' when the steps ran out.
 */
function search(sizes: readonly number[], capacity: number, bins: number): number[] | undefined | 'gave-up' {
  const room = Array.from({ length: bins }, () => capacity);
  const assignment: number[] = Array.from({ length: sizes.length }, () => -1);
  const smallest = sizes.at(-1) ?? 0;
  // What may be wasted in all bins together.
  const allowance = bins * capacity - sizes.reduce((sum, size) => sum + size, 0);
  let steps = 0;

  const place = (index: number): boolean | 'gave-up' => {
    if (index === sizes.length) return true;
    steps += 1;
    if (steps > SEARCH_STEPS) return 'gave-up';
    let wasted = 0;
    for (const free of room) if (free + SLACK_MM < smallest) wasted += free;
    if (wasted > allowance + SLACK_MM) return false;

    const size = sizes[index];
    // Bins with the same room are alike, and of equal pieces the later never goes into an earlier bin.
    const first = index > 0 && sizes[index - 1] === size ? assignment[index - 1] : 0;
    const tried = new Set<number>();
    for (let bin = first; bin < bins; bin += 1) {
      const free = room[bin];
      if (free + SLACK_MM < size || tried.has(free)) continue;
      tried.add(free);
      room[bin] = free - size;
      assignment[index] = bin;
      const done = place(index + 1);
      if (done !== false) return done;
      room[bin] = free;
    }
    return false;
  };

  const done = place(0);
  return done === true ? assignment : done === false ? undefined : done;
}

/**
 * The plan with the fewest sticks that could be found.
 * @throws {RangeError} when the stick, the loss or a piece is no length, or a piece is longer than a stick.
 */
export function cuttingPlan(pieces: readonly Piece[], stickLengthMm: number, cutLossMm: number): CuttingPlan {
  if (!(stickLengthMm > 0 && stickLengthMm < Infinity)) {
    throw new RangeError(`stick length is ${stickLengthMm} mm; it must be more than 0 mm`);
  }
  if (!(cutLossMm >= 0 && cutLossMm < Infinity)) {
    throw new RangeError(`loss at a cut is ${cutLossMm} mm; it must be 0 mm or more`);
  }
  const sorted = [...pieces].sort((a, b) => b.lengthMm - a.lengthMm);
  for (const { fret, lengthMm } of sorted) {
    if (!(lengthMm > 0 && lengthMm <= stickLengthMm)) {
      throw new RangeError(
        `the piece for fret ${fret} is ${lengthMm.toFixed(2)} mm; a stick of ${stickLengthMm} mm gives more than 0 and at most ${stickLengthMm} mm`,
      );
    }
  }
  const sizes = sorted.map((piece) => piece.lengthMm + cutLossMm);
  const capacity = stickLengthMm + cutLossMm;

  const firstFit = fit(sizes, capacity, false);
  const bestFit = fit(sizes, capacity, true);
  let assignment = binCount(bestFit) < binCount(firstFit) ? bestFit : firstFit;
  let fewestPossible = fewestBins(sizes, capacity);
  for (let bins = fewestPossible; bins < binCount(assignment); bins += 1) {
    const found = search(sizes, capacity, bins);
    if (found === 'gave-up') break;
    if (found === undefined) fewestPossible = bins + 1;
    else assignment = found;
  }

  const sticks = Array.from({ length: binCount(assignment) }, (_, bin): Stick => {
    const cut = sorted.filter((_piece, index) => assignment[index] === bin);
    const used = cut.reduce((sum, piece) => sum + piece.lengthMm, 0) + (cut.length - 1) * cutLossMm;
    return { pieces: cut, leftMm: Math.max(0, stickLengthMm - used) };
  }).sort((a, b) => a.leftMm - b.leftMm);
  const piecesMm = sorted.reduce((sum, piece) => sum + piece.lengthMm, 0);
  return {
    stickLengthMm,
    cutLossMm,
    sticks,
    fewestPossible,
    provenFewest: sticks.length === fewestPossible,
    piecesMm,
    wasteMm: sticks.length * stickLengthMm - piecesMm,
  };
}
