/** Checks that need numbers of the mechanics: strings, rod, levelling. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { mostChannelMm } from '../../neck/neck-shape.ts';
import { atLeast, atMost, check, type Basis } from './check-making.ts';
import type { Check } from './check-types.ts';
import type { FretEnd } from '../ends.ts';
import { crownBudget } from '../levelling.ts';
import * as limits from './limits.ts';

export interface CheckNumbers {
  /** Stress over least strength of each string, from the highest; above 1 it breaks. */
  readonly stringStressRatios?: readonly number[];
  /** Modulus along the grain of the blanks that were measured, GPa. */
  readonly blankModulusGPa?: { readonly neck?: number; readonly board?: number };
  /** Relief strung and settled, mm: with the rod slack, and at both ends of its range (the same thrice without a rod). */
  readonly rod?: {
    readonly slackReliefMm: number;
    readonly leastReliefMm: number;
    readonly mostReliefMm: number;
  };
  /** Relief of every fret's top in the state in which the frets are levelled, mm, and the line to level to. */
  readonly levelling?: {
    readonly reliefMm: readonly number[];
    readonly targetReliefMm?: readonly number[];
  };
}

const PREDICTION: Basis = { source: say`this prediction`, mark: 'calc' };

export function stringChecks({ stringStressRatios }: CheckNumbers): Check[] {
  const worst = Math.max(0, ...(stringStressRatios ?? []));
  if (worst <= limits.MOST_STRING_STRESS) return [];
  const measure = atMost(limits.MOST_STRING_STRESS * 100, worst * 100, '%', 0);
  const basis: Basis = { source: say`ASTM A228 least tensile strengths; margin: common practice`, mark: 'practice' };
  return [
    check('string-near-breaking', worst >= 1 ? 'stop' : 'warn', 'strings', measure, basis, {
      reason: say`A string is tuned close to the strength of its wire: it breaks at a bend or at the bridge, and whips.`,
      remedy: say`Tune it lower, shorten the scale, or take another construction. A thinner plain string carries the same stress.`,
    }),
  ];
}

/** A blank was measured, but no wood has such a stiffness: a slip in its size, mass, frequency or deflection. */
export function blankChecks({ blankModulusGPa }: CheckNumbers): Check[] {
  const basis: Basis = {
    source: say`range of the woods in the table (Wood Handbook, Tropix), with a margin of about a half`,
    mark: 'calc',
  };
  return (['neck', 'board'] as const).flatMap((part) => {
    const modulus = blankModulusGPa?.[part];
    if (modulus === undefined) return [];
    const { least, most } = limits.WOOD_MODULUS_GPA;
    if (modulus >= least && modulus <= most) return [];
    const measure = modulus < least ? atLeast(least, modulus, 'GPa', 1) : atMost(most, modulus, 'GPa', 1);
    return [
      check('blank-implausible', 'stop', `${part}BlankTest`, measure, basis, {
        reason:
          part === 'neck'
            ? say`The measurements of the neck blank give a stiffness that no wood has, and the prediction is built on it.`
            : say`The measurements of the board blank give a stiffness that no wood has, and the prediction is built on it.`,
        remedy: say`Measure again: length, width, thickness, and mass with frequency or load with span and deflection.`,
      }),
    ];
  });
}

function withoutRod(build: Build, reliefMm: number): Check[] {
  const target = build.targetReliefMm;
  if (Math.abs(reliefMm - target) <= limits.RELIEF_TOLERANCE_MM) return [];
  const measure = reliefMm > target ? atMost(target, reliefMm) : atLeast(target, reliefMm);
  return [
    check('no-rod', 'warn', 'rodKind', measure, PREDICTION, {
      reason: say`The neck does not settle at the relief that is wanted, and there is no rod to bring it there.`,
      remedy: say`Change kerf or way of seating, plane the difference into the board before fretting, or build a rod in.`,
    }),
  ];
}

