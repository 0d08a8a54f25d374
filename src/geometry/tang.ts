/**
 * One fret's tang as a closed solid below the crown: a plate along the arc of the board, with or without its studs.
 *
 *   stud: length l along the wire, height v, l·v = A;  v = 0.45·t when l ≤ 0.8·pitch, else l = 0.8·pitch
 *   height over the wall: (stud width − tang width)/2
 *
 * A area of one stud, t tang depth. Studs stand opposite each other, at their pitch, the middle of the wire between two.
 * The ends are cut upright: at depth h below the surface the tang ends at φ = asin(b/(R − h)), b its half-length from above.
 * Assumed: their outline (a flat-topped ridge across the tang, sloping on all sides); the area and the width are the build's.
 */
import { slotAndTang, type Build } from '../neck/build.ts';
import { arcMm } from '../fretwork/arc.ts';
import type { FretEnd } from '../fretwork/ends.ts';
import { arcPoint } from './arc.ts';
import type { MeshWriter, Vertex } from './mesh.ts';

const LONGEST_STEP_MM = 4.5;
/** Studs begin this share of the tang's depth below the crown. */
const STUDS_BEGIN = 0.2;
/** Share of a stud's length and height that each of its slopes takes. */
const SLOPE = 0.22;

export interface StudShape {
  readonly lengthMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
  readonly heightMm: number;
}

/**
 * Shape of one stud; depths below the underside of the crown.
 * @param fret its region may have a tang of its own
 */
export function studShape(build: Build, fret: number): StudShape {
  const { tangWidthMm, studWidthMm } = slotAndTang(build, fret);
  const { studAreaMm2: area, studPitchMm: pitch, tangDepthMm: depth } = build;
  const usual = 0.45 * depth;
  const lengthMm = Math.min(area / usual, 0.8 * pitch);
  const tall = Math.min(area / lengthMm, 0.95 * depth);
  const topMm = Math.min(STUDS_BEGIN * depth, depth - tall);
  return {
    lengthMm,
    topMm,
    bottomMm: topMm + tall,
    heightMm: Math.max(0, (studWidthMm - tangWidthMm) / 2),
  };
}

/** Middles of the studs along the wire, mm from its middle, for a tang of half-length `halfMm` along the wire. */
export function studPlacesMm(build: Build, fret: number, halfMm: number): number[] {
  const { lengthMm } = studShape(build, fret);
  const places: number[] = [];
  for (let place = build.studPitchMm / 2; place + lengthMm / 2 < halfMm; place += build.studPitchMm) {
    places.push(place);
  }
  return [...places.map((place) => -place).toReversed(), ...places];
}

/** A place along the wire, mm from its middle along the surface; is it on the flat of a stud? */
interface Station {
  readonly at: number;
  readonly raised: boolean;
}

/** A depth below the crown; is it on the flat of the studs? */
interface Level {
  readonly down: number;
  readonly raised: boolean;
}

type Put = (
  along: number,
  down: number,
  distance: number,
  normalAlong: number,
  normalUp: number,
  normalAcross: number,
) => Vertex;

interface TangSolid {
  readonly writer: MeshWriter;
  readonly put: Put;
  readonly stations: readonly Station[];
  readonly levels: readonly Level[];
  /** Half the thickness of the plate, and its half-length along the surface. */
  readonly half: number;
  readonly reach: number;
  /** How far the studs stand out of the wall, mm. */
  readonly studMm: number;
}

/** @param stud null for a plain tang */
function stationsOf(build: Build, fret: number, reach: number, stud: StudShape | null): Station[] {
  const stations: Station[] = [{ at: -reach, raised: false }];
  const add = (at: number, raised: boolean): void => {
    const from = (stations.at(-1) as Station).at;
    const steps = Math.ceil((at - from) / LONGEST_STEP_MM);
    for (let step = 1; step < steps; step++) stations.push({ at: from + ((at - from) * step) / steps, raised: false });
    stations.push({ at, raised });
  };
  for (const place of stud ? studPlacesMm(build, fret, reach) : []) {
    for (const share of [-0.5, -0.5 + SLOPE, 0.5 - SLOPE, 0.5]) {
      add(place + share * (stud as StudShape).lengthMm, Math.abs(share) < 0.5);
    }
  }
  add(reach, false);
  return stations;
}

function levelsOf(tangDepthMm: number, stud: StudShape | null): Level[] {
  const [top, bottom] = [
    { down: 0, raised: false },
    { down: tangDepthMm, raised: false },
  ];
  if (!stud) return [top, bottom];
  const tall = stud.bottomMm - stud.topMm;
  return [
    top,
    { down: stud.topMm, raised: false },
    { down: stud.topMm + SLOPE * tall, raised: true },
    { down: stud.bottomMm - SLOPE * tall, raised: true },
    { down: stud.bottomMm, raised: false },
    bottom,
  ];
}

