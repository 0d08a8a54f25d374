/**
 * The neck without its board: a stub of the head, the shaft, the heel. One closed solid.
 *
 * The shaft is the build's: width, thickness, back profile (neck-shape.ts). What the build does not say is drawn in a usual
 * way and enters no calculation (assumed): a head that leans back by 8°, 15 mm thick, sawn off behind the nut; the heel's
 * rise drawn as a smooth curve between the same ends as the straight ramp that is calculated; a bolt-on block runs to the end
 * of the board; a set heel ends 10 mm into the body with a tenon behind it.
 */
import type { Build } from '../neck/build.ts';
import { boardEndMm, boardWidthMm, bodyJointMm, totalThicknessMm } from '../neck/neck-shape.ts';
import { type LoftSection, type SectionAt, writeFace, writeSkin, writeStep } from './loft.ts';
import { createMeshWriter, type Mesh } from './mesh.ts';
import { NUT_THICKNESS_MM } from './nut.ts';

export const HEAD_STUB_MM = 78;
const HEAD_SLOPE = Math.tan((8 * Math.PI) / 180);
const HEAD_THICKNESS_MM = 15;
const SET_HEEL_INTO_BODY_MM = 10;
const STEP_MM = 8;

function smooth(from: number, to: number, x: number): number {
  const t = Math.min(1, Math.max(0, (x - from) / (to - from)));
  return t * t * t * (10 + t * (6 * t - 15));
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;

/** The shaft, from the nut to the joint; before the nut it runs on as at the nut. */
function shaft(build: Build, x: number): LoftSection {
  const joint = bodyJointMm(build);
  const along = Math.min(Math.max(x, 0), joint);
  return {
    topMm: -build.boardThicknessMm,
    widthMm: boardWidthMm(build, Math.max(x, 0)),
    shoulderMm: build.backShoulderMm,
    depthMm: totalThicknessMm(build, along) - build.boardThicknessMm,
    exponent: build.backExponent,
  };
}

/** The head behind the nut. */
function headSection(build: Build, x: number): LoftSection {
  const base = shaft(build, 0);
  const behind = Math.max(0, -NUT_THICKNESS_MM - x);
  const top = base.topMm - HEAD_SLOPE * (behind < 6 ? (behind * behind) / 12 : behind - 3);
  const square = smooth(-8, -46, x);
  const spread = smooth(-14, -70, x);
  const bottom = mix(base.topMm - base.depthMm, top - HEAD_THICKNESS_MM, smooth(0, -40, x));
  const depth = top - bottom;
  return {
    topMm: top,
    widthMm: base.widthMm * mix(1, 1.42, spread),
    shoulderMm: mix(base.shoulderMm, depth * 0.8, square),
    depthMm: depth,
    exponent: mix(base.exponent, 3.2, square),
  };
}

/** The bolt-on block: the back squares off and deepens; constant from the joint on. */
function blockSection(build: Build, x: number): LoftSection {
  const base = shaft(build, x);
  const joint = bodyJointMm(build);
  const share = smooth(joint - build.heelLengthMm, joint, x);
  const square = smooth(joint - build.heelLengthMm * 1.6 - 10, joint - build.heelLengthMm * 0.1, x);
  const depth = base.depthMm + build.heelThicknessMm * share;
  return {
    ...base,
    depthMm: depth,
    shoulderMm: mix(base.shoulderMm, Math.max(base.shoulderMm, depth - 4), square),
    exponent: mix(base.exponent, 2.6, square),
  };
}

/** The set heel: it deepens in a hollow curve and narrows towards its cap. */
function setSection(build: Build, x: number): LoftSection {
  const base = shaft(build, x);
  const joint = bodyJointMm(build);
  const t = Math.min(1, Math.max(0, (x - (joint - build.heelLengthMm)) / build.heelLengthMm));
  // A quarter of an ellipse: level where it leaves the shaft, steep at the cap.
  const share = 1 - Math.sqrt(Math.max(0, 1 - (t * t * (3 - 2 * t)) ** 2 * 0.96));
  const depth = base.depthMm + build.heelThicknessMm * Math.min(1, share / (1 - Math.sqrt(0.04)));
  return {
    ...base,
    depthMm: depth,
    shoulderMm: base.shoulderMm,
    exponent: mix(base.exponent, Math.min(base.exponent, 1.75), smooth(joint - build.heelLengthMm, joint, x)),
  };
}

function tenonSection(build: Build, x: number): LoftSection {
  const base = shaft(build, x);
  // Half as wide and 0.6 as deep lies inside the heel's outline for every exponent from 1.4 up.
  const heel = base.depthMm + build.heelThicknessMm;
  const depth = base.shoulderMm + 0.6 * (heel - base.shoulderMm);
  return { ...base, widthMm: base.widthMm * 0.5, depthMm: depth, shoulderMm: depth - 1.5, exponent: 2.4 };
}

/** Columns from `from` to `to`, at most `step` apart, both ends included. */
function columns(from: number, to: number, step: number): number[] {
  const count = Math.max(1, Math.ceil((to - from) / step));
  return Array.from({ length: count + 1 }, (_, index) => (index === count ? to : from + ((to - from) * index) / count));
}

function joined(...runs: number[][]): number[] {
  return runs.flatMap((run, index) => (index === 0 ? run : run.slice(1)));
}

/** The neck of the build. */
export function neckMesh(build: Build): Mesh {
  const writer = createMeshWriter();
  const joint = bodyJointMm(build);
  const end = boardEndMm(build);
  const heelBegins = Math.max(60, joint - build.heelLengthMm * 1.6 - 10);
  const heelStep = Math.min(2.5, build.heelLengthMm / 14);
  const heel = build.heelStyle === 'set' ? setSection : blockSection;
  const at: SectionAt = (x) => (x < 0 ? headSection(build, x) : heel(build, x));
  const toHeel = joined(columns(-HEAD_STUB_MM, -40, 4), columns(-40, 0, 2.5), columns(0, heelBegins, STEP_MM));
  writeFace(writer, -HEAD_STUB_MM, at(-HEAD_STUB_MM), -1);
  if (build.heelStyle === 'block') {
    writeSkin(writer, at, joined(toHeel, columns(heelBegins, joint, heelStep), columns(joint, end, STEP_MM)));
    writeFace(writer, end, at(end), 1);
  } else {
    const cap = Math.min(joint + SET_HEEL_INTO_BODY_MM, mix(joint, end, 0.5));
    const tenon: SectionAt = (x) => tenonSection(build, x);
    writeSkin(writer, at, joined(toHeel, columns(heelBegins, joint, heelStep), columns(joint, cap, STEP_MM)));
    writeStep(writer, cap, at(cap), tenon(cap));
    writeSkin(writer, tenon, columns(cap, end - 2, STEP_MM));
    writeFace(writer, end - 2, tenon(end - 2), 1);
  }
  return writer.finish();
}
