/** The fast transform against the sum that it stands for, and peaks between lines against tones of a known frequency. */
import { describe, expect, test } from 'vitest';
import { peakBetween, ringingSpectrum, toneAmplitude, transform } from '../../../src/mechanics/hearing/fourier.ts';
import { expectNear } from '../../expect-near.ts';
import { gaussian } from './recordings.ts';

const tone = (frequencyHz: number, amplitude: number, decay = 0): Float32Array =>
  Float32Array.from(
    { length: 48_000 },
    (_, n) => amplitude * Math.exp((-decay * n) / 48_000) * Math.sin((2 * Math.PI * frequencyHz * n) / 48_000 + 0.7),
  );

test.each([1, 2, 8, 256])('the transform of %i numbers is the sum that it stands for (seed 9)', (count) => {
  const random = gaussian(9);
  const given = Array.from({ length: count }, () => [random(), random()] as const);
  const real = Float64Array.from(given, ([re]) => re);
  const imaginary = Float64Array.from(given, ([, im]) => im);
  transform(real, imaginary);
  for (let k = 0; k < count; k += 1) {
    let [re, im] = [0, 0];
    given.forEach(([a, b], n) => {
      const angle = (-2 * Math.PI * k * n) / count;
      re += a * Math.cos(angle) - b * Math.sin(angle);
      im += a * Math.sin(angle) + b * Math.cos(angle);
    });
    // Rounding of 256 sums of numbers about 1.
    expect(Math.hypot(real[k] - re, imaginary[k] - im)).toBeLessThan(1e-11);
  }
});

describe('a tone between two lines', () => {
  test.each([61.37, 182.4, 182.6, 940.05])('of %f Hz is read to a fiftieth of a line’s width', (frequencyHz) => {
    for (const decay of [0, 6]) {
      const spectrum = ringingSpectrum(tone(frequencyHz, 0.5, decay), 48_000, 0.003);
      const highest = spectrum.amplitudes.indexOf(Math.max(...spectrum.amplitudes));
      expect(Math.abs(peakBetween(spectrum, highest) - frequencyHz)).toBeLessThan(0.02 * spectrum.widthHz);
    }
  });

  test('is measured by itself, whatever rings far from it', () => {
    const far = tone(500, 0.5);
    const both = tone(182.4, 0.5).map((sample, n) => sample + far[n]);
    // Hann's feet fall with the third power of the distance: nothing is left of them over 300 lines.
    expectNear(toneAmplitude(both, 48_000, 182.4), 0.25, 1e-4, 'feet of the other tone');
    expect(toneAmplitude(both, 48_000, 320)).toBeLessThan(1e-4);
  });
});
