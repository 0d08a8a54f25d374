/**
 * The swing of one note over the frets, with the factor of the bow: over a fret the string is drawn that many times as far
 * from its top as it is, so that it touches in the picture where it touches on the neck.
 */
import type { Build } from '../../neck/build.ts';
import { bassSide, boardRadiusMm, fretPositionMm, sagittaMm } from '../../neck/neck-shape.ts';
import type { BowReader } from '../../geometry/bend.ts';
import { idealHeight } from '../../playing/swing.ts';
import type { DrawnSwing } from '../types.ts';
import { stroke, write, type Ink, type Place } from './ink.ts';
import type { Projector } from './project.ts';

/** How long one period takes in the picture, ms: some hundred times as long as on the neck. */
const PERIOD_MS = 1800;

const isPlace = (place: Place | null): place is Place => place !== null;

/** The band between two lines, lightly filled. */
function fill({ context }: Ink, above: readonly Place[], below: readonly Place[], colour: string): void {
  context.save();
  context.beginPath();
  [...above, ...below.toReversed()].forEach(([x, y], i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
  context.closePath();
  context.globalAlpha = 0.22;
  context.fillStyle = colour;
  context.fill();
  context.restore();
}

function ring({ context, palette }: Ink, [x, y]: Place, colour: string): void {
  for (const [width, style] of [
    [5, palette.ground],
    [2.2, colour],
  ] as const) {
    context.save();
    context.beginPath();
    context.arc(x, y, 9, 0, 2 * Math.PI);
    context.lineWidth = width;
    context.strokeStyle = style;
    context.stroke();
    context.restore();
  }
}

/** @param now ms, of any clock */
export function drawSwing(
  ink: Ink,
  projector: Projector,
  { build, reader, factor }: { readonly build: Build; readonly reader: BowReader; readonly factor: number },
  swing: DrawnSwing,
  now = performance.now(),
): void {
  const { xMm, zMm, share, gapMm, idealMm, boundMm, pluckHeightMm, pluckShare } = swing.line;
  const { palette } = ink;
  const side = bassSide(build);
  const at = (x: number, z: number, overMm: number): Place | null => {
    reader.at(x);
    const top = build.crownHeightMm - sagittaMm(boardRadiusMm(build, x), z);
    return projector.drawn(x, reader.height + top + factor * overMm, side * z);
  };
  const lineOf = (over: (i: number) => number): Place[] =>
    Array.from(xMm, (x, i) => at(x, zMm[i], over(i))).filter(isPlace);
  const rest = lineOf((i) => gapMm[i]);
  const lowest = lineOf((i) => gapMm[i] - idealMm[i]);
  fill(ink, rest, lowest, palette.accent);
  stroke(ink, rest, 1, palette.ink, [6, 5]);
  stroke(
    ink,
    lineOf((i) => gapMm[i] - boundMm[i]),
    1,
    palette.accent,
    [2, 4],
  );
  stroke(ink, lowest, 2, palette.accent);
  if (swing.moves) {
    const periods = (now % PERIOD_MS) / PERIOD_MS;
    stroke(
      ink,
      lineOf((i) => gapMm[i] + pluckHeightMm * idealHeight(share[i], pluckShare, swing.direction, periods)),
      2.4,
    );
  }
  const x = fretPositionMm(build.scaleLengthMm, swing.touchedFret);
  const touched = at(x, zMm[xMm.findIndex((place) => place >= x - 1e-6)], 0);
  if (!touched) return;
  ring(ink, touched, swing.buzzes ? palette.accent : palette.ink);
  write(ink, swing.label, [touched[0], touched[1] + 16], {
    size: 14,
    weight: 600,
    align: 'center',
    baseline: 'top',
  });
}
