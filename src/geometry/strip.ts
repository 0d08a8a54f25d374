/**
 * A strip of the board between two lateral lines, with or without slots: the board's wood and each line of binding.
 *
 * Seen from the side the top is a polyline: surface, chamfer, wall, floor, wall, chamfer, surface …; each of its points runs
 * across the strip along the arc of the board. Slot walls are vertical, the chamfer falls as far as it is wide.
 */
import type { Build } from '../neck/build.ts';
import { seatAt } from '../neck/kerf.ts';
import { createMeshWriter, type Mesh, type MeshWriter, type Vertex } from './mesh.ts';
import { createSurface, type BoardSurface } from './surface.ts';

/** A column of the top: where it is, and which height it has. */
interface TopPoint {
  readonly xMm: number;
  readonly level: 'surface' | 'chamfer' | 'floor';
  /** Fret of the slot that it belongs to or lies beside; 0 = none. */
  readonly fret: number;
  /** x of that slot's middle. */
  readonly slotXMm: number;
  readonly contact: number;
}

export interface StripPlan {
  readonly build: Build;
  /** Lateral lines of the strip at x, left (smaller z) and right. */
  readonly leftMm: (xMm: number) => number;
  readonly rightMm: (xMm: number) => number;
  readonly segmentsAcross: number;
  readonly startMm: number;
  readonly endMm: number;
  readonly undersideMm: number;
  readonly fretXMm: readonly number[];
  readonly slotted: boolean;
  readonly colour?: string;
}

/** Widest step between cross-sections: the bow is drawn smooth. */
const LONGEST_STEP_MM = 9;
/** How far from a crown its shadow falls on the board. */
const SHADOW_REACH_MM = 2.2;
const SMALLEST_STEP_MM = 0.02;

/** Between two lateral lines; exactly the lines themselves at 0 and 1, so that neighbouring faces share their corners. */
function across(left: number, right: number, share: number): number {
  return left * (1 - share) + right * share;
}

/** The points of the top along the strip, ascending in x, the slot walls as two points with one x. */
function topPoints({ build, startMm, endMm, fretXMm, slotted }: StripPlan): TopPoint[] {
  const crown = build.crownWidthMm / 2;
  const points: TopPoint[] = [];
  const surface = (xMm: number, fret: number, slotXMm: number, contact: number): void => {
    const last = points.at(-1);
    if (last && xMm - last.xMm < SMALLEST_STEP_MM) return;
    points.push({ xMm, level: 'surface', fret, slotXMm, contact });
  };
  const fill = (toMm: number): void => {
    const from = points.at(-1)?.xMm ?? startMm;
    const steps = Math.ceil((toMm - from) / LONGEST_STEP_MM);
    for (let step = 1; step < steps; step++) surface(from + ((toMm - from) * step) / steps, 0, 0, 0);
  };
  surface(startMm, 0, 0, 0);
  fretXMm.forEach((slotXMm, index) => {
    const fret = index + 1;
    const half = seatAt(build, fret).kerfMm / 2;
    const opened = half + (slotted ? build.chamferMm : 0);
    const next = fretXMm[index + 1] ?? endMm;
    const previous = fretXMm[index - 1] ?? startMm;
    const reachBefore = Math.min(SHADOW_REACH_MM, (slotXMm - previous) / 2 - crown - 0.1);
    const reachAfter = Math.min(SHADOW_REACH_MM, (next - slotXMm) / 2 - crown - 0.1);
    if (reachBefore > 0) {
      fill(slotXMm - crown - reachBefore);
      surface(slotXMm - crown - reachBefore, fret, slotXMm, 0);
      if (crown > opened + SMALLEST_STEP_MM) surface(slotXMm - crown, fret, slotXMm, 1);
    } else {
      fill(slotXMm - opened - 0.1);
    }
    const side = (sign: 1 | -1, levels: readonly TopPoint['level'][]): void => {
      for (const level of levels) {
        const xMm = slotXMm + sign * (level === 'surface' ? opened : half);
        points.push({ xMm, level, fret, slotXMm, contact: 1 });
      }
    };
    if (slotted) {
      const bevelled = build.chamferMm > 0;
      side(-1, bevelled ? ['surface', 'chamfer', 'floor'] : ['surface', 'floor']);
      side(1, bevelled ? ['floor', 'chamfer', 'surface'] : ['floor', 'surface']);
    } else {
      surface(slotXMm, fret, slotXMm, 1);
    }
    if (reachAfter > 0) {
      if (crown > opened + SMALLEST_STEP_MM) surface(slotXMm + crown, fret, slotXMm, 1);
      surface(slotXMm + crown + reachAfter, fret, slotXMm, 0);
    } else {
      const between = Math.min((slotXMm + next) / 2, endMm);
      surface(Math.max(between, slotXMm + opened + SMALLEST_STEP_MM), 0, 0, 0.5);
    }
  });
  fill(endMm);
  const last = points.at(-1) as TopPoint;
  if (endMm - last.xMm < SMALLEST_STEP_MM && last.level === 'surface') points.pop();
  points.push({ xMm: endMm, level: 'surface', fret: 0, slotXMm: 0, contact: 0 });
  return points;
}

