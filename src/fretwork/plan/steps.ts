/**
 * The steps of fretting a build, in order, as codes: what each is called, which sentences it is made of, its numbers and
 * its cautions. The words are in speech/en/steps.ts. Common practice, no source, except for the numbers, which come from
 * the rest of the library.
 */
import type { CheckNumbers } from '../checks/checks-from-forces.ts';
import type { Build } from '../../neck/build.ts';
import { glueById } from '../../neck/glues.ts';
import { filedQuantity, isComputed, quantityOf, type QuantityKey } from '../../neck/quantities.ts';
import { bendFor, gaugedRadiusMm } from '../bending.ts';
import { cautionsFor, isHeatPressed, type CautionId } from '../checks/cautions.ts';
import { madeEnds, type FretEnd } from '../ends.ts';
import { glueNeeded } from '../glue.ts';
import { tightestRadiusMm } from './metal-comparison.ts';
import type { StepQuantity } from '../quantity.ts';
import { seatingQuarters } from './seating-order.ts';
import { slots, type Slot } from '../slots.ts';
import { seatGroups } from '../../neck/kerf.ts';
import { wireOrder, wirePieces } from '../wire.ts';

export type StepId =
  | 'pull'
  | 'mend'
  | 'heat'
  | 'level-board'
  | 'saw'
  | 'clean'
  | 'gauge'
  | 'chamfer'
  | 'bend'
  | 'cut'
  | 'nip'
  | 'protect'
  | 'glue'
  | 'seat'
  | 'straightedge'
  | 'clamp'
  | 'clamp-board'
  | 'trim'
  | 'rest'
  | 'level'
  | 'string'
  | 'record';

/** What a step is called: by its id, or by the tool and the job where these change it. */
export type StepTitle = Exclude<StepId, 'seat'> | 'deepen' | 'lay' | 'hammer' | 'press' | 'string-and-rod';

/** The sentences that steps are made of. Those of the glue have its own words in them. */
export type StepPart =
  | Exclude<StepId, 'saw' | 'clean' | 'bend' | 'seat' | 'string'>
  | 'level-board-rod'
  | 'level-board-radius'
  | 'saw-new'
  | 'saw-refret'
  | 'open-slots'
  | 'floor-flat'
  | 'floor-follows'
  | 'saw-stopped'
  | 'saw-open'
  | 'clean'
  | 'clean-binding'
  | 'clean-inlays'
  | 'bend-none'
  | 'bend'
  | 'bend-open'
  | 'bend-open-straight'
  | 'bend-try'
  | 'clean-up'
  | 'seat-lay'
  | 'seat-hammer'
  | 'seat-press'
  | 'order-spread'
  | 'order-nut-first'
  | 'order-body-first'
  | 'seat-look'
  | 'seat-open-time'
  | 'trim-fill'
  | 'string'
  | 'string-rod';

export interface Step {
  readonly id: StepId;
  readonly title: StepTitle;
  readonly parts: readonly StepPart[];
  /** Id of the glue that its words name; undefined where it names none. */
  readonly glue?: string;
  readonly quantities: readonly StepQuantity[];
  readonly cautions: readonly CautionId[];
}

/** What all steps are made from. */
interface Job {
  readonly build: Build;
  readonly ends: readonly FretEnd[];
  readonly rows: readonly Slot[];
  /** What the mechanics found, as far as it is known. */
  readonly numbers: Pick<CheckNumbers, 'frettedBoard'>;
}

const one = (key: QuantityKey, value: number): StepQuantity => ({ key, value });

/** What is shown of a value in the unit that it is stored in: a number of the build keeps the digits it was given. */
function shownDigits(key: QuantityKey, value: number): string {
  const filed = filedQuantity(key, value);
  return isComputed(key) ? filed.toFixed(quantityOf(key).digits) : String(filed);
}

/** One number when all agree to the digits shown, else the least and the greatest. */
function spread(key: QuantityKey, values: readonly number[]): StepQuantity[] {
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  if (shownDigits(key, least) === shownDigits(key, greatest)) return [one(key, greatest)];
  return [
    { key, value: least, which: 'least' },
    { key, value: greatest, which: 'greatest' },
  ];
}

/** A step whose title is its id and that is made of the sentence of that name, unless said otherwise. */
function step<Id extends StepId & StepTitle>(
  id: Id,
  parts: readonly StepPart[],
  cautions: readonly CautionId[] = [],
  quantities: readonly StepQuantity[] = [],
): Step {
  return { id, title: id, parts, quantities, cautions };
}

