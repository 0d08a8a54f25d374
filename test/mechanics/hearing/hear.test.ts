/**
 * The tap test by ear, on recordings made up from what is known of bars, rooms and microphones: the first mode is found, or
 * there is a reason why not. That it is never another tone than the first is held over drawn recordings.
 */
import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { expectedTone } from '../../../src/mechanics/hearing/expected.ts';
import { hear, type Heard } from '../../../src/mechanics/hearing/hear.ts';
import { modulusFromTapMPa, speciesModulusMPa } from '../../../src/mechanics/elements/materials.ts';
import { draw } from '../../draw.ts';
import { expectNear } from '../../expect-near.ts';
import { bar, BAR_RATIOS, gaussian, recorded, type Sound } from './recordings.ts';

/** What sizes and species let expect of a bar that rings at 180 Hz. */
const EXPECTED = { firstHz: 190, lowHz: 137, highHz: 264 };

const foundHz = (heard: Heard): number => {
  if (!heard.tone) throw new Error(`nothing found: ${JSON.stringify(heard.refusal)}`);
  return heard.tone.frequencyHz;
};

const CLEAR: Sound = { seed: 1, modes: bar(180.3) };

describe('a clear recording', () => {
  test.each([
    ['of a neck blank', 180.3, EXPECTED],
    ['of a thin board', 62.7, { firstHz: 60, lowHz: 43, highHz: 83 }],
    ['of a short thick piece', 1234, { firstHz: 1100, lowHz: 790, highHz: 1530 }],
    ['of sizes that nobody has entered', 180.3, undefined],
  ])('%s gives its first tone', (_kind, firstHz, expected) => {
    const heard = hear(recorded({ ...CLEAR, modes: bar(firstHz) }), expected);
    expectNear(foundHz(heard), firstHz, 0.001, 'feet of the neighbouring tones, noise at −66 dB');
    expect(heard.taps).toBe(5);
    expect(heard.tone?.taps).toBe(5);
    expect(heard.refusal).toBeUndefined();
  });

  test.each([16_000, 44_100, 48_000, 96_000])('at %i samples a second gives the same tone', (rateHz) => {
    expectNear(foundHz(hear(recorded({ ...CLEAR, rateHz }), EXPECTED)), 180.3, 0.001, 'the same');
  });

  test('says how far its taps are apart', () => {
    const { tone } = hear(recorded({ ...CLEAR, scatter: 0.003 }), EXPECTED);
    // The tones are scattered by 0.3 % at most either way, in a sine whose extremes the five taps nearly reach.
    const spread = (tone!.highHz - tone!.lowHz) / tone!.frequencyHz;
    expect(spread).toBeGreaterThan(0.003);
    expect(spread).toBeLessThan(0.0065);
    expectNear(tone!.frequencyHz, 180.3, 0.003, 'the scatter of the taps');
  });

  test('lists the other tones for a choice by hand, and draws the highest at 0 dB', () => {
    const { tones, overview } = hear(recorded(CLEAR), EXPECTED);
    for (const ratio of [BAR_RATIOS[0], BAR_RATIOS[2]])
      expect(tones.some(({ frequencyHz }) => Math.abs(frequencyHz / (180.3 * ratio) - 1) < 0.002)).toBe(true);
    const { lowHz, highHz, levelsDb } = overview!;
    const highest = levelsDb.indexOf(Math.max(...levelsDb));
    expect(Math.max(...levelsDb)).toBe(0);
    expectNear(
      lowHz * (highHz / lowHz) ** ((highest + 0.5) / levelsDb.length),
      180.3,
      0.005,
      'half a step of the picture',
    );
  });
});

