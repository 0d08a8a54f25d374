/** Dimension lines and callouts on the picture. Text keeps its size at every zoom, and never lies over other text. */
import type { Annotations } from '../section/annotations.ts';
import { arrowHead, stroke, textWidth, write, type Ink, type Place } from './ink.ts';
import { layOutLabels, type PlacedCallout, type PlacedDistance } from './label-layout.ts';
import type { Projector } from './project.ts';

const SIZE = 13;
const HEAD = 7;
const OVERSHOOT = 5;

function drawLines(ink: Ink, { feet, ends: [from, to] }: PlacedDistance): void {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const [ux, uy] = [dx / length, dy / length];
  // Extension lines run a little past the dimension line.
  for (const [foot, end] of [
    [feet[0], from],
    [feet[1], to],
  ] as const) {
    const run = Math.hypot(end[0] - foot[0], end[1] - foot[1]);
    if (run < 1) continue;
    const [ex, ey] = [(end[0] - foot[0]) / run, (end[1] - foot[1]) / run];
    stroke(
      ink,
      [
        [foot[0] + ex * Math.min(3, run / 2), foot[1] + ey * Math.min(3, run / 2)],
        [end[0] + ex * OVERSHOOT, end[1] + ey * OVERSHOOT],
      ],
      0.8,
    );
  }
  if (length > 3.2 * HEAD) {
    stroke(ink, [from, to], 0.9);
    arrowHead(ink, from, to, HEAD);
    arrowHead(ink, to, from, HEAD);
  } else {
    const out = 2.6 * HEAD;
    const [before, after]: [Place, Place] = [
      [from[0] - ux * out, from[1] - uy * out],
      [to[0] + ux * out, to[1] + uy * out],
    ];
    stroke(ink, [before, after], 0.9);
    arrowHead(ink, from, before, HEAD);
    arrowHead(ink, to, after, HEAD);
  }
}

/** Words on a plate of the ground's colour: letters with a halo alone run together on dark wood. */
function drawWords(
  ink: Ink,
  { text, place, box }: Pick<PlacedDistance, 'text' | 'place' | 'box'>,
  align: CanvasTextAlign,
): void {
  const { context, palette } = ink;
  context.save();
  context.fillStyle = palette.ground;
  context.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top);
  context.restore();
  write(ink, text, place, { size: SIZE, align, baseline: 'middle', halo: false });
}

function drawCallout(ink: Ink, callout: PlacedCallout): void {
  const { at, leader, margin } = callout;
  stroke(ink, leader, 0.9);
  ink.context.save();
  ink.context.fillStyle = ink.palette.ink;
  ink.context.beginPath();
  ink.context.arc(at[0], at[1], 2.4, 0, 2 * Math.PI);
  ink.context.fill();
  ink.context.restore();
  drawWords(ink, callout, margin);
}

export function drawAnnotations(ink: Ink, projector: Projector, annotations: Annotations): void {
  const { distances, callouts } = layOutLabels(
    {
      width: ink.width,
      height: ink.height,
      measure: (text) => textWidth(ink, text, { size: SIZE }),
      place: (point) => projector.straight(annotations.anchorMm, ...point),
    },
    annotations,
  );
  for (const distance of distances) drawLines(ink, distance);
  for (const callout of callouts) drawCallout(ink, callout);
  // Words last, so that no line runs through them.
  for (const distance of distances) drawWords(ink, distance, 'center');
}