/** How much of what heat and pressing took out of a neck has come back, per cent; undefined where they took nothing out. */
export function heatSprungBackPercent({ heatBeforeMm, heatAfterMm, heatRestMm }: Build): number | undefined {
  const taken = heatBeforeMm - heatAfterMm;
  return Math.abs(taken) < 1e-9 ? undefined : (100 * (heatRestMm - heatAfterMm)) / taken;
}

function heating(build: Build): Step[] {
  if (!isHeatPressed(build)) return [];
  const back = heatSprungBackPercent(build);
  const quantities = [
    one('heatBeforeMm', build.heatBeforeMm),
    one('heatAfterMm', build.heatAfterMm),
    one('heatRestMm', build.heatRestMm),
    ...(back === undefined ? [] : [one('heatSprungBackPercent', back)]),
  ];
  return [step('heat', ['heat'], ['heat'], quantities)];
}

/** Refret only: getting the old frets out, the neck straight and the board sound again. */
function pulling({ build }: Job): Step[] {
  if (build.job !== 'refret') return [];
  return [step('pull', ['pull'], ['wire-ends']), ...heating(build), step('mend', ['mend'], ['dust'])];
}

function levellingBoard({ build }: Job): Step[] {
  const rod: readonly StepPart[] = build.rodKind === 'none' ? [] : ['level-board-rod'];
  return [step('level-board', ['level-board', ...rod, 'level-board-radius'], ['dust'])];
}

function sawing({ build, rows }: Job): Step[] {
  const refret = build.job === 'refret';
  const parts: StepPart[] = [
    refret ? 'saw-refret' : 'saw-new',
    ...(build.method === 'glue' ? ['open-slots' as const] : []),
    build.slotBottom === 'flat' ? 'floor-flat' : 'floor-follows',
    rows.some((row) => !row.open) ? 'saw-stopped' : 'saw-open',
  ];
  const quantities = [
    ...spread(
      'kerfMm',
      rows.map((row) => row.kerfMm),
    ),
    one('slotDepthMm', build.slotDepthMm),
    ...spread(
      'slotDepthNeededMm',
      rows.map((row) => row.depthNeededMm),
    ),
    one('boardLeftLeastMm', Math.min(...rows.map((row) => row.leftLeastMm))),
  ];
  const saw = step('saw', parts, ['dust', 'dust-sensitising', 'listed-wood'], quantities);
  return [refret ? { ...saw, title: 'deepen' } : saw];
}

function slotsReady({ build, rows }: Job): Step[] {
  const seats = seatGroups(build).map(({ seat }) => seat);
  const bound: readonly StepPart[] = build.bindingLineCount > 0 ? ['clean-binding'] : [];
  const gauged = (['kerfMm', 'tangWidthMm', 'studWidthMm'] as const).flatMap((key) =>
    spread(
      key,
      seats.map((seat) => seat[key]),
    ),
  );
  const chamfered = [
    one('chamferMm', build.chamferMm),
    one('chamferLimitMm', Math.min(...rows.map((row) => row.chamferLimitMm))),
  ];
  return [
    step('clean', ['clean', ...bound, 'clean-inlays'], ['dust']),
    step('gauge', ['gauge'], [], gauged),
    ...(build.chamferMm > 0 ? [step('chamfer', ['chamfer'], ['dust'], chamfered)] : []),
  ];
}

function bending({ build }: Job): Step[] {
  const bend = bendFor(build, tightestRadiusMm(build));
  const wanted = Number.isFinite(bend.wantedRadiusMm) ? [one('wantedWireRadiusMm', bend.wantedRadiusMm)] : [];
  if (bend.direction === 'none') return [step('bend', ['bend-none'], [], wanted)];
  const bendTo = gaugedRadiusMm(bend.bendToRadiusMm);
  const isGauged = Number.isFinite(bendTo);
  const open: readonly StepPart[] =
    bend.direction === 'straighter' ? [isGauged ? 'bend-open' : 'bend-open-straight'] : [];
  const quantities = [
    ...wanted,
    ...(isGauged ? [one('bendToRadiusMm', bendTo)] : []),
    one('bendStaysPercent', bend.stays * 100),
  ];
  return [step('bend', ['bend', ...open, 'bend-try'], [], quantities)];
}

function wireReady({ build, ends }: Job): Step[] {
  const pieces = wirePieces(build, ends);
  const nips = ends.filter((end) => end.nipMm > 0);
  const cut = [
    ...spread(
      'cutLengthMm',
      pieces.map((piece) => piece.cutMm),
    ),
    one('oversizeMm', build.oversizeMm),
    one('wireTotalMm', wireOrder(build, pieces).totalMm),
  ];
  // A crown rests on what is left whole, where anything is.
  const keys = nips.some((end) => !end.slotOpen) ? (['nipMm', 'shelfMm'] as const) : (['nipMm'] as const);
  const nipped = keys.flatMap((key) =>
    spread(
      key,
      nips.map((end) => end[key]),
    ),
  );
  return [
    step('cut', ['cut'], ['wire-ends'], cut),
    ...(nips.length > 0 ? [step('nip', ['nip'], ['wire-ends'], nipped)] : []),
  ];
}