/** Height of a point of the top at z. */
function heightAt(plan: StripPlan, surface: BoardSurface, { xMm, level, slotXMm }: TopPoint, zMm: number): number {
  const top = surface.heightMm(surface.radiusMm(xMm), zMm);
  if (level === 'surface') return top;
  // A flat cut in a radiused board can run out before the edge: its floor is then the surface itself.
  const floor = Math.min(top, surface.floorMm(surface.radiusMm(slotXMm), zMm));
  return level === 'floor' ? floor : Math.max(floor, top - plan.build.chamferMm);
}

type Facet = 'surface' | 'chamfer-in' | 'chamfer-out' | 'wall-in' | 'wall-out' | 'floor';

function facetOf(from: TopPoint, to: TopPoint): Facet {
  if (from.level === 'surface' && to.level === 'surface') return 'surface';
  if (from.level === 'floor' && to.level === 'floor') return 'floor';
  if (from.xMm === to.xMm) return to.level === 'floor' ? 'wall-in' : 'wall-out';
  return to.level === 'chamfer' || to.level === 'floor' ? 'chamfer-in' : 'chamfer-out';
}

/** Normal of a facet along the neck and upwards, and whether it leans with the arc across. */
const FACET_NORMALS: Record<Exclude<Facet, 'surface'>, readonly [along: number, up: number, leans: boolean]> = {
  'wall-in': [1, 0, false],
  'wall-out': [-1, 0, false],
  'chamfer-in': [1, 1, true],
  'chamfer-out': [-1, 1, true],
  floor: [0, 1, true],
};

const CAVITY: Record<TopPoint['level'], number> = { surface: 0, chamfer: 0.25, floor: 0.85 };

/** The rows of vertices across the strip, facet by facet. */
function writeTop(writer: MeshWriter, plan: StripPlan, surface: BoardSurface, points: readonly TopPoint[]): void {
  const { build, leftMm, rightMm, segmentsAcross } = plan;
  const flatFloor = build.slotBottom === 'flat';
  /** @returns the first vertex of the row; the others follow it */
  const row = (point: TopPoint, facet: Facet): Vertex => {
    const left = leftMm(point.xMm);
    const right = rightMm(point.xMm);
    const radius = surface.radiusMm(point.xMm);
    const inside = facet !== 'surface';
    const [along, up, leans] = inside ? FACET_NORMALS[facet] : [0, 1, true];
    const leaning = leans && !(facet === 'floor' && flatFloor);
    writer.fret(point.fret);
    writer.shade(inside ? CAVITY[point.level] : 0, point.contact);
    let last = -1;
    for (let j = 0; j <= segmentsAcross; j++) {
      const z = across(left, right, j / segmentsAcross);
      const normalX = inside ? along : surface.slopeAlong(radius, z);
      const normalZ = leaning ? surface.slopeAcross(radius, z) : 0;
      last = writer.vertex(point.xMm, heightAt(plan, surface, point, z), z, normalX, up, normalZ);
    }
    return last - segmentsAcross;
  };
  let shared: Vertex | undefined;
  for (let i = 0; i + 1 < points.length; i++) {
    const from = points[i];
    const to = points[i + 1];
    const facet = facetOf(from, to);
    const near = (facet === 'surface' ? shared : undefined) ?? row(from, facet);
    const far = row(to, facet);
    for (let j = 0; j < segmentsAcross; j++) writer.quad(near + j, near + j + 1, far + j + 1, far + j);
    shared = facet === 'surface' ? far : undefined;
  }
}

