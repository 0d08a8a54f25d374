/** What the lessons say. Names in braces are numbers of the neck on the bench, computed when they are read. */
import { words } from '../../language.ts';
import type { LessonText } from '../../lesson-text.ts';

export const LESSON_TEXTS = words('LESSON_TEXTS', {
  'one-and-all': {
    title: 'One fret and twenty-four',
    about: 'One pressed fret bends a neck by next to nothing. Two dozen of them are another matter.',
    steps: {
      bare: {
        title: 'A bare board',
        says: [
          'The slots are sawn and nothing is in them yet. A straightedge lies where the tops of the frets will be, from fret 1 to the edge of the body.',
          'The bow in the picture is drawn larger than life; by how much stands in the picture.',
        ],
      },
      one: {
        title: 'One fret',
        says: [
          'Fret 1 is in. It sits under the end of the straightedge, where it can bend nothing that shows. Now fret {fret} is pressed in.',
        ],
        question: 'How far does this one fret bend the neck?',
        after: [
          '{bow}. A sheet of writing paper is about 0.1 mm thick: nobody finds this with a straightedge and a feeler gauge.',
        ],
      },
      all: {
        title: 'And the rest',
        says: ['The others follow: every fourth fret first, then those between.'],
        question: 'Where will the tops of the frets lie when all of them are in? Drag the line.',
        after: [
          'One fret: {one}. All of them: {all}, which is {times} times as much. Each fret is a small hinge that opens by a few hundredths of a millimetre; two dozen hinges in a row make a curve.',
          'The frets beyond the edge of the body wedge their slots too, but there the heel holds the board straight.',
        ],
      },
      inside: {
        title: 'Inside a slot',
        says: [
          'Over its studs the tang is {studs} wide, and the slot is {kerf}. The studs bite into end grain on both sides and push the walls apart, along the grain.',
        ],
        question: 'With how much force does one fret push, on the mean of all?',
        after: [
          '{force}, a good deal more than a person can push with one thumb. In the picture one slot is cut open along the neck: the force acts about a millimetre below the playing surface and some ten millimetres above the middle of the neck; that distance is the lever that bends it.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: ['A wider slot lets the studs bite less: less hump, and less hold.'],
        task: 'Bring the hump down to a sheet of paper with the kerf alone, and keep every fret firm.',
        wanted: { hump: 'Bow with all frets in', holds: 'The studs bite enough everywhere' },
        done: [
          'With all frets in this neck now shows {all}. Much wider, and the frets would be loose: a hump cannot be sawn away altogether. It need not be either: what the strings make of it is a lesson of its own.',
        ],
      },
    },
  },
  'three-ways': {
    title: 'Press, glue, both',
    about: 'Three ways to seat the same frets in the same neck, and what each of them costs.',
    steps: {
      ways: {
        title: 'Three ways to seat a fret',
        says: [
          'Press fit: the slot is narrower than the tang over its studs. The studs bite and hold, and air stays beside the tang.',
          'Glue fit: the slot is sawn wide enough for the tang to drop in, and filled with glue.',
          'Press and glue: pressed in first, then the slot is filled.',
          'The first and the last can also be done on the bare board, before it is glued on. Clamped flat while the glue sets, it hands on to the neck only part of its hump.',
        ],
      },
      glued: {
        title: 'Glued frets',
        says: ['The same neck, its slots wide enough for the tangs, filled with glue. All frets go in.'],
        question: 'Where will the line of the fret tops lie? Drag it.',
        after: ['{glue}. Without a wedge nothing bends. The same frets pressed in give {press}.'],
      },
      air: {
        title: 'Air in the slots',
        says: [
          'Every slot with air beside its tang is a missing piece of beam. When the strings pull, such a neck gives more than the same neck before its slots were sawn.',
        ],
        question: 'By how many per cent more does it give?',
        after: [
          '{press}. With its slots filled it is {glue}: glue makes a stiffer neck, whether or not the frets were pressed.',
        ],
      },
      strung: {
        title: 'Strings on',
        says: [
          'The strings pull the neck forward. Two things decide what is seen then: how large the hump was before, and how much the neck gives.',
        ],
        question: 'Which one shows the most relief just after stringing?',
        options: { press: 'press fit', glue: 'glue fit', both: 'press and glue' },
        after: [
          'Press fit {press}, glue fit {glue}, press and glue {both}. The glued neck began flat, so the strings find no hump to take out, although it is stiff. The pressed and glued one began humped and is stiff as well: the strings take out least.',
        ],
      },
      price: {
        title: 'What each of them costs',
        says: [
          'Pulling one fret out again takes about {press} when it was pressed, {glue} when it was glued, {both} when it was both. Glue has to be warmed or softened first, and each pull puts the edges of the slot at risk.',
          'Pressing leaves a hump that the strings must take out, and that goes on changing for weeks. Gluing needs clamps, time and clean slots. None of the three is right for every neck: the numbers above are of this one.',
        ],
      },
      choose: {
        title: 'Over to you',
        says: [
          'A customer wants this neck as stiff as before its slots were sawn, and a relief of about two tenths of a millimetre after three months without a turn of the rod.',
        ],
        task: 'Choose the way of seating, and the kerf that goes with it.',
        wanted: { give: 'Gives more under the strings by', relief: 'Relief after three months' },
        done: [
          'Filled slots make it stiff, and the bite makes the hump that the strings have to take out. Each does one thing; the kerf sets the second.',
        ],
      },
    },
  },
  strings: {
    title: 'Why the strings make it flat',
    about: 'A humped neck comes flat under its strings, and then goes on moving.',
    steps: {
      humped: {
        title: 'Humped, and rightly so',
        says: ['All frets are pressed in, no strings. The straightedge rocks on a hump: {bow}.'],
      },
      pull: {
        title: 'The pull of the strings',
        says: ['Six strings are tuned up to pitch. Each pulls on the nut towards the bridge.'],
        question: 'How hard do they pull together?',
        after: ['{pull}: as much as {kg} kg hanging from the head.'],
      },
      strung: {
        title: 'Tuned up',
        says: ['Before: {before}.'],
        question: 'Where does the line lie once the strings are on? Drag it.',
        after: ['From {before} to {after}: the strings take the hump out, and on this neck a little more.'],
      },
      lever: {
        title: 'Why they bend it at all',
        says: [
          'A pull straight through the middle of a stick would only squeeze it. The strings run above the board, {nut} over it at the nut and {twelve} at fret 12, and the middle of the wood lies some ten millimetres below it. That lever bends the neck forward along its whole length.',
          'The arrows show the pull of the strings, and the wedges that push the other way.',
        ],
      },
      weeks: {
        title: 'And then it goes on moving',
        says: ['The strings stay on for three months.'],
        question: 'When is the relief larger?',
        options: { now: 'just after stringing', later: 'three months later' },
        after: [
          '{now} at first, {later} after three months. Wood creeps under a steady load, and the wedges let go of a part of their force as the bitten fibres settle. Both go the same way: forward.',
          'That is why a careful maker lets a neck settle before the last setting of the rod, and tells the player so.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: [
          'The hump that looked like a fault is what the strings work against. Sawn for the right hump, the neck comes to its relief by itself.',
        ],
        task: 'Find the kerf with which this neck has the relief that is wanted after three months, its rod untouched.',
        wanted: { relief: 'Relief after three months' },
        done: [
          '{hump} before the strings, {later} three months after: the kerf has been chosen for the end of the job, not for its middle.',
        ],
      },
    },
  },
  'three-blades': {
    title: 'One wire, three blades',
    about: 'The same frets in slots of three widths: how humped the neck becomes, and how firmly its frets sit.',
    steps: {
      wall: {
        title: 'Three blades on the wall',
        says: [
          'This workshop has three blades. They saw slots of 0.51, 0.58 and 0.65 mm. What counts is the slot that a blade leaves in this wood, measured in an offcut, not what is printed on the blade.',
          'The wire: its tang is {tang}, and {studs} over the studs. The slot in the picture is {kerf} wide; what the studs are wider than it has to go into the wood.',
        ],
      },
      thin: {
        title: 'The thin blade',
        says: ['All slots are sawn with the thin blade, and all frets are pressed in.'],
        question: 'Where will the line of the fret tops lie? Drag it.',
        after: ['{bow}. Each fret took about {seat} to press home.'],
      },
      wide: {
        title: 'The wide blade',
        says: [
          'The same neck and the same wire, but now the slots are {kerf} wide. The studs still bite, only less deep.',
        ],
        question: 'How far do the frets bend it now?',
        after: ['{bow}, where the thin blade gave {thin}.'],
      },
      hold: {
        title: 'What it costs',
        says: ['The hump is not the only thing that goes: the studs hold the fret by the same bite.'],
        question: 'How much force does it take now to pull a fret out, on average?',
        after: [
          '{hold}; in the thin slots it took {thin}. The bite that bends the neck is the bite that holds the fret: one cannot be had without the other. Glue can give back the hold.',
        ],
      },
      months: {
        title: 'Three months later',
        says: ['Strung and settled, the rod untouched. The slots now are those of the middle blade.'],
        question: 'With which blade does the neck have the most relief in the end?',
        options: { thin: 'the thin one', middle: 'the middle one', wide: 'the wide one' },
        after: [
          'The thin blade {thin}, the middle one {middle}, the wide one {wide}. The strings pull each neck forward by about the same. The less hump they have to take out, the more relief is left.',
        ],
      },
      strip: {
        title: 'Before the neck is sawn',
        says: [
          'How hard studs bite differs from board to board, and of all that is not known beforehand it weighs the most. So saw an offcut of this board with each of the blades, press a few frets in, and see how far it bends.',
          '“Try strips” in the menu plans such an offcut, and works out from its humps how hard this wire bites in this wood. The bands of the neck become narrower with it.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: [
          'Another neck, with a board of ebony, sawn with the thin blade so far only on paper. The player wants 0.15 mm of relief after three months without a turn of the rod, and the frets shall hold.',
        ],
        task: 'Which of the three blades would you take? Set its kerf.',
        wanted: { relief: 'Relief after three months', hold: 'Force to pull a fret out' },
        done: ['With {kerf} it settles at {relief}, and pulling a fret takes {hold}.'],
      },
    },
  },
  straightedge: {
    title: 'Reading a straightedge',
    about: 'The same neck shows a different number under another edge, or under one that rocks.',
    steps: {
      light: {
        title: 'Light under the edge',
        says: [
          'A neck that has settled under its strings. The straightedge rests on fret 1 and on fret {last}, where the body begins, and there is light between.',
          'The thickest leaf of a feeler gauge that slides through without lifting the edge is the relief: {relief}.',
        ],
      },
      short: {
        title: 'A shorter one',
        says: ['Now a shorter edge, from fret 1 to fret 7: half as long.'],
        question: 'How much light is under it?',
        after: [
          '{short}, where the long edge shows {relief}. Half as long, an edge shows about a quarter of the hollow. A short edge finds a fret that is too high; for relief it has to reach from fret 1 to the body.',
        ],
      },
      hump: {
        title: 'On a hump',
        says: [
          'The same neck before its strings, with all its frets in. The edge lies on the middle and rocks. Hold it level, with as much light under one end as under the other: that is the hump, {hump}.',
        ],
      },
      rock: {
        title: 'Held down at one end',
        says: ['A thumb holds the edge down on fret 1, and its other end lifts off fret {last}.'],
        question: 'How much light is there under that end?',
        after: [
          '{rocked}, though the hump is only {hump}. A thumb at one end turns a small hump into a large one. Hold the edge level, or lay two equal shims under its ends and measure how much less is left in the middle.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: [
          'Strung, settled, the rod set for the relief you want. The player owns nothing but the short edge, from fret 1 to fret 7, and would like a twentieth of a millimetre under it.',
        ],
        task: 'Choose the relief you want so that the short edge shows that much.',
        wanted: { short: 'Light under the short edge' },
        done: [
          '{short} under the short edge are {relief} under the long one. A relief means little without the edge that it was measured with.',
        ],
      },
    },
  },
  'why-relief': {
    title: 'Why there is relief at all',
    about: 'A plucked string needs room where it swings. A slight hollow gives it; too much takes it away again.',
    steps: {
      swing: {
        title: 'A string swings',
        says: [
          'A straight neck, {action} of action at fret 12, played as usual. In the picture one string is stopped at fret 1; its lowest line is drawn with the factor of the bow. It swings deepest well away from its ends, and the frets just beyond the finger are the nearest.',
          'The worst note has {room} of room, over fret {fret}; minus is a buzz.',
        ],
      },
      which: {
        title: 'Straight, hollow, or deep?',
        says: ['The action stays as it is; only the rod is turned.'],
        question: 'Which relief leaves the worst note the most room?',
        options: { straight: 'none, a straight neck', hollow: 'a slight hollow', deep: 'a deep hollow' },
        after: [
          'Straight it is {straight}, with a slight hollow {hollow}, with a deep one {deep}. The slight hollow follows the swing: the frets give way where the string comes down.',
        ],
      },
      deep: {
        title: 'Too much of it',
        says: [
          'In a deep hollow the neck rises again towards the body, and there the string runs into it: the worst note has {room} of room, over fret {fret}.',
        ],
      },
      lower: {
        title: 'What it is good for',
        says: [
          'With the slight hollow every note is clean down to {lowest} at fret 12; straight it took {straight}. Relief is a means: it lets the strings lie lower.',
          'Now choose another note in the chart, play harder, and find the action that this neck needs then.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: [
          'The neck is straight again and its strings lie high. A player who strikes as usual wants them low, and no buzz.',
        ],
        task: 'Lay the strings lower. Let the relief help.',
        wanted: { room: 'Room of the worst note', action: 'Action at fret 12' },
        done: [
          'As low as this a straight neck would buzz. The relief has given the room, and the action is what the player feels.',
        ],
      },
    },
  },
  'too-stiff': {
    title: 'The neck too stiff for its rod',
    about:
      'A rod moves a slim neck a long way and a thick one hardly. Then frets that are too tight cannot be put right.',
    steps: {
      slim: {
        title: 'A slim neck',
        says: [
          'A slim neck with a two-way rod, settled under its strings. The rod is turned from one end of its range to the other.',
        ],
        question: 'How far does that move the relief, from one end to the other?',
        after: ['By {travel}: from {least} to {most}. This rod has something to say.'],
      },
      stiff: {
        title: 'A thick neck of dense woods',
        says: [
          'Five pieces of wenge and purpleheart, {thickness} thick at fret 1. Stiffness grows with the third power of the thickness, and these woods are stiff to begin with.',
        ],
        question: 'How far does its rod move the relief?',
        after: ['By {travel}; the slim neck moved by {slim}.'],
      },
      tight: {
        title: 'A slot that is too narrow',
        says: [
          'The slots of this neck were sawn {kerf} wide for a tang whose body is {tang}. Now not only the studs bite: the whole tang is a wedge. The frets are pressed in, and glued.',
        ],
        question: 'Where does the line lie after three months under the strings? Drag it.',
        after: [
          'Each fret pushes with about {force}. The strings cannot take that out of so stiff a neck: {settled} after three months.',
        ],
      },
      reach: {
        title: 'What the rod can do',
        says: ['The player wants {wanted} of relief.'],
        question: 'Which is more: the relief that is wanted, or the most that the rod can give?',
        options: { wanted: 'what is wanted', reached: 'what the rod can give' },
        after: ['At one end of its range the rod gives {least}, at the other {most}. Wanted are {wanted}.'],
      },
      'one-way': {
        title: 'With a one-way rod',
        says: [
          'A one-way rod has nothing but its pull, and in a neck this thick that pull passes close to the middle of the wood and hardly bends it. With such a rod this neck lies between {least}, slack, and {most}, at the limit: humped in every setting. No turn of the nut removes a back-bow; only time, strings or a fret out of its slot do.',
        ],
      },
      'ways-out': {
        title: 'Before it is too late',
        says: [
          'The same neck with a kerf that the tang’s body just passes, pressed without glue: {settled} once settled, and the rod reaches {least}.',
          'A few hundredths of a millimetre in the kerf decide it. Measure the tang you have bought and the slot your saw cuts before the first fret goes in, and check the bow with the straightedge after each quarter of the frets.',
        ],
      },
      'within-reach': {
        title: 'Over to you',
        says: [
          'The tight neck again, pressed and glued, before its slots are sawn. The player wants {wanted} of relief.',
        ],
        task: 'Choose a kerf with which the rod reaches what the player wants.',
        wanted: { reach: 'The most relief that the rod can give', holds: 'The studs bite enough everywhere' },
        done: [
          'From here on the rod decides, and not the slots. Little of its range is left over: pressing without glue would leave more.',
        ],
      },
      rescue: {
        title: 'Saved after the second quarter',
        says: [
          'The same neck, pressed without glue from the nut on. Frets 1 to 12 are in, in slots that are too narrow, and the straightedge shows {half}. The other slots are still to be sawn. Going on like this, the rod would reach {least}; {wanted} is wanted.',
        ],
        task: 'Choose the kerf of the slots that are left, so that the rod reaches what is wanted after all.',
        wanted: { reach: 'The most relief that the rod can give', holds: 'The studs bite enough everywhere' },
        done: [
          'Reached, with {least}. It is only just so: the frets near the body bend a neck less than those in its middle, and half of the harm was done. The earlier it is measured, the more can be saved.',
        ],
      },
    },
  },
  chamfer: {
    title: 'The chamfer and the next refret',
    about: 'A small bevel on the edges of the slots that nobody sees, until the frets have to come out.',
    steps: {
      edge: {
        title: 'A sharp edge',
        says: [
          'A slot {kerf} wide with sharp edges, cut open. The fret’s studs, {studs} across, went in through these edges and sit below them in the wood.',
        ],
      },
      width: {
        title: 'A bevel under the crown',
        says: ['Now both edges are broken by a file: a chamfer {now} wide. The crown is {crown} wide and covers it.'],
        question: 'How wide could the chamfer be before it showed beside the crown?',
        after: ['{room} on each side: half of what the crown is wider than the slot.'],
      },
      pull: {
        title: 'Some day they come out',
        says: [
          'Frets wear. Someone, perhaps not you, will warm this one, get a pair of end nippers under the crown and lift. This much is computed: the force that it takes.',
        ],
        question: 'Which fret needs more force to come out?',
        options: { press: 'one that was pressed', both: 'one that was pressed and glued' },
        after: ['About {press} when pressed, {both} when pressed and glued.'],
      },
      refrets: {
        title: 'Two refrets',
        says: [
          'Pull both frets: on the left the edges are sharp, on the right they have a chamfer {now} wide. The studs come up through the same edges that they went in by.',
          'What is computed here: sizes of slot, tang and chamfer, from this neck, and the force of the step before. What is drawn for illustration: the chips. When and where ebony chips depends on the piece of wood, on heat and on the hand; no formula here says so. That a chamfer helps is common practice, and it can be understood: the edge that would break away is no longer there.',
        ],
      },
      record: {
        title: 'Tell the next one',
        says: [
          'The bench sheet records wire, tang, kerf, way of seating, glue and chamfer. Whoever pulls these frets one day works better for knowing it.',
          'The chamfer is under “The slots”; a check speaks up when it is missing, or wider than the crown covers.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: ['The edges are sharp again.'],
        task: 'Break them so that the next refret is spared and nobody sees it.',
        wanted: { covered: 'Chamfer, no wider than the crown covers', sound: 'No check speaks up about the edges' },
        done: ['The next one who pulls these frets will be glad of it.'],
      },
    },
  },
  nipping: {
    title: 'Nipping the tang over binding',
    about: 'On a bound board the tang must end before the binding that is left whole, and the crown lies over it.',
    steps: {
      bound: {
        title: 'A bound board',
        says: [
          'This board has {lines} lines of binding along each edge. The saw passes through the inner {sawn}; {whole} stays whole and closes the slot to the outside.',
          'The crown has to reach over it to the edge; the tang must not.',
        ],
      },
      nip: {
        title: 'How much to nip',
        says: [
          'The wire is cut {oversize} longer than the board at each end. The tang is nipped off under each end; the crown stays.',
        ],
        question: 'How long is the piece of tang to nip off at each end of fret 12?',
        after: [
          '{nip}: the line that is left whole, {clearance} of air, and the {oversize} that stand over the edge, measured along the bent wire. Once filed, {shelf} of crown rests on the binding.',
        ],
      },
      'all-sawn': {
        title: 'All lines sawn through',
        says: [
          'Now the saw passes through every line. The slot is open at the edge, nothing is nipped ({nip}), and the end of the tang shows from the side, where it is filed flush or the slot is filled.',
        ],
      },
      'none-sawn': {
        title: 'No line sawn through',
        says: ['The other way: the slot stops in the wood, and all lines stay whole.'],
        question:
          'Which is longer: the crown’s rest on the binding, or the wire that stands over the edge before filing?',
        options: { shelf: 'the rest on the binding', oversize: 'the wire over the edge' },
        after: [
          'The rest is {shelf}, the oversize {oversize}; {nip} are nipped. The more crown lies on binding with no tang below, the more its ends want to lift: such ends are glued, and pressed with care.',
        ],
      },
      yours: {
        title: 'Over to you',
        says: [
          'This end would not pass a customer’s eye: the saw has gone through every line, so that the tang shows from the side, and the wire was cut too short to be filed.',
        ],
        task: 'Make an end that can be shown: closed to the side, its crown at rest on the outer line alone.',
        wanted: {
          closed: 'Lines left whole',
          rests: 'Crown at rest on binding',
          clean: 'No check speaks up about the ends',
        },
        done: ['{nip} are nipped off under each end of fret 12. The plan has the nip of every fret in a table.'],
      },
    },
  },
} as const satisfies Readonly<Record<string, LessonText>>);

/** Text of a lesson. @throws {RangeError} when none has that id */
export function textOf(id: string): LessonText {
  const text = (LESSON_TEXTS as Readonly<Record<string, LessonText>>)[id];
  if (!text) throw new RangeError(`lesson "${id}" has no text`);
  return text;
}
