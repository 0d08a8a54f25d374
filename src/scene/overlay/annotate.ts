/**
 * Dimension lines and callouts on the picture. Text keeps its size at every zoom, has the ground's colour around it, and
 * callouts in one margin never overlap: they keep the order of their places and are pushed apart.
 */
import type { Annotations, Callout, Distance, Point3 } from '../section/annotations.ts';
import { arrowHead, stroke, textWidth, write, type Ink, type Place } from './ink.ts';
import type { Projector } from './project.ts';

const SIZE = 13;
const LINE = 21;
const HEAD = 7;
const OVERSHOOT = 5;

const plus = (a: Point3, b: Point3): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

function drawDistance(ink: Ink, projector: Projector, anchorMm: number, item: Distance): void {
  const place = (p: Point3): Place | null => projector.straight(anchorMm, ...p);
  const [a, b] = [place(item.from), place(item.to)];
  const [from, to] = [place(plus(item.from, item.beside)), place(plus(item.to, item.beside))];
  if (!a || !b || !from || !to) return;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length < 3) return;
  const [ux, uy] = [dx / length, dy / length];
  // Extension lines run a little past the dimension line.
  for (const [foot, end] of [
    [a, from],
    [b, to],
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
  const inside = length > 3.2 * HEAD;
  if (inside) {
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
  const middle: Place = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const wide = textWidth(ink, item.text, { size: SIZE });
  const upright = Math.abs(dy) > Math.abs(dx);
  // Text stands on the side away from what is measured.
  if (upright) {
    const leftwards = middle[0] < (a[0] + b[0]) / 2;
    const x = leftwards ? middle[0] - 8 : middle[0] + 8;
    const kept = leftwards ? Math.max(x, wide + 6) : Math.min(x, ink.width - wide - 6);
    write(ink, item.text, [kept, middle[1]], { size: SIZE, align: leftwards ? 'right' : 'left', baseline: 'middle' });
  } else {
    const below = middle[1] > (a[1] + b[1]) / 2;
    const x = clamp(middle[0], wide / 2 + 6, ink.width - wide / 2 - 6);
    const beyond = wide > length - 8 || inside;
    write(ink, item.text, [x, middle[1] + (below ? 8 : -8)], {
      size: SIZE,
      align: 'center',
      baseline: below ? 'top' : 'bottom',
      ...(beyond ? {} : { halo: true }),
    });
  }
}

function drawCallouts(
  ink: Ink,
  projector: Projector,
  anchorMm: number,
  items: readonly Callout[],
  margin: Callout['margin'],
): void {
  const placed = items
    .flatMap((item) => {
      const at = projector.straight(anchorMm, ...item.at);
      return at ? [{ item, at, y: at[1] }] : [];
    })
    .toSorted((p, q) => p.at[1] - q.at[1]);
  if (placed.length === 0) return;
  const top = LINE;
  const bottom = ink.height - 84;
  // Push apart downwards, then back up from the bottom.
  placed.forEach((entry, i) => {
    entry.y = Math.max(entry.y, i === 0 ? top : placed[i - 1].y + LINE);
  });
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i].y = Math.min(placed[i].y, i === placed.length - 1 ? bottom : placed[i + 1].y - LINE);
  }
  const inset = ink.width < 560 ? 8 : Math.min(40, ink.width * 0.03);
  for (const { item, at, y } of placed) {
    const wide = textWidth(ink, item.text, { size: SIZE });
    const x = margin === 'left' ? inset : ink.width - inset;
    const edge = margin === 'left' ? inset + wide + 6 : ink.width - inset - wide - 6;
    const elbow = margin === 'left' ? edge + 14 : edge - 14;
    stroke(ink, [[edge, y], [elbow, y], at], 0.9);
    ink.context.save();
    ink.context.fillStyle = ink.palette.ink;
    ink.context.beginPath();
    ink.context.arc(at[0], at[1], 2.4, 0, 2 * Math.PI);
    ink.context.fill();
    ink.context.restore();
    write(ink, item.text, [x, y], { size: SIZE, align: margin, baseline: 'middle' });
  }
}

/** Pictures narrower than this are drawn with fewer words. */
const NARROW_PX = 560;

export function drawAnnotations(ink: Ink, projector: Projector, annotations: Annotations): void {
  const { anchorMm, items, narrowMargin } = annotations;
  const narrow = ink.width < NARROW_PX;
  const drawn = narrow ? items.filter(({ minor }) => !minor) : items;
  for (const item of drawn) if (item.kind === 'distance') drawDistance(ink, projector, anchorMm, item);
  for (const margin of ['left', 'right'] as const) {
    const callouts = drawn.filter(
      (item): item is Callout =>
        item.kind === 'callout' && margin === ((narrow ? narrowMargin : undefined) ?? item.margin),
    );
    drawCallouts(ink, projector, anchorMm, callouts, margin);
  }
}
