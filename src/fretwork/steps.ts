/**
 * The steps of fretting a build, in order, with their numbers and cautions as data. Common practice, no source, except for
 * the numbers, which come from the rest of the library.
 */
import type { Build } from '../build/build.ts';
import { glueById } from '../build/glues.ts';
import { bendFor, type Bend } from './bending.ts';
import { cautionsFor, type CautionId } from './cautions.ts';
import { fretEnds } from './ends.ts';
import { glueNeeded } from './glue.ts';
import { tightestRadiusMm } from './metal-comparison.ts';
import type { Quantity } from './quantity.ts';
import { seatingQuarters } from './seating-order.ts';
import { slots, type Slot } from './slots.ts';
import { seatGroups } from './kerf.ts';
import { wireOrder, wirePieces } from './wire.ts';

export type StepId =
  | 'pull'
  | 'mend'
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
  | 'trim'
  | 'rest'
  | 'level'
  | 'string'
  | 'record';

export interface Step {
  readonly id: StepId;
  readonly title: string;
  readonly text: string;
  readonly quantities: readonly Quantity[];
  readonly cautions: readonly CautionId[];
}

const mm = (label: string, value: number, digits = 2): Quantity => ({ label, value, unit: 'mm', digits });

function range(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)];
}

/** One quantity when all values agree to the digits shown, else the least and the greatest. */
function spread(label: string, values: readonly number[], digits = 2): Quantity[] {
  const [least, most] = range(values);
  return least.toFixed(digits) === most.toFixed(digits)
    ? [mm(label, most, digits)]
    : [mm(`${label}, least`, least, digits), mm(`${label}, greatest`, most, digits)];
}

/** Too flat a bend to hold a gauge to. */
function nearlyStraight(bend: Bend): boolean {
  return Math.abs(bend.bendToRadiusMm) > 10_000;
}

/** Refret only: getting the old frets out, and the board sound again. */
function pulling(): Step[] {
  return [
    {
      id: 'pull',
      title: 'Pull the old frets',
      text: 'Look in the record how they were seated: glue lets go with heat. Warm each fret with an iron, start at an end with flush-ground nippers, and lift in small bites along the slot without prying. Keep them in order until the new ones are in.',
      quantities: [],
      cautions: ['wire-ends'],
    },
    {
      id: 'mend',
      title: 'Mend the slots',
      text: 'Glue lifted chips back before anything else. Measure the kerf of every slot and enter the odd ones as a region: old slots are rarely alike. Measure the bow of the bare board too.',
      quantities: [],
      cautions: ['dust'],
    },
  ];
}

function sawing(build: Build, rows: readonly Slot[]): Step {
  const stopped = rows.some((row) => !row.open);
  const refret = build.job === 'refret';
  return {
    id: 'saw',
    title: refret ? 'Deepen the slots where needed' : 'Saw the slots',
    text: [
      refret
        ? 'Only where a gauge shows less than the depth needed. A saw with more set than the old one widens the slot: match its kerf.'
        : 'Saw against a fence, square to the centre line. Try saw and depth stop on an offcut of the same board first.',
      build.slotBottom === 'flat'
        ? 'The cut is straight, so it is shallower at the edges by the board’s drop: set the stop at the centre line.'
        : 'The floor follows the radius: the same depth everywhere below the surface.',
      stopped
        ? 'Stop the saw at the binding lines that stay whole; finish the corners with a narrow chisel or a stopped cutter.'
        : 'The slots run out through both edges.',
    ].join(' '),
    quantities: [
      ...spread(
        'Kerf',
        rows.map((row) => row.kerfMm),
      ),
      mm('Depth at the centre line', build.slotDepthMm),
      ...spread(
        'Depth needed there',
        rows.map((row) => row.depthNeededMm),
      ),
      mm('Board left below, least', Math.min(...rows.map((row) => row.leftLeastMm))),
    ],
    cautions: ['dust', 'dust-sensitising', 'listed-wood'],
  };
}

function seating(build: Build): Step {
  const dry = build.method === 'press';
  const slide = build.method === 'glue';
  const how = slide
    ? 'Lay each fret in by hand and hold it down with a caul of the board’s radius: nothing may need force.'
    : build.seatingTool === 'hammer'
      ? 'Tap the ends in first, then work from both ends to the middle with light blows of a brass or faced hammer; heavy blows spread the crown.'
      : 'Press with a caul of the board’s radius or a little tighter, one steady stroke, and hold for a few seconds.';
  const order =
    build.seatingOrder === 'spread'
      ? 'Every fourth fret first, then those halfway between, then the rest: after each quarter the bow has the shape it will have in the end.'
      : build.seatingOrder === 'nut-first'
        ? 'From the nut on.'
        : 'From the last fret on.';
  return {
    id: 'seat',
    title: slide ? 'Lay the frets in' : build.seatingTool === 'hammer' ? 'Hammer the frets in' : 'Press the frets in',
    text: `${how} ${order} Look under every crown against the light: no gap may show.${dry ? '' : ' Work fret by fret within the open time of the glue.'}`,
    quantities: seatingQuarters(build).map((quarter, index) => ({
      label: `Frets in quarter ${index + 1}`,
      value: quarter.length,
      unit: '',
      digits: 0,
    })),
    cautions: dry ? ['pressing'] : ['pressing', 'glue', 'solvents'],
  };
}

