/** What was heard of a tapped blank, in words. */
import type { Expected } from '../../mechanics/hearing/expected.ts';
import type { Refusal, Tone } from '../../mechanics/hearing/hear.ts';
import { HEARING_WORDS } from '../en/pages/hearing.ts';
import { formatNumber, formatQuantity, withUnit } from '../quantity.ts';

export const hertz = (frequencyHz: number): string => formatQuantity(frequencyHz, 'Hz', 1, 'metric');

const decibels = (value: number): string => withUnit(formatNumber(value, 0), 'dB');

export function refusalOfHearing(refusal: Refusal): string {
  switch (refusal.code) {
    case 'too-few-taps':
      return HEARING_WORDS.tooFew(refusal.taps, refusal.needed);
    case 'too-quiet':
      return HEARING_WORDS.tooQuiet(decibels(refusal.peakDb), decibels(refusal.leastDb));
    case 'clipped':
      return HEARING_WORDS.clipped(refusal.clipped, refusal.taps);
    case 'too-noisy':
      return HEARING_WORDS.tooNoisy(
        refusal.aboveDb === undefined ? '' : decibels(refusal.aboveDb),
        decibels(refusal.leastDb),
      );
    case 'hum':
      return HEARING_WORDS.hum(
        hertz(refusal.frequencyHz),
        refusal.mainsHz === undefined ? '' : formatQuantity(refusal.mainsHz, 'Hz', 0, 'metric'),
      );
    case 'taps-disagree':
      return HEARING_WORDS.disagree(hertz(refusal.lowHz), hertz(refusal.highHz));
    case 'other-mode': {
      const { mode } = refusal;
      const name = mode === undefined ? '' : HEARING_WORDS.modes[mode as keyof typeof HEARING_WORDS.modes];
      return HEARING_WORDS.otherMode(hertz(refusal.frequencyHz), name);
    }
    case 'two-tones':
      return HEARING_WORDS.twoTones(hertz(refusal.frequencyHz), hertz(refusal.otherHz));
    case 'not-told-apart':
      return HEARING_WORDS.notToldApart(hertz(refusal.frequencyHz));
  }
}

/** From how many taps a tone was taken, and how far they are apart. */
export function spreadOfTone({ frequencyHz, lowHz, highHz, taps }: Tone): string {
  const share = withUnit(formatNumber((100 * (highHz - lowHz)) / frequencyHz, 2), '%');
  return HEARING_WORDS.spread(taps, hertz(lowHz), hertz(highHz), share);
}

/** Where the first tone is looked for. */
export function expectedText({ lowHz, highHz }: Expected): string {
  const [low, high] = [lowHz, highHz].map((value) => formatQuantity(value, 'Hz', 0, 'metric')) as [string, string];
  return HEARING_WORDS.expected(low, high);
}

/** A level of sound below full scale. */
export const levelText = (level: number): string =>
  HEARING_WORDS.levelText(decibels(20 * Math.log10(Math.max(level, 1e-4))));
