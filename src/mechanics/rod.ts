/**
 * The rod: what it can do, and its load on the neck.
 *
 *   pull limit   P ≤ torque/(K·d), K = 0.2 (from memory; nut and thread dry or lightly oiled), and P ≤ 0.75 × proof load
 *   proof load   ISO 898-1: M5 4.8 4 400 N, 8.8 8 230 N; M6 6 230, 11 600 N
 *   two-way      a couple P·a between its ends, a = distance of its bars; no thrust
 *   one-way      a bar under pull P on a curve: thrust P at its anchors and a push up along its middle; it can only bend
 *                the neck backwards
 *   turns        [n·P·L/(E·A) + W/P]/pitch from where the nut is snug: P·L/(E·A) the stretch of a bar, n = 1 of a one-way
 *                rod, 2 of a two-way rod, whose other bar is pushed as hard; W the work of the rod's loads in the wood's
 *                displacements, so that W/P is how far the wood lets the anchors come together (two-way: lets one bar slide
 *                past the other)
 *   torque       K·d·P, and its limit as above
 *
 * Assumed: the bar is as thick as its thread's stress area all along; ISO 261 coarse pitch (M5 0.8, M6 1 mm), one thread
 * with its nut, so that a turn moves it by one pitch; right-handed, and clockwise as whoever holds the wrench sees it
 * tightens, which bends a neck with a two-way rod backwards (common practice, no source). Washers and play are left out.
 *
 * Two rods are set alike: limits, turns and torque are those of either, their loads are both.
 *
 * Setting 0 … 100 % of the limit bends backwards; a two-way rod also −100 … 0 %. The bar's own stiffness is left out.
 */
import type { Build } from '../neck/build.ts';
import type { Method, Prediction, RodPrediction } from './prediction-types.ts';
import type { Combination } from './influence.ts';
import type { Section } from './elements/section.ts';

const PROOF_LOAD_N = { M5: { '4.8': 4400, '8.8': 8230 }, M6: { '4.8': 6230, '8.8': 11600 } } as const;
const DIAMETER_MM = { M5: 5, M6: 6 } as const;
/** ISO 261, coarse. */
const PITCH_MM = { M5: 0.8, M6: 1 } as const;
/** Tensile stress area, ISO 898-1, mm². */
const STRESS_AREA_MM2 = { M5: 14.2, M6: 20.1 } as const;
const NUT_FACTOR = 0.2;
const SAFE_SHARE = 0.75;
const STEEL_MPA = 205_000;

export function proofLoadN(thread: keyof typeof PROOF_LOAD_N, strengthClass: '4.8' | '8.8'): number {
  return PROOF_LOAD_N[thread][strengthClass];
}

type RodBuild = Pick<
  Build,
  | 'rodKind'
  | 'rodCount'
  | 'rodThread'
  | 'rodClass'
  | 'wrenchTorqueNm'
  | 'rodStartMm'
  | 'rodEndMm'
  | 'rodSpacingMm'
  | 'rodCurveMm'
>;

export function predictRod(build: RodBuild): RodPrediction {
  if (build.rodKind === 'none') {
    return { kind: 'none', limitN: 0, limitedBy: 'none', leastPercent: 0, mostPercent: 0, torqueAtLimitNm: 0 };
  }
  const byWrench = (1000 * build.wrenchTorqueNm) / (NUT_FACTOR * DIAMETER_MM[build.rodThread]);
  const byProof = SAFE_SHARE * proofLoadN(build.rodThread, build.rodClass);
  const limitN = Math.min(byWrench, byProof);
  const oneWay = build.rodKind === 'one-way';
  return {
    kind: build.rodKind,
    limitN,
    limitedBy: byWrench < byProof ? 'wrench' : 'thread',
    leastPercent: oneWay ? 0 : -100,
    mostPercent: 100,
    torqueAtLimitNm: (limitN * NUT_FACTOR * DIAMETER_MM[build.rodThread]) / 1000,
  };
}

/**
 * Turns of the nut from snug to the limit; 0 without a rod.
 * @param workNmm of the loads of all rods at their limit in the displacements that they cause in the wood
 * @param pitchMm of the thread; what the thread's ISO coarse pitch is, unless measured
 */
export function turnsAtLimit(
  build: RodBuild,
  { kind, limitN }: Pick<RodPrediction, 'kind' | 'limitN'>,
  workNmm: number,
  pitchMm: number = PITCH_MM[build.rodThread],
): number {
  if (kind === 'none' || limitN === 0) return 0;
  const stretchMm = (limitN * (build.rodEndMm - build.rodStartMm)) / (STEEL_MPA * STRESS_AREA_MM2[build.rodThread]);
  return ((kind === 'two-way' ? 2 : 1) * stretchMm + workNmm / (build.rodCount * limitN)) / pitchMm;
}

/** A setting of the rod as what a hand does with the nut. */
export interface NutTurn {
  /** Per cent of the range; plus tightens a one-way rod, and bends a neck with a two-way rod backwards. */
  readonly percent: number;
  /** From where the nut is snug; no less than 0. */
  readonly turns: number;
  /** As whoever holds the wrench sees it. */
  readonly way: 'clockwise' | 'anticlockwise' | 'none';
  /** What the wrench feels there, and what it feels at the limit. */
  readonly torqueNm: number;
  readonly torqueAtLimitNm: number;
}

/** What to do with the nut for a setting of the rod. */
export function nutTurn(prediction: Pick<Prediction, 'rod' | 'methods'>, method: Method, percent: number): NutTurn {
  const share = Math.abs(percent) / 100;
  const { torqueAtLimitNm } = prediction.rod;
  return {
    percent,
    turns: share * prediction.methods[method].rodTurnsAtLimit,
    way: percent > 0 ? 'clockwise' : percent < 0 ? 'anticlockwise' : 'none',
    torqueNm: share * torqueAtLimitNm,
    torqueAtLimitNm,
  };
}

/** The load of the rods at their limit, as a combination of load cases. */
export function rodCases(build: RodBuild, rod: RodPrediction, section: Section): NonNullable<Combination['cases']> {
  if (rod.kind === 'none') return {};
  const allN = build.rodCount * rod.limitN;
  if (rod.kind === 'two-way') return { rodCouple: allN * build.rodSpacingMm };
  // The middle of the bar lies on the channel's floor; its anchors lie higher by the curve.
  const middleMm = (build.rodStartMm + build.rodEndMm) / 2;
  const deepest = section.channelFloorMm(middleMm) - DIAMETER_MM[build.rodThread] / 2;
  const anchorMm = deepest - build.rodCurveMm;
  return { rodPull: allN, rodCouple: allN * anchorMm, rodCurve: allN * build.rodCurveMm };
}