/** All steps of this build, in order; those that it has no use for are left out. */
export function fretworkSteps(build: Build): Step[] {
  const ends = fretEnds(build);
  const rows = slots(build, ends);
  const groups = seatGroups(build);
  const pieces = wirePieces(build, ends);
  const order = wireOrder(build, pieces);
  const bend = bendFor(build, tightestRadiusMm(build));
  const glue = glueNeeded(build, ends);
  const recipe = build.method === 'press' ? undefined : glueById(build.glueKind);
  const nips = ends.filter((end) => end.nipMm > 0);
  const bound = build.bindingLineCount > 0;

  const steps: (Step | false)[] = [
    ...(build.job === 'refret' ? pulling() : []),
    {
      id: 'level-board',
      title: 'Level the board',
      text: `Bring the board dead straight under a straightedge${build.rodKind === 'none' ? '' : ', with the rod neither pulling nor pushing'}, and check its radius along its whole length. Every fault here comes back in the fret tops. Where the plan asks for a camber, plane it in now.`,
      quantities: [],
      cautions: ['dust'],
    },
    sawing(build, rows),
    {
      id: 'clean',
      title: 'Clean the slots out',
      text: `Run a narrow hook or an old saw blade along every slot to its full depth: dust packs in the corners${bound ? ', and filler and glue from the binding stand in the ends' : ''}. Glue and filler of inlays that a slot crosses must come out to full depth too: one grain of it lifts the fret and wedges where you did not mean to.`,
      quantities: [],
      cautions: ['dust'],
    },
    {
      id: 'gauge',
      title: 'Gauge the kerf',
      text: 'Try a feeler gauge or a length of tang in every tenth slot and in the offcut. A few hundredths of a millimetre decide between no bite and a bowed neck: enter what you measure, and look at the prediction again.',
      quantities: [
        ...spread(
          'Kerf in this plan',
          groups.map(({ seat }) => seat.kerfMm),
        ),
        ...spread(
          'Tang body',
          groups.map(({ seat }) => seat.tangWidthMm),
        ),
        ...spread(
          'Over the studs',
          groups.map(({ seat }) => seat.studWidthMm),
        ),
      ],
      cautions: [],
    },
    build.chamferMm > 0 && {
      id: 'chamfer',
      title: 'Chamfer the slot edges',
      text: 'Break both edges of every slot with a fine triangular file. The chamfer lets the crown sit flat, and lets the next repairer lift the fret without tearing chips from the board. It must stay under the crown.',
      quantities: [
        mm('Chamfer per edge', build.chamferMm),
        mm('At most', Math.min(...rows.map((row) => row.chamferLimitMm))),
      ],
      cautions: ['dust'],
    },
    {
      id: 'bend',
      title: 'Bend the wire',
      text:
        bend.direction === 'none'
          ? 'The wire is used as it comes; sight along every piece and straighten what is not.'
          : `Bend before cutting, the tang guided in a groove. ${bend.direction === 'straighter' ? `The coil is tighter than the frets shall be: bend it open${nearlyStraight(bend) ? ', to straight' : ''}.` : ''} Hold a first piece to the board and correct: alloys differ from batch to batch.`,
      quantities: [
        ...(Number.isFinite(bend.wantedRadiusMm) ? [mm('Radius of the free wire', bend.wantedRadiusMm, 0)] : []),
        ...(bend.direction !== 'none' && !nearlyStraight(bend)
          ? [mm(bend.bendToRadiusMm < 0 ? 'Bend open past straight to' : 'Bend to', Math.abs(bend.bendToRadiusMm), 0)]
          : []),
        ...(bend.direction === 'none'
          ? []
          : [{ label: 'Of the bend stays', value: bend.stays * 100, unit: '%', digits: 0 } as const]),
      ],
      cautions: [],
    },
    {
      id: 'cut',
      title: 'Cut the frets to length',
      text: 'Cut with the oversize on both ends and lay the pieces out in order in a numbered rack.',
      quantities: [
        ...spread(
          'Length',
          pieces.map((piece) => piece.cutMm),
          1,
        ),
        mm('Oversize per end', build.oversizeMm),
        mm('Wire in all, with spare', order.totalMm, 0),
      ],
      cautions: ['wire-ends'],
    },
    nips.length > 0 && {
      id: 'nip',
      title: 'Nip the tang ends',
      text: 'Nip the tang off under both ends, so that the crown can lie over the binding lines left whole, and file the burr flat: what stands proud there lifts the end.',
      quantities: [
        ...spread(
          'Nip at each end',
          nips.map((end) => end.nipMm),
        ),
        ...spread(
          'Shelf under the crown',
          nips.map((end) => end.shelfMm),
        ),
      ],
      cautions: ['wire-ends'],
    },
    recipe !== undefined && {
      id: 'protect',
      title: 'Protect the board',
      text: `Wax or mask the board beside every slot, keeping the slot itself clean. Degrease tangs. ${recipe.cleanUp}`,
      quantities: [],
      cautions: ['solvents'],
    },
    recipe !== undefined && {
      id: 'glue',
      title: 'Glue',
      text: `${recipe.label}: run a bead along the slot, no more than fills it, and seat the fret before the glue sets. What is squeezed out is wasted and must come off.`,
      quantities: [
        { label: 'Per slot, mean', value: glue.totalMm3 / glue.slots.length, unit: 'mm³', digits: 0 },
        { label: 'For all slots', value: glue.totalMm3, unit: 'mm³', digits: 0 },
        ...spread(
          'Bead',
          glue.slots.map((slot) => slot.beadMm),
          1,
        ),
        { label: 'Open time, at least', value: recipe.openMinutes[0], unit: 'min', digits: 1 },
        { label: 'Open time, at most', value: recipe.openMinutes[1], unit: 'min', digits: 1 },
      ],
      cautions: ['glue', 'solvents'],
    },
    seating(build),
    {
      id: 'straightedge',
      title: 'Lay the straightedge on after each quarter',
      text: 'Compare the bow with the table. If it runs ahead of the prediction by more than the band, stop and follow the advice beside the table before another fret goes in.',
      quantities: [],
      cautions: [],
    },
    recipe !== undefined && {
      id: 'clamp',
      title: 'Clamp',
      text: 'Clamp under a caul of the board’s radius until the glue holds. Do not string before it has set through.',
      quantities: [
        { label: 'Clamped', value: recipe.clampMinutes, unit: 'min', digits: 0 },
        { label: 'Strung no sooner than', value: recipe.fullHours, unit: 'h', digits: 0 },
      ],
      cautions: ['glue'],
    },
    {
      id: 'trim',
      title: 'Trim and bevel the ends',
      text: `Cut the ends flush, file them down to the edge without touching the binding or the side, then bevel with the file held in a block and round the tips.${bound ? '' : ' Fill what shows of the slots.'}`,
      quantities: [
        { label: 'Bevel from the vertical', value: build.endBevelDegrees, unit: '°', digits: 0 },
        mm('Foot short of the edge', build.endInsetMm),
        ...spread(
          'Lost at the top, per end',
          ends.map((end) => end.bevelLossMm),
        ),
      ],
      cautions: ['wire-ends'],
    },
    {
      id: 'rest',
      title: 'Let the neck rest',
      text: 'Leave it flat and free, in the shop’s climate, and measure the bow again before levelling: this is the number for the bench log.',
      quantities: [{ label: 'Rest', value: build.restDays, unit: 'day', digits: 1 }],
      cautions: [],
    },
    {
      id: 'level',
      title: 'Level, crown, polish',
      text: 'Ink the tops, level until the file touches every fret, crown and polish. See the budget per fret; stop where a crown would fall below the least height, and take the bow out another way.',
      quantities: [
        mm('Crown as bought', build.crownHeightMm),
        mm('Spent on unevenness', build.levellingLossMm),
        mm('Least crown', build.leastCrownMm),
      ],
      cautions: ['dust'],
    },
    {
      id: 'string',
      title: build.rodKind === 'none' ? 'String' : 'String and set the rod',
      text: `Bring the strings up evenly, and let the neck settle for a day before judging its relief.${build.rodKind === 'none' ? '' : ' Then turn the rod, a quarter at a time.'}`,
      quantities: [{ label: 'Relief wanted', value: build.targetReliefMm, unit: 'mm', digits: 2 }],
      cautions: build.rodKind === 'none' ? ['strings'] : ['strings', 'rod'],
    },
    {
      id: 'record',
      title: 'Record',
      text: 'Write down the kerf that was gauged, the bow after each quarter and at the end, the glue and how it lets go. The next person to pull these frets needs it.',
      quantities: [],
      cautions: [],
    },
  ];
  const called = cautionsFor(build);
  return steps
    .filter((step) => step !== false)
    .map((step) => ({ ...step, cautions: step.cautions.filter((id) => called.has(id)) }));
}
