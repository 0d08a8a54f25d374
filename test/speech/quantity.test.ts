/** Quantities as people read them. */
import { describe, expect, it } from 'vitest';
import { displayDigits } from '../../src/neck/units.ts';
import { formatNumber, formatQuantity, formatShort } from '../../src/speech/quantity.ts';

describe('numbers as text', () => {
  it.each([
    [0.291, 'mm', 2, 'metric', '0.29\u00a0mm'],
    [0.291, 'mm', 2, 'inch', '0.011\u00a0in'],
    [-0.291, 'mm', 2, 'metric', '−0.29\u00a0mm'],
    [-0.001, 'mm', 2, 'metric', '0.00\u00a0mm'],
    [460, 'N', 0, 'inch', '103\u00a0lbf'],
    [32, '°', 0, 'metric', '32°'],
    [22, '', 0, 'inch', '22'],
    [25.4, 'µm', 0, 'inch', '1.0\u00a0thou'],
  ] as const)('%d %s with %d digits, %s: %s', (value, unit, digits, system, text) => {
    expect(formatQuantity(value, unit, digits, system)).toBe(text);
  });

  it('digits never fall below none', () => {
    expect(displayDigits(0, 'N', 'inch')).toBe(0);
    expect(displayDigits(1, 'mm', 'inch')).toBe(2);
    expect(formatNumber(-0, 1)).toBe('0.0');
    expect(formatNumber(-12.345, 1)).toBe('−12.3');
  });

  it.each([
    [1, '1\u00a0day'],
    [0, '0\u00a0days'],
    [90, '90\u00a0days'],
  ])('%d days are said in their number', (days, text) => {
    expect(formatQuantity(days, 'day', 0, 'metric')).toBe(text);
  });

  it.each([
    [0.3, 3, '0.3'],
    [4.86549, 2, '4.87'],
    [-0.0001, 2, '0'],
    [-2.5, 2, '−2.5'],
  ])('%d with at most %d digits is %s', (value, most, text) => {
    expect(formatShort(value, most)).toBe(text);
  });
});
