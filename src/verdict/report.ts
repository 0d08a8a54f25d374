/**
 * A build and its prediction as JSON for people and for scripts: every quantity under its one key (neck/quantities.ts),
 * with the unit in the key and the digits that the number deserves (a tenth of a micrometre, a tenth of a newton); checks
 * and choices as codes. No internal vectors, no sentences. `report-shape.ts` says what holds of it.
 */
import type { Method, MethodPrediction, ReliefLine } from '../mechanics/prediction-types.ts';
import { sampleLine } from '../mechanics/relief.ts';
import { levellingMoment, lineAt } from '../mechanics/states.ts';
import { flatAfterDays } from '../mechanics/uncertainty/time-course.ts';
import type { MethodUncertainty, Uncertainty } from '../mechanics/uncertainty/types.ts';
import { filedQuantity, filedValue, type QuantityKey } from '../neck/quantities.ts';
import { checksOf, levellingState } from './checks.ts';
import { meanOfFrets, rodForTarget, settlingMoveMm } from './job-figures.ts';
import { raisedByMethod } from './raised-by.ts';
import type { Reckoned } from './reckoned.ts';
import { reportBand, reportHowBanded, rounded, type MeasuredFor } from './report-bands.ts';
import { reportCheck } from './report-checks.ts';
import { overMonths } from './over-months.ts';
import { setUpFigures, USUAL_DIRECTION } from './set-up-figures.ts';
import { setUpHeights } from './set-up-heights.ts';
import { stampOf, stampText } from './stamp.ts';
import { stringAim } from './string-aim.ts';
import { changeOf, type LeastChangeFound } from './in-short/least-change.ts';
import { verdictOf } from './in-short/verdict.ts';
import { PROGRAM_VERSION } from '../neck/version.ts';

export const REPORT_FORMAT = 'backbow prediction';
export const REPORT_VERSION = 2;

const perFret = (key: QuantityKey, values: readonly number[]) => values.map((value) => filedQuantity(key, value));

/** The relief of greatest size under the straightedge, where it is, and its band. */
function reportLine(line: ReliefLine, band: MethodUncertainty['fretted'] | undefined) {
  return {
    value: filedQuantity('reliefMm', line.extremeMm),
    ...(band ? reportBand(band, 'mm') : {}),
    atXMm: filedQuantity('atXMm', line.extremeXMm),
    atFret7Mm: filedQuantity('atFret7Mm', line.atFret7Mm),
    atFret8Mm: filedQuantity('atFret8Mm', line.atFret8Mm),
  };
}

/** The rod setting that brings the settled neck to the relief that the build wants, or how close it comes. */
function reportRod(reckoned: Reckoned, method: Method, of: MethodUncertainty | undefined) {
  const answer = rodForTarget(reckoned, method);
  const band = of?.rodPercentForTarget;
  return {
    status: answer.status,
    rodSettingPercent: {
      value: filedQuantity('rodRangePercent', answer.percent),
      ...(band ? { ...reportBand(band, '%'), withinReachPercent: rounded(100 * band.chance, '%') } : {}),
    },
    turnsOfNut: filedQuantity('turnsOfNut', answer.nut.turns),
    nutWay: answer.nut.way,
    nutTorqueNm: filedQuantity('nutTorqueNm', answer.nut.torqueNm),
    quarterTurnReliefMm: filedQuantity('quarterTurnReliefMm', answer.quarterTurnMm),
    rodSetReliefMm: filedQuantity('rodSetReliefMm', answer.reliefMm),
    missMm: filedQuantity('missMm', answer.missMm),
  };
}

/** Days from stringing until a back-bow has gone; null where there is none, or where it outlasts ten years. */
function reportFlat({ prediction }: Reckoned, method: Method, of: MethodUncertainty | undefined) {
  const flat = of?.timeCourse.flat;
  return {
    value: rounded(flatAfterDays(prediction, method), 'day'),
    ...(flat
      ? {
          p05: rounded(flat.p05Days, 'day'),
          p50: rounded(flat.p50Days, 'day'),
          p95: rounded(flat.p95Days, 'day'),
          fromStartPercent: rounded(100 * flat.shareFromStart, '%'),
          notInTenYearsPercent: rounded(100 * flat.shareNever, '%'),
        }
      : {}),
  };
}

