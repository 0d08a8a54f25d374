/**
 * The steps of fretting a build, in order, with their numbers and cautions as data. Common practice, no source, except for
 * the numbers, which come from the rest of the library.
 */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { glueById } from '../../neck/glues.ts';
import { bendFor, type Bend } from '../bending.ts';
import { cautionsFor, type CautionId } from '../checks/cautions.ts';
import { fretEnds } from '../ends.ts';
import { glueNeeded } from '../glue.ts';
import { tightestRadiusMm } from './metal-comparison.ts';
import type { Quantity } from '../quantity.ts';
import { seatingQuarters } from './seating-order.ts';
import { slots, type Slot } from '../slots.ts';
import { seatGroups } from '../kerf.ts';
import { wireOrder, wirePieces } from '../wire.ts';
import { glueWords } from '../../speech/names.ts';

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

const mm = (label: string, value: number, digits = 2): Quantity => ({
  label,
  value,
  unit: 'mm',
  digits,
});

function range(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)];
}

/** One quantity when all values agree to the digits shown, else the least and the greatest. */
function spread(label: string, values: readonly number[], digits = 2): Quantity[] {
  const [least, most] = range(values);
  return least.toFixed(digits) === most.toFixed(digits)
    ? [mm(label, most, digits)]
    : [mm(say`${label}, least`, least, digits), mm(say`${label}, greatest`, most, digits)];
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
      title: say`Pull the old frets`,
      text: say`Look in the record how they were seated: glue lets go with heat. Warm each fret with an iron, start at an end with flush-ground nippers, and lift in small bites along the slot without prying. Keep them in order until the new ones are in.`,
      quantities: [],
      cautions: ['wire-ends'],
    },
    {
      id: 'mend',
      title: say`Mend the slots`,
      text: say`Glue lifted chips back before anything else. Measure the kerf of every slot and enter the odd ones as a region: old slots are rarely alike. Measure the bow of the bare board too.`,
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
    title: refret ? say`Deepen the slots where needed` : say`Saw the slots`,
    text: [
      refret
        ? say`Only where a gauge shows less than the depth needed. A saw with more set than the old one widens the slot: match its kerf.`
        : say`Saw against a fence, square to the centre line. Try saw and depth stop on an offcut of the same board first.`,
      build.slotBottom === 'flat'
        ? say`The cut is straight, so it is shallower at the edges by the board’s drop: set the stop at the centre line.`
        : say`The floor follows the radius: the same depth everywhere below the surface.`,
      stopped
        ? say`Stop the saw at the binding lines that stay whole; finish the corners with a narrow chisel or a stopped cutter.`
        : say`The slots run out through both edges.`,
    ].join(' '),
    quantities: [
      ...spread(
        say`Kerf`,
        rows.map((row) => row.kerfMm),
      ),
      mm(say`Depth at the centre line`, build.slotDepthMm),
      ...spread(
        say`Depth needed there`,
        rows.map((row) => row.depthNeededMm),
      ),
      mm(say`Board left below, least`, Math.min(...rows.map((row) => row.leftLeastMm))),
    ],
    cautions: ['dust', 'dust-sensitising', 'listed-wood'],
  };
}

