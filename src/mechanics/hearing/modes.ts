/**
 * Which of the lines is the first bending mode.
 *
 * With an expectation: the line within it; of several the one that more of a bar's other tones belong to, or one that
 * is 15 dB louder than the rest. Without one every line is tried as mode 1, 2 and 3 of a free bar: each tone of that bar that
 * is there counts one for it, and each that is missing below the highest found counts one against. The first mode is
 * believed when it wins alone, and with another tone beside it.
 *
 *   ratios    of a free thin bar 1 : 2.757 : 5.404 : 8.933 : 13.345, (x_k/4.7300)² from cosh x·cos x = 1. Shear and
 *             rotation bring the higher ones down the further (Goens 1931, Ann. Phys. 403:649): for a bar of wood 1/20 as
 *             thick as long with E/(5G/6) = 24, the softest in shear of our woods, to 1 : 2.545 : 4.495 : 6.603 : 8.9
 */
import type { Expected } from './expected.ts';
import type { Chord } from './lines.ts';

/** Ratios to the first mode, from the softest thick bar in shear to a thin one. */
const MODE_RATIOS: readonly (readonly [low: number, high: number])[] = [
  [1, 1],
  [2.545, 2.757],
  [4.495, 5.404],
  [6.603, 8.933],
  [8.9, 13.345],
];

/** How far a tone may be off its ratio besides. */
const RATIO_ERROR = 0.015;
const FAR_LOUDER = 10 ** (15 / 20);
/** Tried as the line itself; higher ones alone are never heard. */
const TRIED_MODES = 3;

export type Choice =
  | { readonly kind: 'first'; readonly chord: Chord }
  | { readonly kind: 'two'; readonly chord: Chord; readonly other: Chord }
  | { readonly kind: 'other-mode'; readonly chord: Chord; readonly mode: number | undefined }
  | { readonly kind: 'alone'; readonly chord: Chord };

/** Modes of a bar that are there, when one of its lines is taken for a certain mode. */
function modesFound(chords: readonly Chord[], frequencyHz: number, mode: number): number[] {
  const [ownLow, ownHigh] = MODE_RATIOS[mode - 1];
  return MODE_RATIOS.flatMap(([low, high], index) => {
    if (index === mode - 1) return [mode];
    const [least, most] = index >= mode ? [low / ownLow, high / ownHigh] : [low / ownHigh, high / ownLow];
    const [from, to] = [Math.min(least, most), Math.max(least, most)].map((ratio) => ratio * frequencyHz) as [
      number,
      number,
    ];
    return chords.some(({ frequencyHz: f }) => f > from * (1 - RATIO_ERROR) && f < to * (1 + RATIO_ERROR))
      ? [index + 1]
      : [];
  });
}

const score = (modes: readonly number[]): number => modes.length - (Math.max(...modes) - modes.length);

function byRatios(chords: readonly Chord[]): Choice {
  const tried = chords
    .flatMap((chord) =>
      Array.from({ length: TRIED_MODES }, (_, index) => {
        const modes = modesFound(chords, chord.frequencyHz, index + 1);
        return { chord, mode: index + 1, modes, score: score(modes) };
      }),
    )
    .toSorted((a, b) => b.score - a.score || b.chord.amplitude - a.chord.amplitude);
  const asFirst = tried.find(({ mode, modes }) => mode === 1 && modes.length > 1);
  const loudest = chords.reduce((one, other) => (other.amplitude > one.amplitude ? other : one));
  if (!asFirst) return { kind: 'alone', chord: loudest };
  // The same bar read from another of its lines is no rival.
  const isSameBar = ({ chord, mode }: (typeof tried)[number]) => {
    const [low, high] = MODE_RATIOS[mode - 1];
    const ratio = chord.frequencyHz / asFirst.chord.frequencyHz;
    return ratio > low * (1 - RATIO_ERROR) && ratio < high * (1 + RATIO_ERROR);
  };
  const rival = tried.find((hypothesis) => hypothesis.score >= asFirst.score && !isSameBar(hypothesis));
  if (!rival) return { kind: 'first', chord: asFirst.chord };
  return rival.mode === 1
    ? { kind: 'two', chord: asFirst.chord, other: rival.chord }
    : { kind: 'other-mode', chord: rival.chord, mode: rival.mode };
}

function byExpectation(chords: readonly Chord[], expected: Expected): Choice {
  const [best, next] = chords
    .filter(({ frequencyHz }) => frequencyHz >= expected.lowHz && frequencyHz <= expected.highHz)
    .map((chord) => ({ chord, points: modesFound(chords, chord.frequencyHz, 1).length }))
    .toSorted((a, b) => b.points - a.points || b.chord.amplitude - a.chord.amplitude);
  if (best) {
    const isSure = !next || best.points > next.points || best.chord.amplitude > FAR_LOUDER * next.chord.amplitude;
    return isSure ? { kind: 'first', chord: best.chord } : { kind: 'two', chord: best.chord, other: next.chord };
  }
  const loudest = chords.reduce((one, other) => (other.amplitude > one.amplitude ? other : one));
  const mode = MODE_RATIOS.findIndex(([low, high], index) => {
    if (index === 0) return false;
    return loudest.frequencyHz / high < expected.highHz && loudest.frequencyHz / low > expected.lowHz;
  });
  return { kind: 'other-mode', chord: loudest, mode: mode > 0 ? mode + 1 : undefined };
}

/** @param chords lines that ring, at least one */
export function chooseFirst(chords: readonly Chord[], expected: Expected | undefined): Choice {
  return expected ? byExpectation(chords, expected) : byRatios(chords);
}
