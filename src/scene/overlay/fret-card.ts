/** What a fret tells when it is pointed at. All numbers are the library's. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { arcMm } from '../../fretwork/arc.ts';
import { fretEnd } from '../../fretwork/ends.ts';
import type { Method, Prediction } from '../../mechanics/prediction-types.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import { textWidth, write, type Ink } from './ink.ts';
import type { Projector } from './project.ts';

const SIZE = 13;
const LINE = 19;
const PAD = 10;

/** Label and value of each line. */
export function fretFacts(
  build: Build,
  fret: number,
  prediction: Prediction | null,
  method: Method,
  units: UnitSystem,
): (readonly [label: string, value: string])[] {
  const words = SCENE_WORDS.card;
  const text = (key: QuantityKey, value: number): string => textOf(key, value, units);
  const end = fretEnd(build, fret);
  const length = 2 * arcMm(end.radiusMm, end.crownFootHalfMm);
  const facts: (readonly [string, string])[] = [
    [words.position, text('fretXMm', end.xMm)],
    [words.boardWidth, text('boardWidthMm', 2 * end.boardHalfMm)],
    [words.length, text('filedLengthMm', length)],
  ];
  const force = prediction?.methods[method].wedgeForceN[fret - 1];
  if (force !== undefined) facts.push([words.wedge, text('wedgeForceN', force)]);
  facts.push([words.nip, end.nipMm === 0 ? words.noNip : text('nipMm', end.nipMm)]);
  return facts;
}

export function drawFretCard(
  ink: Ink,
  projector: Projector,
  build: Build,
  fret: number,
  facts: readonly (readonly [string, string])[],
): void {
  const end = fretEnd(build, fret);
  const at = projector.straight(end.xMm, end.xMm, build.crownHeightMm, -end.boardHalfMm);
  if (!at) return;
  const { context, palette } = ink;
  const title = SCENE_WORDS.fret(fret);
  const labels = Math.max(...facts.map(([label]) => textWidth(ink, label, { size: SIZE })));
  const values = Math.max(...facts.map(([, value]) => textWidth(ink, value, { size: SIZE, weight: 600 })));
  const width = Math.max(labels + 16 + values, textWidth(ink, title, { size: 15, weight: 600 })) + 2 * PAD;
  const height = 2 * PAD + 20 + facts.length * LINE;
  const x = Math.min(Math.max(at[0] - width / 2, 8), ink.width - width - 8);
  // On a wide page the names of the views lie over the top of the picture.
  const y = Math.max(at[1] - height - 22, ink.width < 560 ? 8 : 40);
  context.save();
  context.fillStyle = palette.ground;
  context.globalAlpha = 0.94;
  context.fillRect(x, y, width, height);
  context.globalAlpha = 1;
  context.strokeStyle = palette.ink;
  context.lineWidth = 1;
  context.strokeRect(x + 0.5, y + 0.5, width - 1, height - 1);
  context.beginPath();
  context.moveTo(at[0], Math.min(y + height, at[1]));
  context.lineTo(at[0], at[1]);
  context.stroke();
  context.restore();
  write(ink, title, [x + PAD, y + PAD + 13], { size: 15, weight: 600, halo: false });
  facts.forEach(([label, value], index) => {
    const line = y + PAD + 20 + LINE * (index + 0.72);
    write(ink, label, [x + PAD, line], { size: SIZE, halo: false });
    write(ink, value, [x + width - PAD, line], { size: SIZE, weight: 600, align: 'right', halo: false });
  });
}