function seating(build: Build): Step {
  const dry = build.method === 'press';
  const slide = build.method === 'glue';
  const how = slide
    ? say`Lay each fret in by hand and hold it down with a caul of the board’s radius: nothing may need force.`
    : build.seatingTool === 'hammer'
      ? say`Tap the ends in first, then work from both ends to the middle with light blows of a brass or faced hammer; heavy blows spread the crown.`
      : say`Press with a caul of the board’s radius or a little tighter, one steady stroke, and hold for a few seconds.`;
  const order =
    build.seatingOrder === 'spread'
      ? say`Every fourth fret first, then those halfway between, then the rest: after each quarter the bow has the shape it will have in the end.`
      : build.seatingOrder === 'nut-first'
        ? say`From the nut on.`
        : say`From the last fret on.`;
  return {
    id: 'seat',
    title: slide
      ? say`Lay the frets in`
      : build.seatingTool === 'hammer'
        ? say`Hammer the frets in`
        : say`Press the frets in`,
    text: say`${how} ${order} Look under every crown against the light: no gap may show.${dry ? '' : say` Work fret by fret within the open time of the glue.`}`,
    quantities: seatingQuarters(build).map((quarter, index) => ({
      label: say`Frets in quarter ${index + 1}`,
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
      title: say`Level the board`,
      text: say`Bring the board dead straight under a straightedge${build.rodKind === 'none' ? '' : say`, with the rod neither pulling nor pushing`}, and check its radius along its whole length. Every fault here comes back in the fret tops. Where the plan asks for a camber, plane it in now.`,
      quantities: [],
      cautions: ['dust'],
    },
    sawing(build, rows),
    {
      id: 'clean',
      title: say`Clean the slots out`,
      text: say`Run a narrow hook or an old saw blade along every slot to its full depth: dust packs in the corners${bound ? say`, and filler and glue from the binding stand in the ends` : ''}. Glue and filler of inlays that a slot crosses must come out to full depth too: one grain of it lifts the fret and wedges where you did not mean to.`,
      quantities: [],
      cautions: ['dust'],
    },
    {
      id: 'gauge',
      title: say`Gauge the kerf`,
      text: say`Try a feeler gauge or a length of tang in every tenth slot and in the offcut. A few hundredths of a millimetre decide between no bite and a bowed neck: enter what you measure, and look at the prediction again.`,
      quantities: [
        ...spread(
          say`Kerf in this plan`,
          groups.map(({ seat }) => seat.kerfMm),
        ),
        ...spread(
          say`Tang body`,
          groups.map(({ seat }) => seat.tangWidthMm),
        ),
        ...spread(
          say`Over the studs`,
          groups.map(({ seat }) => seat.studWidthMm),
        ),
      ],
      cautions: [],
    },
    build.chamferMm > 0 && {
      id: 'chamfer',
      title: say`Chamfer the slot edges`,
      text: say`Break both edges of every slot with a fine triangular file. The chamfer lets the crown sit flat, and lets the next repairer lift the fret without tearing chips from the board. It must stay under the crown.`,
      quantities: [
        mm(say`Chamfer per edge`, build.chamferMm),
        mm(say`At most`, Math.min(...rows.map((row) => row.chamferLimitMm))),
      ],
      cautions: ['dust'],
    },
    {
      id: 'bend',
      title: say`Bend the wire`,
      text:
        bend.direction === 'none'
          ? say`The wire is used as it comes; sight along every piece and straighten what is not.`
          : [
              say`Bend before cutting, the tang guided in a groove.`,
              bend.direction === 'straighter'
                ? say`The coil is tighter than the frets shall be: bend it open${nearlyStraight(bend) ? say`, to straight` : ''}.`
                : '',
              say`Hold a first piece to the board and correct: alloys differ from batch to batch.`,
            ]
              .filter((part) => part !== '')
              .join(' '),
      quantities: [
        ...(Number.isFinite(bend.wantedRadiusMm) ? [mm(say`Radius of the free wire`, bend.wantedRadiusMm, 0)] : []),
        ...(bend.direction !== 'none' && !nearlyStraight(bend)
          ? [
              mm(
                bend.bendToRadiusMm < 0 ? say`Bend open past straight to` : say`Bend to`,
                Math.abs(bend.bendToRadiusMm),
                0,
              ),
            ]
          : []),
        ...(bend.direction === 'none'
          ? []
          : [{ label: say`Of the bend stays`, value: bend.stays * 100, unit: '%', digits: 0 } as const]),
      ],
      cautions: [],
    },
    {
      id: 'cut',
      title: say`Cut the frets to length`,
      text: say`Cut with the oversize on both ends and lay the pieces out in order in a numbered rack.`,
      quantities: [
        ...spread(
          say`Length`,
          pieces.map((piece) => piece.cutMm),
          1,
        ),
        mm(say`Oversize per end`, build.oversizeMm),
        mm(say`Wire in all, with spare`, order.totalMm, 0),
      ],
      cautions: ['wire-ends'],
    },
    nips.length > 0 && {
      id: 'nip',
      title: say`Nip the tang ends`,
      text: say`Nip the tang off under both ends, so that the crown can lie over the binding lines left whole, and file the burr flat: what stands proud there lifts the end.`,
      quantities: [
        ...spread(
          say`Nip at each end`,
          nips.map((end) => end.nipMm),
        ),
        ...spread(
          say`Shelf under the crown`,
          nips.map((end) => end.shelfMm),
        ),
      ],
      cautions: ['wire-ends'],
    },
    recipe !== undefined && {
      id: 'protect',
      title: say`Protect the board`,
      text: say`Wax or mask the board beside every slot, keeping the slot itself clean. Degrease tangs. ${glueWords(recipe.id).cleanUp}`,
      quantities: [],
      cautions: ['solvents'],
    },
    recipe !== undefined && {
      id: 'glue',
      title: say`Glue`,
      text: say`${glueWords(recipe.id).label}: run a bead along the slot, no more than fills it, and seat the fret before the glue sets. What is squeezed out is wasted and must come off.`,
      quantities: [
        { label: say`Per slot, mean`, value: glue.totalMm3 / glue.slots.length, unit: 'mm³', digits: 0 },
        { label: say`For all slots`, value: glue.totalMm3, unit: 'mm³', digits: 0 },
        ...spread(
          say`Bead`,
          glue.slots.map((slot) => slot.beadMm),
          1,
        ),
        { label: say`Open time, at least`, value: recipe.openMinutes[0], unit: 'min', digits: 1 },
        { label: say`Open time, at most`, value: recipe.openMinutes[1], unit: 'min', digits: 1 },
      ],
      cautions: ['glue', 'solvents'],
    },
    seating(build),
    {
      id: 'straightedge',
      title: say`Lay the straightedge on after each quarter`,
      text: say`Compare the bow with the table. If it runs ahead of the prediction by more than the band, stop and follow the advice beside the table before another fret goes in.`,
      quantities: [],
      cautions: [],
    },
    recipe !== undefined && {
      id: 'clamp',
      title: say`Clamp`,
      text: say`Clamp under a caul of the board’s radius until the glue holds. Do not string before it has set through.`,
      quantities: [
        { label: say`Clamped`, value: recipe.clampMinutes, unit: 'min', digits: 0 },
        { label: say`Strung no sooner than`, value: recipe.fullHours, unit: 'h', digits: 0 },
      ],
      cautions: ['glue'],
    },
    {
      id: 'trim',
      title: say`Trim and bevel the ends`,
      text: say`Cut the ends flush, file them down to the edge without touching the binding or the side, then bevel with the file held in a block and round the tips.${bound ? '' : say` Fill what shows of the slots.`}`,
      quantities: [
        { label: say`Bevel from the vertical`, value: build.endBevelDegrees, unit: '°', digits: 0 },
        mm(say`Foot short of the edge`, build.endInsetMm),
        ...spread(
          say`Lost at the top, per end`,
          ends.map((end) => end.bevelLossMm),
        ),
      ],
      cautions: ['wire-ends'],
    },
    {
      id: 'rest',
      title: say`Let the neck rest`,
      text: say`Leave it flat and free, in the shop’s climate, and measure the bow again before levelling: this is the number for the bench log.`,
      quantities: [{ label: say`Rest`, value: build.restDays, unit: 'day', digits: 1 }],
      cautions: [],
    },
    {
      id: 'level',
      title: say`Level, crown, polish`,
      text: say`Ink the tops, level until the file touches every fret, crown and polish. See the budget per fret; stop where a crown would fall below the least height, and take the bow out another way.`,
      quantities: [
        mm(say`Crown as bought`, build.crownHeightMm),
        mm(say`Spent on unevenness`, build.levellingLossMm),
        mm(say`Least crown`, build.leastCrownMm),
      ],
      cautions: ['dust'],
    },
    {
      id: 'string',
      title: build.rodKind === 'none' ? say`String` : say`String and set the rod`,
      text: say`Bring the strings up evenly, and let the neck settle for a day before judging its relief.${build.rodKind === 'none' ? '' : say` Then turn the rod, a quarter at a time.`}`,
      quantities: [{ label: say`Relief wanted`, value: build.targetReliefMm, unit: 'mm', digits: 2 }],
      cautions: build.rodKind === 'none' ? ['strings'] : ['strings', 'rod'],
    },
    {
      id: 'record',
      title: say`Record`,
      text: say`Write down the kerf that was gauged, the bow after each quarter and at the end, the glue and how it lets go. The next person to pull these frets needs it.`,
      quantities: [],
      cautions: [],
    },
  ];
  const called = cautionsFor(build);
  return steps
    .filter((step) => step !== false)
    .map((step) => ({ ...step, cautions: step.cautions.filter((id) => called.has(id)) }));
}
