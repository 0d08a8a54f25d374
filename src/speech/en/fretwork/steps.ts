/** The steps of fretting: their names and the sentences that they are made of. */
import type { StepPart, StepTitle } from '../../../fretwork/plan/steps.ts';
import { words } from '../../language.ts';

export const STEP_WORDS = words('STEP_WORDS', {
  title: 'Steps, in order',
  quarter: (index: number) => `Frets in quarter ${index}`,
  bendPastStraight: 'Bend open past straight, to radius',
  rest: 'Rest',
  titles: {
    pull: 'Pull the old frets',
    mend: 'Mend the slots',
    heat: 'Press straight with heat',
    'level-board': 'Level the board',
    saw: 'Saw the slots',
    deepen: 'Deepen the slots where needed',
    clean: 'Clean the slots out',
    gauge: 'Gauge the kerf',
    chamfer: 'Chamfer the slot edges',
    bend: 'Bend the wire',
    cut: 'Cut the frets to length',
    nip: 'Nip the tang ends',
    protect: 'Protect the board',
    glue: 'Glue',
    lay: 'Lay the frets in',
    hammer: 'Hammer the frets in',
    press: 'Press the frets in',
    straightedge: 'Lay the straightedge on after each quarter',
    clamp: 'Clamp',
    'clamp-board': 'Glue the fretted board on',
    trim: 'Trim and bevel the ends',
    rest: 'Let the neck rest',
    level: 'Level, crown, polish',
    string: 'String',
    'string-and-rod': 'String and set the rod',
    record: 'Record',
  } satisfies Readonly<Record<StepTitle, string>>,
});

export const STEP_TEXTS = words('STEP_TEXTS', {
  pull: 'Look in the record how they were seated: glue lets go with heat. Warm each fret with an iron, start at an end with flush-ground nippers, and lift in small bites along the slot without prying. Keep them in order until the new ones are in.',
  mend: 'Glue lifted chips back before anything else. Measure the kerf of every slot and enter the odd ones as a region: old slots are rarely alike. Measure the bow of the bare board too.',
  heat: 'Clamp the bare neck on a straight beam, a little past straight, with an iron or a heating blanket on the board; let it cool in the clamps. Measure it when it comes out, and again after a week before anything is planed: part of the bow comes back, and nobody can say beforehand how much.',
  'level-board': 'Bring the board dead straight under a straightedge.',
  'level-board-rod':
    'Some makers slacken the rod for this, others set it first: keep to one way, and level the frets with the rod the same.',
  'level-board-radius':
    'Check its radius along its whole length. Every fault here comes back in the fret tops. Where the plan asks for a camber, plane it in now.',
  'saw-new':
    'Saw against a fence, square to the centre line. Try saw and depth stop on an offcut of the same board first.',
  'saw-refret':
    'Only where a gauge shows less than the depth needed. A saw with more set than the old one widens the slot: match its kerf.',
  'open-slots':
    'For a glue fit the kerf is as wide as the studs, so that the whole tang slides in by hand. Open every slot that is cut narrower, as old slots and those of a board bought slotted are.',
  'floor-flat':
    'The cut is straight, so it is shallower at the edges by the board’s drop: set the stop at the centre line.',
  'floor-follows': 'The floor follows the radius: the same depth everywhere below the surface.',
  'saw-stopped': 'Stop the saw at what stays whole; finish the corners with a narrow chisel or a stopped cutter.',
  'saw-open': 'The slots run out through both edges.',
  clean: 'Run a narrow hook or an old saw blade along every slot to its full depth: dust packs in the corners.',
  'clean-binding': 'Filler and glue from the binding sit in the ends.',
  'clean-inlays':
    'Glue and filler of inlays that a slot crosses must come out to full depth too: one grain of it lifts the fret and wedges where you did not mean to.',
  gauge:
    'Try a feeler gauge or a length of tang in every tenth slot and in the offcut. The kerf decides how far the studs bite: enter what you measure, and look at the prediction again.',
  chamfer:
    'Break both edges of every slot with a fine triangular file. The chamfer lets the crown sit flat, and lets the next repairer lift the fret without tearing chips from the board. It must stay under the crown.',
  'bend-none': 'The wire is used as it comes; sight along every piece and straighten what is not straight.',
  bend: 'Bend before cutting, the tang guided in a groove.',
  'bend-open': 'The coil is tighter than the frets should be: bend it open.',
  'bend-open-straight': 'The coil is tighter than the frets should be: bend it open, to straight.',
  'bend-try': 'Hold a first piece to the board and correct: alloys differ from batch to batch.',
  cut: 'Cut with the oversize on both ends and lay the pieces out in order in a numbered rack.',
  nip: 'Nip the tang off under both ends, so that the crown can lie over the binding lines left whole, and file the burr flat: what stands proud there lifts the end.',
  protect: 'Wax or mask the board beside every slot, keeping the slot itself clean. Degrease tangs.',
  'clean-up': (_glue: string, cleanUp: string) => cleanUp,
  glue: (glue: string) =>
    `Run a bead of ${glue} along the slot, no more than fills it, and seat the fret before the glue sets. What is squeezed out is wasted and must come off.`,
  'seat-lay': 'Lay each fret in by hand and hold it down with a caul of the board’s radius: nothing should need force.',
  'seat-hammer':
    'Tap the ends in first, then work from both ends to the middle with light blows of a brass or faced hammer; heavy blows spread the crown.',
  'seat-press':
    'Press with a caul of the board’s radius or a little tighter, one steady stroke, and hold for a few seconds.',
  'order-spread':
    'Every fourth fret first, then those halfway between, then the rest: after each quarter the bow has the shape it will have in the end.',
  'order-nut-first': 'Work from the nut on.',
  'order-body-first': 'Work from the last fret on.',
  'seat-look': 'Look under every crown against the light: no gap may show.',
  'seat-open-time': 'Work fret by fret within the open time of the glue.',
  straightedge:
    'Compare the bow with the table. If it runs ahead of the prediction by more than the band, stop and follow the advice beside the table before another fret goes in.',
  'clamp-board':
    'Spread the glue, set the board on its pins and clamp it flat along its whole length, first in the middle, with a caul that spares the crowns. It pulls up between the clamps as well as at its ends: press with no less than the pressure below, and leave it until the glue has set through.',
  clamp: 'Clamp under a caul of the board’s radius until the glue holds. Do not string before it has set through.',
  trim: 'Cut the ends flush, file them down to the edge without touching the binding or the side, then bevel with the file held in a block and round the tips.',
  'trim-fill': 'Fill what shows of the slots.',
  rest: 'Leave it flat and free, in the shop’s climate, and measure the bow again before levelling: this is the number for the bench log.',
  level:
    'Ink the tops, level until the file touches every fret, crown and polish. See the budget per fret; stop where a crown would fall below the least height, and take the bow out another way.',
  string: 'Bring the strings up evenly, and let the neck settle for a day before judging its relief.',
  'string-rod': 'Then turn the rod, a quarter at a time.',
  record:
    'Write down the kerf that was gauged, the bow after each quarter and at the end, the glue and how it lets go. The next person to pull these frets needs it.',
} satisfies Readonly<Record<StepPart, string | ((...given: string[]) => string)>>);
