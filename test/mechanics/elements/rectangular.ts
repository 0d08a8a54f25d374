/** Necks of rectangular section and constant thickness, for comparing with beam theory. */
import type { NeckDescription, NeckWood } from '../../../src/mechanics/description.ts';

export const ISOTROPIC: Omit<NeckWood, 'modulusMPa'> = {
  depthRatio: 1,
  shearRatio: 1 / (2 * 1.3),
  poisson: 0.3,
  widthRatio: 1,
  poissonWidth: 0.3,
  poissonDepthWidth: 0.3,
};

export interface Rectangular {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly boardThicknessMm: number;
  readonly neckThicknessMm: number;
  readonly board: NeckWood;
  readonly neck: NeckWood;
  readonly fretXMm?: readonly number[];
  readonly slotDepthMm?: number;
  readonly kerfMm?: number;
}

export function rectangularNeck(strip: Rectangular): NeckDescription {
  const { slotDepthMm = strip.boardThicknessMm / 2, kerfMm = 0.6 } = strip;
  const constant = (value: number) => ({ atNut: value, slope: 0 });
  return {
    lengthMm: strip.lengthMm,
    jointMm: strip.lengthMm,
    support: 'determinate',
    fretXMm: strip.fretXMm ?? [],
    widthMm: constant(strip.widthMm),
    boardThicknessMm: strip.boardThicknessMm,
    boardRadiusMm: null,
    totalThicknessMm: constant(strip.boardThicknessMm + strip.neckThicknessMm),
    // A shoulder as deep as the neck leaves nothing to curve in.
    backShoulderMm: strip.neckThicknessMm,
    backExponent: 2,
    heel: null,
    channel: null,
    bars: null,
    board: strip.board,
    neck: [{ toHalfWidthFraction: 1, wood: strip.neck }],
    slot: { kerfMm, depthMm: slotDepthMm, bottom: 'radiused', contactDepthMm: (2 / 3) * slotDepthMm },
    rod: null,
  };
}

/** Depth displacement (down positive) → curvature in the middle half of a line, 1/mm, by the offset from its chord. */
export function middleCurvature(xs: ArrayLike<number>, values: ArrayLike<number>): number {
  const length = xs[xs.length - 1];
  const at = (x: number) => {
    let i = 1;
    while (i < xs.length - 1 && xs[i] < x) i += 1;
    const t = (x - xs[i - 1]) / (xs[i] - xs[i - 1]);
    return values[i - 1] + t * (values[i] - values[i - 1]);
  };
  const half = length / 4;
  return (at(length / 2 - half) - 2 * at(length / 2) + at(length / 2 + half)) / half ** 2;
}
