/** The verdict above the picture, as one maker says it to another. */
import type { Build } from '../../../neck/build.ts';
import type { RodAnswer } from '../../../mechanics/inversion/rod.ts';
import { words } from '../../language.ts';

export const VERDICT_WORDS = words('VERDICT_WORDS', {
  title: 'Verdict',
  restTitle: 'More of the verdict',
  saw: (kerf: string, depth: string) => `Saw ${kerf}, ${depth} deep;`,
  asTheyAre: (kerf: string) => `Leave the slots at ${kerf};`,
  seat: (method: Build['method'], tool: Build['seatingTool'], force: string) => {
    const verb = tool === 'hammer' ? 'hammer in' : 'press in';
    if (method === 'glue') return 'glue in, by hand;';
    const how = method === 'both' ? `${verb} with glue` : verb;
    return force === '' ? `${how}, no force needed;` : `${how}, about ${force} a fret;`;
  },
  nip: (size: string) => `nip ${size} of tang at each end.`,
  nipNone: 'nothing to nip.',
  expect: (fretted: string, settled: string) => `Expect ${fretted} with the frets in, ${settled} strung and settled`,
  sure: (band: string) => ` (90 % sure: ${band}).`,
  unsure: '.',
  rod: (setting: string, relief: string) => `Rod: ${setting} for ${relief}.`,
  rodSnug: (relief: string) => `Leave the rod snug: ${relief} by itself.`,
  rodNearest: (setting: string, relief: string) => `The nearest the rod comes: ${setting}, ${relief}.`,
  chance: (of100: string) => `It gets there in ${of100} of 100 such necks.`,
  decides: (input: string) => `What decides most: ${input}.`,
  feel: (action: string, notes: string) => `Played medium at ${action} action: ${notes}.`,
  clean: 'every note is clean',
  buzz: (count: string) => `${count} buzz`,
  notes: (count: string, of: string) => `${count} of ${of} notes`,
  not: (why: string) => `It will not come out as wanted: ${why}`,
  rodStatus: {
    reached: '',
    'no-rod': 'there is no rod to correct it.',
    'cannot-forward': 'the rod only bends it backwards, and it lies too far back already.',
    'cannot-backward': 'the rod only bends it forwards, and it lies too far forward already.',
    'too-weak': 'the rod is too weak for it.',
    'between-shapes': '',
    'no-nearer': 'turned further, the rod bends another stretch away.',
  } satisfies Record<RodAnswer['status'], string>,
  /** A title in the middle of a sentence. */
  stopped: (title: string) => `${title}.`,
  searching: 'Looking for the least change that helps …',
  change: (what: string) => `Least change that helps: ${what}.`,
  kerf: (to: string, from: string) => `saw ${to}, not ${from}`,
  depth: (to: string, from: string) => `slots ${to} deep, not ${from}`,
  method: (label: string) => `${label}`,
  noChange: 'No other blade, depth or way of seating alone brings it there.',
  take: 'Take it over',
  step: (what: string) => `Verdict: ${what}`,
});
