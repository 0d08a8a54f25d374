/** Strips drawn over the whole range of every number: whatever is accepted can be computed, and says only numbers. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { WOOD_IDS } from '../../../src/neck/woods.ts';
import { STRIP_NUMBERS, type StripNumber, type StripStiffness } from '../../../src/mechanics/try-strip/document.ts';
import { readStrips, stripHash, writeStrips } from '../../../src/mechanics/try-strip/document-file.ts';
import { checkStrip } from '../../../src/mechanics/try-strip/document-problems.ts';
import { gripPosterior } from '../../../src/mechanics/try-strip/grip-posterior.ts';
import { predictStrip, stripQuestions } from '../../../src/mechanics/try-strip/predicted.ts';
import { stripModel } from '../../../src/mechanics/try-strip/strip-model.ts';
import { seededRandom } from '../../../src/mechanics/uncertainty/normal.ts';
import { draw } from '../../draw.ts';
import { STRIP } from './strips.ts';

/** A strip of a seed; undefined where its numbers cannot be together. */
function stripOf(seed: number) {
  const random = seededRandom(seed);
  const part = () => uniformFloat64(random);
  const number = (name: StripNumber) => {
    const { min, max } = STRIP_NUMBERS[name];
    return min + part() * (max - min);
  };
  const one = <Value>(values: readonly Value[]): Value => values[Math.floor(part() * values.length)];
  const wood = one(WOOD_IDS);
  const state = one(['plain', 'slotted'] as const);
  const lengthMm = number('lengthMm');
  const spanMm = 50 + part() * (lengthMm - 50);
  const stiffness = one<StripStiffness>([
    { test: 'none' },
    { test: 'weight', state, loadN: number('loadN'), loadG: null, spanMm, sagMm: number('sagMm') },
    { test: 'tap', state, massG: number('massG'), frequencyHz: number('frequencyHz') },
  ]);
  const tangWidthMm = number('tangWidthMm');
  const groups = Array.from({ length: 1 + Math.floor(3 * part()) }, () => {
    return {
      blade: '',
      kerfMm: number('kerfMm'),
      kerfErrorMm: number('kerfErrorMm'),
      frets: 1 + Math.floor(6 * part()),
    };
  });
  const isOwn = wood === 'own';
  const checked = checkStrip({
    ...STRIP,
    offcut: {
      ...STRIP.offcut,
      lengthMm,
      widthMm: number('widthMm'),
      thicknessMm: number('thicknessMm'),
      wood,
      stiffness,
      sawn: one(['flat', 'quarter']),
      ownModulusGPa: isOwn ? number('ownModulusGPa') : null,
      ownDensityKgM3: isOwn ? number('ownDensityKgM3') : null,
    },
    wire: {
      name: '',
      tangWidthMm,
      studWidthMm: tangWidthMm + part() * (1.4 - tangWidthMm),
      tangDepthMm: number('tangDepthMm'),
      studAreaMm2: number('studAreaMm2'),
      studPitchMm: number('studPitchMm'),
      studShape: number('studShape'),
    },
    slotDepthMm: number('slotDepthMm'),
    endMm: 3 + part() * (lengthMm / 2),
    groups,
    readings: Array.from({ length: Math.floor(4 * part()) }, () => {
      const over = one<'ends' | number>(['ends', ...groups.keys()]);
      const instrument = one(['ruler', 'feelers'] as const);
      return {
        days: 100 * part(),
        bow: one(['hump', 'hollow']),
        sizeMm: 10 * part(),
        over,
        instrument,
        ownErrorMm: null,
      };
    }),
  });
  return checked.ok ? checked.strip : undefined;
}

const STRIPS = draw(120, 12);
const drawn = Array.from({ length: 40 * STRIPS }, (_, seed) => [seed, stripOf(seed)] as const)
  .filter(([, strip]) => strip !== undefined)
  .slice(0, STRIPS);

it('there are as many as are wanted', () => {
  expect(drawn).toHaveLength(STRIPS);
});

it.each(drawn)('seed %i', (_seed, strip) => {
  const neck = { ...defaultBuild(), boardWood: strip!.offcut.wood };
  for (const ownBoard of [false, true]) {
    const model = stripModel(strip!, neck, ownBoard);
    const { spans, forceN } = predictStrip(model, 10, { samples: 200 });
    for (const { statedMm, bandMm } of spans) {
      expect(Number.isFinite(statedMm)).toBe(true);
      expect(bandMm.p05).toBeLessThanOrEqual(bandMm.p95);
    }
    for (const { p05 } of forceN) expect(p05).toBeGreaterThanOrEqual(0);
    for (const { biteTimes } of stripQuestions(model, { samples: 200 }))
      expect(biteTimes === null || biteTimes > 0).toBe(true);
  }
  const { bite, studShape, correlation, deviates } = gripPosterior(neck, [{ strip: strip!, ownBoard: true }]);
  expect(bite.p05).toBeGreaterThan(0);
  expect(studShape.p05).toBeGreaterThanOrEqual(0);
  expect(Math.abs(correlation)).toBeLessThanOrEqual(1);
  for (const row of Object.values(deviates)) expect(row.every(Number.isFinite)).toBe(true);
  const read = readStrips(writeStrips([strip!]));
  expect(read).toEqual({ ok: true, strips: [strip] });
  expect(stripHash(read.ok ? read.strips[0] : STRIP)).toBe(stripHash(strip!));
});
