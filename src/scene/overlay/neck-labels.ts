/** Names of compared necks at their nut ends, and the line that each would have if nothing bowed it. */
import type { Build } from '../../neck/build.ts';
import { bassSide, boardEndMm, boardWidthMm } from '../../neck/neck-shape.ts';
import { HEAD_STUB_MM } from '../../geometry/neck.ts';
import { surfaceHeightMm } from '../../geometry/surface.ts';
import { stroke, write, type Ink } from './ink.ts';
import type { Projector } from './project.ts';

export function drawNeckLabel(ink: Ink, projector: Projector, label: string): void {
  const at = projector.straight(-HEAD_STUB_MM, -HEAD_STUB_MM, 0, 0);
  if (!at) return;
  write(ink, label, [Math.max(10, at[0]), at[1] - 14], { size: 14, weight: 600 });
}

/** How far beside the board the thread is stretched, mm. */
const BESIDE_MM = 12;

/**
 * A taut thread beside the neck, at the height of its fret tops where the straightedge rests: it does not bow, so that one
 * sees by how much the neck does.
 */
export function drawThread(ink: Ink, projector: Projector, build: Build): void {
  const end = boardEndMm(build);
  const place = (x: number) => {
    const half = boardWidthMm(build, x) / 2;
    const y = surfaceHeightMm(build, x, half) + build.crownHeightMm;
    return projector.drawn(x, y, bassSide(build) * (half + BESIDE_MM));
  };
  const [from, to] = [place(0), place(end)];
  if (!from || !to) return;
  stroke(ink, [from, to], 1.3, ink.palette.accent);
  for (const [x, y] of [from, to]) {
    ink.context.save();
    ink.context.fillStyle = ink.palette.accent;
    ink.context.beginPath();
    ink.context.arc(x, y, 3, 0, 2 * Math.PI);
    ink.context.fill();
    ink.context.restore();
  }
}

/** The flat fret-top line, dashed. Straight places are drawn as they are: it does not bow. */
export function drawFlatLine(ink: Ink, projector: Projector, build: Build): void {
  const y = build.crownHeightMm;
  const [from, to] = [projector.drawn(0, y, 0), projector.drawn(boardEndMm(build), y, 0)];
  if (from && to) stroke(ink, [from, to], 1, ink.palette.ink, [7, 5]);
}
