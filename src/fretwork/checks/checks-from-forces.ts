/** Checks that need numbers of the mechanics: strings, rod, levelling. */
import type { Build } from '../../neck/build.ts';
import { glueStiffness } from '../../neck/glues.ts';
import { mostChannelMm } from '../../neck/neck-shape.ts';
import { basedOn } from '../facts.ts';
import { above, atLeast, atMost, below, check, GEOMETRY } from './check-making.ts';
import type { Check } from './check-types.ts';
import type { FretEnd } from '../ends.ts';
import { crownBudget, LATER_LEVELLING_MM } from '../levelling.ts';
import * as limits from './limits.ts';

/** What the numbers of a measured blank give, and what its species has, GPa. */
export interface BlankModulus {
  readonly measured: number;
  readonly species: number;
}

export interface CheckNumbers {
  /** Stress over least strength of each string, from the highest; above 1 it breaks. */
  readonly stringStressRatios?: readonly number[];
  /** Modulus along the grain of the blanks that were measured and of their species, GPa. */
  readonly blankModulusGPa?: { readonly neck?: BlankModulus; readonly board?: BlankModulus };
  /** Relief strung and settled, mm: with the rod slack, and at both ends of its range (the same thrice without a rod). */
  readonly rod?: {
    readonly slackReliefMm: number;
    /** Setting for the relief wanted, or the nearest to it, per cent of the range. */
    readonly neededPercent: number;
    readonly leastReliefMm: number;
    readonly mostReliefMm: number;
  };
  /** Where a tang's body is wider than its kerf, by the build's way of seating; lists have one number for each fret. */
  readonly body?: {
    /** Relief with the frets in, and what it would be if the studs alone held them, mm. */
    readonly frettedReliefMm: number;
    readonly withoutBodyReliefMm: number;
    readonly seatingForceN: readonly number[];
    /** Shear in the wood beside the slot over its strength, per cent. */
    readonly wallShearPercent: readonly number[];
  };
  /** How much more a neck with glue in its slots gives under the strings than with unsawn ones, per cent. */
  readonly gluedGivePercent?: number;
  /** A board that is glued on with its frets in: its hump on the bench, mm, and the pressure that holds it flat, MPa. */
  readonly frettedBoard?: { readonly freeBowMm: number; readonly clampPressureMPa: number };
  /** Relief of every fret's top in the state in which the frets are levelled, mm, and the line to level to. */
  readonly levelling?: {
    readonly reliefMm: readonly number[];
    readonly targetReliefMm?: readonly number[];
  };
}

const PREDICTION = basedOn('prediction');

export function stringChecks({ stringStressRatios }: CheckNumbers): Check[] {
  const worst = Math.max(0, ...(stringStressRatios ?? []));
  if (!above(worst, limits.MOST_STRING_STRESS)) return [];
  const measure = atMost('stringStressPercent', limits.MOST_STRING_STRESS * 100, worst * 100);
  const severity = worst >= 1 ? 'stop' : 'warn';
  return [check('string-near-breaking', severity, 'strings', measure, basedOn('wire-strength'))];
}

/** A fretted board that clamps do not hold flat is glued on with a bow of its own. */
export function clampChecks({ frettedBoard }: CheckNumbers): Check[] {
  if (!frettedBoard || !above(frettedBoard.clampPressureMPa, limits.USUAL_CLAMPING_MPA)) return [];
  const measure = atMost('clampPressureMPa', limits.USUAL_CLAMPING_MPA, frettedBoard.clampPressureMPa);
  return [check('clamps-too-weak', 'warn', 'workOrder', measure, PREDICTION)];
}

/** Glue that fills a slot and gives as the wood would not: the neck stays as bendy as it was sawn. */
export function glueChecks(build: Build, { gluedGivePercent }: CheckNumbers): Check[] {
  if (gluedGivePercent === undefined || !above(gluedGivePercent, limits.MOST_GLUED_GIVE_PERCENT)) return [];
  const measure = atMost('extraFlexibilityPercent', limits.MOST_GLUED_GIVE_PERCENT, gluedGivePercent);
  const isSoft = glueStiffness(build).modulusMPa < limits.SOFT_GLUE_MPA;
  if (!isSoft) return [];
  return [check('soft-glue', 'note', 'glueKind', measure, PREDICTION, { about: [build.glueKind] })];
}

function withoutRod(build: Build, reliefMm: number): Check[] {
  const target = build.targetReliefMm;
  if (!above(Math.abs(reliefMm - target), limits.RELIEF_TOLERANCE_MM)) return [];
  const measure =
    reliefMm > target ? atMost('settledReliefMm', target, reliefMm) : atLeast('settledReliefMm', target, reliefMm);
  return [check('no-rod', 'warn', 'rodKind', measure, PREDICTION)];
}

