/** The stiffness of a slotted offcut beside its whole mesh and beside a chain of hinges that is left to swing. */
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { modulusFromTapMPa } from '../../../src/mechanics/elements/materials.ts';
import { stripSagMm } from '../../../src/mechanics/strip/strip.ts';
import type { StripContent, StripStiffness } from '../../../src/mechanics/try-strip/document.ts';
import { slotXMm } from '../../../src/mechanics/try-strip/layout.ts';
import { farStiffness, loadN, statedLn, stiffnessReadings } from '../../../src/mechanics/try-strip/stiffness.ts';
import { describeStrip, stripModel } from '../../../src/mechanics/try-strip/strip-model.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';
import { STRIP } from './strips.ts';

const NECK = defaultBuild();
const having = (stiffness: StripStiffness, change: Partial<StripContent> = {}): StripContent => {
  const strip = { ...STRIP, ...change };
  return { ...strip, offcut: { ...strip.offcut, stiffness } };
};
const weight = (state: 'plain' | 'slotted', spanMm: number): StripStiffness => {
  return { test: 'weight', state, loadN: 5, loadG: null, spanMm, sagMm: 0.4 };
};
const tap = (state: 'plain' | 'slotted', massG = 90, frequencyHz = 300): StripStiffness => {
  return { test: 'tap', state, massG, frequencyHz };
};
const readingsOf = (strip: StripContent) => stiffnessReadings(stripModel(strip, NECK, false));

describe('a weight at the middle', () => {
  it('sinks a slotted strip as its whole mesh says', () => {
    const strip = having(weight('slotted', 300));
    const model = stripModel(strip, NECK, false);
    const [reading] = stiffnessReadings(model);
    expectNear(Math.exp(statedLn(reading, 0, 0)), stripSagMm(model.description), 0.01, 'hinges in a beam');
    const stiffer = describeStrip(strip, model.wood, Math.exp(model.spreads.acrossGrain));
    expectNear(Math.exp(statedLn(reading, 1, 0)), stripSagMm(stiffer), 0.01, 'hinges in a beam');
    const deeper = describeStrip({ ...strip, slotDepthMm: 3.05 }, model.wood);
    expectNear(Math.exp(statedLn(reading, 0, 1)), stripSagMm(deeper), 0.01, 'hinges in a beam');
  });

  it('over a shorter span as a strip that ends there', () => {
    const strip = having(weight('slotted', 200));
    const [reading] = readingsOf(strip);
    const description = describeStrip(strip, stripModel(strip, NECK, false).wood);
    const inside = description.slotXMm.map((x) => x - 50).filter((x) => x > 0 && x < 200);
    const cut = { ...description, lengthMm: 200, slotXMm: inside };
    expectNear(Math.exp(statedLn(reading, 0, 0)), stripSagMm(cut), 0.01, 'what hangs over does nothing');
  });

  it('is told in grams or in newtons, and sinks a plain bar by its modulus', () => {
    const [reading] = readingsOf(having(weight('plain', 300)));
    const e = stripModel(STRIP, NECK, false).wood.modulusMPa;
    expectNear(Math.exp(statedLn(reading, 0, 0)), 300 ** 3 / (4 * e * 60 * 6 ** 3), 0.005, 'shear');
    expect(statedLn(reading, 1, 1)).toBe(statedLn(reading, 0, 0));
    expectNear(
      loadN({ ...weight('plain', 300), loadN: null, loadG: 500 } as never),
      4.903325,
      1e-9,
      'standard gravity',
    );
  });
});

/** First frequency of a free bar of rigid links with springs between them, and hinges at its slots, rad/s per √(N·mm²/g). */
function chainFrequency(lengthMm: number, eI: number, massG: number, slotX: readonly number[], kappa: number): number {
  const links = 240;
  const step = lengthMm / links;
  const give = Array.from({ length: links - 1 }, () => step / eI);
  for (const x of slotX) give[Math.min(links - 2, Math.max(0, Math.round(x / step) - 1))] += kappa;
  const stiffness = Matrix.zeros(links + 1, links + 1);
  give.forEach((compliance, i) => {
    const bend = [1 / step, -2 / step, 1 / step];
    bend.forEach((a, p) =>
      bend.forEach((b, q) => stiffness.set(i + p, i + q, stiffness.get(i + p, i + q) + (a * b) / compliance)),
    );
  });
  const masses = Array.from({ length: links + 1 }, (_, i) => (massG / links) * (i === 0 || i === links ? 0.5 : 1));
  const scaled = Matrix.zeros(links + 1, links + 1);
  for (let i = 0; i <= links; i += 1)
    for (let j = 0; j <= links; j += 1) scaled.set(i, j, stiffness.get(i, j) / Math.sqrt(masses[i] * masses[j]));
  const { realEigenvalues } = new EigenvalueDecomposition(scaled, { assumeSymmetric: true });
  return Math.sqrt(realEigenvalues.toSorted((a, b) => a - b)[2]);
}

