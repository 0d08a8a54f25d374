/**
 * The tap test by ear: from a recording of a few taps on a free bar to the frequency of its first bending mode, or to why it
 * cannot be told. Method: ASTM E1876 (impulse excitation; the bar hung at 22.4 % of its length from both ends, at the nodes
 * of that mode, and tapped at the middle). Three taps have to agree within 1 %; what is given is their median.
 */
import {
  chordsOf,
  decibels,
  steadyTone,
  spectrumOfTap,
  LEAST_ABOVE_DB,
  STEADY,
  type Chord,
  type TapSpectrum,
} from './lines.ts';
import { chooseFirst } from './modes.ts';
import { floorOf, findTaps, frameEnergies, type Recording, type Tap } from './taps.ts';
import { overview, type Overview } from './overview.ts';
import type { Expected } from './expected.ts';

export const TAPS_NEEDED = 3;
/** Quieter than this a microphone's own noise is near. Of full scale. */
const LEAST_PEAK = 0.003;
/** A hum of this share of a line may move its peak by a tenth of its width. */
const HUM_SHARE = 0.25;
const MAINS_HZ = [50, 60] as const;

export type Refusal =
  | { readonly code: 'too-few-taps'; readonly taps: number; readonly needed: number }
  | { readonly code: 'too-quiet'; readonly peakDb: number; readonly leastDb: number }
  | { readonly code: 'clipped'; readonly clipped: number; readonly taps: number }
  | { readonly code: 'too-noisy'; readonly aboveDb: number | undefined; readonly leastDb: number }
  | { readonly code: 'hum'; readonly frequencyHz: number; readonly mainsHz: number | undefined }
  | { readonly code: 'taps-disagree'; readonly lowHz: number; readonly highHz: number }
  | { readonly code: 'other-mode'; readonly frequencyHz: number; readonly mode: number | undefined }
  | { readonly code: 'two-tones'; readonly frequencyHz: number; readonly otherHz: number }
  | { readonly code: 'not-told-apart'; readonly frequencyHz: number };

export interface Tone {
  readonly frequencyHz: number;
  readonly lowHz: number;
  readonly highHz: number;
  /** How many taps it was taken from. */
  readonly taps: number;
}

export interface Heard {
  /** Taps of any kind. */
  readonly taps: number;
  readonly tone: Tone | undefined;
  /** Undefined with a tone. */
  readonly refusal: Refusal | undefined;
  /** Tones on which three taps agree, from low to high, for a choice by hand. */
  readonly tones: readonly Tone[];
  /** Undefined where there was no tap. */
  readonly overview: Overview | undefined;
}

const toneOf = ({ frequencyHz, lowHz, highHz, taps }: Chord): Tone => ({ frequencyHz, lowHz, highHz, taps });

function mainsOf(frequencyHz: number): number | undefined {
  return MAINS_HZ.find((mains) => {
    const multiple = Math.max(1, Math.round(frequencyHz / mains));
    // As wide as the stretch in which a hum is looked for.
    return Math.abs(frequencyHz - multiple * mains) < 5;
  });
}

const humOf = ({ frequencyHz }: Chord): Refusal => ({ code: 'hum', frequencyHz, mainsHz: mainsOf(frequencyHz) });

/** Why a recording has no taps. */
function unheard(recording: Recording): Refusal {
  const { samples, rateHz } = recording;
  const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  if (peak < LEAST_PEAK) return { code: 'too-quiet', peakDb: decibels(peak), leastDb: decibels(LEAST_PEAK) };
  // Noise by itself has peaks of some 13 dB above its mean.
  const isDrowned = decibels(peak / Math.sqrt(floorOf(frameEnergies(recording)))) < 20;
  if (!isDrowned) return { code: 'too-few-taps', taps: 0, needed: TAPS_NEEDED };
  const humHz = steadyTone(samples, rateHz);
  return humHz === undefined
    ? { code: 'too-noisy', aboveDb: undefined, leastDb: LEAST_ABOVE_DB }
    : { code: 'hum', frequencyHz: humHz, mainsHz: mainsOf(humHz) };
}

