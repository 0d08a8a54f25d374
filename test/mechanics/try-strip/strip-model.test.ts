/** A strip's hump: all slots seated together, many samples at once, how it stiffens and softens, what it will be asked about. */
import { stripLine } from '../strip/strip-line.ts';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { seat } from '../../../src/mechanics/seating/seating.ts';
import { humpMm, stripWedges } from '../../../src/mechanics/strip/strip.ts';
import { wedgeLineLeft } from '../../../src/mechanics/time.ts';
import type { StripContent } from '../../../src/mechanics/try-strip/document.ts';
import { groupOfSlot, spanOf } from '../../../src/mechanics/try-strip/layout.ts';
import { deviatesAt } from '../../../src/mechanics/try-strip/places.ts';
import { placesAlone, predictStrip, stripQuestions } from '../../../src/mechanics/try-strip/predicted.ts';
import { inputById, STRIP_INPUTS, STRIP_SLOT_DEPTH_ERROR_MM } from '../../../src/mechanics/try-strip/spreads.ts';
import { describeStrip, spansOf, stripModel, type StripModel } from '../../../src/mechanics/try-strip/strip-model.ts';
import { sampleStrip } from '../../../src/mechanics/try-strip/strip-samples.ts';
import { deviationAt } from '../../../src/mechanics/uncertainty/inputs.ts';
import { normalDeviates } from '../../../src/mechanics/uncertainty/normal.ts';
import { deviatedContact } from '../../../src/mechanics/uncertainty/one-slot.ts';
import { expectNear } from '../../expect-near.ts';
import { STRIP } from './strips.ts';

const NECK = defaultBuild();
const MODEL = stripModel(STRIP, NECK, false);

/** The strip itself made anew with the deviates of one sample, all its frets seated together: humps over all spans. */
function madeAnew(model: StripModel, deviates: ArrayLike<number>): number[] {
  const { strip, spreads, wood } = model;
  const places = placesAlone(model);
  const on = {
    ...AS_STATED,
    ...Object.fromEntries(
      STRIP_INPUTS.map((input) => [input, deviationAt(spreads, inputById(input), deviates[places.inputs[input]])]),
    ),
  };
  const slotDepthMm = strip.slotDepthMm + STRIP_SLOT_DEPTH_ERROR_MM * deviates[places.slotDepth];
  const stiffer = { ...wood, modulusMPa: wood.modulusMPa * on.boardModulus };
  const wedges = stripWedges(describeStrip({ ...strip, slotDepthMm }, stiffer, on.acrossGrain));
  const contacts = groupOfSlot(strip).map((group) => {
    const kerfMm = strip.groups[group].kerfErrorMm * deviates[places.kerfs[group]];
    return deviatedContact(model.groups[group].contact, { ...on, kerfMm });
  });
  const line = stripLine(wedges, seat(contacts, wedges.openingMm).forceN);
  return spansOf(strip).map((over) => humpMm(wedges.stationXMm, line, ...spanOf(strip, over)));
}

const manyFrets: StripContent = {
  ...STRIP,
  endMm: 7.5,
  groups: [
    { blade: '', kerfMm: 0.48, kerfErrorMm: 0.01, frets: 10 },
    { blade: '', kerfMm: 0.6, kerfErrorMm: 0.005, frets: 10 },
  ],
};
const oneFret: StripContent = { ...STRIP, groups: [{ ...STRIP.groups[1], frets: 1 }], readings: [] };

describe.each([
  ['three groups of four', STRIP],
  ['twenty frets, half of them held by the body', manyFrets],
  ['one fret', oneFret],
] as const)('%s', (_what, strip) => {
  const model = stripModel(strip, NECK, false);
  const places = placesAlone(model);

  it('bows as stated as all slots together say', () => {
    const hump = madeAnew(model, new Float64Array(places.dimensions));
    hump.forEach((mm, at) => expectNear(model.statedHumpMm[at], mm, 0.005, 'the highest of 25 points'));
    const sampled = sampleStrip(model, deviatesAt(places, new Float64Array(places.dimensions), 1));
    hump.forEach((mm, at) => expectNear(sampled.humpMm[at][0], mm, 0.005, 'a slot for all of its group'));
    expect(hump[0]).toBeGreaterThan(0.05);
  });

  it('bows in each sample as the strip made anew with its deviates (seed 8)', () => {
    const samples = 12;
    const z = normalDeviates(8, samples, places.dimensions);
    const { humpMm: found } = sampleStrip(model, deviatesAt(places, z, samples));
    for (let i = 0; i < samples; i += 1) {
      const own = Array.from({ length: places.dimensions }, (_, row) => z[row * samples + i]);
      madeAnew(model, own).forEach((mm, at) =>
        expectNear(found[at][i], mm, 0.015, 'stiffness across the grain and depth of the slots are taken as powers'),
      );
    }
  });
});