/** Relief of every fret top in the state in which the crowns are levelled, before the file. */
function reportLevelling(reckoned: Reckoned, method: Method) {
  const { prediction } = reckoned;
  const { reliefMm } = lineAt(prediction, method, levellingMoment(levellingState(reckoned)));
  return prediction.fretXMm.map((x) =>
    filedQuantity('levellingReliefMm', sampleLine(prediction.stationXMm, reliefMm, x)),
  );
}

/** The neck as it is set up and played, with its own way of seating. */
function reportPlaying(reckoned: Reckoned) {
  const { actionMm, pluckMm, strengths, rooms } = setUpFigures(reckoned);
  const heights = setUpHeights(reckoned);
  const { strung, settled } = overMonths(reckoned, USUAL_DIRECTION);
  return {
    actionMm: filedQuantity('actionMm', actionMm),
    actionPerTurnMm:
      heights.actionPerTurnMm === null ? null : filedQuantity('actionPerTurnMm', heights.actionPerTurnMm),
    overMonths: {
      actionChangeMm: filedQuantity('actionChangeMm', settled.actionMm - strung.actionMm),
      roomStrungMm: filedQuantity('roomStrungMm', strung.roomMm),
      roomSettledMm: filedQuantity('roomSettledMm', settled.roomMm),
    },
    strings: heights.strings.map((string) => ({
      stringActionMm: filedQuantity('stringActionMm', string.actionMm),
      stringReliefMm: filedQuantity('stringReliefMm', string.reliefMm),
      nutOverFret1Mm: filedQuantity('nutOverFret1Mm', string.nutOverFret1Mm),
      saddleOverFretsMm: filedQuantity('saddleOverFretsMm', string.saddleOverFretsMm),
    })),
    pluckFromSaddleMm: filedQuantity('pluckFromSaddleMm', pluckMm),
    pluckDirection: USUAL_DIRECTION,
    isAssumed: true,
    strengths: strengths.map(({ strength, forceN, least, buzzing, mayBuzz, lowestActionMm }) => {
      const { relief } = stringAim(reckoned, { strength, direction: USUAL_DIRECTION });
      return {
        strength,
        pluckForceN: filedQuantity('pluckForceN', forceN),
        notesBuzzing: buzzing,
        notesMayBuzz: mayBuzz,
        stringRoomMm: filedQuantity('stringRoomMm', least.leastMm),
        stringRoomBoundMm: filedQuantity('stringRoomBoundMm', least.boundMm),
        string: least.string + 1,
        frettedAt: least.note,
        touchedFret: least.atFret,
        buzzForceN: Number.isFinite(least.buzzForceN) ? filedQuantity('buzzForceN', least.buzzForceN) : null,
        lowestActionMm: filedQuantity('lowestActionMm', lowestActionMm),
        mostRoom:
          relief.status === 'better'
            ? {
                targetReliefMm: relief.reliefMm,
                bestRoomMm: filedQuantity('bestRoomMm', relief.roomMm),
                raisedChecks: relief.raised.map(reportCheck),
              }
            : null,
        rooms: rooms[strength].map((notes) => notes.map(({ leastMm }) => filedQuantity('stringRoomMm', leastMm))),
      };
    }),
  };
}

function reportBoard({
  freeBowMm,
  clampPressureMPa,
  clampedForceN,
}: NonNullable<Reckoned['prediction']['frettedBoard']>) {
  return {
    freeBoardBowMm: filedQuantity('freeBoardBowMm', freeBowMm),
    clampPressureMPa: filedQuantity('clampPressureMPa', clampPressureMPa),
    clampedForceN: perFret('clampedForceN', clampedForceN),
  };
}

