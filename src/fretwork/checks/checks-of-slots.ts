/** Checks of the slots: deep enough, not too deep, chamfered under the crown. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { atLeast, atMost, check, GEOMETRY, PRACTICE, worst } from './check-making.ts';
import type { Check } from './check-types.ts';
import * as limits from './limits.ts';
import type { Slot } from '../slots.ts';

/** Slack for sums of decimals, mm. */
const SLACK_MM = 1e-9;

const fretsOf = (rows: readonly Slot[], holds: (row: Slot) => boolean) => rows.filter(holds).map((row) => row.fret);

function depth(build: Build, rows: readonly Slot[]): Check[] {
  const needed = Math.max(...rows.map((row) => row.depthNeededMm));
  const measure = atLeast(needed, build.slotDepthMm);
  const shallow = fretsOf(rows, (row) => row.airAtCentreMm < -SLACK_MM);
  if (shallow.length > 0) {
    const words = {
      reason: say`The tang is deeper than the slot: it stands on the floor and the crown stays up.`,
      remedy: say`Saw deeper, or take wire with a shorter tang.`,
    };
    return [check('slot-too-shallow', 'stop', 'slotDepthMm', measure, GEOMETRY, words, shallow)];
  }
  const atEdge = fretsOf(rows, (row) => row.airAtTangEndMm < -SLACK_MM);
  if (atEdge.length > 0) {
    const words = {
      reason: say`The floor of the slot is straight and the board is round: towards the edges the slot is too shallow for the tang, and the ends stand up.`,
      remedy: say`Saw deeper at the centre, deepen the ends so that the floor follows the radius, or take wire with a shorter tang.`,
    };
    return [check('slot-shallow-at-edge', 'stop', 'slotDepthMm', measure, GEOMETRY, words, atEdge)];
  }
  const littleAir = fretsOf(rows, (row) => row.depthMm < row.depthNeededMm - SLACK_MM);
  if (littleAir.length > 0) {
    const words = {
      reason: say`There is less air below the tang than you asked for: dust or filler in the slot lifts the fret.`,
      remedy: say`Saw a little deeper, or clean the slots out to the last grain.`,
    };
    return [check('little-air', 'warn', 'slotDepthMm', measure, GEOMETRY, words, littleAir)];
  }
  const most = needed + limits.NEEDLESS_DEPTH_MM;
  if (build.slotDepthMm <= most) return [];
  return [
    check('slot-deeper-than-needed', 'note', 'slotDepthMm', atMost(most, build.slotDepthMm), PRACTICE, {
      reason: say`The slots are much deeper than the tang needs; depth that nothing fills only weakens the board.`,
      remedy: say`Set the depth stop higher.`,
    }),
  ];
}

function boardLeft(rows: readonly Slot[]): Check[] {
  const found: Check[] = [];
  const left = worst(
    rows,
    (row) => row.leftLeastMm < limits.WANTED_BOARD_LEFT_MM,
    (row) => row.leftLeastMm,
    'least',
  );
  if (left) {
    const severity = left.value < limits.LEAST_BOARD_LEFT_MM ? 'stop' : 'warn';
    const measure = atLeast(limits.WANTED_BOARD_LEFT_MM, left.value);
    const words = {
      reason: say`Too little of the board is left below the slot where it is thinnest: it bows like a hinge and can crack through.`,
      remedy: say`Saw less deep, take a thicker board, or cut a flat floor where the edge is the thin place.`,
    };
    found.push(check('little-board-left', severity, 'slotDepthMm', measure, PRACTICE, words, left.frets));
  }
  const edge = worst(
    rows,
    (row) => row.edgeThicknessMm < limits.LEAST_EDGE_MM,
    (row) => row.edgeThicknessMm,
    'least',
  );
  if (edge) {
    const measure = atLeast(limits.LEAST_EDGE_MM, edge.value);
    const words = {
      reason: say`The radius leaves the board thin at its edges.`,
      remedy: say`Take a thicker board or a flatter radius.`,
    };
    found.push(check('board-edge-thin', 'warn', 'boardThicknessMm', measure, PRACTICE, words, edge.frets));
  }
  return found;
}

function chamfer(build: Build, rows: readonly Slot[]): Check[] {
  const wide = worst(
    rows,
    (row) => build.chamferMm > row.chamferLimitMm + SLACK_MM,
    (row) => row.chamferLimitMm,
    'least',
  );
  if (wide) {
    const words = {
      reason: say`The chamfer is wider than the crown’s overhang: it shows as a groove beside the fret and collects dirt.`,
      remedy: say`Break the edges less, or take wire with a wider crown.`,
    };
    const measure = atMost(wide.value, build.chamferMm);
    return [check('chamfer-too-wide', 'warn', 'chamferMm', measure, GEOMETRY, words, wide.frets)];
  }
  if (build.chamferMm >= limits.LEAST_CHAMFER_MM) return [];
  return [
    check('no-chamfer', 'note', 'chamferMm', atLeast(limits.LEAST_CHAMFER_MM, build.chamferMm), PRACTICE, {
      reason: say`With next to no chamfer the crown may sit on raised edges, and the board chips when the frets are next pulled.`,
      remedy: say`Break both edges of every slot a little.`,
    }),
  ];
}

export function slotChecks(build: Build, rows: readonly Slot[]): Check[] {
  return [...depth(build, rows), ...boardLeft(rows), ...chamfer(build, rows)];
}
