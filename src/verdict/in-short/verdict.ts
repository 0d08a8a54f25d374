/**
 * The verdict on a build: what to saw, how to seat, what to nip, what to expect and how sure, what the rod then does, and
 * before all of that why it cannot come out as wanted, where it cannot. Every number is one that the figures, the plan or
 * `predict` have as well.
 */
import type { Check } from '../../fretwork/checks/check-types.ts';
import { madeEnds } from '../../fretwork/ends.ts';
import { isWithinReach, type RodAnswer } from '../../mechanics/inversion/rod.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import type { UncertainInput } from '../../mechanics/uncertainty/inputs.ts';
import type { Uncertainty } from '../../mechanics/uncertainty/types.ts';
import type { Build } from '../../neck/build.ts';
import { filedQuantity } from '../../neck/quantities.ts';
import { workingKerfMm } from '../../neck/kerf.ts';
import { checksOf } from '../checks.ts';
import { meanOfFrets, rodForTarget } from '../job-figures.ts';
import type { Reckoned } from '../reckoned.ts';
import { actionMmOf } from '../string-aim.ts';
import { stringRoom, type Hand } from '../string-room.ts';

/** Why a neck cannot come out as wanted: what a check stops, or what the rod does not reach. */
export type Obstacle =
  { readonly kind: 'check'; readonly check: Check } | { readonly kind: 'rod'; readonly status: RodAnswer['status'] };

export interface Verdict {
  /** Null where it can come out as wanted. */
  readonly obstacle: Obstacle | null;
  /** `isSawn` is false where the slots are there already and stay as they are. */
  readonly saw: { readonly kerfMm: number; readonly slotDepthMm: number; readonly isSawn: boolean };
  /** The force is 0 where the tang slides in by hand. */
  readonly seat: Pick<Build, 'method' | 'seatingTool'> & { readonly meanSeatingForceN: number };
  /** The least and the most of all frets, at each end of the wire. */
  readonly nip: { readonly leastMm: number; readonly mostMm: number };
  readonly expect: {
    readonly frettedMm: number;
    readonly settledMm: number;
    /** Undefined while they are being computed. */
    readonly frettedBand?: Band;
    readonly settledBand?: Band;
  };
  /** Null without a rod; the chance is that of such necks, undefined while it is being computed. */
  readonly rod: { readonly answer: RodAnswer; readonly targetMm: number; readonly chance?: number } | null;
  /** What makes most of the band of the settled neck; null where it has no width, undefined while that is not known. */
  readonly decides?: UncertainInput | null;
}

/** How the neck plays, plucked as one usually does. */
export interface Feel {
  readonly actionMm: number;
  readonly notes: number;
  /** Those that an ideal string buzzes at, as the customer's page counts them; the chart tells which a stiff one may. */
  readonly buzzing: number;
}

/** Checks that say by themselves that the relief wanted is not to be had. */
const OUT_OF_REACH: ReadonlySet<Check['code']> = new Set<Check['code']>(['no-rod']);

function obstacleOf(checks: readonly Check[], rod: RodAnswer | null): Obstacle | null {
  const check = checks.find(({ severity, code }) => severity === 'stop' || OUT_OF_REACH.has(code));
  if (check) return { kind: 'check', check };
  return rod && !isWithinReach(rod) ? { kind: 'rod', status: rod.status } : null;
}

/** @param uncertainty of the same build; null while it is not known */
export function verdictOf(reckoned: Reckoned, uncertainty: Uncertainty | null = null): Verdict {
  const { build, prediction } = reckoned;
  const { method } = build;
  const of = prediction.methods[method];
  const bands = uncertainty?.methods[method];
  const rod = build.rodKind === 'none' ? null : rodForTarget(reckoned);
  const nips = madeEnds(build).map(({ nipMm }) => filedQuantity('nipMm', nipMm));
  const kerfMm = workingKerfMm(build, method);
  return {
    obstacle: obstacleOf(checksOf(reckoned), rod),
    saw: { kerfMm, slotDepthMm: build.slotDepthMm, isSawn: build.job === 'new' || kerfMm !== build.kerfMm },
    seat: { method, seatingTool: build.seatingTool, meanSeatingForceN: meanOfFrets(of.seatingForceN) },
    nip: { leastMm: Math.min(...nips), mostMm: Math.max(...nips) },
    expect: {
      frettedMm: of.fretted.extremeMm,
      settledMm: of.settled.extremeMm,
      ...(bands ? { frettedBand: bands.fretted, settledBand: bands.settled } : {}),
    },
    rod: rod && {
      answer: rod,
      targetMm: build.targetReliefMm,
      ...(bands?.rodPercentForTarget ? { chance: bands.rodPercentForTarget.chance } : {}),
    },
    ...(bands ? { decides: bands.settled.drivers[0]?.input ?? null } : {}),
  };
}

export function feelOf(reckoned: Reckoned, hand: Hand): Feel {
  const { notes, buzzing } = stringRoom(reckoned, hand);
  return { actionMm: actionMmOf(reckoned.build), notes, buzzing };
}
