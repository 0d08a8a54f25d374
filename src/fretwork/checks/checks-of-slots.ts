/** Checks of the slots: deep enough, not too deep, chamfered under the crown. */
import type { Build } from '../../neck/build.ts';
import { above, atLeast, atMost, below, check, GEOMETRY, PRACTICE, worst } from './check-making.ts';
import type { Check } from './check-types.ts';
import * as limits from './limits.ts';
import type { Slot } from '../slots.ts';

const fretsOf = (rows: readonly Slot[], holds: (row: Slot) => boolean) => rows.filter(holds).map((row) => row.fret);

function depth(build: Build, rows: readonly Slot[]): Check[] {
  const needed = Math.max(...rows.map((row) => row.depthNeededMm));
  const measure = atLeast('slotDepthMm', needed, build.slotDepthMm);
  const shallow = fretsOf(rows, (row) => below(row.airAtCentreMm, 0));
  if (shallow.length > 0) {
    return [check('slot-too-shallow', 'stop', 'slotDepthMm', measure, GEOMETRY, { frets: shallow })];
  }
  const atEdge = fretsOf(rows, (row) => below(row.airAtTangEndMm, 0));
  if (atEdge.length > 0) {
    return [check('slot-shallow-at-edge', 'stop', 'slotDepthMm', measure, GEOMETRY, { frets: atEdge })];
  }
  const littleAir = fretsOf(rows, (row) => below(row.depthMm, row.depthNeededMm));
  if (littleAir.length > 0) {
    return [check('little-air', 'warn', 'slotDepthMm', measure, GEOMETRY, { frets: littleAir })];
  }
  const most = needed + limits.NEEDLESS_DEPTH_MM;
  if (!above(build.slotDepthMm, most)) return [];
  const tooDeep = atMost('slotDepthMm', most, build.slotDepthMm);
  return [check('slot-deeper-than-needed', 'note', 'slotDepthMm', tooDeep, PRACTICE)];
}

function boardLeft(rows: readonly Slot[]): Check[] {
  const found: Check[] = [];
  const left = worst(
    rows,
    (row) => below(row.leftLeastMm, limits.WANTED_BOARD_LEFT_MM),
    (row) => row.leftLeastMm,
    'least',
  );
  if (left) {
    const severity = below(left.value, limits.LEAST_BOARD_LEFT_MM) ? 'stop' : 'warn';
    const measure = atLeast('boardLeftLeastMm', limits.WANTED_BOARD_LEFT_MM, left.value);
    found.push(check('little-board-left', severity, 'slotDepthMm', measure, PRACTICE, { frets: left.frets }));
  }
  const edge = worst(
    rows,
    (row) => below(row.edgeThicknessMm, limits.LEAST_EDGE_MM),
    (row) => row.edgeThicknessMm,
    'least',
  );
  if (edge) {
    const measure = atLeast('boardEdgeThicknessMm', limits.LEAST_EDGE_MM, edge.value);
    found.push(check('board-edge-thin', 'warn', 'boardThicknessMm', measure, PRACTICE, { frets: edge.frets }));
  }
  return found;
}

function chamfer(build: Build, rows: readonly Slot[]): Check[] {
  const wide = worst(
    rows,
    (row) => above(build.chamferMm, row.chamferLimitMm),
    (row) => row.chamferLimitMm,
    'least',
  );
  if (wide) {
    const measure = atMost('chamferMm', wide.value, build.chamferMm);
    return [check('chamfer-too-wide', 'warn', 'chamferMm', measure, GEOMETRY, { frets: wide.frets })];
  }
  if (!below(build.chamferMm, limits.LEAST_CHAMFER_MM)) return [];
  const measure = atLeast('chamferMm', limits.LEAST_CHAMFER_MM, build.chamferMm);
  return [check('no-chamfer', 'note', 'chamferMm', measure, PRACTICE)];
}

export function slotChecks(build: Build, rows: readonly Slot[]): Check[] {
  return [...depth(build, rows), ...boardLeft(rows), ...chamfer(build, rows)];
}
