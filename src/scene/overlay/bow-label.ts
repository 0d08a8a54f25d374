/**
 * The factor of the bow, written in the picture, beside the neck's outline at true scale: seen from the side, both axes
 * alike, with its bow as it really is.
 */
import type { Build } from '../../neck/build.ts';
import { boardEndMm, heelDepthMm, totalThicknessMm } from '../../neck/neck-shape.ts';
import { withDecimalSign } from '../../speech/quantity.ts';
import type { BowReader } from '../../geometry/bend.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import { textWidth, write, type Ink } from './ink.ts';

/** 40 → "40", 2.5 → "2.5". */
export function factorText(factor: number): string {
  return factor >= 10 || Number.isInteger(factor) ? factor.toFixed(0) : withDecimalSign(factor.toFixed(1));
}

const STEPS = 60;

/** @param isCut lays a plate of the ground's colour under it: in a cut all of it lies over wood and steel */
export function drawBowLabel(ink: Ink, build: Build, reader: BowReader, factor: number, isCut: boolean): void {
  const { context, palette, height, width } = ink;
  const small = width < 560;
  const left = small ? 12 : 20;
  const bottom = height - (small ? 12 : 18);
  // Beside it and its words there is room for the tools that lie over the picture.
  const length = Math.min(200, width * (small ? 0.34 : 0.18));
  const end = boardEndMm(build);
  const top = bottom - (small ? 20 : 24);
  const depth = (x: number): number => totalThicknessMm(build, x) + heelDepthMm(build, x);
  // A short neck with a deep heel is drawn shorter, so that all of it is in the picture.
  const scale = Math.min(length / end, (height - 4 - top) / depth(end));
  const head = bottom - (small ? 30 : 36);
  const aside = { size: 12 };
  if (isCut) {
    const right = left + length + 8 + textWidth(ink, SCENE_WORDS.trueScale, aside);
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
  write(ink, SCENE_WORDS.trueScale, [left + length + 8, top + 9], aside);
}