function backBow(build: Build, slackMm: number, mostMm: number): Check {
  const variant = build.rodKind !== 'one-way' ? 'pushing' : mostMm <= slackMm ? 'slack' : 'high';
  const measure = atLeast('rodReachReliefMm', build.targetReliefMm, mostMm);
  return check('back-bow-no-rod', 'stop', 'kerfMm', measure, PREDICTION, { variant });
}

function forwardBow(build: Build, slackMm: number, leastMm: number): Check {
  const variant = build.rodKind === 'one-way' && leastMm >= slackMm ? 'high' : 'pulling';
  const measure = atMost('rodReachReliefMm', build.targetReliefMm, leastMm);
  return check('forward-bow-no-rod', 'stop', 'wrenchTorqueNm', measure, PREDICTION, { variant });
}

function rodReachChecks(build: Build, { rod }: CheckNumbers): Check[] {
  if (!rod) return [];
  const slack = rod.slackReliefMm;
  if (build.rodKind === 'none') return withoutRod(build, slack);
  const target = build.targetReliefMm;
  const least = Math.min(rod.leastReliefMm, rod.mostReliefMm, slack);
  const most = Math.max(rod.leastReliefMm, rod.mostReliefMm, slack);
  if (below(most, target - limits.RELIEF_TOLERANCE_MM)) return [backBow(build, slack, most)];
  if (above(least, target + limits.RELIEF_TOLERANCE_MM)) return [forwardBow(build, slack, least)];
  const needed = Math.abs(rod.neededPercent);
  if (!above(needed, limits.MOST_ROD_PERCENT)) return [];
  const measure = atMost('rodRangePercent', limits.MOST_ROD_PERCENT, needed);
  return [check('rod-near-limit', 'warn', 'rodSettingPercent', measure, basedOn('prediction-and-margin'))];
}

/** A one-way rod is built in to pull the neck back; above the middle of the wood it does the opposite. */
function rodPlaceChecks(build: Build, { rod }: CheckNumbers): Check[] {
  if (build.rodKind !== 'one-way' || !rod) return [];
  const tightMm = Math.max(rod.leastReliefMm, rod.mostReliefMm);
  if (!above(tightMm, rod.slackReliefMm)) return [];
  const measure = atMost('rodTightReliefMm', rod.slackReliefMm, tightMm);
  return [check('rod-lies-high', 'warn', 'channelDepthMm', measure, PREDICTION)];
}

/** Nominal diameters of the threads, ISO 261: a rod is nowhere thinner. */
const THREAD_MM: Readonly<Record<Build['rodThread'], number>> = { M5: 5, M6: 6 };

function channelChecks(build: Build): Check[] {
  if (build.rodKind === 'none') return [];
  const leastMm = THREAD_MM[build.rodThread];
  const narrow = (['channelWidthMm', 'channelDepthMm'] as const).find((id) => below(build[id], leastMm));
  if (narrow) return [check('rod-without-room', 'stop', narrow, atLeast(narrow, leastMm, build[narrow]), GEOMETRY)];
  // Deeper than the limit all along the rod: of a tapering one the value as it was given counts nowhere.
  const mostMm = Math.max(mostChannelMm(build, build.rodStartMm), mostChannelMm(build, build.rodEndMm));
  if (!above(build.channelDepthMm, mostMm)) return [];
  const measure = atMost('channelDepthMm', mostMm, build.channelDepthMm);
  const variant = build.channelCut === 'straight' ? 'thin' : 'capped';
  return [check('channel-too-deep', 'warn', 'channelDepthMm', measure, basedOn('assumption'), { variant })];
}

export function rodChecks(build: Build, numbers: CheckNumbers): Check[] {
  return [...rodReachChecks(build, numbers), ...rodPlaceChecks(build, numbers), ...channelChecks(build)];
}

/** What a crown must be now: high enough to play, and, if it is to be levelled once more, by what that takes. */
export function crownChecks(build: Build, ends: readonly FretEnd[], { levelling }: CheckNumbers): Check[] {
  if (!levelling) return [];
  const x = ends.map((end) => end.xMm);
  const rows = crownBudget(build, x, levelling.reliefMm, levelling.targetReliefMm);
  const report = (code: 'crown-too-low' | 'last-levelling', leastMm: number): Check[] => {
    const bad = rows.filter((row) => below(row.crownLeftMm, leastMm));
    if (bad.length === 0) return [];
    const measure = atLeast('crownLeftMm', leastMm, Math.min(...bad.map((row) => row.crownLeftMm)));
    const frets = bad.map((row) => row.fret);
    const severity = code === 'crown-too-low' ? 'stop' : 'warn';
    return [check(code, severity, 'crownHeightMm', measure, basedOn('levelling-budget'), { frets })];
  };
  const tooLow = report('crown-too-low', build.leastCrownMm);
  return tooLow.length > 0 ? tooLow : report('last-levelling', build.leastCrownMm + LATER_LEVELLING_MM);
}
