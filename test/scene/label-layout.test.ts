/** No words in a cut view lie over others, in any size of picture, in both units and in words of any length. */
import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { PRESETS } from '../tools/presets.ts';
import type { UnitSystem } from '../../src/neck/units.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { layOutLabels, overlap, type LayoutFrame } from '../../src/scene/overlay/label-layout.ts';
import type { Annotations, Point3 } from '../../src/scene/section/annotations.ts';

const SEED = 20261205;
const build = PRESETS[0].build;
const prediction = createPredictor().predict(build).methods[build.method];

/** 13 px text is about half as wide as high for each character (from memory); taken wide here. */
const measure = (text: string) => 7 * text.length;

/** Seen straight on, the cut in the middle: about what the camera shows. */
function frameOf(width: number, height: number, pxPerMm: number, xMm: number, surfaceMm: number): LayoutFrame {
  return {
    width,
    height,
    measure,
    place: ([x, y]: Point3) => [width / 2 + (x - xMm) * pxPerMm, height * 0.28 - (y - surfaceMm) * pxPerMm],
  };
}

async function annotationsIn(language: 'en' | 'de', units: UnitSystem, fret = 7): Promise<Annotations> {
  vi.resetModules();
  const { speak } = await import('../../src/speech/language.ts');
  const german = await import('../../src/speech/de/workshop/scene.ts');
  if (language === 'de') speak('de', { ...german });
  const { slotAnnotations } = await import('../../src/scene/section/slot-annotations.ts');
  return slotAnnotations(build, fret, 0, prediction, units, false);
}

function surfaceOf({ items }: Annotations): number {
  const first = items[0];
  return first.kind === 'distance' ? first.from[1] : first.at[1];
}

afterEach(() => vi.resetModules());

function labels(annotations: Annotations, frame: LayoutFrame) {
  const { distances, callouts } = layOutLabels(frame, annotations);
  return [...distances, ...callouts].map(({ text, box }) => ({ text, box }));
}

function touching(annotations: Annotations, frame: LayoutFrame): string[] {
  const all = labels(annotations, frame);
  return all.flatMap(({ text, box }, index) =>
    all.slice(index + 1).flatMap((other) => (overlap(box, other.box) ? [`${text} | ${other.text}`] : [])),
  );
}

describe.each(['en', 'de'] as const)('the slot in %s', (language) => {
  test.each(['metric', 'inch'] as const)(
    'in a window of 1000 × 720, %s: nothing touches, nothing is missing',
    async (units) => {
      const annotations = await annotationsIn(language, units);
      // The picture there: 648 × 200 px, the board of 6 mm about 88 px thick.
      const frame = frameOf(648, 200, 14.6, annotations.anchorMm, surfaceOf(annotations));
      expect(touching(annotations, frame)).toEqual([]);
      const shown = new Set(labels(annotations, frame).map(({ text }) => text));
      const chief = annotations.items.filter(({ minor }) => !minor);
      expect(chief.filter(({ text }) => !shown.has(text))).toEqual([]);
      expect(shown.size).toBeGreaterThanOrEqual(annotations.items.length - 1);
    },
  );

  test(`in pictures of all sizes nothing touches or goes over the edge (seed ${SEED})`, async () => {
    const annotations = await annotationsIn(language, 'inch');
    const surface = surfaceOf(annotations);
    fc.assert(
      fc.property(
        fc.integer({ min: 560, max: 1800 }),
        fc.integer({ min: 180, max: 900 }),
        fc.double({ min: 4, max: 80, noNaN: true }),
        (width, height, pxPerMm) => {
          const frame = frameOf(width, height, pxPerMm, annotations.anchorMm, surface);
          const inside = labels(annotations, frame).every(({ box }) => box.left >= 0 && box.right <= width);
          return inside && touching(annotations, frame).length === 0;
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
  });
});

test('words far longer than any language has still do not touch', async () => {
  const annotations = await annotationsIn('en', 'metric');
  const long = {
    ...annotations,
    items: annotations.items.map((item) => ({ ...item, text: `${item.text} ${item.text}` })),
  };
  const frame = frameOf(800, 260, 16, annotations.anchorMm, surfaceOf(annotations));
  expect(touching(long, frame)).toEqual([]);
});

test('where there is room words stand beside the middle of their dimension lines', async () => {
  const annotations = await annotationsIn('en', 'metric');
  const frame = frameOf(1400, 800, 60, annotations.anchorMm, surfaceOf(annotations));
  const { distances } = layOutLabels(frame, annotations);
  const depth = distances.find(({ text }) => text.startsWith('slot'))!;
  const [from, to] = depth.ends;
  expect(Math.abs(depth.place[1] - (from[1] + to[1]) / 2)).toBeLessThan(20);
  expect(depth.place[0]).toBeLessThan(from[0]);
});
