/** Shapes of the guessed and of the computed line, in the box of the small drawing. */
import { curveMonotoneX, line } from 'd3-shape';
import type { Prediction, ReliefLine } from '../../mechanics/prediction-types.ts';
import type { LineBand } from '../../mechanics/uncertainty/band-at.ts';
import type { LineGuess } from './guesses.ts';

export const BOX = { width: 360, height: 150, left: 12, right: 12, top: 14, bottom: 22 } as const;

/** Shares of the straightedge at which the guess is held. */
export const HANDLES = [0.25, 0.5, 0.75] as const;

export interface LineScales {
  /** Share of the straightedge → px. */
  readonly x: (share: number) => number;
  /** Relief in mm → px; a hump stands up. */
  readonly y: (reliefMm: number) => number;
  readonly reliefAt: (px: number) => number;
  readonly shareAt: (px: number) => number;
}

export function lineScales(rangeMm: number): LineScales {
  const { width, height, left, right, top, bottom } = BOX;
  const across = width - left - right;
  const half = (height - top - bottom) / 2;
  const level = top + half;
  return {
    x: (share) => left + share * across,
    y: (reliefMm) => level + (reliefMm / rangeMm) * half,
    reliefAt: (px) => ((px - level) / half) * rangeMm,
    shareAt: (px) => (px - left) / across,
  };
}

/** A smooth line from one end of the straightedge through the three heights to the other. */
export function guessPath([a, b, c]: LineGuess, { x, y }: LineScales): string {
  const [p, q, r] = HANDLES;
  const points: [number, number][] = [
    [0, 0],
    [p, a],
    [q, b],
    [r, c],
    [1, 0],
  ];
  return line(
    ([share]) => x(share),
    ([, mm]) => y(mm),
  ).curve(curveMonotoneX)(points)!;
}

/** Places along the line, as shares of the straightedge. */
function sharesOf(prediction: Prediction, places: ArrayLike<number>): number[] {
  const { fromFret, toFret } = prediction.straightedge;
  const [from, to] = [prediction.fretXMm[fromFret - 1], prediction.fretXMm[toFret - 1]];
  return Array.from(places, (place) => (place - from) / (to - from));
}

const isUnder = (share: number): boolean => share >= -1e-9 && share <= 1 + 1e-9;

export function truthPath(prediction: Prediction, { reliefMm }: ReliefLine, { x, y }: LineScales): string {
  const points = sharesOf(prediction, prediction.stationXMm).flatMap((share, index): [number, number][] =>
    isUnder(share) ? [[x(share), y(reliefMm[index])]] : [],
  );
  return line()(points) ?? '';
}

/** The band as one closed shape. */
export function bandPath(prediction: Prediction, { xMm, p05Mm, p95Mm }: LineBand, { x, y }: LineScales): string {
  const shares = sharesOf(prediction, xMm);
  const under = shares.flatMap((share, index) => (isUnder(share) ? [index] : []));
  const edge = (values: ArrayLike<number>): [number, number][] =>
    under.map((index) => [x(shares[index]), y(values[index])]);
  return `${line()([...edge(p05Mm), ...edge(p95Mm).toReversed()]) ?? ''}Z`;
}

/** Heights of an even bow (a parabola) that has this height at one of the handles. */
export function bowedThrough(index: number, mm: number): number[] {
  const shape = (share: number) => share * (1 - share);
  return HANDLES.map((share) => (mm * shape(share)) / shape(HANDLES[index]));
}

/** The height of greatest size, with its sign. */
export function extremeOf(guess: LineGuess): number {
  return guess.reduce((most, mm) => (Math.abs(mm) > Math.abs(most) ? mm : most), 0);
}