describe('another tone that is louder', () => {
  const WRONG: Sound = { seed: 3, modes: bar(180.3, [0.03, 0.3, 0.25, 0.1]) };

  test('is passed over where sizes and species let expect the first', () => {
    expectNear(foundHz(hear(recorded(WRONG), EXPECTED)), 180.3, 0.002, 'feet of the louder tones');
  });

  test('is passed over by the ratios of a free bar alone', () => {
    expectNear(foundHz(hear(recorded(WRONG), undefined)), 180.3, 0.002, 'feet of the louder tones');
  });

  test('is refused where the first is not heard at all, with its number', () => {
    const modes = bar(180.3, [0, 0.3, 0.2, 0.1]);
    expect(hear(recorded({ ...WRONG, modes }), EXPECTED).refusal).toMatchObject({ code: 'other-mode', mode: 2 });
    expect(hear(recorded({ ...WRONG, modes }), undefined).refusal?.code).toMatch(/^other-mode|not-told-apart$/);
    const third = hear(recorded({ ...WRONG, modes: bar(180.3, [0, 0, 0.3]) }), EXPECTED).refusal;
    expect(third).toMatchObject({ code: 'other-mode', mode: 3 });
  });

  test('alone and without sizes is refused: it could be any', () => {
    const { refusal, tones } = hear(recorded({ seed: 4, modes: bar(180.3, [0.3]) }), undefined);
    expect(refusal).toMatchObject({ code: 'not-told-apart' });
    expect(tones).toHaveLength(1);
  });

  test('as loud and just as likely, such as that of twisting, is asked about', () => {
    const twist = { frequencyHz: 240, amplitude: 0.2, quality: 90 };
    const { refusal, tones } = hear(recorded({ seed: 5, modes: [...bar(180.3, [0.3]), twist] }), EXPECTED);
    expect(refusal).toMatchObject({ code: 'two-tones' });
    expect(tones.map(({ frequencyHz }) => Math.round(frequencyHz))).toEqual([180, 240]);
  });
});

describe('what cannot be told is refused with its reason', () => {
  const refused = (sound: Partial<Sound>) => hear(recorded({ ...CLEAR, ...sound }), EXPECTED).refusal;

  test('two taps only', () => {
    expect(refused({ taps: 2 })).toEqual({ code: 'too-few-taps', taps: 2, needed: 3 });
  });

  test('no tap in a quiet room, and silence', () => {
    expect(refused({ taps: 0 })).toMatchObject({ code: 'too-quiet' });
    expect(hear({ samples: new Float32Array(48_000), rateHz: 48_000 }, EXPECTED).refusal?.code).toBe('too-quiet');
    expect(hear({ samples: new Float32Array(0), rateHz: 48_000 }, EXPECTED).refusal?.code).toBe('too-quiet');
  });

  test('taps far too quiet, with the level', () => {
    const refusal = refused({ modes: bar(180.3, [0.0008]), noise: 0.00002, crack: 0.0005 });
    expect(refusal).toMatchObject({ code: 'too-quiet' });
    const { peakDb, leastDb } = refusal as Extract<typeof refusal, { code: 'too-quiet' }>;
    expect(peakDb).toBeLessThan(leastDb);
  });

  test.each([1, 0.4])('crests cut off at %f of full scale', (ceiling) => {
    expect(refused({ modes: bar(180.3, [1.9]), ceiling })).toEqual({ code: 'clipped', clipped: 5, taps: 5 });
  });

  test('a cracking blow whose ringing is whole is no clipping', () => {
    expectNear(foundHz(hear(recorded({ ...CLEAR, crack: 3 }), EXPECTED)), 180.3, 0.002, 'what is left of the crack');
  });

  test('noise as loud as the taps', () => {
    expect(refused({ noise: 0.2 })?.code).toBe('too-noisy');
  });

  test('knocks on something that does not ring', () => {
    expect(refused({ modes: [], crack: 0.5 })?.code).toMatch(/^too-noisy|too-few-taps$/);
    expect(refused({ modes: bar(180.3, [0.5], 2), crack: 0.5 })?.code).toMatch(/^too-noisy|too-few-taps$/);
  });

  test.each([
    [50, 150, 0.04],
    [60, 180, 0.04],
    [50, 200, 0.2],
  ])('a hum of %i Hz mains at a line, by its frequency: %i Hz, %f loud', (mainsHz, frequencyHz, amplitude) => {
    const hum = [{ frequencyHz, amplitude }];
    const modes = bar(frequencyHz + 0.8, [0.15]);
    expect(refused({ modes, hum })).toMatchObject({ code: 'hum', mainsHz });
  });

  test('a hum at some distance does not hinder', () => {
    const hum = [50, 100, 150].map((frequencyHz) => ({ frequencyHz, amplitude: 0.03 }));
    expectNear(foundHz(hear(recorded({ ...CLEAR, hum }), EXPECTED)), 180.3, 0.005, 'the law for any recording');
  });

  test('taps that disagree, with the lowest and the highest', () => {
    const refusal = refused({ scatter: 0.04 });
    expect(refusal).toMatchObject({ code: 'taps-disagree' });
    const { lowHz, highHz } = refusal as Extract<typeof refusal, { code: 'taps-disagree' }>;
    expect(lowHz).toBeLessThan(176);
    expect(highHz).toBeGreaterThan(184);
  });
});

