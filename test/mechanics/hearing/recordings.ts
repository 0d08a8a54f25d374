/** Recordings of taps on a bar, made up: decaying modes, the crack of the blow, noise, hum, cut crests. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { seededRandom } from '../../../src/mechanics/uncertainty/normal.ts';
import type { Recording } from '../../../src/mechanics/hearing/taps.ts';

export interface Mode {
  readonly frequencyHz: number;
  /** Loudness at the blow, 1 at full scale. */
  readonly amplitude: number;
  /** Periods times π in which it dies away to 1/e; of wood some 50 to 150. */
  readonly quality: number;
}

export interface Sound {
  readonly seed: number;
  readonly modes: readonly Mode[];
  readonly taps?: number;
  readonly rateHz?: number;
  readonly pauseS?: number;
  /** Each tap's tones are off by up to this share, another for each. */
  readonly scatter?: number;
  /** Root mean square of white noise. */
  readonly noise?: number;
  readonly hum?: readonly { readonly frequencyHz: number; readonly amplitude: number }[];
  /** Crests higher than this are cut off. */
  readonly ceiling?: number;
  readonly crack?: number;
}

/** First modes of a free bar of maple 1/30 as thick as long (Timoshenko, E/(5G/6) = 10.8): 1, 2.704 … */
export const BAR_RATIOS = [1, 2.704, 5.148, 8.19] as const;

/** A bar's modes as a tap at its middle wakes them: those with a node there hardly. */
export function bar(firstHz: number, amplitudes: readonly number[] = [0.3, 0.02, 0.12, 0.01], quality = 90): Mode[] {
  return amplitudes.map((amplitude, index) => ({ frequencyHz: firstHz * BAR_RATIOS[index], amplitude, quality }));
}

/** Standard normal deviates (Box & Muller 1958). */
export function gaussian(seed: number): () => number {
  const random = seededRandom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniformFloat64(random))) * Math.cos(2 * Math.PI * uniformFloat64(random));
}

export function recorded(sound: Sound): Recording {
  const { seed, modes, taps = 5, rateHz = 48_000, pauseS = 0.9, scatter = 0, noise = 0.0005, ceiling = 1 } = sound;
  const random = gaussian(seed);
  const samples = new Float32Array(Math.round(rateHz * (0.6 + taps * pauseS)));
  for (let tap = 0; tap < taps; tap += 1) {
    const start = Math.round(rateHz * (0.5 + tap * pauseS + 0.05 * Math.sin(7 * tap + seed)));
    const strength = 0.75 + 0.25 * Math.sin(3 * tap + seed);
    const off = 1 + scatter * Math.sin(2.4 * tap + 1);
    for (const { frequencyHz, amplitude, quality } of modes) {
      const decay = (Math.PI * frequencyHz) / quality;
      const phase = 6 * Math.sin(seed + 10 * tap);
      const length = Math.min(samples.length - start, Math.round((rateHz * 9) / decay));
      for (let n = 0; n < length; n += 1) {
        const t = n / rateHz;
        samples[start + n] +=
          strength * amplitude * Math.exp(-decay * t) * Math.sin(2 * Math.PI * frequencyHz * off * t + phase);
      }
    }
    for (let n = 0; n < 0.004 * rateHz; n += 1)
      samples[start + n] += (sound.crack ?? 0.1) * strength * Math.exp(-n / (0.001 * rateHz)) * random();
  }
  for (let n = 0; n < samples.length; n += 1) {
    const hum = (sound.hum ?? []).reduce(
      (sum, { frequencyHz, amplitude }) => sum + amplitude * Math.sin((2 * Math.PI * frequencyHz * n) / rateHz + 0.3),
      0,
    );
    const whole = samples[n] + hum + noise * random();
    // Sixteen bits, as phones record.
    samples[n] = Math.round(32_767 * Math.max(-ceiling, Math.min(ceiling, whole))) / 32_767;
  }
  return { samples, rateHz };
}