function rodReachChecks(build: Build, { rod }: CheckNumbers): Check[] {
  if (!rod) return [];
  const slack = rod.slackReliefMm;
  if (build.rodKind === 'none') return withoutRod(build, slack);
  const target = build.targetReliefMm;
  const least = Math.min(rod.leastReliefMm, rod.mostReliefMm, slack);
  const most = Math.max(rod.leastReliefMm, rod.mostReliefMm, slack);
  if (most < target - limits.RELIEF_TOLERANCE_MM) {
    return [
      check('back-bow-no-rod', 'stop', 'kerfMm', atLeast(target, most), PREDICTION, {
        reason:
          build.rodKind === 'one-way' && most <= slack
            ? say`The neck stays too far back even with the rod slack. A one-way rod only bends it further back: no turn of the nut can remove this.`
            : build.rodKind === 'one-way'
              ? say`The neck stays too far back even with the rod as tight as it may be. It pulls above the middle of this neck’s wood and bends it forward, but only a little.`
              : say`The neck stays too far back even with the rod pushing as hard as it may.`,
        remedy: say`Widen the kerf or seat as a glue fit, plane the difference into the board before fretting, take heavier strings, or a two-way rod.`,
      }),
    ];
  }
  if (least > target + limits.RELIEF_TOLERANCE_MM) {
    return [
      check('forward-bow-no-rod', 'stop', 'wrenchTorqueNm', atMost(target, least), PREDICTION, {
        reason:
          build.rodKind === 'one-way' && least >= slack
            ? say`The strings pull the neck too far forward, and a one-way rod cannot pull this neck back: it pulls above the middle of its wood. Forcing the nut breaks the rod.`
            : say`The strings pull the neck further forward than the rod may pull it back. Forcing the nut breaks the rod.`,
        remedy: say`A stronger rod, stiff bars, a thicker or stiffer neck, lighter strings, or frets that wedge more.`,
      }),
    ];
  }
  const range = target < slack ? slack - least : most - slack;
  const needed = range === 0 ? 0 : (100 * Math.abs(slack - target)) / range;
  if (needed <= limits.MOST_ROD_PERCENT) return [];
  const measure = atMost(limits.MOST_ROD_PERCENT, Math.min(100, needed), '%', 0);
  const basis: Basis = { source: say`this prediction; margin: common practice`, mark: 'practice' };
  return [
    check('rod-near-limit', 'warn', 'rodSettingPercent', measure, basis, {
      reason: say`Nearly the whole range of the rod is spent on frets and strings; nothing is left for the seasons.`,
      remedy: say`Change kerf or way of seating, or stiffen the neck, so that the rod works in its middle.`,
    }),
  ];
}

/** A one-way rod is built in to pull the neck back; above the middle of the wood it does the opposite. */
function rodPlaceChecks(build: Build, { rod }: CheckNumbers): Check[] {
  if (build.rodKind !== 'one-way' || !rod) return [];
  const tightMm = Math.max(rod.leastReliefMm, rod.mostReliefMm);
  if (tightMm <= rod.slackReliefMm) return [];
  return [
    check('rod-lies-high', 'warn', 'channelDepthMm', atMost(rod.slackReliefMm, tightMm), PREDICTION, {
      reason: say`The rod lies above the middle of this neck’s wood: tightening it bends the neck forward, not back.`,
      remedy: say`A deeper channel, more curve, or a two-way rod.`,
    }),
  ];
}

function channelChecks(build: Build): Check[] {
  if (build.rodKind === 'none' || build.channelWidthMm === 0) return [];
  // Deeper than the limit all along the rod: the value as it was given counts nowhere.
  const mostMm = Math.max(mostChannelMm(build, build.rodStartMm), mostChannelMm(build, build.rodEndMm));
  if (build.channelDepthMm <= mostMm) return [];
  const basis: Basis = { source: say`assumption of the program; no source`, mark: 'practice' };
  return [
    check('channel-too-deep', 'warn', 'channelDepthMm', atMost(mostMm, build.channelDepthMm), basis, {
      reason: say`So deep a channel would leave too little wood behind the rod. Numbers and picture take it no deeper than the limit, and less where the neck is thinner.`,
      remedy: say`Rout shallower, or make the neck thicker.`,
    }),
  ];
}

export function rodChecks(build: Build, numbers: CheckNumbers): Check[] {
  return [...rodReachChecks(build, numbers), ...rodPlaceChecks(build, numbers), ...channelChecks(build)];
}

export function crownChecks(build: Build, ends: readonly FretEnd[], { levelling }: CheckNumbers): Check[] {
  if (!levelling) return [];
  const x = ends.map((end) => end.xMm);
  const rows = crownBudget(build, x, levelling.reliefMm, levelling.targetReliefMm);
  const basis: Basis = { source: say`levelling budget`, mark: 'calc' };
  const report = (
    code: 'crown-too-low' | 'last-levelling',
    bad: typeof rows,
    words: Pick<Check, 'reason' | 'remedy'>,
  ): Check[] => {
    if (bad.length === 0) return [];
    const measure = atLeast(build.leastCrownMm, Math.min(...bad.map((row) => row.crownLeftMm)));
    const frets = bad.map((row) => row.fret);
    return [check(code, code === 'crown-too-low' ? 'stop' : 'warn', 'crownHeightMm', measure, basis, words, frets)];
  };
  const tooLow = report(
    'crown-too-low',
    rows.filter((row) => row.crownLeftMm < build.leastCrownMm),
    {
      reason: say`Levelling would take these crowns below the least height that plays well.`,
      remedy: say`Take the bow out before levelling (kerf, seating, rod, plane), or take wire with a higher crown.`,
    },
  );
  if (tooLow.length > 0) return tooLow;
  return report(
    'last-levelling',
    rows.filter((row) => row.levellingsLeft < 1),
    {
      reason: say`After levelling, these crowns cannot be levelled again.`,
      remedy: say`Take the bow out before levelling, or take wire with a higher crown.`,
    },
  );
}