function gluing({ build, ends }: Job): Step[] {
  if (build.method === 'press') return [];
  const needed = glueNeeded(build, ends);
  const [shortest, longest] = glueById(build.glueKind).openMinutes;
  const quantities: StepQuantity[] = [
    { key: 'glueVolumeMm3', value: needed.totalMm3 / needed.slots.length, which: 'mean' },
    one('glueTotalMm3', needed.totalMm3),
    ...spread(
      'glueBeadMm',
      needed.slots.filter(({ fret }) => fret > 0).map((slot) => slot.beadMm),
    ),
    ...spread('openTimeMin', [shortest, longest]),
  ];
  return [
    { ...step('protect', ['protect', 'clean-up'], ['solvents']), glue: build.glueKind },
    { ...step('glue', ['glue'], ['glue', 'solvents'], quantities), glue: build.glueKind },
  ];
}

function seating({ build }: Job): Step[] {
  const dry = build.method === 'press';
  const how = build.method === 'glue' ? 'lay' : build.seatingTool === 'hammer' ? 'hammer' : 'press';
  const parts: StepPart[] = [`seat-${how}`, `order-${build.seatingOrder}`, 'seat-look'];
  return [
    {
      id: 'seat',
      title: how,
      parts: dry ? parts : [...parts, 'seat-open-time'],
      quantities: seatingQuarters(build).map((quarter, index) => ({
        key: 'fretsInQuarter',
        value: quarter.length,
        index: index + 1,
      })),
      cautions: dry ? ['pressing'] : ['pressing', 'glue', 'solvents'],
    },
    step('straightedge', ['straightedge']),
  ];
}

function clamping({ build }: Job): Step[] {
  if (build.method === 'press') return [];
  const { clampMinutes, fullHours } = glueById(build.glueKind);
  return [step('clamp', ['clamp'], ['glue'], [one('clampTimeMin', clampMinutes), one('glueFullHours', fullHours)])];
}

/** A board that was fretted by itself goes on the neck. */
function boardOn({ build, numbers: { frettedBoard } }: Job): Step[] {
  if (build.workOrder !== 'board-first') return [];
  const quantities = frettedBoard
    ? [one('freeBoardBowMm', frettedBoard.freeBowMm), one('clampPressureMPa', frettedBoard.clampPressureMPa)]
    : [];
  return [step('clamp-board', ['clamp-board'], [], quantities)];
}

function finishing({ build, ends }: Job): Step[] {
  const bound = build.bindingLineCount > 0;
  const trimmed = [
    one('endBevelDegrees', build.endBevelDegrees),
    one('endInsetMm', build.endInsetMm),
    ...spread(
      'bevelLossMm',
      ends.map((end) => end.bevelLossMm),
    ),
  ];
  const levelled = (['crownHeightMm', 'levellingLossMm', 'leastCrownMm'] as const).map((key) => one(key, build[key]));
  const strung = [one('targetReliefMm', build.targetReliefMm)];
  return [
    step('trim', bound ? ['trim'] : ['trim', 'trim-fill'], ['wire-ends'], trimmed),
    step('rest', ['rest'], [], [one('restDays', build.restDays)]),
    step('level', ['level'], ['dust'], levelled),
    build.rodKind === 'none'
      ? step('string', ['string'], ['strings'], strung)
      : { ...step('string', ['string', 'string-rod'], ['strings', 'rod'], strung), title: 'string-and-rod' },
    step('record', ['record']),
  ];
}

/** In the order of the work. */
const STAGES = [
  pulling,
  levellingBoard,
  sawing,
  slotsReady,
  bending,
  wireReady,
  gluing,
  seating,
  clamping,
  boardOn,
  finishing,
] as const;

/** All steps of this build, in order; those that it has no use for are left out. */
export function fretworkSteps(build: Build, numbers: Job['numbers'] = {}): Step[] {
  const ends = madeEnds(build);
  const job: Job = { build, ends, rows: slots(build, ends), numbers };
  const called = cautionsFor(build);
  return STAGES.flatMap((stage) => stage(job)).map((made) => ({
    ...made,
    cautions: made.cautions.filter((id) => called.has(id)),
  }));
}
