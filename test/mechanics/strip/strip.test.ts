/** Try strips beside three-dimensional solids, beside beam theory, and beside themselves with every element halved. */
import { stripLine } from './strip-line.ts';
import { describe, expect, it } from 'vitest';
import { humpMm, stripInfluence, type StripDescription } from '../../../src/mechanics/strip/strip.ts';
import {
  describeSolidStrip,
  readSolidStripCase,
  readSolidStripCases,
  solveSolidStrip,
} from '../../reference/solid-strip-case.ts';
import { expectNear, expectNothing } from '../../expect-near.ts';

const CASES = readSolidStripCases();

describe.each(CASES.map((solid) => [solid.id, solid] as const))('%s', (_id, solid) => {
  const ours = solveSolidStrip(solid);
  const keys = [
    'wedgeAllOverLengthMm',
    'wedgeAllBetweenEndSlotsMm',
    'oneFretOverLengthMm',
    'oneFretBetweenEndSlotsMm',
  ] as const;

  it('bows as the solid does, and its slots open as much', () => {
    for (const key of keys) expectNear(ours[key], solid.results[key], 0.03, 'a plane model of a solid');
    expect(solid.results.slotOpeningUmPerKN).toHaveLength(solid.geometry.slots);
    solid.results.slotOpeningUmPerKN.forEach((opening, slot) =>
      expectNear(ours.slotOpeningUmPerKN[slot], opening, 0.03, 'a plane model of a solid'),
    );
  });

  it('changes by less than 1 % when every element is halved', () => {
    const fine = solveSolidStrip(solid, 2);
    for (const key of keys) expectNear(ours[key], fine[key], 0.01, 'convergence');
  });
});

const STRIP: StripDescription = { ...describeSolidStrip(CASES[0]), slotXMm: [60, 100, 140, 180, 220] };

describe('a strip', () => {
  it('sinks under a weight as a beam where it is hardly slotted', () => {
    const strip = { ...STRIP, slotXMm: [150], slotDepthMm: 0.02, contactDepthMm: 0.01 };
    const { lengthMm: l, widthMm: b, thicknessMm: h, wood } = strip;
    const e = wood.modulusMPa;
    // F·L³/(48·E·I) + F·L/(4·k·G·A), k = 5/6: beam tables (Gere & Goodno, Mechanics of Materials, from memory).
    const beam = l ** 3 / (4 * e * b * h ** 3) + l / ((4 * 5 * wood.shearRatio * e * b * h) / 6);
    expectNear(stripInfluence(strip).sagMm, beam, 0.005, 'a point load presses a little into the elements beside it');
  });

  it('gives the more the deeper it is slotted', () => {
    const sag = [1, 2, 3, 4].map((slotDepthMm) => stripInfluence({ ...STRIP, slotDepthMm, contactDepthMm: 0.8 }).sagMm);
    expect(sag).toEqual(sag.toSorted((a, b) => a - b));
  });

  it('opens its slots by the same amount for each other: reciprocity (Maxwell, Betti)', () => {
    const { openingMm } = stripInfluence(STRIP);
    for (let i = 0; i < 5; i += 1)
      for (let j = 0; j < i; j += 1)
        expectNothing(openingMm[i * 5 + j] - openingMm[j * 5 + i], openingMm[0], 1e-9, 'reciprocity');
  });

  it('is the same from either end', () => {
    const { stationXMm, ...rest } = stripInfluence(STRIP);
    const mirrored = stripInfluence({ ...STRIP, slotXMm: STRIP.slotXMm.map((x) => STRIP.lengthMm - x).toReversed() });
    const force = [100, 200, 300, 400, 500];
    const hump = humpMm(stationXMm, stripLine({ stationXMm, ...rest }, force), 0, STRIP.lengthMm);
    const other = stripLine(mirrored, force.toReversed());
    expectNear(humpMm(mirrored.stationXMm, other, 0, STRIP.lengthMm), hump, 1e-6, 'symmetry');
    expect(hump).toBeGreaterThan(0.5);
  });

  it.each([
    ['slots that touch', { slotXMm: [60, 60.8] }, 'more than 1.2 mm apart'],
    ['a slot over the end', { slotXMm: [60, 299.5] }, 'more than 1.2 mm apart'],
    ['slots through the strip', { slotDepthMm: 6 }, 'between 0 and 6 mm'],
    ['a tang on the floor of the slot', { contactDepthMm: 3 }, 'between 0 and 3 mm'],
  ] as const)('refuses %s', (_what, change, message) => {
    expect(() => stripInfluence({ ...STRIP, ...change })).toThrow(message);
  });
});

describe('reading the cases', () => {
  it('there are some, and one that cannot be read says why', () => {
    expect(CASES.length).toBeGreaterThanOrEqual(2);
    expect(() => readSolidStripCase('X.json', '{}')).toThrow('solid-fe-strips/X.json: id cannot be read');
  });
});
