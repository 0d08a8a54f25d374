/**
 * Spectrum of a stretch of sound.
 *
 *   X_k = Σ w_n·x_n·e^(−2πi·kn/N)     x samples, w window, N a power of two, the rest of it zeros
 *   A_k = |X_k| / Σ w_n               a steady tone of amplitude A on a line reads A/2
 *   peak between lines: a parabola through the logarithms of three neighbours, δ = ½·(a − c)/(a − 2b + c) lines
 *
 * Fast transform: radix two, in place (Cooley & Tukey 1965, Math. Comp. 19:297). The parabola on a log scale is exact for a
 * window whose line is a Gaussian, and within some thousandths of a line for the ones used here once the stretch is padded
 * to twice its length.
 */
export interface Spectrum {
  /** Amplitude by line, from 0 Hz. */
  readonly amplitudes: Float64Array;
  /** Distance of two lines, Hz. */
  readonly lineHz: number;
  /** Width of a steady tone's line, Hz: about 1/length. */
  readonly widthHz: number;
}

/** The transform of complex numbers, in place; their count is a power of two. */
export function transform(real: Float64Array, imaginary: Float64Array): void {
  const count = real.length;
  for (let from = 1, to = 0; from < count; from += 1) {
    let bit = count >> 1;
    for (; to & bit; bit >>= 1) to ^= bit;
    to ^= bit;
    if (from < to) {
      [real[from], real[to]] = [real[to], real[from]];
      [imaginary[from], imaginary[to]] = [imaginary[to], imaginary[from]];
    }
  }
  for (let size = 2; size <= count; size *= 2) {
    const half = size / 2;
    for (let k = 0; k < half; k += 1) {
      // Each turn from its own angle: repeated multiplication would gather rounding over a hundred thousand lines.
      const cosine = Math.cos((-2 * Math.PI * k) / size);
      const sine = Math.sin((-2 * Math.PI * k) / size);
      for (let at = k; at < count; at += size) {
        const other = at + half;
        const re = real[other] * cosine - imaginary[other] * sine;
        const im = real[other] * sine + imaginary[other] * cosine;
        real[other] = real[at] - re;
        imaginary[other] = imaginary[at] - im;
        real[at] += re;
        imaginary[at] += im;
      }
    }
  }
}

/** Most lines that a spectrum is made of: more would be finer than any ringing bar. */
const MOST_LINES = 2 ** 17;

/**
 * The spectrum of a ringing that begins loud and dies away: a short rise against the crack of the edge, then half a cosine
 * down to nothing.
 * @param riseS seconds that the window takes to open
 */
export function ringingSpectrum(samples: Float32Array, rateHz: number, riseS: number): Spectrum {
  const { length } = samples;
  const rise = Math.max(1, Math.round(riseS * rateHz));
  const count = Math.min(MOST_LINES, 2 ** Math.ceil(Math.log2(2 * length)));
  const real = new Float64Array(count);
  let weight = 0;
  for (let n = 0; n < Math.min(length, count); n += 1) {
    const open = n < rise ? 0.5 - 0.5 * Math.cos((Math.PI * (n + 0.5)) / rise) : 1;
    const window = open * (0.5 + 0.5 * Math.cos((Math.PI * n) / length));
    real[n] = window * samples[n];
    weight += window;
  }
  const imaginary = new Float64Array(count);
  transform(real, imaginary);
  const amplitudes = new Float64Array(count / 2);
  for (let k = 0; k < amplitudes.length; k += 1) amplitudes[k] = Math.hypot(real[k], imaginary[k]) / weight;
  return { amplitudes, lineHz: rateHz / count, widthHz: rateHz / length };
}

/** Amplitude of one tone in a stretch, by a Hann window. */
export function toneAmplitude(samples: Float32Array, rateHz: number, frequencyHz: number): number {
  const turn = (2 * Math.PI * frequencyHz) / rateHz;
  const [turnCosine, turnSine] = [Math.cos(turn), Math.sin(turn)];
  const step = (2 * Math.PI) / samples.length;
  const [stepCosine, stepSine] = [Math.cos(step), Math.sin(step)];
  // Both circles are walked step by step: over some thousand steps rounding stays below 1e-12.
  let [cosine, sine, windowCosine, windowSine] = [1, 0, Math.cos(step / 2), Math.sin(step / 2)];
  let [real, imaginary, weight] = [0, 0, 0];
  for (const sample of samples) {
    const window = 0.5 - 0.5 * windowCosine;
    real += window * sample * cosine;
    imaginary += window * sample * sine;
    weight += window;
    [cosine, sine] = [cosine * turnCosine - sine * turnSine, cosine * turnSine + sine * turnCosine];
    [windowCosine, windowSine] = [
      windowCosine * stepCosine - windowSine * stepSine,
      windowCosine * stepSine + windowSine * stepCosine,
    ];
  }
  return weight === 0 ? 0 : Math.hypot(real, imaginary) / weight;
}

/** Frequency of the peak about a line that is higher than its neighbours, Hz. */
export function peakBetween({ amplitudes, lineHz }: Spectrum, line: number): number {
  const [a, b, c] = [line - 1, line, line + 1].map((k) => Math.log(amplitudes[k] + Number.MIN_VALUE)) as [
    number,
    number,
    number,
  ];
  const bend = a - 2 * b + c;
  return lineHz * (line + (bend < 0 ? (0.5 * (a - c)) / bend : 0));
}
