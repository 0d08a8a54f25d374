/**
 * The factor of the bow, written in the picture, beside the neck's outline at true scale: seen from the side, both axes
 * alike, with its bow as it really is.
 */
import type { Build } from '../../neck/build.ts';
import { boardEndMm, heelDepthMm, totalThicknessMm } from '../../neck/neck-shape.ts';
import { withDecimalSign } from '../../speech/quantity.ts';
import type { BowReader } from '../../geometry/bend.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import { textWidth, write, type Ink, type Place } from './ink.ts';

/** 40 → "40", 2.5 → "2.5". */
export function factorText(factor: number): string {
  return factor >= 10 || Number.isInteger(factor) ? factor.toFixed(0) : withDecimalSign(factor.toFixed(1));
}

const STEPS = 60;

type Corner = 'bottom-left' | 'bottom-right' | 'top-left' | 'top-right';
const CORNERS: readonly Corner[] = ['bottom-left', 'bottom-right', 'top-left', 'top-right'];

interface Size {
  readonly small: boolean;
  readonly margin: number;
  /** Of the outline. */
  readonly length: number;
  /** Of outline and words together. */
  readonly across: number;
  readonly high: number;
}

function sizeOf(ink: Ink): Size {
  const small = ink.width < 560;
  const length = Math.min(200, ink.width * (small ? 0.34 : 0.18));
  const outline = length + 8 + textWidth(ink, SCENE_WORDS.trueScale, ASIDE);
  const factor = textWidth(ink, SCENE_WORDS.bowShown('000'), { size: small ? 13 : 15, weight: 600 });
  return { small, margin: small ? 12 : 20, length, across: Math.max(outline, factor), high: small ? 46 : 54 };
}

const ASIDE = { size: 12 } as const;
const AIR_PX = 8;

/**
 * A corner of the picture in which nothing of the necks lies under the label; the first where there is none.
 *
 * @param places - of the necks in the picture, closer together than the label is large
 */
export function freeCorner(ink: Ink, places: readonly Place[]): Corner {
  const { across, high, margin } = sizeOf(ink);
  const isFree = (corner: Corner): boolean => {
    const far = { x: margin + across + AIR_PX, y: margin + high + AIR_PX };
    return !places.some(([x, y]) => {
      const [inX, inY] = [corner.endsWith('left') ? x : ink.width - x, corner.startsWith('top') ? y : ink.height - y];
      return inX < far.x && inY < far.y;
    });
  };
  return CORNERS.find(isFree) ?? CORNERS[0];
}

interface BowLabel {
  readonly build: Build;
  readonly reader: BowReader;
  readonly factor: number;
  readonly corner: Corner;
  /** Lays a plate of the ground's colour under it: in a cut all of it lies over wood and steel. */
  readonly isCut: boolean;
}

export function drawBowLabel(ink: Ink, { build, reader, factor, corner, isCut }: BowLabel): void {
  const { context, palette, height, width } = ink;
  const { small, margin, length, across, high } = sizeOf(ink);
  const left = corner.endsWith('left') ? margin : width - margin - across;
  const bottom = corner.startsWith('top') ? margin + high : height - margin;
  const end = boardEndMm(build);
  const top = bottom - (small ? 20 : 24);
  const depth = (x: number): number => totalThicknessMm(build, x) + heelDepthMm(build, x);
  // A short neck with a deep heel is drawn shorter, so that all of it is in the picture.
  const scale = Math.min(length / end, (bottom + margin - 4 - top) / depth(end));
  const head = bottom - (small ? 30 : 36);
  if (isCut) {
    const right = left + length + 8 + textWidth(ink, SCENE_WORDS.trueScale, ASIDE);
    const above = head - 18;
    context.save();
    context.fillStyle = palette.ground;
    context.globalAlpha = 0.86;
    context.fillRect(left - 8, above, right - left + 16, bottom + 6 - above);
    context.restore();
  }
  write(ink, SCENE_WORDS.bowShown(factorText(factor)), [left, head], { size: small ? 13 : 15, weight: 600 });
  // The outline: fret-top line above, back below.
  const bow = (x: number): number => {
    reader.at(x);
    return factor === 0 ? 0 : reader.height / factor;
  };
  context.save();
  context.beginPath();
  for (let i = 0; i <= STEPS; i++) {
    const x = (end * i) / STEPS;
    context.lineTo(left + x * scale, top - bow(x) * scale);
  }
  for (let i = STEPS; i >= 0; i--) {
    const x = (end * i) / STEPS;
    context.lineTo(left + x * scale, top + (depth(x) - bow(x)) * scale);
  }
  context.closePath();
  context.globalAlpha = 0.16;
  context.fillStyle = palette.ink;
  context.fill();
  context.globalAlpha = 1;
  context.strokeStyle = palette.ink;
  context.lineWidth = 1;
  context.stroke();
  context.restore();
  write(ink, SCENE_WORDS.trueScale, [left + length + 8, top + 9], ASIDE);
}
