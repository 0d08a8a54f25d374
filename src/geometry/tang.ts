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

/** Adds the tang of the fret to the mesh. @param studs with its studs; otherwise plain */
export function writeTang(writer: MeshWriter, build: Build, end: FretEnd, studs: boolean): void {
  const { radiusMm, xMm } = end;
  const reach = arcMm(radiusMm, end.tangHalfMm);
  /** Where the upright end stands at a depth, as a distance along the surface. */
  const endAt = (down: number): number =>
    radiusMm === Infinity ? reach : radiusMm * Math.asin(end.tangHalfMm / (radiusMm - down));
  const half = slotAndTang(build, end.fret).tangWidthMm / 2;
  const stud = studShape(build, end.fret);
  const ridged = studs && stud.heightMm > 0;

  const stations: { at: number; raised: boolean }[] = [{ at: -reach, raised: false }];
  const add = (at: number, raised: boolean): void => {
    const from = (stations.at(-1) as { at: number }).at;
    const steps = Math.ceil((at - from) / LONGEST_STEP_MM);
    for (let step = 1; step < steps; step++) stations.push({ at: from + ((at - from) * step) / steps, raised: false });
    stations.push({ at, raised });
  };
  if (ridged) {
    for (const place of studPlacesMm(build, end.fret, reach)) {
      for (const share of [-0.5, -0.5 + SLOPE, 0.5 - SLOPE, 0.5]) {
        add(place + share * stud.lengthMm, Math.abs(share) < 0.5);
      }
    }
  }
  add(reach, false);
  const tall = stud.bottomMm - stud.topMm;
  const levels = ridged
    ? [
        { down: 0, raised: false },
        { down: stud.topMm, raised: false },
        { down: stud.topMm + SLOPE * tall, raised: true },
        { down: stud.bottomMm - SLOPE * tall, raised: true },
        { down: stud.bottomMm, raised: false },
        { down: build.tangDepthMm, raised: false },
      ]
    : [
        { down: 0, raised: false },
        { down: build.tangDepthMm, raised: false },
      ];

  const put = (
    along: number,
    down: number,
    distance: number,
    normalAlong: number,
    normalUp: number,
    normalAcross: number,
  ): Vertex => {
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
  const heightAt = (s: number, l: number): number =>
    ridged && stations[s]?.raised && levels[l]?.raised ? stud.heightMm : 0;

  /** One plane triangle of a stud with its own slopes along the wire and downwards. */
  const facet = (side: 1 | -1, sp: number, lp: number, sq: number, lq: number, sr: number, lr: number): void => {
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
  for (const side of [-1, 1] as const) {
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
          facet(side, s, l, s1, l1, s + 1, l + 1);
          facet(side, s, l, s + 1, l + 1, s3, l3);
        } else {
          writer.quad(flat(s, l), flat(s1, l1), flat(s + 1, l + 1), flat(s3, l3));
        }
      }
    }
  }
  for (const [down, facing] of [
    [0, 1],
    [build.tangDepthMm, -1],
  ] as const) {
    const left = stations.map(({ at }) => put(-half, down, at, 0, facing, 0));
    const right = stations.map(({ at }) => put(half, down, at, 0, facing, 0));
    for (let s = 0; s + 1 < stations.length; s++) {
      if (facing === 1) writer.quad(left[s], left[s + 1], right[s + 1], right[s]);
      else writer.quad(left[s], right[s], right[s + 1], left[s + 1]);
    }
  }
  for (const side of [-1, 1] as const) {
    const left = levels.map(({ down }) => put(-half, down, side * reach, 0, 0, side));
    const right = levels.map(({ down }) => put(half, down, side * reach, 0, 0, side));
    for (let l = 0; l + 1 < levels.length; l++) {
      if (side === 1) writer.quad(left[l], left[l + 1], right[l + 1], right[l]);
      else writer.quad(left[l], right[l], right[l + 1], left[l + 1]);
    }
  }
}
