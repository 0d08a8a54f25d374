/**
 * Forces on the picture: the wedge forces of the frets that are in, the pull of the strings, the rod.
 *
 * Arrows of one kind are as long as their forces are large beside each other; between kinds their lengths do not compare, so
 * each kind writes its number.
 */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { channelFloorMm } from '../../geometry/rod.ts';
import { stringHeightMm } from '../../geometry/strings.ts';
import type { Method, Prediction } from '../../mechanics/prediction-types.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import { arrowHead, stroke, write, type Ink, type Place } from './ink.ts';
import type { Projector } from './project.ts';

export interface ForcesShown {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly method: Method;
  readonly units: UnitSystem;
  /** Are the strings on? Their pull is drawn, and the wedge forces are those of the strung neck. */
  readonly strung: boolean;
  /** Height of each fret over its seat; undefined = all seated. */
  readonly liftMm: ArrayLike<number> | undefined;
  /** Fret whose force is written. */
  readonly fret: number;
}

const WEDGE_UP_MM = 5;
const PULL_MM = 46;

function arrow(ink: Ink, from: Place | null, to: Place | null, width = 2): void {
  if (!from || !to) return;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 2) return;
  const colour = ink.palette.accent;
  const head = Math.min(10, Math.max(5, length * 0.6));
  const back = Math.max(0, 1 - (head * 0.8) / length);
  stroke(ink, [from, [from[0] + (to[0] - from[0]) * back, from[1] + (to[1] - from[1]) * back]], width, colour);
  arrowHead(ink, to, from, head, colour);
}

/** An arc with an arrow head around a place, turning clockwise or back, radius in mm. */
function turn(ink: Ink, projector: Projector, x: number, y: number, z: number, clockwise: boolean): void {
  const radius = 15;
  const steps = 24;
  const sign = clockwise ? -1 : 1;
  const places: Place[] = [];
  for (let i = 0; i <= steps; i++) {
    const angle = Math.PI * (0.15 + (1.35 * i) / steps);
    const place = projector.straight(x, x + sign * radius * Math.cos(angle), y + radius * Math.sin(angle), z);
    if (place) places.push(place);
  }
  if (places.length < 3) return;
  stroke(ink, places.slice(0, -1), 2, ink.palette.accent);
  arrowHead(ink, places.at(-1) as Place, places.at(-3) as Place, 10, ink.palette.accent);
}

export function drawForces(ink: Ink, projector: Projector, shown: ForcesShown): void {
  const { build, prediction, method, units, strung, liftMm, fret } = shown;
  const of = prediction.methods[method];
  const forces = strung ? of.wedgeForceStrungN : of.wedgeForceN;
  const most = Math.max(...forces, 1e-9);
  prediction.fretXMm.forEach((x, index) => {
    const force = forces[index] ?? 0;
    if (force < 0.01 * most || force < 0.5 || (liftMm?.[index] ?? 0) > 0) return;
    const room = Math.min(13, (x - (prediction.fretXMm[index - 1] ?? 0)) * 0.42);
    const reach = (room * force) / most;
    for (const side of [-1, 1]) {
      const y = build.crownHeightMm + WEDGE_UP_MM;
      arrow(
        ink,
        projector.straight(x, x + side * 0.8, y, 0),
        projector.straight(x, x + side * (0.8 + reach), y, 0),
        1.8,
      );
    }
    if (index + 1 === fret) {
      const at = projector.straight(x, x, build.crownHeightMm + WEDGE_UP_MM + 5, 0);
      const text = SCENE_WORDS.section.wedge(textOf('wedgeForceN', force, units));
      if (at) write(ink, text, at, { size: 13, align: 'center', colour: ink.palette.ink });
    }
  });

  if (strung && prediction.stringPullN > 0) {
    const y = stringHeightMm(build, 0) + 4;
    const from = projector.straight(0, 4, y + 6, 0);
    const to = projector.straight(0, 4 + PULL_MM, y + 6, 0);
    arrow(ink, from, to, 2.6);
    const text = SCENE_WORDS.stringPull(textOf('stringPullN', prediction.stringPullN, units));
    if (from) write(ink, text, [from[0], from[1] - 10], { size: 13, weight: 600 });
  }

  const share = build.rodSettingPercent / 100;
  if (prediction.rod.kind !== 'none' && share !== 0) {
    const force = prediction.rod.limitN * Math.abs(share);
    const [start, end] = [Math.max(0, build.rodStartMm), build.rodEndMm];
    const depth = (x: number): number => -channelFloorMm(build, x);
    // Plus bends the neck backwards: its ends are turned away from the strings.
    const backwards = share > 0;
    turn(ink, projector, start, depth(start), 0, !backwards);
    turn(ink, projector, end, depth(end), 0, backwards);
    const text =
      prediction.rod.kind === 'two-way'
        ? SCENE_WORDS.rodMoment(formatQuantity((force * build.rodSpacingMm) / 1000, 'N·m', 1, units))
        : SCENE_WORDS.rodPull(formatQuantity(force, 'N', 0, units));
    const at = projector.straight(end, end, depth(end) - 22, 0);
    if (at) write(ink, text, at, { size: 13, weight: 600, align: 'center', baseline: 'top' });
  }
}