/** One side of the strip: the polygon between its top polyline and its underside. */
function writeSide(
  writer: MeshWriter,
  plan: StripPlan,
  surface: BoardSurface,
  points: readonly TopPoint[],
  right: boolean,
): void {
  const { startMm, endMm, undersideMm } = plan;
  const lineMm = right ? plan.rightMm : plan.leftMm;
  const slope = (lineMm(endMm) - lineMm(startMm)) / (endMm - startMm);
  const normal: [number, number, number] = right ? [-slope, 0, 1] : [slope, 0, -1];
  const at = (xMm: number, y: number): Vertex => writer.vertex(xMm, y, lineMm(xMm), ...normal);
  writer.shade(0, 0);
  const tops = points.map((point) => {
    writer.fret(point.fret);
    return at(point.xMm, heightAt(plan, surface, point, lineMm(point.xMm)));
  });
  writer.fret(0);
  const bottoms = points.map((point, i) =>
    i > 0 && points[i - 1].xMm === point.xMm ? -1 : at(point.xMm, -undersideMm),
  );
  for (let i = 1; i < points.length; i++) if (bottoms[i] === -1) bottoms[i] = bottoms[i - 1];
  const turned = (a: Vertex, b: Vertex, c: Vertex): void =>
    right ? writer.triangle(a, b, c) : writer.triangle(a, c, b);
  for (let i = 0; i + 1 < points.length; i++) {
    if (points[i].xMm === points[i + 1].xMm) continue;
    // The wall of a slot to the right or to the left puts one more corner on that edge of the polygon.
    const wallAfter =
      i + 2 < points.length && points[i + 2].xMm === points[i + 1].xMm && points[i + 2].level === 'floor';
    const wallBefore = i > 0 && points[i - 1].xMm === points[i].xMm && points[i - 1].level === 'floor';
    const [a, b, c, d] = [bottoms[i], bottoms[i + 1], tops[i + 1], tops[i]];
    if (wallAfter) {
      turned(a, b, tops[i + 2]);
      turned(a, tops[i + 2], c);
      turned(a, c, d);
    } else if (wallBefore) {
      turned(b, c, d);
      turned(b, d, tops[i - 1]);
      turned(b, tops[i - 1], a);
    } else {
      turned(a, b, c);
      turned(a, c, d);
    }
  }
}

function writeUnderside(writer: MeshWriter, plan: StripPlan, points: readonly TopPoint[]): void {
  const rows = points
    .filter((point, i) => i === 0 || points[i - 1].xMm !== point.xMm)
    .map(({ xMm }) => [
      writer.vertex(xMm, -plan.undersideMm, plan.leftMm(xMm), 0, -1, 0),
      writer.vertex(xMm, -plan.undersideMm, plan.rightMm(xMm), 0, -1, 0),
    ]);
  for (let i = 0; i + 1 < rows.length; i++) writer.quad(rows[i][0], rows[i + 1][0], rows[i + 1][1], rows[i][1]);
}

function writeEnd(writer: MeshWriter, plan: StripPlan, surface: BoardSurface, point: TopPoint, facing: 1 | -1): void {
  const { xMm } = point;
  const left = plan.leftMm(xMm);
  const right = plan.rightMm(xMm);
  const at = (y: number, z: number): Vertex => writer.vertex(xMm, y, z, facing, 0, 0);
  const bottomLeft = at(-plan.undersideMm, left);
  const bottomRight = at(-plan.undersideMm, right);
  const tops = Array.from({ length: plan.segmentsAcross + 1 }, (_, j) => {
    const z = across(left, right, j / plan.segmentsAcross);
    return at(heightAt(plan, surface, point, z), z);
  });
  const turned = (a: Vertex, b: Vertex, c: Vertex): void =>
    facing === 1 ? writer.triangle(a, b, c) : writer.triangle(a, c, b);
  for (let j = 0; j < plan.segmentsAcross; j++) turned(bottomLeft, tops[j], tops[j + 1]);
  turned(bottomLeft, tops[plan.segmentsAcross], bottomRight);
}

/** A closed strip of the board. */
export function stripMesh(plan: StripPlan): Mesh {
  const writer = createMeshWriter();
  if (plan.colour) writer.colour(plan.colour);
  const points = topPoints(plan);
  const surface = createSurface(plan.build);
  writeTop(writer, plan, surface, points);
  writer.fret(0);
  writer.shade(0, 0);
  writeSide(writer, plan, surface, points, false);
  writeSide(writer, plan, surface, points, true);
  writeUnderside(writer, plan, points);
  writeEnd(writer, plan, surface, points[0], -1);
  writeEnd(writer, plan, surface, points.at(-1) as TopPoint, 1);
  return writer.finish();
}
