import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STRING_SETS, stringsOf, suits, TUNINGS, type StringSetId, type StringSpec } from '../../src/neck/strings.ts';
import {
  musicWireStrengthMPa,
  pitchFrequencyHz,
  predictString,
  tensionN,
  unitMassKgM,
} from '../../src/mechanics/strings.ts';
import { expectNear, ROUNDING } from '../expect-near.ts';

const plain = (diameterMm: number, pitch = 64): StringSpec => ({
  construction: 'steel-plain',
  diameterMm,
  coreMm: diameterMm,
  pitch,
});

describe('pitch', () => {
  it('an octave doubles, twelve equal steps make it', () => {
    expect(pitchFrequencyHz(69)).toBe(440);
    expectNear(pitchFrequencyHz(57), 220, ROUNDING, 'an octave down');
    expectNear(pitchFrequencyHz(70) / pitchFrequencyHz(69), 2 ** (1 / 12), ROUNDING, 'a semitone');
  });
});

describe('mass', () => {
  it('of a plain string, worked by hand', () => {
    // π/4·(0.254e-3)²·7850 = 3.977654e-4 kg/m
    expectNear(unitMassKgM(plain(0.254)), 3.977654e-4, 1e-6, 'worked by hand to seven digits');
  });

  it('of a wound string: the length of a helix of close turns', () => {
    // One turn per wrap diameter: √(1 + (π·(d_c + d_w)/d_w)²) turns' length for each length of string, beside the library's π·(d_c + d_w)/d_w
    const string = { construction: 'bronze-wound', diameterMm: 1.346, coreMm: 0.56 } as const;
    const wrap = (string.diameterMm - string.coreMm) / 2;
    const turn = (Math.PI * (string.coreMm + wrap)) / wrap;
    const wrapMass = 8800 * (Math.PI / 4) * (wrap / 1000) ** 2 * Math.sqrt(1 + turn ** 2);
    const coreMass = 7850 * (Math.PI / 4) * (string.coreMm / 1000) ** 2;
    expectNear(
      unitMassKgM(string),
      coreMass + wrapMass,
      0.01,
      'the pitch of the helix is left out: under one per cent',
    );
  });

  it.each([
    ['steel-plain', 'steel-wound'],
    ['nylon-plain', 'nylon-wound'],
  ] as const)('%s is lighter or heavier than %s as its wrap is', (construction, wound) => {
    const size = { diameterMm: 1.1, coreMm: 0.5 };
    const ratio = unitMassKgM({ ...size, construction: wound }) / unitMassKgM({ ...size, construction });
    // Close round turns fill π/4 of their tube; copper is nearly eight times as dense as nylon.
    expect(wound === 'steel-wound' ? ratio < 1 : ratio > 4).toBe(true);
  });
});

describe('tension and stress (seed 1405)', () => {
  it('scale as they must', () => {
    const string = fc.record({
      diameterMm: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
      pitch: fc.integer({ min: 24, max: 76 }),
    });
    fc.assert(
      fc.property(string, fc.double({ min: 450, max: 900, noNaN: true }), ({ diameterMm, pitch }, scale) => {
        const one = predictString(plain(diameterMm, pitch), scale);
        expectNear(
          predictString(plain(2 * diameterMm, pitch), scale).tensionN,
          4 * one.tensionN,
          ROUNDING,
          'with the area',
        );
        expectNear(
          predictString(plain(diameterMm, pitch + 12), scale).tensionN,
          4 * one.tensionN,
          ROUNDING,
          'with the square of pitch',
        );
        expectNear(
          predictString(plain(diameterMm, pitch), 2 * scale).tensionN,
          4 * one.tensionN,
          ROUNDING,
          'with the square of length',
        );
        // σ = ρ·(2·L·f)² whatever the gauge
        expectNear(
          one.stressMPa,
          (7850 * ((2 * scale * one.frequencyHz) / 1000) ** 2) / 1e6,
          1e-9,
          'the gauge cancels',
        );
        expectNear(tensionN(one.unitMassKgM, scale, one.frequencyHz), one.tensionN, ROUNDING, 'one formula');
      }),
      { seed: 1405, numRuns: 100 },
    );
  });

  it('thinner wire is stronger by area, and a core carries all of a wound string’s load', () => {
    expect(musicWireStrengthMPa(0.2)).toBeGreaterThan(musicWireStrengthMPa(0.4));
    const wound = predictString({ construction: 'steel-wound', diameterMm: 1.168, coreMm: 0.45, pitch: 40 }, 648);
    expectNear(wound.stressMPa, wound.tensionN / ((Math.PI * 0.45 ** 2) / 4), ROUNDING, 'over the core');
  });
});

