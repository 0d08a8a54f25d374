/**
 * A closed solid through cross-sections of the neck's kind: flat top, upright shoulders, a superellipse below.
 *
 *   outline    |2z/w|^p + ((y′ − s)/(D − s))^p = 1,   y′ depth below the flat top, s shoulder, D depth, w width, p exponent
 *   normal     ∇F of F(x, y, z) = |ζ|^p + η^p − 1, ζ = 2z/w, η = (y′ − s)/(D − s); the slopes of w, s, D, p and of the top
 *              along the neck enter ∂F/∂x
 *
 * Same profile equation as neck-shape.ts. The slopes along the neck are central differences of the smooth section functions.
 */
import type { MeshWriter, Vertex } from './mesh.ts';

export interface LoftSection {
  /** Height of the flat top (negative: below the crown of the board). */
  readonly topMm: number;
  readonly widthMm: number;
  readonly shoulderMm: number;
  readonly depthMm: number;
  readonly exponent: number;
}

export type SectionAt = (xMm: number) => LoftSection;

const SEGMENTS = 28;
const DIFFERENCE_MM = 0.02;

/** The lower half of the unit superellipse |ζ|^p + η^p = 1, right to left; made once for all sections of one exponent. */
interface UnitOutline {
  readonly exponent: number;
  readonly zeta: Float64Array;
  readonly eta: Float64Array;
  /** |ζ|^(p−1) and η^(p−1). */
  readonly zetaPower: Float64Array;
  readonly etaPower: Float64Array;
  /** |ζ|^p ln|ζ| + η^p ln η: how the equation changes with the exponent. */
  readonly byExponent: Float64Array;
}

const logTerm = (value: number, exponent: number): number => (value > 0 ? value ** exponent * Math.log(value) : 0);

function unitOutline(exponent: number): UnitOutline {
  const [zeta, eta, zetaPower, etaPower, byExponent] = Array.from({ length: 5 }, () => new Float64Array(SEGMENTS + 1));
  const power = 2 / exponent;
  for (let index = 0; index <= SEGMENTS; index++) {
    const angle = (Math.PI * index) / SEGMENTS;
    const isEnd = index === 0 || index === SEGMENTS;
    const across = isEnd ? 1 : index * 2 === SEGMENTS ? 0 : Math.abs(Math.cos(angle)) ** power;
    const down = isEnd ? 0 : index * 2 === SEGMENTS ? 1 : Math.sin(angle) ** power;
    zeta[index] = index * 2 > SEGMENTS ? -across : across;
    eta[index] = down;
    zetaPower[index] = across ** (exponent - 1);
    etaPower[index] = down ** (exponent - 1);
    byExponent[index] = logTerm(across, exponent) + logTerm(down, exponent);
  }
  return { exponent, zeta, eta, zetaPower, etaPower, byExponent };
}

/** Slopes of the section along the neck, kept on one side of a step at the ends of the run. */
function slopes(at: SectionAt, x: number, from: number, to: number): LoftSection {
  const x0 = Math.max(from, x - DIFFERENCE_MM);
  const x1 = Math.min(to, x + DIFFERENCE_MM);
  const [a, b] = [at(x0), at(x1)];
  const run = x1 - x0;
  return {
    topMm: (b.topMm - a.topMm) / run,
    widthMm: (b.widthMm - a.widthMm) / run,
    shoulderMm: (b.shoulderMm - a.shoulderMm) / run,
    depthMm: (b.depthMm - a.depthMm) / run,
    exponent: (b.exponent - a.exponent) / run,
  };
}

/** Heights of the corners of the back, right to left. Across the neck they stand at ζ times half the width. */
function backHeights({ topMm, shoulderMm, depthMm }: LoftSection, { eta }: UnitOutline): Float64Array {
  const heights = new Float64Array(SEGMENTS + 1);
  for (let index = 0; index <= SEGMENTS; index++) {
    heights[index] = topMm - shoulderMm - (depthMm - shoulderMm) * eta[index];
  }
  return heights;
}

/** Corner points of a section, right top first, around the back to left top: x, y, z each. */
function outlineOf(x: number, section: LoftSection): [number, number, number][] {
  const half = section.widthMm / 2;
  const unit = unitOutline(section.exponent);
  const back = [...backHeights(section, unit)].map((y, index): [number, number, number] => [
    x,
    y,
    half * unit.zeta[index],
  ]);
  return [[x, section.topMm, half], ...back, [x, section.topMm, -half]];
}