function unusable(taps: readonly Tap[], clean: readonly Tap[]): Refusal | undefined {
  if (clean.length >= TAPS_NEEDED) return undefined;
  const clipped = taps.filter((tap) => tap.isClipped).length;
  const quiet = taps.filter(({ peak }) => peak < LEAST_PEAK).length;
  if (taps.length < TAPS_NEEDED || (clipped === 0 && quiet === 0))
    return { code: 'too-few-taps', taps: taps.length, needed: TAPS_NEEDED };
  if (clipped >= quiet) return { code: 'clipped', clipped, taps: taps.length };
  const peakDb = decibels(Math.max(...taps.map(({ peak }) => peak)));
  return { code: 'too-quiet', peakDb, leastDb: decibels(LEAST_PEAK) };
}

const isWithin = ({ frequencyHz }: { frequencyHz: number }, expected: Expected | undefined): boolean =>
  !expected || (frequencyHz >= expected.lowHz && frequencyHz <= expected.highHz);

/** Why there is no tone that three taps agree on. */
function noTone(spectra: readonly TapSpectrum[], chords: readonly Chord[], expected: Expected | undefined): Refusal {
  const ringing = spectra.flatMap(({ lines }) => {
    const within = lines.filter((line) => isWithin(line, expected) && !((line.steadiness ?? 0) >= STEADY));
    return within.length === 0 ? [] : [within.reduce((one, other) => (other.amplitude > one.amplitude ? other : one))];
  });
  if (ringing.length >= TAPS_NEEDED) {
    const frequencies = ringing.map(({ frequencyHz }) => frequencyHz);
    return { code: 'taps-disagree', lowHz: Math.min(...frequencies), highHz: Math.max(...frequencies) };
  }
  const hum = chords.find((chord) => chord.steadiness >= STEADY && isWithin(chord, expected));
  if (hum) return humOf(hum);
  const above = Math.max(...spectra.flatMap(({ lines }) => lines.map(({ aboveDb }) => aboveDb)), -Infinity);
  return {
    code: 'too-noisy',
    aboveDb: above === -Infinity ? undefined : above,
    leastDb: LEAST_ABOVE_DB,
  };
}

type Verdict = { readonly tone: Tone } | { readonly refusal: Refusal };

function verdictOf(
  ringing: readonly Chord[],
  all: readonly Chord[],
  spectra: readonly TapSpectrum[],
  expected: Expected | undefined,
): Verdict {
  if (ringing.length === 0) return { refusal: noTone(spectra, all, expected) };
  const choice = chooseFirst(ringing, expected);
  const { frequencyHz, steadiness } = choice.chord;
  switch (choice.kind) {
    case 'first':
      return steadiness > HUM_SHARE ? { refusal: humOf(choice.chord) } : { tone: toneOf(choice.chord) };
    case 'two':
      return { refusal: { code: 'two-tones', frequencyHz, otherHz: choice.other.frequencyHz } };
    case 'alone':
      return { refusal: { code: 'not-told-apart', frequencyHz } };
    case 'other-mode': {
      // Nothing rings where the first mode has to be: a hum there, or taps that differ, is the nearer reason.
      const nearer = noTone(spectra, all, expected);
      return { refusal: nearer.code === 'too-noisy' ? { code: 'other-mode', frequencyHz, mode: choice.mode } : nearer };
    }
  }
}

/** @param expected where the first tone has to lie; undefined while the blank's sizes are not known */
export function hear(recording: Recording, expected: Expected | undefined): Heard {
  const taps = findTaps(recording);
  if (taps.length === 0)
    return { taps: 0, tone: undefined, refusal: unheard(recording), tones: [], overview: undefined };
  const clean = taps.filter((tap) => !tap.isClipped && tap.peak >= LEAST_PEAK);
  const spectra = (clean.length > 0 ? clean : taps).map((tap, index) => spectrumOfTap(recording, taps[0], tap, index));
  const chords = chordsOf(spectra);
  const agreed = chords.filter(
    (chord) => chord.taps >= TAPS_NEEDED && 2 * chord.taps >= clean.length && chord.steadiness < STEADY,
  );
  const refusal = unusable(taps, clean);
  const verdict: Verdict = refusal ? { refusal } : verdictOf(agreed, chords, spectra, expected);
  return {
    taps: taps.length,
    tone: 'tone' in verdict ? verdict.tone : undefined,
    refusal: 'refusal' in verdict ? verdict.refusal : undefined,
    tones: refusal ? [] : agreed.map(toneOf).toSorted((a, b) => a.frequencyHz - b.frequencyHz),
    overview: overview(spectra.map(({ spectrum }) => spectrum)),
  };
}
