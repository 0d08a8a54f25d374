/** Numbers on the cut faces are the library's; colours of the stress are even and told apart by everyone. */
import { describe, expect, test } from 'vitest';
import { fretPositionMm } from '../../src/neck/neck-shape.ts';
import { PRESETS } from '../tools/presets.ts';
import { formatQuantity } from '../../src/speech/quantity.ts';
import { fretEnd } from '../../src/fretwork/ends.ts';
import { seatAt } from '../../src/neck/kerf.ts';
import { slots } from '../../src/fretwork/slots.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createSection } from '../../src/mechanics/elements/section.ts';
import type { Annotations, Distance } from '../../src/scene/section/annotations.ts';
import { endAnnotations, fretAnnotations } from '../../src/scene/section/fret-annotations.ts';
import { slotAnnotations } from '../../src/scene/section/slot-annotations.ts';
import { stressColour, stressLab } from '../../src/scene/section/stress-colours.ts';
import { roundLimit, stressFace } from '../../src/scene/section/stress-face.ts';
import { expectNear } from '../expect-near.ts';

const predictor = createPredictor();
const lengthOf = ({ from, to }: Distance): number => Math.hypot(...from.map((value, axis) => to[axis] - value));
const distances = ({ items }: Annotations): Distance[] =>
  items.filter((item): item is Distance => item.kind === 'distance');
const texts = ({ items }: Annotations): string[] => items.map(({ text }) => text);
const mm = (value: number, digits = 2): string => formatQuantity(value, 'mm', digits, 'metric');

describe.each(PRESETS.map(({ id, build }) => [id, build] as const))('%s', (_, build) => {
  const fret = 5;
  const prediction = predictor.predict(build).methods[build.method];

  test('across a slot: every dimension line is as long as the number beside it says', () => {
    const found = slotAnnotations(build, fret, 0, prediction, 'metric', false);
    expect(distances(found).length).toBeGreaterThanOrEqual(6);
    for (const distance of distances(found)) {
      const written = Number(/[\d.]+/.exec(distance.text)?.[0]);
      // Half of the last digit written, in the hundredths.
      expect(Math.abs(lengthOf(distance) - written)).toBeLessThan(0.00501);
    }
  });

  test('across a slot: kerf, depth, what is left, bite and force come from the library', () => {
    const written = texts(slotAnnotations(build, fret, 0, prediction, 'metric', false)).join('\n');
    const slot = slots(build)[fret - 1];
    expect(written).toContain(mm(seatAt(build, fret).kerfMm, 3));
    expect(written).toContain(`slot ${mm(slot.depthMm)} deep`);
    expect(written).toContain(`${mm(slot.leftAtCentreMm)} left`);
    const bite = prediction.biteMm[fret - 1];
    expect(written.includes('studs bite')).toBe(bite > 0);
    expect(written.includes(formatQuantity(prediction.wedgeForceN[fret - 1], 'N', 0, 'metric'))).toBe(bite > 0);
  });

  test('at the end: nip, shelf and lines are the fretwork numbers', () => {
    const end = fretEnd(build, fret);
    const written = texts(endAnnotations(build, fret, 'metric', false)).join('\n');
    expect(written.includes(`nip ${mm(end.nipMm)}`)).toBe(!end.slotOpen);
    expect(written.includes(`shelf ${mm(end.shelfMm)}`)).toBe(end.shelfMm > 0.01);
    expect(written.match(/left whole/g)?.length ?? 0).toBe(end.linesWhole);
    expect(written.match(/sawn through/g)?.length ?? 0).toBe(end.linesSawn);
  });

  test('along the fret: widths and depths are the fretwork numbers', () => {
    const slot = slots(build)[fret - 1];
    const written = texts(fretAnnotations(build, fret, 'metric', false)).join('\n');
    expect(written).toContain(`board ${mm(slot.boardWidthMm)} wide`);
    expect(written).toContain(`${mm(slot.depthAtEndMm)} deep at the end`);
  });
});

