/** Names of compared necks at their nut ends, and the line that each would have if nothing bowed it. */
import type { Build } from '../../neck/build.ts';
import { boardEndMm } from '../../neck/neck-shape.ts';
import { HEAD_STUB_MM } from '../../geometry/neck.ts';
import { stroke, write, type Ink } from './ink.ts';
import type { Projector } from './project.ts';

export function drawNeckLabel(ink: Ink, projector: Projector, label: string): void {
  const at = projector.straight(-HEAD_STUB_MM, -HEAD_STUB_MM, 0, 0);
  if (!at) return;
  write(ink, label, [Math.max(10, at[0]), at[1] - 14], { size: 14, weight: 600 });
}

/** The flat fret-top line, dashed. Straight places are drawn as they are: it does not bow. */
export function drawFlatLine(ink: Ink, projector: Projector, build: Build): void {
  const y = build.crownHeightMm;
  const [from, to] = [projector.drawn(0, y, 0), projector.drawn(boardEndMm(build), y, 0)];
  if (from && to) stroke(ink, [from, to], 1, ink.palette.ink, [7, 5]);
}
