/** What a compared neck comes to, in numbers: those of the library, and means and sums of them. */
import type { Build } from '../neck/build.ts';
import { glueNeeded } from '../fretwork/glue.ts';
import { fretworkSteps, type Step } from '../fretwork/plan/steps.ts';
import type { Method, Moment, Prediction } from '../mechanics/prediction-types.ts';
import { describeLine, lineAt, momentShares } from '../mechanics/states.ts';
import { bandAt, sampleExtremes } from '../mechanics/uncertainty/band-at.ts';
import { asOfAnotherNeck, paired, type Paired } from '../mechanics/uncertainty/paired.ts';
import type { RodAnswer } from '../mechanics/inversion/rod.ts';
import type { Band } from '../mechanics/uncertainty/band.ts';
import type { RodSettingBand, Uncertainty } from '../mechanics/uncertainty/types.ts';
import { refretOf, type Refret } from './choice-facts.ts';
import { overMonths, type OverMonths } from './over-months.ts';
import { USUAL_DIRECTION } from './set-up-figures.ts';
import { reliefAim, type StringAim } from './string-aim.ts';
import { stringRoom } from './string-room.ts';
import { meanOfFrets, rodForTarget, waitDays } from './job-figures.ts';

/** Relief of greatest size with its sign, mm, and its band; null while that is being computed. */
export interface Bow {
  readonly mm: number;
  readonly band: Band | null;
}

export interface NeckNumbers {
  readonly method: Method;
  /** Necks of one blank may be one neck, seated one way or another. */
  readonly blank: string;
  /** Settled relief of every sample, rod slack, mm; null while that is being computed. */
  readonly settledSamplesMm: Float64Array | null;
  /** At the moment on the rail. */
  readonly now: Bow;
  readonly fretted: Bow;
  readonly strung: Bow;
  readonly settled: Bow;
  readonly settleDays: number;
  readonly fretCount: number;
  /** Relief before fretting, and what all frets, and the strings, add by themselves; mm. */
  readonly startingMm: number;
  readonly wedgesMm: number;
  readonly stringsMm: number;
  /** Means over the frets. */
  readonly wedgeForceN: number;
  readonly biteMm: number;
  readonly seatingN: number;
  readonly pullOutN: number;
  /** The part of the mean pull-out that is friction of the wedge; the rest is glue. */
  readonly frictionN: number;
  readonly stringPullN: number;
  /** Action at fret 12, room of the worst note played medium: settled and set, and what the first months do to a set-up. */
  readonly actionMm: number;
  readonly leastRoomMm: number;
  /** The relief with the most room at that action, played medium, and the one at hand, mm. */
  readonly mostRoom: StringAim['relief'];
  readonly playedMm: number;
  readonly overMonths: OverMonths;
  /** What the settled state keeps of the wedges, and how many times the strings' first pull it has. */
  readonly wedgesLeft: number;
  readonly stringsGrown: number;
  readonly targetMm: number;
  /** Null without a rod. */
  readonly rod: {
    /** Null while it is being computed. */
    readonly setting: RodSettingBand | null;
    readonly needed: RodAnswer;
    /** What the rod at its limit does to the relief, mm. */
    readonly reachMm: number;
  } | null;
  /** 0.34 = 34 % more than with unsawn slots. */
  readonly extraFlexibility: number;
  readonly kerfMm: number;
  readonly slotDepthMm: number;
  readonly boardThicknessMm: number;
  readonly glueReachPercent: number;
  readonly glueMm3: number;
  readonly steps: readonly Pick<Step, 'id' | 'title'>[];
  readonly seatingOrder: Build['seatingOrder'];
  readonly workOrder: Build['workOrder'];
  /** From the frets to the strings, days. */
  readonly waitDays: number;
  readonly refretRisk: Refret;
  readonly chamferMm: number;
  /** Id of the glue; null where none is used. */
  readonly glue: Build['glueKind'] | null;
}

/** Played as the rows are. */
const MEDIUM = { strength: 'medium', direction: USUAL_DIRECTION } as const;
type Played = Pick<NeckNumbers, 'leastRoomMm' | 'mostRoom' | 'overMonths'>;
const played = new WeakMap<Prediction, { readonly build: Build; readonly of: Played }>();