test('along the fret: the channel of the rod and the wood below it are those that are counted', () => {
  const { build } = PRESETS[0];
  const fret = 5;
  const xMm = fretPositionMm(build.scaleLengthMm, fret);
  const { channelFloorMm, bottomMm } = createSection(describeNeck(build, AS_STATED));
  const written = texts(fretAnnotations(build, fret, 'metric', false)).join('\n');
  expect(written).toContain(`× ${mm(channelFloorMm(xMm) - build.boardThicknessMm)}`);
  expect(written).toContain(`${mm(bottomMm(xMm) - channelFloorMm(xMm))} of wood below`);
  const shallow = texts(fretAnnotations({ ...build, rodEndMm: xMm - 1 }, fret, 'metric', false)).join();
  const without = texts(fretAnnotations({ ...build, rodKind: 'none' }, fret, 'metric', false)).join();
  for (const other of [shallow, without]) expect(other).not.toContain('rod channel');
});

test('a lifted fret is not dimensioned in its slot; its overhang is told instead', () => {
  const { build } = PRESETS[0];
  expect(texts(slotAnnotations(build, 5, 0, null, 'metric', true)).join()).not.toContain('crown');
  expect(texts(endAnnotations(build, 5, 'metric', true)).join()).toContain(mm(build.oversizeMm));
});

test('inches are written as inches', () => {
  const { build } = PRESETS[0];
  expect(texts(slotAnnotations(build, 5, 0, null, 'inch', false)).join()).toContain('\u00a0in');
});

describe('colours of the stress', () => {
  test('equal steps of stress are equal steps in OKLab on each side, and darker outwards', () => {
    for (const side of [-1, 1]) {
      const labs = Array.from({ length: 11 }, (_, i) => stressLab((side * i) / 10));
      const steps = labs.slice(1).map((lab, i) => Math.hypot(...lab.map((value, k) => value - labs[i][k])));
      for (const step of steps) expectNear(step, steps[0], 1e-9, 'rounding');
      for (let i = 1; i < labs.length; i++) expect(labs[i][0]).toBeLessThan(labs[i - 1][0]);
    }
  });

  test('all colours can be shown: none is clipped by sRGB', () => {
    for (let i = -20; i <= 20; i++) {
      for (const value of stressColour(i / 20)) {
        expect(value).toBeGreaterThan(0);
        expect(value).toBeLessThan(1);
      }
    }
  });

  test('compression and tension stay apart for protan, deutan and tritan sight', () => {
    // Linear-sRGB simulation matrices for full dichromacy: Machado, Oliveira & Fernandes 2009, severity 1.0 (from memory).
    const SIGHTS = {
      protan: [
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
      ],
      deutan: [
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.01182, 0.04294, 0.968881],
      ],
      tritan: [
        [1.255528, -0.076749, -0.178779],
        [-0.078411, 0.930809, 0.147602],
        [0.004733, 0.691367, 0.3039],
      ],
    };
    const linear = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
    for (const rows of Object.values(SIGHTS)) {
      const seen = (share: number): number[] => {
        const rgb = stressColour(share).map(linear);
        return rows.map((row) => row.reduce((sum, weight, k) => sum + weight * rgb[k], 0));
      };
      const [low, high] = [seen(-0.8), seen(0.8)];
      // A difference of 0.1 in linear light is several times the least that is noticed at this lightness (practice).
      expect(Math.hypot(...low.map((value, k) => value - high[k]))).toBeGreaterThan(0.1);
    }
  });
});

test('limits of the scale are round', () => {
  expect([0.7, 1, 1.01, 3.2, 6, 14, 45].map(roundLimit)).toEqual([1, 1, 2, 5, 10, 20, 50]);
});

test('stress is averaged at shared corners and drawn at its depth', () => {
  const face = stressFace(
    {
      fret: 1,
      cornersMm: Float64Array.of(0, 0, 1, 0, 1, 1, 0, 1, 1, 0, 2, 0, 2, 1, 1, 1),
      alongMPa: Float64Array.of(2, 4),
      acrossMPa: Float64Array.of(0, 0),
    },
    0.5,
  );
  expect(face.mesh.positions).toHaveLength(6 * 3);
  const at = (x: number, y: number): number =>
    face.valuesMPa[
      Array.from({ length: 6 }, (_, v) => v).find(
        (v) => face.mesh.positions[3 * v] === x && face.mesh.positions[3 * v + 1] === y,
      ) as number
    ];
  expect([at(0, 0), at(1, 0), at(1, -1), at(2, -1)]).toEqual([2, 3, 3, 4]);
  expect(face.limitMPa).toBe(2);
});
