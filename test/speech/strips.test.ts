/** Try strips in words: in the reader's units, with equal digits for a number and its range. */
import { describe, expect, test } from 'vitest';
import { humpBandText, instrumentText } from '../../src/speech/measured/strips.ts';

describe('a strip in words', () => {
  test.each([
    ['feelers', 'metric', 'feelers, ±0.05\u00a0mm'],
    ['feelers', 'inch', 'feelers, ±0.002\u00a0in'],
    ['ruler', 'metric', 'a ruler, ±0.5\u00a0mm'],
    ['ruler', 'inch', 'a ruler, ±0.02\u00a0in'],
    ['own', 'inch', 'your own instrument'],
  ] as const)('the error of an instrument: %s, %s', (instrument, system, text) => {
    expect(instrumentText(instrument, system)).toBe(text);
  });

  test('the ends of a range have the digits of its middle', () => {
    const band = { p05: 0.52, p50: 1.24, p95: 2.96 };
    expect(humpBandText(band, 'metric')).toBe('Expect a hump of 1.2\u00a0mm (90 % sure: 0.5\u00a0mm to 3.0\u00a0mm).');
  });
});