describe('over drawn recordings', () => {
  const COUNT = draw(120, 24);

  test(`what is found is the first tone within 0.5 %, and most are found (seeds 1 to ${COUNT})`, () => {
    let found = 0;
    for (let seed = 1; seed <= COUNT; seed += 1) {
      const random = gaussian(1000 + seed);
      const firstHz = 160 * Math.exp(0.5 * random());
      const amplitudes = [0, 1, 2, 3].map(() => 0.1 * Math.exp(0.9 * random()));
      const quality = 80 * Math.exp(0.3 * random());
      const noise = 0.003 * Math.exp(1.2 * random());
      const mains = seed % 2 ? 50 : 60;
      const hum = [1, 2, 3].map((k) => ({ frequencyHz: k * mains, amplitude: 0.004 * Math.exp(1.0 * random()) }));
      const error = Math.exp(0.11 * random());
      const firstGuess = firstHz * error;
      const expected = { firstHz: firstGuess, lowHz: firstGuess * 0.72, highHz: firstGuess * 1.39 };
      const modes = bar(firstHz, amplitudes, quality);
      const sound: Sound = { seed, modes, noise, hum, pauseS: 0.5 + 0.4 * (seed % 3), scatter: 0.001 };
      const { tone } = hear(recorded(sound), seed % 4 ? expected : undefined);
      if (!tone) continue;
      found += 1;
      // Scatter of the taps 0.1 %; the rest is noise and hum under the line.
      const off = Math.abs(tone.frequencyHz / firstHz - 1);
      expect(off, `seed ${seed}: ${tone.frequencyHz} Hz for ${firstHz} Hz`).toBeLessThan(0.005);
    }
    expect(found / COUNT).toBeGreaterThan(0.6);
  });

  test(`noise, hum and knocks without a bar never give a tone (seeds 1 to ${COUNT})`, () => {
    for (let seed = 1; seed <= COUNT; seed += 1) {
      const random = gaussian(2000 + seed);
      const noise = 0.02 * Math.exp(1.5 * random());
      const hum = [1, 2, 3, 4].map((k) => ({ frequencyHz: 50 * k, amplitude: 0.02 * Math.exp(1.5 * random()) }));
      const crack = seed % 2 ? 0.6 : 0;
      const heard = hear(recorded({ seed, modes: [], noise, hum, crack }), seed % 3 ? EXPECTED : undefined);
      expect(heard.tone, `seed ${seed}`).toBeUndefined();
      expect(heard.refusal).toBeDefined();
    }
  });
});

describe('what a blank’s sizes and species let expect', () => {
  const sized = (mass: number | null): Build => ({
    ...defaultBuild(),
    neckBlankTest: 'tap',
    neckBlankLengthMm: 750,
    neckBlankWidthMm: 90,
    neckBlankThicknessMm: 25,
    neckBlankMassG: mass,
    neckBlankFrequencyHz: null,
  });

  test('is the tone at which the tap test gives the species’ modulus', () => {
    const build = sized(1150);
    const { firstHz } = expectedTone(build, 'neck')!;
    expectNear(modulusFromTapMPa(1150, firstHz, 750, 90, 25), speciesModulusMPa(build, 'neck'), 1e-9, 'rounding');
  });

  test('is less sure of a blank that was not weighed, and nothing of one that was not measured', () => {
    const [weighed, not] = [expectedTone(sized(1150), 'neck')!, expectedTone(sized(null), 'neck')!];
    // Three times half of 22 %, and of 22 % and 10 % together.
    expectNear(Math.log(weighed.highHz / weighed.lowHz), 0.66, 1e-9, 'rounding');
    expectNear(Math.log(not.highHz / not.lowHz), 3 * Math.hypot(0.22, 0.1), 1e-9, 'rounding');
    expect(expectedTone({ ...sized(1150), neckBlankThicknessMm: null }, 'neck')).toBeUndefined();
    expect(expectedTone(defaultBuild(), 'board')).toBeDefined();
  });
});
