/**
 * The rod: what it can do, and its load on the neck.
 *
 *   pull limit   P ≤ torque/(K·d), K = 0.2 (from memory; nut and thread dry or lightly oiled), and P ≤ 0.75 × proof load
 *   proof load   ISO 898-1: M5 4.8 4 400 N, 8.8 8 230 N; M6 6 230, 11 600 N
 *   two-way      a couple P·a between its ends, a = distance of its bars; no thrust
 *   one-way      a bar under pull P on a curve: thrust P at its anchors and a push up along its middle; it can only bend
 *                the neck backwards
 *   turns        (stretch of the rod P·L/(E·A))/pitch of the thread: one-way only, wood taken as rigid (a lower limit)
 *
 * Setting 0 … 100 % of the limit bends backwards; a two-way rod also −100 … 0 %. The bar's own stiffness is left out.
 */
import type { Build } from '../neck/build.ts';
import type { RodPrediction } from './prediction-types.ts';
import type { Combination } from './influence.ts';
import type { Section } from './elements/section.ts';

const PROOF_LOAD_N = { M5: { '4.8': 4400, '8.8': 8230 }, M6: { '4.8': 6230, '8.8': 11600 } } as const;
const DIAMETER_MM = { M5: 5, M6: 6 } as const;
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
  'rodKind' | 'rodThread' | 'rodClass' | 'wrenchTorqueNm' | 'rodStartMm' | 'rodEndMm' | 'rodSpacingMm' | 'rodCurveMm'
>;

export function predictRod(build: RodBuild): RodPrediction {
  if (build.rodKind === 'none') {
    return { kind: 'none', limitN: 0, limitedBy: 'none', leastPercent: 0, mostPercent: 0, turnsAtLimit: null };
  }
  const byWrench = (1000 * build.wrenchTorqueNm) / (NUT_FACTOR * DIAMETER_MM[build.rodThread]);
  const byProof = SAFE_SHARE * proofLoadN(build.rodThread, build.rodClass);
  const limitN = Math.min(byWrench, byProof);
  const oneWay = build.rodKind === 'one-way';
  const stretchMm = (limitN * (build.rodEndMm - build.rodStartMm)) / (STEEL_MPA * STRESS_AREA_MM2[build.rodThread]);
  return {
    kind: build.rodKind,
    limitN,
    limitedBy: byWrench < byProof ? 'wrench' : 'thread',
    leastPercent: oneWay ? 0 : -100,
    mostPercent: 100,
    turnsAtLimit: oneWay ? stretchMm / PITCH_MM[build.rodThread] : null,
  };
}

/** The rod's load at its limit, as a combination of load cases. */
export function rodCases(build: RodBuild, rod: RodPrediction, section: Section): NonNullable<Combination['cases']> {
  if (rod.kind === 'none') return {};
  if (rod.kind === 'two-way') return { rodCouple: rod.limitN * build.rodSpacingMm };
  // The middle of the bar lies on the channel's floor; its anchors lie higher by the curve.
  const middleMm = (build.rodStartMm + build.rodEndMm) / 2;
  const deepest = section.channelFloorMm(middleMm) - DIAMETER_MM[build.rodThread] / 2;
  const anchorMm = deepest - build.rodCurveMm;
  return { rodPull: rod.limitN, rodCouple: rod.limitN * anchorMm, rodCurve: rod.limitN * build.rodCurveMm };
}