describe('a tap', () => {
  it('gives a plain bar its modulus and its density', () => {
    const readings = readingsOf(having(tap('plain')));
    expect(readings.map(({ of }) => of)).toEqual(['give', 'density']);
    const e = modulusFromTapMPa(90, 300, 300, 60, 6);
    expectNear(readings[0].measuredLn, -Math.log(e), 1e-9, 'the formula');
    expectNear(Math.exp(readings[1].measuredLn), (90 * 1e6) / (300 * 60 * 6), 1e-9, 'mass over volume');
    expectNear(
      Math.exp(statedLn(readings[0], 0, 0)),
      1 / stripModel(STRIP, NECK, false).wood.modulusMPa,
      1e-9,
      'as stated',
    );
  });

  it.each([
    ['twelve slots', STRIP],
    ['six slots', { ...STRIP, endMm: 25, groups: [{ ...STRIP.groups[0], frets: 6 }] }],
  ] as const)('gives a bar with %s what a chain with hinges gives', (_what, strip) => {
    const [reading] = readingsOf(having(tap('slotted'), strip));
    const model = stripModel(strip, NECK, false);
    const e = model.wood.modulusMPa;
    const inertia = (60 * 6 ** 3) / 12;
    // κ from the sag under a weight, which the mesh has confirmed.
    const [sag] = readingsOf(having(weight('slotted', 300), strip));
    const slotX = slotXMm(strip);
    const squares = slotX.reduce((sum, x) => sum + ((150 - Math.abs(x - 150)) / 2) ** 2, 0);
    const kappa = sag.stated.slots / squares;
    const ratio =
      (chainFrequency(300, e * inertia, 90, slotX, kappa) / chainFrequency(300, e * inertia, 90, [], 0)) ** 2;
    expectNear(1 / (e * Math.exp(statedLn(reading, 0, 0))), ratio, 0.02, 'the moments of the plain bar’s mode');
    expect(ratio).toBeLessThan(0.7);
  });

  it('weighs a slotted strip without what the saw took', () => {
    const [, density] = readingsOf(having(tap('slotted')));
    const sawn = 4 * (0.54 + 0.58 + 0.62) * 3 * 60;
    expectNear(Math.exp(density.measuredLn), (90 * 1e6) / (300 * 60 * 6 - sawn), 1e-9, 'mass over volume');
  });
});

describe('a stiffness far from its wood', () => {
  const weighed = (sagMm: number, state: 'plain' | 'slotted') =>
    farStiffness(having({ test: 'weight', state, loadN: null, loadG: 1000, spanMm: 280, sagMm }), NECK, false);

  it('is told with what it would mean; slots may take half of it, and what was not measured says nothing', () => {
    const { widthMm, thicknessMm } = STRIP.offcut;
    const expectedMPa = stripModel(STRIP, NECK, false).wood.modulusMPa;
    const sagMm = (9.80665 * 280 ** 3) / (4 * widthMm * thicknessMm ** 3 * expectedMPa);
    const far = weighed(10 * sagMm, 'plain')!;
    expectNear(far.ratio, 0.1, ROUNDING, 'ten times the sag');
    expectNear(far.modulusMPa, 0.1 * expectedMPa, ROUNDING, 'F·L³/(4·b·h³·δ)');
    expect(weighed(sagMm, 'plain')).toBeNull();
    expect(weighed(2.1 * sagMm, 'plain')).not.toBeNull();
    expect(weighed(2.1 * sagMm, 'slotted')).toBeNull();
    expect(weighed(sagMm / 2.1, 'slotted')).not.toBeNull();
    expect(farStiffness(having({ test: 'none' }), NECK, false)).toBeNull();
  });
});
