/** Words of the glossary. */
import { words } from '../../language.ts';

export const GLOSSARY_WORDS = words('GLOSSARY_WORDS', {
  title: 'Words of the trade',
  find: 'Find a word',
  none: (text: string) => `No word with “${text}”.`,
});

export type TermId =
  | 'scale'
  | 'board'
  | 'radius'
  | 'cone'
  | 'profile'
  | 'laminates'
  | 'flat-sawn'
  | 'quarter-sawn'
  | 'heel'
  | 'fret'
  | 'crown'
  | 'tang'
  | 'studs'
  | 'slot'
  | 'kerf'
  | 'chamfer'
  | 'press-fit'
  | 'glue-fit'
  | 'binding'
  | 'nip'
  | 'shelf'
  | 'bevel'
  | 'oversize'
  | 'straightedge'
  | 'relief'
  | 'back-bow'
  | 'rod'
  | 'action'
  | 'levelling'
  | 'settling';

export const TERM_WORDS: Readonly<
  Record<TermId, { readonly word: string; readonly also?: string; readonly means: string }>
> = words('TERM_WORDS', {
  scale: {
    word: 'scale length',
    means:
      'Length of the string that sounds, from nut to bridge. It places every fret, and with the tuning it sets how hard the strings pull.',
  },
  board: {
    word: 'board',
    also: 'fingerboard, fretboard',
    means: 'The strip of hard wood on top of the neck that carries the frets. Every slot is sawn into it.',
  },
  radius: {
    word: 'radius',
    means: 'Of the arc across the board, under the strings. A small radius is strongly arched, a flat board has none.',
  },
  cone: {
    word: 'conical board',
    also: 'compound radius',
    means:
      'A board whose radius grows from the nut to the last fret, as on the side of a cone. Each fret is bent to a radius of its own.',
  },
  profile: {
    word: 'back profile',
    means: 'Shape of the back of the neck as the hand feels it: from a V through half an ellipse to a square U.',
  },
  laminates: {
    word: 'laminates',
    means: 'Strips of different woods, glued side by side along the neck. The stiffest strips carry most.',
  },
  'flat-sawn': {
    word: 'flat-sawn',
    means: 'Sawn so that the growth rings lie flat in the board.',
  },
  'quarter-sawn': {
    word: 'quarter-sawn',
    means: 'Sawn so that the growth rings stand upright in the board.',
  },
  heel: {
    word: 'heel and body joint',
    means:
      'Where the neck grows thicker and is joined to the body. Beyond it the frets still wedge their slots, but hardly bend anything.',
  },
  fret: {
    word: 'fret',
    means: 'A piece of drawn metal wire, seated in a slot of the board: crown above, tang below.',
  },
  crown: {
    word: 'crown',
    also: 'bead',
    means:
      'The part of the fret that is seen and that the string touches. Its height is spent by levelling and by playing.',
  },
  tang: {
    word: 'tang',
    means:
      'The thin blade below the crown that sits in the slot. Where its body is wider than the slot, it wedges hard.',
  },
  studs: {
    word: 'studs',
    also: 'barbs',
    means: 'Small bumps on both sides of the tang. Pressed in, they bite into the walls of the slot and hold the fret.',
  },
  slot: {
    word: 'slot',
    means:
      'The saw cut across the board in which the tang sits. Its walls are end grain. A slot with air in it is a missing piece of beam.',
  },
  kerf: {
    word: 'kerf',
    means:
      'Width of the saw cut. A few hundredths of a millimetre decide between a fret that falls out and a neck that bows.',
  },
  chamfer: {
    word: 'chamfer',
    means:
      'Small bevel on both edges of the slot, hidden under the crown. It lets the tang start straight, and saves the edges when the fret is pulled one day.',
  },
  'press-fit': {
    word: 'press fit',
    means:
      'Seating by force alone: the slot is narrower than the tang over its studs, and the studs bite. Each fret wedges its slot open a little.',
  },
  'glue-fit': {
    word: 'glue fit',
    means: 'Seating by glue: the slot takes the tang without force and is filled. No wedge, and a stiffer neck.',
  },
  binding: {
    word: 'binding',
    also: 'purfling',
    means:
      'Strips of wood or plastic along the edge of the board. The saw passes through some lines and stops before others.',
  },
  nip: {
    word: 'nip',
    means: 'Cutting the tang off under the end of the fret, so that the crown can lie over binding that is left whole.',
  },
  shelf: {
    word: 'shelf',
    means: 'The binding on which the bare end of the crown rests, with no tang below.',
  },
  bevel: {
    word: 'end bevel',
    means: 'Slope to which the ends of the frets are filed, so that the hand does not catch on them.',
  },
  oversize: {
    word: 'oversize',
    means: 'Wire left over each edge of the board until it is cut flush and filed.',
  },
  straightedge: {
    word: 'straightedge',
    means:
      'A true bar of steel, laid on the frets from the first to the edge of the body. The gap under it, or its rocking, shows the bow.',
  },
  relief: {
    word: 'relief',
    also: 'forward bow',
    means: 'A hollow of the fret tops under the straightedge. The strings need a little of it to swing.',
  },
  'back-bow': {
    word: 'back-bow',
    means: 'A hump: the opposite of relief. Strings buzz on it, and a one-way rod cannot take it out.',
  },
  rod: {
    word: 'rod',
    also: 'truss rod',
    means: 'A bar in the neck with a nut on its end. One-way, it bends the neck backwards only; two-way, both ways.',
  },
  action: {
    word: 'string height',
    also: 'action',
    means:
      'How high the strings lie over the board, or over the frets. Relief is a part of it in the middle of the neck.',
  },
  levelling: {
    word: 'levelling',
    means:
      'Filing the tops of the frets to one line. What the file takes is gone from the crowns; they are rounded again afterwards.',
  },
  settling: {
    word: 'settling',
    means:
      'What the neck does in the weeks under its strings: the wood creeps forward, and the wedges let go of a part of their force.',
  },
});