/** Adds the skin between the sections at `columns` (ascending), without end faces. */
export function writeSkin(writer: MeshWriter, at: SectionAt, columns: readonly number[]): void {
  const from = columns[0];
  const to = columns.at(-1) as number;
  let unit = unitOutline(at(from).exponent);
  let previous: { sides: Vertex[]; back: Vertex[]; top: Vertex[] } | undefined;
  for (const x of columns) {
    const section = at(x);
    const slope = slopes(at, x, from, to);
    const { exponent: p, topMm, widthMm: w, depthMm: d, shoulderMm: s } = section;
    if (p !== unit.exponent) unit = unitOutline(p);
    const { zeta, eta, zetaPower, etaPower, byExponent } = unit;
    const half = w / 2;
    const heights = backHeights(section, unit);
    const top = [-half, half].map((z) => writer.vertex(x, topMm, z, -slope.topMm, 1, 0));
    // Upright shoulders: right pair, then left pair.
    const sides = [
      writer.vertex(x, topMm, half, -slope.widthMm / 2, 0, 1),
      writer.vertex(x, heights[0], half, -slope.widthMm / 2, 0, 1),
      writer.vertex(x, heights[SEGMENTS], -half, -slope.widthMm / 2, 0, -1),
      writer.vertex(x, topMm, -half, -slope.widthMm / 2, 0, -1),
    ];
    const back: Vertex[] = [];
    for (let index = 0; index <= SEGMENTS; index++) {
      const across = Math.abs(zeta[index]);
      // The depth below the top grows as the top rises.
      const etaX = (slope.topMm - slope.shoulderMm - eta[index] * (slope.depthMm - slope.shoulderMm)) / (d - s);
      const fx =
        p * zetaPower[index] * across * (-slope.widthMm / w) +
        p * etaPower[index] * etaX +
        byExponent[index] * slope.exponent;
      const fy = (-p * etaPower[index]) / (d - s);
      const fz = (p * zetaPower[index] * Math.sign(zeta[index]) * 2) / w;
      back.push(writer.vertex(x, heights[index], half * zeta[index], fx, fy, fz));
    }
    if (previous) {
      const b = previous;
      writer.quad(b.top[0], b.top[1], top[1], top[0]);
      for (const pair of [0, 2]) writer.quad(b.sides[pair], b.sides[pair + 1], sides[pair + 1], sides[pair]);
      for (let i = 0; i + 1 < back.length; i++) writer.quad(b.back[i], b.back[i + 1], back[i + 1], back[i]);
    }
    previous = { sides, back, top };
  }
}

/** Adds the flat face of a section. @param facing 1 looks along +x, −1 towards the nut */
export function writeFace(writer: MeshWriter, x: number, section: LoftSection, facing: 1 | -1): void {
  const points = outlineOf(x, section).map(([px, py, pz]) => writer.vertex(px, py, pz, facing, 0, 0));
  for (let i = 1; i + 1 < points.length; i++) {
    if (facing === 1) writer.triangle(points[0], points[i], points[i + 1]);
    else writer.triangle(points[0], points[i + 1], points[i]);
  }
}

/**
 * Adds the step face between a section and a smaller one inside it, both at x, seen from the smaller one's side. The two
 * outlines are sewn together by their direction from the middle of the top.
 */
export function writeStep(writer: MeshWriter, x: number, before: LoftSection, after: LoftSection): void {
  const ring = (section: LoftSection): { corners: Vertex[]; angles: number[] } => {
    const points = outlineOf(x, section);
    return {
      corners: points.map(([px, py, pz]) => writer.vertex(px, py, pz, 1, 0, 0)),
      angles: points.map(([, py, pz]) => Math.atan2(before.topMm - py, pz)),
    };
  };
  const [a, b] = [ring(before), ring(after)];
  const end = a.corners.length - 1;
  let [i, j] = [0, 0];
  while (i < end || j < end) {
    if (j === end || (i < end && a.angles[i + 1] <= b.angles[j + 1])) {
      writer.triangle(a.corners[i], a.corners[i + 1], b.corners[j]);
      i += 1;
    } else {
      writer.triangle(a.corners[i], b.corners[j + 1], b.corners[j]);
      j += 1;
    }
  }
  // The flat tops lie on one line: these two triangles have no area and only close the seam.
  writer.quad(a.corners[end], a.corners[0], b.corners[0], b.corners[end]);
}