/** One wall of the plate with its studs. */
function writeWall({ writer, put, stations, levels, half, studMm }: TangSolid, side: 1 | -1): void {
  const heightAt = (s: number, l: number): number => (stations[s]?.raised && levels[l]?.raised ? studMm : 0);

  /** One plane triangle of a stud with its own slopes along the wire and downwards. */
  const facet = (sp: number, lp: number, sq: number, lq: number, sr: number, lr: number): void => {
    const [hp, hq, hr] = [heightAt(sp, lp), heightAt(sq, lq), heightAt(sr, lr)];
    const [qa, qd] = [stations[sq].at - stations[sp].at, levels[lq].down - levels[lp].down];
    const [ra, rd] = [stations[sr].at - stations[sp].at, levels[lr].down - levels[lp].down];
    const area = qa * rd - qd * ra;
    const across = ((hq - hp) * rd - qd * (hr - hp)) / area;
    const downwards = (qa * (hr - hp) - (hq - hp) * ra) / area;
    writer.triangle(
      put(side * (half + hp), levels[lp].down, stations[sp].at, side, downwards, -across),
      put(side * (half + hq), levels[lq].down, stations[sq].at, side, downwards, -across),
      put(side * (half + hr), levels[lr].down, stations[sr].at, side, downwards, -across),
    );
  };

  // Flat quads share their corners; those of the studs have their own, so that their edges stay crisp.
  const shared = new Map<number, Vertex>();
  const flat = (s: number, l: number): Vertex => {
    const key = l * stations.length + s;
    const known = shared.get(key);
    if (known !== undefined) return known;
    const made = put(side * half, levels[l].down, stations[s].at, side, 0, 0);
    shared.set(key, made);
    return made;
  };
  for (let l = 0; l + 1 < levels.length; l++) {
    for (let s = 0; s + 1 < stations.length; s++) {
      // Corners in order around the facet, seen from outside.
      const [s1, l1, s3, l3] = side === 1 ? [s + 1, l, s, l + 1] : [s, l + 1, s + 1, l];
      const bumpy = heightAt(s, l) + heightAt(s1, l1) + heightAt(s + 1, l + 1) + heightAt(s3, l3) > 0;
      if (bumpy) {
        facet(s, l, s1, l1, s + 1, l + 1);
        facet(s, l, s + 1, l + 1, s3, l3);
      } else {
        writer.quad(flat(s, l), flat(s1, l1), flat(s + 1, l + 1), flat(s3, l3));
      }
    }
  }
}

/** A strip between the two walls, along its left and right edges. @param outwards whether it is seen as it is written */
function writeStrip(writer: MeshWriter, left: readonly Vertex[], right: readonly Vertex[], outwards: boolean): void {
  for (let s = 0; s + 1 < left.length; s++) {
    if (outwards) writer.quad(left[s], left[s + 1], right[s + 1], right[s]);
    else writer.quad(left[s], right[s], right[s + 1], left[s + 1]);
  }
}

/** Top and bottom of the plate, then its upright ends. */
function writeRim({ writer, put, stations, levels, half, reach }: TangSolid, depthMm: number): void {
  for (const [down, facing] of [
    [0, 1],
    [depthMm, -1],
  ] as const) {
    const left = stations.map(({ at }) => put(-half, down, at, 0, facing, 0));
    const right = stations.map(({ at }) => put(half, down, at, 0, facing, 0));
    writeStrip(writer, left, right, facing === 1);
  }
  for (const side of [-1, 1] as const) {
    const left = levels.map(({ down }) => put(-half, down, side * reach, 0, 0, side));
    const right = levels.map(({ down }) => put(half, down, side * reach, 0, 0, side));
    writeStrip(writer, left, right, side === 1);
  }
}

/** Adds the tang of the fret to the mesh. @param studs with its studs; otherwise plain */
export function writeTang(writer: MeshWriter, build: Build, end: FretEnd, studs: boolean): void {
  const { radiusMm, xMm } = end;
  const reach = arcMm(radiusMm, end.tangHalfMm);
  /** Where the upright end stands at a depth, as a distance along the surface. */
  const endAt = (down: number): number =>
    radiusMm === Infinity ? reach : radiusMm * Math.asin(end.tangHalfMm / (radiusMm - down));
  const shape = studShape(build, end.fret);
  const stud = studs && shape.heightMm > 0 ? shape : null;
  const put: Put = (along, down, distance, normalAlong, normalUp, normalAcross) => {
    const whole = Math.abs(distance) === reach ? Math.sign(distance) * endAt(down) : distance;
    const { y, z, upY, upZ } = arcPoint(radiusMm, whole, -down);
    return writer.vertex(
      xMm + along,
      y,
      z,
      normalAlong,
      normalUp * upY - normalAcross * upZ,
      normalUp * upZ + normalAcross * upY,
    );
  };
  const solid: TangSolid = {
    writer,
    put,
    stations: stationsOf(build, end.fret, reach, stud),
    levels: levelsOf(build.tangDepthMm, stud),
    half: slotAndTang(build, end.fret).tangWidthMm / 2,
    reach,
    studMm: stud?.heightMm ?? 0,
  };
  writeWall(solid, -1);
  writeWall(solid, 1);
  writeRim(solid, build.tangDepthMm);
}
