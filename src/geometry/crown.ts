/**
 * One fret's crown as a closed solid: its profile (crown-profile.ts) swept along the arc of the board, with ends that are
 * bevelled by one plane, rounded in plan and eased along their edges; or square and oversize, as the wire is cut.
 */
import type { Build } from '../neck/build.ts';
import { arcMm } from '../fretwork/arc.ts';
import { bevelPoint, type FretEnd } from '../fretwork/ends.ts';
import { arcPoint } from './arc.ts';
import { crownArc } from './crown-profile.ts';
import type { MeshWriter, Vertex } from './mesh.ts';

const ARC_SEGMENTS = 18;
const CAP_COLUMNS = 6;
const LONGEST_STEP_MM = 4.5;
/** Share of the crown's width by which the corners of a filed end are drawn back (practice). */
const ROUNDING = 0.2;

interface ProfilePoint {
  readonly along: number;
  readonly up: number;
  readonly normalAlong: number;
  readonly normalUp: number;
}

type Put = (
  along: number,
  up: number,
  distance: number,
  normalAlong: number,
  normalUp: number,
  normalAcross: number,
) => Vertex;

/** How the ends of a crown are worked. */
interface Ends {
  /** Distance along the arc at which the end face stands, at `along`, `up` of the profile. */
  readonly endAt: (along: number, up: number) => number;
  /** By how much its edges are eased, and its corners drawn back, mm. */
  readonly ease: number;
  readonly rounding: number;
  /** Slope of the end face. */
  readonly tilt: number;
}

function endsOf(build: Build, end: FretEnd, filed: boolean): Ends {
  const { radiusMm } = end;
  const half = build.crownWidthMm / 2;
  if (!filed) {
    const squareEnd = arcMm(radiusMm, end.boardHalfMm) + build.oversizeMm;
    return { endAt: () => squareEnd, ease: 0.02, rounding: 0, tilt: 0 };
  }
  const rounding = ROUNDING * build.crownWidthMm;
  return {
    endAt: (along, up) => {
      const { onBoardHalfMm } = bevelPoint(radiusMm, end.crownFootHalfMm, up, build.endBevelDegrees);
      return arcMm(radiusMm, onBoardHalfMm) - rounding * (along / half) ** 2;
    },
    ease: 0.08 * build.crownHeightMm,
    rounding,
    tilt: Math.tan((build.endBevelDegrees * Math.PI) / 180),
  };
}

/** A point of the outline of the end face: drawn in by the easing of its edges; the underside keeps its height. */
type Eased = (point: ProfilePoint) => { readonly along: number; readonly up: number };

interface CrownSolid extends Ends {
  readonly writer: MeshWriter;
  readonly put: Put;
  readonly arc: readonly ProfilePoint[];
  /** The two upright feet and the arc; the feet have their own corners, so that their edges stay sharp. */
  readonly outline: readonly (readonly ProfilePoint[])[];
  readonly eased: Eased;
  readonly half: number;
  /** Steps of the sweep; even, so that one ring stands in the middle: the apex of the fret is exact. */
  readonly steps: number;
}

function outlineOf(arc: readonly ProfilePoint[], half: number): CrownSolid['outline'] {
  const { up } = arc[0];
  return [
    [
      { along: -half, up: 0, normalAlong: -1, normalUp: 0 },
      { along: -half, up, normalAlong: -1, normalUp: 0 },
    ],
    arc,
    [
      { along: half, up, normalAlong: 1, normalUp: 0 },
      { along: half, up: 0, normalAlong: 1, normalUp: 0 },
    ],
  ];
}

/** The outline swept from end to end. */
function writeSweep({ writer, put, outline, eased, endAt, ease, tilt, steps }: CrownSolid): void {
  // Where each point of the outline ends: the last full ring, and the eased outline of the end face.
  const ends = outline.map((run) =>
    run.map((point) => {
      const inner = eased(point);
      return { reach: endAt(point.along, point.up) - ease * 1.2, inner, face: endAt(inner.along, inner.up) };
    }),
  );
  const ring = (index: number): Vertex[][] =>
    outline.map((run, o) =>
      run.map(({ along, up, normalAlong, normalUp }, i) => {
        const { reach, inner, face } = ends[o][i];
        if (index === 0 || index === steps + 2) {
          const side = index === 0 ? -1 : 1;
          return put(inner.along, inner.up, side * face, normalAlong, normalUp + 0.5 * tilt, 0.7 * side);
        }
        return put(along, up, reach * ((2 * (index - 1)) / steps - 1), normalAlong, normalUp, 0);
      }),
    );
  const rings = Array.from({ length: steps + 3 }, (_, index) => ring(index));
  for (let r = 0; r + 1 < rings.length; r++) {
    outline.forEach((run, o) => {
      for (let i = 0; i + 1 < run.length; i++) {
        writer.quad(rings[r][o][i], rings[r + 1][o][i], rings[r + 1][o][i + 1], rings[r][o][i + 1]);
      }
    });
  }
}

