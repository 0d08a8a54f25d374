/** Shares of a neck's laminates: every piece but the outermost is set, the outermost takes the rest. */
import type { Build, Laminate } from '../../../neck/build.ts';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import { boardEndMm, boardWidthMm, laminateShares } from '../../../neck/neck-shape.ts';
import { LIST_NUMBERS } from '../../../neck/schema.ts';
import { formatNumber } from '../../../speech/quantity.ts';

const { min: LEAST_SHARE } = LIST_NUMBERS.share;

/** Of a laminate of constant width that is added. */
const STANDARD_WIDTH_MM = 3;

function rounded(share: number): number {
  return Number(share.toFixed(9));
}

/** With another share for one piece; the outermost piece takes what is left, which may be too little to be valid. */
export function withShare(laminates: readonly Laminate[], index: number, share: number): Laminate[] {
  const inner = laminates.slice(0, -1).map((laminate, at) => (at === index ? { ...laminate, share } : laminate));
  const taken = inner.reduce((sum, laminate) => sum + laminate.share, 0);
  return [...inner, { ...laminates.at(-1)!, share: rounded(1 - taken) }];
}

/**
 * The neck of another number of pieces. Going up, a third of the outermost piece becomes a piece of its own, of the
 * same wood until another is chosen; going down, the outermost piece is left off and the next one takes its share.
 * @param count entries of the list, 1 to 4
 */
export function withPieces(laminates: readonly Laminate[], count: number): Laminate[] {
  const pieces = [...laminates];
  while (pieces.length > count) {
    const outer = pieces.pop()!;
    const next = pieces.pop()!;
    const { widthMm: _width, ...rest } = next;
    pieces.push({ ...rest, share: rounded(next.share + outer.share) });
  }
  while (pieces.length < count) {
    const outer = pieces.pop()!;
    const part = rounded(outer.share / 3);
    const isConstant = laminates.some(({ widthMm }) => widthMm !== undefined);
    pieces.push(
      { ...outer, share: part, ...(isConstant ? { widthMm: STANDARD_WIDTH_MM } : {}) },
      { ...outer, share: rounded(outer.share - part) },
    );
  }
  return pieces;
}

/** The same neck with inner laminates of constant width: as wide as they are in the middle of the board, to half a millimetre. */
export function withWidths(build: Build): Laminate[] {
  const shares = laminateShares(build);
  const widthMm = boardWidthMm(build, boardEndMm(build) / 2);
  return build.laminates.map((laminate, index) =>
    index === build.laminates.length - 1
      ? laminate
      : { ...laminate, widthMm: Math.max(0.5, Math.round(2 * shares[index] * widthMm) / 2) },
  );
}

/** Laminates by their shares again. */
export const withoutWidths = (laminates: readonly Laminate[]): Laminate[] =>
  laminates.map(({ widthMm: _width, ...laminate }) => laminate);

/** The share of one piece in per cent, as a number to set: the outermost must keep its least share. */
export function shareParameter(laminates: readonly Laminate[], index: number): NumberParameter {
  const others = laminates.slice(0, -1).reduce((sum, laminate, at) => sum + (at === index ? 0 : laminate.share), 0);
  const most = Math.max(LEAST_SHARE, 1 - others - LEAST_SHARE);
  const percent = (share: number) => Number((share * 100).toFixed(6));
  return {
    kind: 'number',
    id: `laminates.${index}.share`,
    group: 'neck',
    unit: '%',
    min: percent(LEAST_SHARE),
    max: percent(most),
    step: 1,
    digits: 0,
    default: percent(laminates[index].share),
    typical: [percent(LEAST_SHARE), percent(most)],
    source: 'practice',
  };
}

export function percentText(share: number): string {
  return `${formatNumber(share * 100, 0)}\u00a0%`;
}
