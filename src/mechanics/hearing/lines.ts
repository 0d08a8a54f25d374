/**
 * The lines of a tap's spectrum: what rings, how far it stands above what is around it, and whether it only hums.
 *
 *   above     20·lg(A / median of A within a factor of 1.5 about it, the line itself left out); noise alone reaches 11 dB in
 *             a whole spectrum (Rayleigh distributed, some 4 000 independent lines), a bar that rings 20 dB and more
 *   steady    amplitude in 0.2 s before the first blow over that of the line: 1 for a hum. A window of 0.2 s takes in what
 *             lies within some 8 Hz, so that it also finds a hum that only pulls a line
 *   together  lines of different taps within 1 % of each other
 */
import { median } from '../median.ts';
import { peakBetween, ringingSpectrum, toneAmplitude, type Spectrum } from './fourier.ts';
import type { Recording, Tap } from './taps.ts';

/** What is looked at: the range of the parameter, and some of the modes above it. */
export const LOWEST_HZ = 10;
export const HIGHEST_HZ = 6000;

/** Least height of a line above what is around it, dB. */
export const LEAST_ABOVE_DB = 15;
/** Before over after the blow from which a line is one that was there anyhow. */
export const STEADY = 0.6;
/** Three taps have to agree within this. */
export const AGREEMENT = 0.01;
const MOST_LINES = 24;
const RISE_S = 0.003;
const BESIDE_S = 0.2;

export interface Line {
  readonly tap: number;
  readonly frequencyHz: number;
  readonly amplitude: number;
  readonly aboveDb: number;
  /** Before the blow over after it; undefined where there is no stretch before it. */
  readonly steadiness: number | undefined;
}

export interface TapSpectrum {
  readonly spectrum: Spectrum;
  readonly lines: readonly Line[];
}

/** Lines of several taps that lie together. */
export interface Chord {
  readonly frequencyHz: number;
  readonly lowHz: number;
  readonly highHz: number;
  readonly taps: number;
  /** Median amplitude. */
  readonly amplitude: number;
  readonly aboveDb: number;
  readonly steadiness: number;
}

export const decibels = (ratio: number): number => 20 * Math.log10(Math.max(ratio, 1e-9));

/** Median amplitude about a line, of at most some two hundred of its neighbours. */
function around({ amplitudes, lineHz, widthHz }: Spectrum, line: number): number {
  const apart = Math.max((3 * widthHz) / lineHz, 0.06 * line);
  const [low, high] = [Math.max(1, Math.min(line / 1.5, line - 2 * apart)), Math.max(line * 1.5, line + 2 * apart)];
  const step = Math.max(1, Math.floor((high - low) / 200));
  const beside: number[] = [];
  for (let k = Math.round(low); k <= high && k < amplitudes.length; k += step)
    if (Math.abs(k - line) > apart) beside.push(amplitudes[k]);
  return beside.length === 0 ? Infinity : median(beside);
}

/** Lines higher than everything within 1.5 % and a tone's own width, the loudest first. */
function peaksOf({ amplitudes, lineHz, widthHz }: Spectrum): number[] {
  const peaks: number[] = [];
  const last = Math.min(amplitudes.length - 2, Math.floor(HIGHEST_HZ / lineHz));
  for (let k = Math.max(2, Math.ceil(LOWEST_HZ / lineHz)); k <= last; k += 1) {
    const here = amplitudes[k];
    if (here <= amplitudes[k - 1] || here < amplitudes[k + 1]) continue;
    const reach = Math.ceil(Math.max(0.015 * k, widthHz / lineHz));
    const beside = amplitudes.subarray(Math.max(1, k - reach), Math.min(amplitudes.length, k + reach + 1));
    if (beside.every((other) => other <= here)) peaks.push(k);
  }
  return peaks.toSorted((a, b) => amplitudes[b] - amplitudes[a]).slice(0, MOST_LINES);
}