/** It does not depend on the rail, which moves while the table is looked at. */
function playedOf(build: Build, prediction: Prediction): Played {
  const known = played.get(prediction);
  if (known?.build === build) return known.of;
  const reckoned = { build, prediction };
  const of = {
    leastRoomMm: stringRoom(reckoned, MEDIUM).least.leastMm,
    mostRoom: reliefAim(reckoned, MEDIUM),
    overMonths: overMonths(reckoned, USUAL_DIRECTION),
  };
  played.set(prediction, { build, of });
  return of;
}

/** Bow of all wedges together, the rest left out. */
function wedgesMmOf(prediction: Prediction, method: Method): number {
  const { wedgeMm } = prediction.methods[method].basis;
  const stations = prediction.stationXMm.length;
  const line = new Float64Array(stations);
  for (let at = 0; at < wedgeMm.length; at += 1) line[at % stations] += wedgeMm[at];
  return describeLine(prediction, line).extremeMm;
}

/** The wood that a neck and its board are made of, measured blanks included. */
function blankOf(build: Build): string {
  const { boardWood, laminates, ownWoods, woodValues, boardBlankTest, neckBlankTest } = build;
  return JSON.stringify([boardWood, laminates, ownWoods, woodValues, boardBlankTest, neckBlankTest]);
}

/**
 * How another neck settles beside the first: one neck made in two ways where the blank is one, else two pieces of wood.
 * Null while the bands are being computed.
 */
export function settledBeside(first: NeckNumbers, other: NeckNumbers): Paired | null {
  if (!first.settledSamplesMm || !other.settledSamplesMm) return null;
  const isOneBlank = first.blank === other.blank;
  const samples = isOneBlank ? other.settledSamplesMm : asOfAnotherNeck(other.settledSamplesMm);
  return paired(first.settledSamplesMm, samples, first.targetMm);
}

export function neckNumbers(
  build: Build,
  moment: Moment,
  prediction: Prediction,
  uncertainty: Uncertainty | null,
): NeckNumbers {
  const { method } = build;
  const of = prediction.methods[method];
  const bands = uncertainty?.methods[method] ?? null;
  const shares = momentShares(prediction, { strung: true, days: build.settleDays, rodPercent: 0 });
  const wedgeForceN = meanOfFrets(of.wedgeForceN);
  const extreme = (line: Float64Array) => describeLine(prediction, line).extremeMm;
  return {
    method,
    blank: blankOf(build),
    settledSamplesMm:
      uncertainty && sampleExtremes(uncertainty, method, { strung: true, days: build.settleDays, rodPercent: 0 }),
    now: {
      mm: lineAt(prediction, method, moment).extremeMm,
      band: uncertainty ? bandAt(uncertainty, method, moment).extreme : null,
    },
    fretted: { mm: of.fretted.extremeMm, band: bands?.fretted ?? null },
    strung: { mm: of.strung.extremeMm, band: bands?.strung ?? null },
    settled: { mm: of.settled.extremeMm, band: bands?.settled ?? null },
    settleDays: build.settleDays,
    fretCount: build.fretCount,
    startingMm: extreme(prediction.startingMm),
    wedgesMm: wedgesMmOf(prediction, method),
    stringsMm: extreme(of.basis.stringsMm),
    wedgeForceN,
    biteMm: meanOfFrets(of.biteMm),
    seatingN: meanOfFrets(of.seatingForceN),
    pullOutN: meanOfFrets(of.pullOutForceN),
    frictionN: 2 * build.friction * wedgeForceN,
    stringPullN: prediction.stringPullN,
    actionMm: build.stringHeightFret12Mm - build.crownHeightMm,
    ...playedOf(build, prediction),
    playedMm: of.rodSet.extremeMm,
    wedgesLeft: shares.wedges,
    stringsGrown: shares.strings,
    targetMm: build.targetReliefMm,
    rod:
      prediction.rod.kind === 'none'
        ? null
        : {
            setting: bands?.rodPercentForTarget ?? null,
            needed: rodForTarget({ build, prediction }),
            reachMm: extreme(of.basis.rodMm),
          },
    extraFlexibility: of.extraFlexibility,
    kerfMm: of.kerfMm,
    slotDepthMm: build.slotDepthMm,
    boardThicknessMm: build.boardThicknessMm,
    glueReachPercent: build.glueReachPercent,
    glueMm3: glueNeeded(build).totalMm3,
    steps: fretworkSteps(build).map(({ id, title }) => ({ id, title })),
    seatingOrder: build.seatingOrder,
    workOrder: build.workOrder,
    waitDays: waitDays(build),
    refretRisk: refretOf(build),
    chamferMm: build.chamferMm,
    glue: method === 'press' ? null : build.glueKind,
  };
}