type Feet = readonly [Vertex, Vertex];

/** The underside. @returns its corners, from end to end */
function writeUnderside({ writer, put, endAt, ease, half, steps }: CrownSolid): Feet[] {
  const footReach = endAt(-half, 0) - ease * 1.2;
  const under = Array.from({ length: steps + 1 }, (_, index): Feet => {
    const distance = footReach * ((2 * index) / steps - 1);
    return [put(-half, 0, distance, 0, -1, 0), put(half, 0, distance, 0, -1, 0)];
  });
  for (let r = 0; r < steps; r++) writer.quad(under[r][0], under[r][1], under[r + 1][1], under[r + 1][0]);
  return under;
}

/** An end face, and the fan from the last feet of the underside to its bottom row. */
function writeEndFace(solid: CrownSolid, side: 1 | -1, [left, right]: Feet): void {
  const { writer, put, arc, outline, eased, endAt, rounding, tilt, half } = solid;
  const turned = (a: Vertex, b: Vertex, c: Vertex): void =>
    side === 1 ? writer.triangle(a, b, c) : writer.triangle(a, c, b);
  const capPoint = (along: number, up: number, distance: number, under: boolean): Vertex =>
    under
      ? put(along, up, distance, 0, -1, 0)
      : put(along, up, distance, (2 * rounding * along) / (half * half), tilt, side);
  // Rows of the end face from the underside to the apex; left and right points of a row are mirror images.
  const rows = [eased(outline[0][0]), ...arc.slice(0, ARC_SEGMENTS / 2 + 1).map((point) => eased(point))];
  // The end stands at the same place on a level but for the rounding, so the bevel is found once a level.
  const row = ({ along, up }: { along: number; up: number }, under = false): Vertex[] => {
    const middle = endAt(0, up);
    return Array.from({ length: CAP_COLUMNS + 1 }, (_, c) => {
      const share = c / CAP_COLUMNS;
      const at = along * (1 - share) - along * share;
      return capPoint(at, up, side * (middle - rounding * (at / half) ** 2), under);
    });
  };
  const grid = rows.slice(0, -1).map((level) => row(level));
  const apexUp = (rows.at(-1) as { up: number }).up;
  const apex = capPoint(0, apexUp, side * endAt(0, apexUp), false);
  for (let r = 0; r + 1 < grid.length; r++) {
    for (let c = 0; c < CAP_COLUMNS; c++) {
      turned(grid[r][c], grid[r][c + 1], grid[r + 1][c + 1]);
      turned(grid[r][c], grid[r + 1][c + 1], grid[r + 1][c]);
    }
  }
  const top = grid.at(-1) as Vertex[];
  for (let c = 0; c < CAP_COLUMNS; c++) turned(top[c], top[c + 1], apex);
  const bottom = row(rows[0], true);
  for (let c = 0; c < CAP_COLUMNS; c++) turned(left, bottom[c + 1], bottom[c]);
  turned(left, right, bottom[CAP_COLUMNS]);
}

/** Adds the crown of the fret to the mesh. @param filed bevelled and rounded; otherwise square and oversize */
export function writeCrown(writer: MeshWriter, build: Build, end: FretEnd, filed: boolean): void {
  const { radiusMm, xMm } = end;
  const half = build.crownWidthMm / 2;
  const ends = endsOf(build, end, filed);
  const { ease } = ends;
  const put: Put = (along, up, distance, normalAlong, normalUp, normalAcross) => {
    const { y, z, upY, upZ } = arcPoint(radiusMm, distance, up);
    return writer.vertex(
      xMm + along,
      y,
      z,
      normalAlong,
      normalUp * upY - normalAcross * upZ,
      normalUp * upZ + normalAcross * upY,
    );
  };
  const arc = crownArc(build.crownWidthMm, build.crownHeightMm, ARC_SEGMENTS);
  const eased: Eased = ({ along, up, normalAlong, normalUp }) => {
    const footTop = up === arc[0].up;
    return {
      along: Math.abs(along) === half ? Math.sign(along) * (half - ease) : along - ease * normalAlong,
      up: up === 0 ? 0 : footTop ? Math.max(up - ease, up / 2) : up - ease * normalUp,
    };
  };
  const steps = 2 * Math.max(2, Math.ceil(ends.endAt(0, 0) / LONGEST_STEP_MM));
  const solid: CrownSolid = { ...ends, writer, put, arc, outline: outlineOf(arc, half), eased, half, steps };
  writeSweep(solid);
  const under = writeUnderside(solid);
  writeEndFace(solid, -1, under[0]);
  writeEndFace(solid, 1, under[steps]);
}