/** Frequency of the loudest line of a recording, if it is as loud in every stretch of its first seconds. */
export function steadyTone(samples: Float32Array, rateHz: number): number | undefined {
  const spectrum = ringingSpectrum(samples.subarray(0, Math.round(1.5 * rateHz)), rateHz, RISE_S);
  const [loudest] = peaksOf(spectrum);
  if (loudest === undefined) return undefined;
  const frequencyHz = peakBetween(spectrum, loudest);
  const stretch = Math.round(BESIDE_S * rateHz);
  const loudness = Array.from({ length: Math.floor(Math.min(samples.length, 3 * rateHz) / stretch) }, (_, index) =>
    toneAmplitude(samples.subarray(index * stretch, (index + 1) * stretch), rateHz, frequencyHz),
  );
  const isSteady = Math.min(...loudness) >= STEADY * Math.max(...loudness);
  const stands = decibels(spectrum.amplitudes[loudest] / around(spectrum, loudest)) >= LEAST_ABOVE_DB;
  return isSteady && stands ? frequencyHz : undefined;
}

/** The stretch that tells what sounds anyhow: before the first tap, or where that came at once before this one. */
function stretchBefore({ samples, rateHz }: Recording, first: Tap, tap: Tap): Float32Array | undefined {
  const length = Math.round(BESIDE_S * rateHz);
  const from = [first, tap]
    .map(({ onset }) => onset - Math.round(0.015 * rateHz) - length)
    .find((sample) => sample >= 0);
  return from === undefined ? undefined : samples.subarray(from, from + length);
}

/** @param first the first tap of the recording */
export function spectrumOfTap(recording: Recording, first: Tap, tap: Tap, index: number): TapSpectrum {
  const { samples, rateHz } = recording;
  const spectrum = ringingSpectrum(samples.subarray(tap.from, tap.to), rateHz, RISE_S);
  const before = stretchBefore(recording, first, tap);
  const lines = peaksOf(spectrum).flatMap((k) => {
    const amplitude = spectrum.amplitudes[k];
    const aboveDb = decibels(amplitude / around(spectrum, k));
    if (aboveDb < LEAST_ABOVE_DB) return [];
    const frequencyHz = peakBetween(spectrum, k);
    const steadiness = before && toneAmplitude(before, rateHz, frequencyHz) / amplitude;
    return [{ tap: index, frequencyHz, amplitude, aboveDb, steadiness }];
  });
  return { spectrum, lines };
}

/** The loudest line of each tap among those that lie within 1 % above one. */
function together(lines: readonly Line[], from: number): Line[] {
  const start = lines[from].frequencyHz;
  const byTap = new Map<number, Line>();
  for (let at = from; at < lines.length && lines[at].frequencyHz <= start * (1 + AGREEMENT); at += 1) {
    const line = lines[at];
    if (line.amplitude > (byTap.get(line.tap)?.amplitude ?? 0)) byTap.set(line.tap, line);
  }
  return [...byTap.values()];
}

function chordOf(lines: readonly Line[]): Chord {
  const frequencies = lines.map(({ frequencyHz }) => frequencyHz);
  const steadiness = lines.flatMap((line) => line.steadiness ?? []);
  return {
    frequencyHz: median(frequencies),
    lowHz: Math.min(...frequencies),
    highHz: Math.max(...frequencies),
    taps: lines.length,
    amplitude: median(lines.map(({ amplitude }) => amplitude)),
    aboveDb: median(lines.map(({ aboveDb }) => aboveDb)),
    steadiness: steadiness.length === 0 ? 0 : median(steadiness),
  };
}

/** Lines gathered over the taps, those of the most taps first, then the louder. */
export function chordsOf(spectra: readonly TapSpectrum[]): Chord[] {
  let left = spectra.flatMap(({ lines }) => lines).toSorted((a, b) => a.frequencyHz - b.frequencyHz);
  const chords: Chord[] = [];
  while (left.length > 0) {
    const sum = (lines: readonly Line[]) => lines.reduce((all, { amplitude }) => all + amplitude, 0);
    const best = left
      .map((_line, from) => together(left, from))
      .reduce((one, other) =>
        other.length > one.length || (other.length === one.length && sum(other) > sum(one)) ? other : one,
      );
    const chord = chordOf(best);
    chords.push(chord);
    left = left.filter(
      ({ frequencyHz }) => frequencyHz < chord.lowHz * (1 - AGREEMENT) || frequencyHz > chord.highHz * (1 + AGREEMENT),
    );
  }
  return chords.toSorted((a, b) => b.taps - a.taps || b.amplitude - a.amplitude);
}