describe('a strip', () => {
  it('relaxes as the wedges of a neck do', () => {
    const later = predictStrip(MODEL, 30);
    const now = predictStrip(MODEL, 0);
    const left = wedgeLineLeft(30, NECK.wedgeRelaxation, 1);
    later.spans.forEach(({ statedMm }, at) =>
      expectNear(statedMm, now.spans[at].statedMm * left, 1e-4, 'the integral of time.ts'),
    );
    expect(left).toBeLessThan(0.95);
  });

  it('has a band of a factor of two or so either way, in order, and the same for the same seed', () => {
    const { spans, forceN } = predictStrip(MODEL);
    for (const { bandMm, statedMm } of spans) {
      expect(bandMm.p05).toBeLessThan(statedMm);
      expect(bandMm.p95).toBeGreaterThan(statedMm);
      expect(bandMm.p95 / bandMm.p05).toBeGreaterThan(3);
      expect(bandMm.p95 / bandMm.p05).toBeLessThan(10);
    }
    expect(forceN.map(({ p50 }) => p50)).toEqual(forceN.map(({ p50 }) => p50).toSorted((a, b) => b - a));
    expect(predictStrip(MODEL)).toEqual(predictStrip(MODEL));
  });

  it('of the neck’s own board has the wood that was measured of it', () => {
    const tapped = {
      ...NECK,
      boardBlankTest: 'tap' as const,
      boardBlankLengthMm: 560,
      boardBlankWidthMm: 70,
      boardBlankThicknessMm: 9,
      boardBlankMassG: 300,
      boardBlankFrequencyHz: 120,
    };
    const [own, other] = [stripModel(STRIP, tapped, true), stripModel(STRIP, tapped, false)];
    expectNear(own.wood.densityKgM3, (300 * 1e6) / (560 * 70 * 9), 1e-9, 'a quotient');
    expect(own.spreads.boardModulus).toBeLessThan(0.04);
    expectNear(other.spreads.boardModulus, MODEL.spreads.boardModulus, 1e-12, 'an unmeasured wood');
    expect(other.wood).toEqual(MODEL.wood);
  });

  it('takes its own wood where it is none of the table', () => {
    const offcut = { ...STRIP.offcut, wood: 'own', ownModulusGPa: 10, ownDensityKgM3: 800 };
    expect(stripModel({ ...STRIP, offcut }, NECK, false).wood).toMatchObject({ modulusMPa: 10_000, densityKgM3: 800 });
  });
});

describe('questions about readings', () => {
  const reading = { days: 0, bow: 'hump', over: 'ends', instrument: 'feelers', ownErrorMm: null } as const;
  const asked = (sizeMm: number, bow: 'hump' | 'hollow' = 'hump', days = 0) =>
    stripQuestions({ ...MODEL, strip: { ...STRIP, readings: [{ ...reading, sizeMm, bow, days }] } });

  it('are not asked of what was to be expected', () => {
    expect(asked(MODEL.statedHumpMm[0])).toEqual([]);
    expect(asked(1.2)).toEqual([]);
    expect(asked(5.5)).toEqual([]);
  });

  it('say how hard the studs would have to bite', () => {
    const [question] = asked(14);
    expect(question).toMatchObject({ code: 'other-bite', reading: 0, measuredMm: 14 });
    expectNear(question.predictedMm, MODEL.statedHumpMm[0], 1e-12, 'as stated');
    // With so much more bite the hump is that of the reading.
    const places = placesAlone(MODEL);
    const z = new Float64Array(places.dimensions);
    z[places.inputs.bite] = Math.log(question.biteTimes!) / MODEL.spreads.bite;
    expectNear(sampleStrip(MODEL, deviatesAt(places, z, 1)).humpMm[0][0], 14, 1e-3, 'a table of bites');
    expect(question.biteTimes).toBeGreaterThan(5);
  });

  it('know a hollow that no bite makes, and a hump that a month has let down', () => {
    expect(asked(0.4, 'hollow')).toMatchObject([{ code: 'no-bite', measuredMm: -0.4, biteTimes: null }]);
    const [soon] = asked(0.5);
    const [late] = asked(0.5, 'hump', 30);
    expect(late.biteTimes).toBeGreaterThan(soon.biteTimes!);
  });
});

describe('a strip that was solved before', () => {
  it('is not solved again for another reading, and is for all that it rests on', () => {
    const again = stripModel(
      { ...STRIP, readings: [], name: 'other', groups: STRIP.groups.map((group) => ({ ...group, blade: '' })) },
      NECK,
      false,
    );
    expect(again.description).toBe(stripModel(STRIP, NECK, false).description);
    const changes: readonly (readonly [StripContent, typeof NECK, boolean, number?])[] = [
      [{ ...STRIP, slotDepthMm: 3.1 }, NECK, false],
      [{ ...STRIP, endMm: 13 }, NECK, false],
      [{ ...STRIP, wire: { ...STRIP.wire, studAreaMm2: 0.5 } }, NECK, false],
      [{ ...STRIP, groups: STRIP.groups.map((group) => ({ ...group, kerfErrorMm: 0.02 })) }, NECK, false],
      [{ ...STRIP, offcut: { ...STRIP.offcut, wood: 'ebony-african' } }, NECK, false],
      [STRIP, { ...NECK, wallStiffnessNMm3: 600 }, false],
      [STRIP, { ...NECK, boardWood: 'ebony-african' }, true],
      [STRIP, NECK, false, 0.5],
    ];
    for (const [strip, neck, ownBoard, shape] of changes) {
      const model = stripModel(strip, neck, ownBoard, shape);
      expect(model.description).not.toBe(again.description);
    }
  });
});
