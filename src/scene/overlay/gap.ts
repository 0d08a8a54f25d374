/** The greatest gap under the straightedge, measured in truth and marked where it is. */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import type { BowReader } from '../../geometry/bend.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import { arrowHead, stroke, write, type Ink } from './ink.ts';
import type { Projector } from './project.ts';

/** Below this the frets touch all along. */
const LEAST_GAP_MM = 0.005;

export function drawGap(
  ink: Ink,
  projector: Projector,
  build: Build,
  reader: BowReader,
  gap: { readonly xMm: number; readonly gapMm: number },
  edge: { readonly yMm: number; readonly zMm: number },
  units: UnitSystem,
): void {
  reader.at(gap.xMm);
  const top = projector.drawn(gap.xMm, edge.yMm, edge.zMm);
  const bottom = projector.drawn(gap.xMm, reader.height + build.crownHeightMm, edge.zMm);
  if (!top || !bottom) return;
  const text =
    gap.gapMm < LEAST_GAP_MM ? SCENE_WORDS.noGap : SCENE_WORDS.gap(formatQuantity(gap.gapMm, 'mm', 2, units));
  const length = Math.hypot(top[0] - bottom[0], top[1] - bottom[1]);
  const colour = ink.palette.accent;
  if (length > 18) {
    stroke(ink, [top, bottom], 1.4, colour);
    arrowHead(ink, top, bottom, 8, colour);
    arrowHead(ink, bottom, top, 8, colour);
  } else if (length > 1) {
    const [ux, uy] = [(top[0] - bottom[0]) / length, (top[1] - bottom[1]) / length];
    const [above, below] = [
      [top[0] + ux * 26, top[1] + uy * 26] as const,
      [bottom[0] - ux * 26, bottom[1] - uy * 26] as const,
    ];
    stroke(ink, [above, top], 1.4, colour);
    stroke(ink, [below, bottom], 1.4, colour);
    arrowHead(ink, top, above, 8, colour);
    arrowHead(ink, bottom, below, 8, colour);
  }
  const y = Math.max(top[1], bottom[1]) + (length > 18 ? 8 : 32);
  write(ink, text, [bottom[0], y], { size: 15, weight: 600, align: 'center', baseline: 'top' });
}
