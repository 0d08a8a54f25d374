/** Words of the dialog that hears a tapped blank. */
import { words } from '../../language.ts';

export const HEARING_WORDS = words('HEARING_WORDS', {
  title: { neck: 'Hear the neck blank', board: 'Hear the board blank' },
  /** @param distance from either end, empty while the length is not known */
  hang: (distance: string) =>
    distance === ''
      ? 'Lay the blank on two soft strings, each 22.4 % of its length from an end.'
      : `Lay the blank on two soft strings, each ${distance} from an end.`,
  place: 'Hold the microphone a hand’s width above one end, touching nothing.',
  tap: 'Tap the middle of its face with a knuckle, five times. Let each tap die away.',
  kept: 'The sound stays on this device and is not kept.',
  listen: 'Listen',
  again: 'Listen again',
  stop: 'Stop',
  openFile: 'Open a sound file …',
  opening: 'Waiting for the microphone …',
  reading: 'Reading the sound …',
  level: 'Loudness',
  levelText: (decibels: string) => `${decibels} of full scale`,
  tapsHeard: (taps: number) => (taps === 1 ? '1 tap heard' : `${taps} taps heard`),
  troubles: {
    insecure:
      'Browsers give a microphone only to pages over https, or on the machine that serves them. Open a sound file, or type the frequency.',
    none: 'This device offers no microphone. Open a sound file, or type the frequency.',
    denied:
      'The browser does not let this page use the microphone. You can allow it in the browser’s settings for this page, open a sound file, or type the frequency.',
    'in-use':
      'The microphone does not start; another program may be using it. Open a sound file, or type the frequency.',
    unreadable: 'The browser cannot read this sound file. A .wav file always works.',
    'too-long': 'This sound is longer than two minutes. Five taps take ten seconds.',
    broken: 'The search for tones broke off. Listen again, or type the frequency.',
  },
  found: (frequency: string) => `${frequency}, the first bending tone`,
  spread: (taps: number, low: string, high: string, share: string) =>
    `From ${taps} taps, ${low} to ${high}: ${share} apart.`,
  byHand: (frequency: string) => `${frequency}, chosen by hand`,
  byHandSpread: 'You are saying that this is the first bending tone.',
  take: (frequency: string) => `Use ${frequency}`,
  tones: 'Tones heard',
  picture: (expected: string) => `Spectrum of the taps.${expected === '' ? '' : ` ${expected}`}`,
  expected: (low: string, high: string) => `By its sizes and wood, expect ${low} to ${high}.`,
  expectedShort: 'expected',
  sizesMissing: 'Enter length, width and thickness first: the first tone is then easier to tell from the others.',
  line: 'Chosen tone',
  axis: 'Frequency, Hz',
  tooFew: (taps: number, needed: number) =>
    taps === 0 ? `No tap heard yet; it takes ${needed}.` : `${taps} of ${needed} taps heard.`,
  tooQuiet: (peak: string, least: string) =>
    `Too quiet: the loudest reaches ${peak} of full scale; it takes ${least}. Bring the microphone closer, or tap harder.`,
  clipped: (clipped: number, taps: number) =>
    `Too loud: ${clipped} of ${taps} taps are clipped. Move the microphone away, or tap more gently.`,
  tooNoisy: (above: string, least: string) =>
    above === ''
      ? `Too noisy: no tone rings ${least} above the noise. Quiet the room, bring the microphone closer, let the blank hang free.`
      : `Too noisy: the clearest tone rings ${above} above the noise; three taps need ${least}. Quiet the room, bring the microphone closer, let the blank hang free.`,
  hum: (frequency: string, mains: string) =>
    mains === ''
      ? `A steady tone at ${frequency} covers the taps: a fan or a motor? Switch it off and listen again.`
      : `A hum at ${frequency} covers the taps (mains, ${mains}). Move away from lamps, chargers and motors and listen again.`,
  disagree: (low: string, high: string) =>
    `The taps disagree: ${low} to ${high}; three have to agree within 1 %. Tap the same spot, and let the blank hang free.`,
  otherMode: (frequency: string, mode: string) =>
    mode === ''
      ? `The blank rings at ${frequency}, too far from what its sizes and wood suggest. Check the sizes, or choose by hand.`
      : `The blank rings at ${frequency}, most likely its ${mode} bending tone; the first is not heard. Check where the strings are, and tap the middle.`,
  modes: { 2: 'second', 3: 'third', 4: 'fourth', 5: 'fifth' },
  twoTones: (one: string, other: string) =>
    `Two tones could be the first: ${one} and ${other}. Tap exactly on the centre line: the wrong one gets weaker. Or choose by hand.`,
  notToldApart: (frequency: string) =>
    `The loudest tone is ${frequency}, but it could be any of the blank’s tones. Enter the sizes first, or choose by hand.`,
});