describe('common sets', () => {
  /** Scales that the sets are made for, mm (common practice, no source); 648 for the rest. */
  const SCALES: Partial<Record<StringSetId, number>> = {
    'six-14-68': 686,
    'eight-10-74': 686,
    'nine-9-90': 711,
    'four-nylon-22-35': 345,
    'eight-10-38': 350,
    'four-45-105': 864,
    'five-45-130': 864,
    'six-32-130': 864,
  };
  /** Pull of a string by what it is made for, N (common practice, no source). */
  const PULLS: Partial<Record<StringSetId, readonly [number, number]>> = {
    'four-nylon-22-35': [15, 45],
    'ten-nylon': [35, 90],
    'eleven-nylon': [35, 90],
  };

  it.each(STRING_SETS.map((set) => [set.id, set] as const))(
    '%s holds its tuning, and no string stands out',
    (id, set) => {
      const strings = stringsOf(id, set.tuning);
      const tensions = strings.map((string) => predictString(string, SCALES[id] ?? 648));
      expect(tensions).toHaveLength(set.strings.length);
      const [least, most] = PULLS[id] ?? [40, 260];
      for (const { tensionN: tension } of tensions) {
        expect(tension).toBeGreaterThan(least);
        expect(tension).toBeLessThan(most);
      }
      for (const { stressRatio } of tensions) expect(stressRatio).toBeLessThan(1);
    },
  );

  it('there is one for every number of strings from four to twelve that necks are built for', () => {
    const counts = new Set(STRING_SETS.map(({ strings }) => strings.length));
    expect([...counts].toSorted((a, b) => a - b)).toEqual([4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const { id, strings, tuning } of STRING_SETS) expect(stringsOf(id, tuning)).toHaveLength(strings.length);
  });

  it('a set suits strings that are tuned about as it is, in the same courses', () => {
    const set = (id: StringSetId) => STRING_SETS.find((known) => known.id === id)!;
    expect(suits(set('six-11-49'), stringsOf('six-10-46', 'six-drop-d'))).toBe(true);
    // The same number of strings, but made for others: a low six and a baritone.
    expect(suits(set('six-32-130'), stringsOf('six-10-46', 'six-standard'))).toBe(false);
    expect(suits(set('six-14-68'), stringsOf('six-10-46', 'six-standard'))).toBe(false);
    expect(suits(set('eight-10-38'), stringsOf('eight-10-74', 'eight-standard'))).toBe(false);
    expect(suits(set('four-45-105'), stringsOf('four-nylon-22-35', 'four-small'))).toBe(false);
  });

  it('the pull of 10–46 on a 648 mm scale is about what makers reckon with: 46 kg', () => {
    const pull = stringsOf('six-10-46', 'six-standard').reduce(
      (sum, string) => sum + predictString(string, 648).tensionN,
      0,
    );
    // Common practice, no source: 100 to 105 pounds.
    expectNear(pull, 102.5 * 4.448, 0.05, 'common practice, in round numbers');
  });

  it('a tuning must have as many strings as its set', () => {
    expect(() => stringsOf('six-10-46', 'four-low')).toThrow(/has 6 strings, tuning .* 4/);
    expect(() => stringsOf('no-such', 'four-low')).toThrow(/string set "no-such" is not known/);
    expect(() => stringsOf('six-10-46', 'no-such')).toThrow(/tuning "no-such" is not known/);
    expect(new Set(TUNINGS.map((tuning) => tuning.id)).size).toBe(TUNINGS.length);
  });
});
