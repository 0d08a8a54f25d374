import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DARK, LIGHT } from '../../src/app/palettes.ts';

/** Token → its colour by day and by night, from the style sheet itself. */
const TOKENS = new Map(
  [
    ...readFileSync(new URL('../../src/app/style/tokens.css', import.meta.url), 'utf8').matchAll(
      /--([\w-]+): light-dark\((#[\da-f]{6}), (#[\da-f]{6})\)/g,
    ),
  ].map(([, name, light, dark]) => [name, { light: light, dark: dark }]),
);
const token = (name: string, by: 'light' | 'dark') => TOKENS.get(name)![by];

type Rgb = [number, number, number];

/** Linear light of an sRGB colour (IEC 61966-2-1). */
function linear(hex: string): Rgb {
  return [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as Rgb;
}

/** Contrast ratio of WCAG 2.2. */
function contrast(a: string, b: string): number {
  const luminance = (hex: string) => {
    const [red, green, blue] = linear(hex);
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** Full deficiency of each kind of cone: Machado, Oliveira & Fernandes 2009, Table 1, severity 1.0 (from memory). */
const VISION: Record<string, [Rgb, Rgb, Rgb]> = {
  full: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIELAB under D65 of a colour as somebody with this vision sees it. */
function seen(hex: string, vision: string): Rgb {
  const light = linear(hex);
  const [red, green, blue] = VISION[vision].map((row) =>
    Math.min(1, Math.max(0, row[0] * light[0] + row[1] * light[1] + row[2] * light[2])),
  ) as Rgb;
  const f = (t: number) => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const x = f((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
  const y = f(0.2126 * red + 0.7152 * green + 0.0722 * blue);
  const z = f((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

test('the picture has the colours of the page', () => {
  for (const name of ['ground', 'ink', 'accent'] as const) {
    expect([LIGHT[name], DARK[name]]).toEqual([token(name, 'light'), token(name, 'dark')]);
  }
});

describe.each(['light', 'dark'] as const)('by %s', (by) => {
  test.each(['ink', 'ink-soft', 'accent-text', 'alarm', 'press', 'glue', 'both'])(
    '%s can be read on the ground',
    (name) => {
      // WCAG 2.2, 1.4.3: 4.5 for text.
      expect(contrast(token(name, by), token('ground', by))).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(['accent', 'rule-firm'])('%s can be seen on the ground', (name) => {
    // WCAG 2.2, 1.4.11: 3 for what is no text.
    expect(contrast(token(name, by), token('ground', by))).toBeGreaterThanOrEqual(3);
  });

  test.each(Object.keys(VISION))('the methods are told apart by colour with %s vision', (vision) => {
    const colours = ['press', 'glue', 'both'].map((name) => seen(token(name, by), vision));
    const distances = [0, 1, 2].map((at) => {
      const [a, b] = [colours[at], colours[(at + 1) % 3]];
      return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
    });
    // A just noticeable difference is about 2.3 (Mahy 1994, from memory): ten of them.
    expect(Math.min(...distances)).toBeGreaterThan(23);
  });
});
