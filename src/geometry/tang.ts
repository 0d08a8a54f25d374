/**
 * One fret's tang as a closed solid below the crown: a plate along the arc of the board, with or without its studs.
 *
 *   stud: length l along the wire, height v, l·v = A;  v = 0.45·t when l ≤ 0.8·pitch, else l = 0.8·pitch
 *   height over the wall: (stud width − tang width)/2
 *
 * A area of one stud, t tang depth. Studs stand opposite each other, at their pitch, the middle of the wire between two.
 * Assumed: their outline (a flat-topped ridge across the tang, sloping on all sides); the area and the width are the build's.
 */
import type { Build } from '../build/build.ts';
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

/** Shape of one stud; depths below the underside of the crown. */
export function studShape(build: Build): StudShape {
  const { studAreaMm2: area, studPitchMm: pitch, tangDepthMm: depth } = build;
  const usual = 0.45 * depth;
  const lengthMm = Math.min(area / usual, 0.8 * pitch);
  const tall = Math.min(area / lengthMm, 0.95 * depth);
  const topMm = Math.min(STUDS_BEGIN * depth, depth - tall);
  return {
    lengthMm,
    topMm,
    bottomMm: topMm + tall,
    heightMm: Math.max(0, (build.studWidthMm - build.tangWidthMm) / 2),
  };
}

/** Middles of the studs along the wire, mm from its middle, for a tang of half-length `halfMm` along the wire. */
export function studPlacesMm(build: Build, halfMm: number): number[] {
  const { lengthMm } = studShape(build);
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
  const half = build.tangWidthMm / 2;
  const stud = studShape(build);
  const ridged = studs && stud.heightMm > 0;

  const stations: { at: number; raised: boolean }[] = [];
  if (ridged) {
    for (const place of studPlacesMm(build, reach)) {
      for (const share of [-0.5, -0.5 + SLOPE, 0.5 - SLOPE, 0.5]) {
        stations.push({ at: place + share * stud.lengthMm, raised: Math.abs(share) < 0.5 });
      }
    }
  }
  stations.unshift({ at: -reach, raised: false });
  stations.push({ at: reach, raised: false });
  for (let i = stations.length - 1; i > 0; i--) {
    const [from, to] = [stations[i - 1], stations[i]];
    const steps = Math.ceil((to.at - from.at) / LONGEST_STEP_MM);
    for (let step = steps - 1; step > 0; step--) {
      stations.splice(i, 0, { at: from.at + ((to.at - from.at) * step) / steps, raised: false });
    }
  }
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
    [normalAlong, normalUp, normalAcross]: readonly [number, number, number],
  ): Vertex => {
    const { y, z, upY, upZ } = arcPoint(radiusMm, distance, -down);
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

  for (const side of [-1, 1] as const) {
    const wall = levels.map(({ down }, l) =>
      stations.map(({ at }, s) => {
        // Slopes of the ridge by differences between the neighbouring corners.
        const [s0, s1] = [Math.max(0, s - 1), Math.min(stations.length - 1, s + 1)];
        const [l0, l1] = [Math.max(0, l - 1), Math.min(levels.length - 1, l + 1)];
        const across = (heightAt(s1, l) - heightAt(s0, l)) / (stations[s1].at - stations[s0].at || 1);
        const downwards = (heightAt(s, l1) - heightAt(s, l0)) / (levels[l1].down - levels[l0].down || 1);
        return put(side * (half + heightAt(s, l)), down, at, [side, downwards, -across]);
      }),
    );
    for (let l = 0; l + 1 < levels.length; l++) {
      for (let s = 0; s + 1 < stations.length; s++) {
        const [a, b, c, d] = [wall[l][s], wall[l + 1][s], wall[l + 1][s + 1], wall[l][s + 1]];
        if (side === 1) writer.quad(a, d, c, b);
        else writer.quad(a, b, c, d);
      }
    }
  }
  for (const [down, facing] of [
    [0, 1],
    [build.tangDepthMm, -1],
  ] as const) {
    const left = stations.map(({ at }) => put(-half, down, at, [0, facing, 0]));
    const right = stations.map(({ at }) => put(half, down, at, [0, facing, 0]));
    for (let s = 0; s + 1 < stations.length; s++) {
      if (facing === 1) writer.quad(left[s], left[s + 1], right[s + 1], right[s]);
      else writer.quad(left[s], right[s], right[s + 1], left[s + 1]);
    }
  }
  for (const side of [-1, 1] as const) {
    const left = levels.map(({ down }) => put(-half, down, side * reach, [0, 0, side]));
    const right = levels.map(({ down }) => put(half, down, side * reach, [0, 0, side]));
    for (let l = 0; l + 1 < levels.length; l++) {
      if (side === 1) writer.quad(left[l], left[l + 1], right[l + 1], right[l]);
      else writer.quad(left[l], right[l], right[l + 1], left[l + 1]);
    }
  }
}