function reportMethod(id: Method, reckoned: Reckoned, uncertainty: Uncertainty | undefined) {
  const method: MethodPrediction = reckoned.prediction.methods[id];
  const bands = uncertainty?.methods[id];
  return {
    kerfMm: filedQuantity('kerfMm', method.kerfMm),
    raisedChecks: raisedByMethod(reckoned, id).map(reportCheck),
    frettedReliefMm: reportLine(method.fretted, bands?.fretted),
    strungReliefMm: reportLine(method.strung, bands?.strung),
    settledReliefMm: reportLine(method.settled, bands?.settled),
    rodSetReliefMm: reportLine(method.rodSet, bands?.rodSet),
    settlingMoveMm: filedQuantity('settlingMoveMm', settlingMoveMm(method)),
    rodSetPercent: filedQuantity('rodSetPercent', method.rodSetPercent),
    rodTurnsAtLimit: filedQuantity('rodTurnsAtLimit', method.rodTurnsAtLimit),
    rodForTarget: reportRod(reckoned, id, bands),
    flatAfterDays: reportFlat(reckoned, id, bands),
    meanWedgeForceN: {
      value: filedQuantity('meanWedgeForceN', meanOfFrets(method.wedgeForceN)),
      ...(bands ? reportBand(bands.wedgeForceN, 'N') : {}),
    },
    wedgeForceN: perFret('wedgeForceN', method.wedgeForceN),
    wedgeForceStrungN: perFret('wedgeForceStrungN', method.wedgeForceStrungN),
    meanSeatingForceN: filedQuantity('meanSeatingForceN', meanOfFrets(method.seatingForceN)),
    seatingForceN: perFret('seatingForceN', method.seatingForceN),
    meanPullOutForceN: filedQuantity('meanPullOutForceN', meanOfFrets(method.pullOutForceN)),
    pullOutForceN: perFret('pullOutForceN', method.pullOutForceN),
    studBiteMm: perFret('studBiteMm', method.biteMm),
    slotOpeningMm: perFret('slotOpeningMm', method.openingMm),
    extraFlexibilityPercent: filedQuantity('extraFlexibilityPercent', 100 * method.extraFlexibility),
    levellingReliefMm: reportLevelling(reckoned, id),
  };
}

/** What the verdict says beside the numbers that stand elsewhere in the report. */
function reportVerdict(reckoned: Reckoned, uncertainty?: Uncertainty, least?: LeastChangeFound | null) {
  const { obstacle, saw, nip, decides } = verdictOf(reckoned, uncertainty);
  return {
    comesOutAsWanted: obstacle === null,
    stoppedBy: obstacle?.kind === 'check' ? reportCheck(obstacle.check) : null,
    rodStatus: obstacle?.kind === 'rod' ? obstacle.status : null,
    ...(least ? { leastChange: least.change && changeOf(least.change) } : {}),
    slotsAreSawn: saw.isSawn,
    nipMm: { least: filedQuantity('nipMm', nip.leastMm), most: filedQuantity('nipMm', nip.mostMm) },
    ...(decides === undefined ? {} : { decidesMost: decides }),
  };
}

/**
 * Positive relief is forward bow, negative is back-bow; the straightedge lies on the two frets that are named.
 * @param uncertainty of the build, for its bands; without it there are none in the report
 * @param measured what narrowed the bands, where something did
 * @param least the least change that helps, where it was looked for
 */
export function predictionReport(
  reckoned: Reckoned,
  uncertainty?: Uncertainty,
  measured?: MeasuredFor,
  least?: LeastChangeFound | null,
) {
  const { build, prediction } = reckoned;
  const reference = measured && 'measurements' in measured ? build.gripReference : build.biteReference;
  return {
    format: REPORT_FORMAT,
    version: REPORT_VERSION,
    build: build.name,
    stamp: stampText(stampOf(build, measured && reference)),
    program: PROGRAM_VERSION,
    method: build.method,
    verdict: reportVerdict(reckoned, uncertainty, least),
    checks: checksOf(reckoned).map(reportCheck),
    straightedge: prediction.straightedge,
    targetReliefMm: build.targetReliefMm,
    settleDays: build.settleDays,
    levelledIn: levellingState(reckoned),
    levelledInIsAssumed: build.levelledIn === 'none',
    stringPullN: filedQuantity('stringPullN', prediction.stringPullN),
    strings: prediction.strings.map((string) => ({
      stringTensionN: filedQuantity('stringTensionN', string.tensionN),
      stringStressMPa: filedQuantity('stringStressMPa', string.stressMPa),
      stringStressPercent: filedQuantity('stringStressPercent', 100 * string.stressRatio),
    })),
    rod: {
      ...prediction.rod,
      limitN: filedValue(prediction.rod.limitN, 'N'),
      torqueAtLimitNm: filedQuantity('nutTorqueNm', prediction.rod.torqueAtLimitNm),
    },
    ...(prediction.frettedBoard ? { frettedBoard: reportBoard(prediction.frettedBoard) } : {}),
    fretXMm: perFret('fretXMm', prediction.fretXMm),
    playing: reportPlaying(reckoned),
    ...(uncertainty ? { bands: reportHowBanded(uncertainty, measured) } : {}),
    methods: {
      press: reportMethod('press', reckoned, uncertainty),
      glue: reportMethod('glue', reckoned, uncertainty),
      both: reportMethod('both', reckoned, uncertainty),
    },
  };
}
