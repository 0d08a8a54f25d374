/** The whole fretwork plan of a build as plain data: what sheet, tables, template and picture read. */
import type { Build } from '../../neck/build.ts';
import { glueById, glueStiffness, type Glue as GlueRecipe } from '../../neck/glues.ts';
import { bendFor, fretBends, type Bend, type FretBend } from '../bending.ts';
import { cautionsFor, type Caution } from '../checks/cautions.ts';
import type { Check } from '../checks/check-types.ts';
import { checkFretwork } from '../checks/checks.ts';
import type { CheckNumbers } from '../checks/checks-from-forces.ts';
import { fretEnds, madeEnds, type FretEnd } from '../ends.ts';
import { glueNeeded, type Glue } from '../glue.ts';
import { crownBudget, type CrownBudget } from '../levelling.ts';
import { compareMetals, tightestRadiusMm, type MetalRow } from './metal-comparison.ts';
import { seatingPlan, type SeatingNumbers, type SeatingPlan } from './seating-plan.ts';
import { slots, type Slot } from '../slots.ts';
import { fretworkSteps, type Step } from './steps.ts';
import { wireOrder, wirePieces, type WireOrder, type WirePiece } from '../wire.ts';

/** What one strength of playing makes of the neck as it is set up. */
export interface PlayedRow {
  readonly strength: 'soft' | 'medium' | 'hard' | 'own';
  readonly forceN: number;
  /** Of the note with the least room. Strings and frets count from 1; 0 is an open string. */
  readonly roomMm: number;
  readonly string: number;
  readonly frettedAt: number;
  readonly touchedFret: number;
  readonly notesBuzzing: number;
  readonly notesMayBuzz: number;
  readonly lowestActionMm: number;
}

/** What is set under one string, and measured on it. */
export interface SetUpRow {
  /** 1 = the highest. */
  readonly string: number;
  readonly actionMm: number;
  readonly reliefMm: number;
  readonly nutOverFret1Mm: number;
  readonly saddleOverFretsMm: number;
}

/** Numbers of the mechanics, each optional: what depends on one that is missing is left out. */
export interface PlanNumbers extends CheckNumbers {
  readonly seating?: SeatingNumbers;
  readonly playing?: readonly PlayedRow[];
  readonly setUp?: readonly SetUpRow[];
}

export interface FretworkPlan {
  readonly ends: readonly FretEnd[];
  readonly slots: readonly Slot[];
  readonly wire: readonly WirePiece[];
  readonly order: WireOrder;
  /** The bend for all frets, over the tightest radius of the board, and for each fret by itself. */
  readonly bend: Bend;
  readonly bends: readonly FretBend[];
  readonly glue: Glue;
  /** Undefined for a press fit. */
  readonly glueRecipe?: GlueRecipe;
  readonly seating: SeatingPlan;
  readonly steps: readonly Step[];
  readonly cautions: readonly Caution[];
  readonly metals: readonly MetalRow[];
  readonly levelling?: readonly CrownBudget[];
  readonly playing?: readonly PlayedRow[];
  readonly setUp?: readonly SetUpRow[];
  readonly checks: readonly Check[];
}

/**
 * @param build a valid build (see neck/schema.ts)
 * @throws {RangeError} when lists in `numbers` do not have one entry per fret (four for the bow after each quarter)
 */
export function fretworkPlan(build: Build, numbers: PlanNumbers = {}): FretworkPlan {
  const ends = fretEnds(build);
  const all = madeEnds(build);
  const wire = wirePieces(build, all);
  const levelling = numbers.levelling;
  return {
    ends,
    slots: slots(build, all),
    wire,
    order: wireOrder(build, wire),
    bend: bendFor(build, tightestRadiusMm(build)),
    bends: fretBends(build, all),
    glue: glueNeeded(build, all),
    ...(build.method === 'press' ? {} : { glueRecipe: { ...glueById(build.glueKind), ...glueStiffness(build) } }),
    seating: seatingPlan(build, ends, numbers.seating),
    steps: fretworkSteps(build, numbers),
    cautions: [...cautionsFor(build).values()],
    metals: compareMetals(build),
    ...(levelling
      ? {
          levelling: crownBudget(
            build,
            ends.map((end) => end.xMm),
            levelling.reliefMm,
            levelling.targetReliefMm,
          ),
        }
      : {}),
    ...(numbers.playing ? { playing: numbers.playing } : {}),
    ...(numbers.setUp ? { setUp: numbers.setUp } : {}),
    checks: checkFretwork(build, numbers),
  };
}
