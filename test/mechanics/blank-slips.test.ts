/** Slips of the hand in the numbers of a blank: each is found again, and a believable blank is not questioned. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { blankIds, FAR_BLANK_RATIO } from '../../src/neck/blanks.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { parameterById } from '../../src/neck/parameters.ts';
import { farBlank } from '../../src/mechanics/blank-slips.ts';
import { measuredModulusMPa, modulusFromTapMPa, speciesModulusMPa } from '../../src/mechanics/elements/materials.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { expectNear } from '../expect-near.ts';

const BUILD = defaultBuild();
const SPECIES_MPA = speciesModulusMPa(BUILD, 'neck');

/** A neck blank of 700 × 80 × 22 mm that is `ratio` times as stiff as its species. */
function bent(ratio: number): Build {
  const [LoadN, SpanMm, width, thickness] = [40, 600, 80, 22];
  const neckBlankSagMm = (LoadN * SpanMm ** 3) / (4 * width * thickness ** 3 * ratio * SPECIES_MPA);
  return {
    ...BUILD,
    neckBlankTest: 'sag',
    neckBlankLengthMm: 700,
    neckBlankWidthMm: width,
    neckBlankThicknessMm: thickness,
    neckBlankSpanMm: SpanMm,
    neckBlankLoadN: LoadN,
    neckBlankSagMm,
  };
}

function tapped(ratio: number): Build {
  const massG = 820;
  const frequencyHz = Math.sqrt((ratio * SPECIES_MPA) / modulusFromTapMPa(massG, 1, 700, 80, 22));
  return { ...bent(1), neckBlankTest: 'tap', neckBlankMassG: massG, neckBlankFrequencyHz: frequencyHz };
}

test('a blank within a factor of two of its species is not questioned, one beyond is', () => {
  for (const make of [bent, tapped]) {
    for (const ratio of [0.51, 0.8, 1, 1.3, 1.99]) expect(farBlank(make(ratio), 'neck')).toBeUndefined();
    for (const ratio of [0.49, 2.01, 0.025]) expectNear(farBlank(make(ratio), 'neck')!.ratio, ratio, 1e-9, 'exact');
  }
  expect(farBlank(BUILD, 'neck')).toBeUndefined();
  expect(farBlank({ ...bent(0.01), neckBlankLoadN: null }, 'neck')).toBeUndefined();
});

// What was typed is the number that was meant, times a factor.
it.each([
  ['sag', bent(1), 'neckBlankSagMm', 10, 'ten'],
  ['sag', bent(1), 'neckBlankSagMm', 0.1, 'ten'],
  [
    'sag in inches',
    { ...bent(1), neckBlankLoadN: 400, neckBlankSagMm: 10 * bent(1).neckBlankSagMm! },
    'neckBlankSagMm',
    1 / 25.4,
    'inches',
  ],
  ['load in kilograms', bent(1), 'neckBlankLoadN', 1 / 9.80665, 'kilograms'],
  ['frequency of the second mode', tapped(1), 'neckBlankFrequencyHz', 2.7565, 'second-mode'],
  ['mass in tenths', tapped(1), 'neckBlankMassG', 0.1, 'ten'],
] as const)('%s: the number that was meant is proposed first', (_what, right, id, factor, code) => {
  const meant = right[id]!;
  const far = farBlank({ ...right, [id]: meant * factor }, 'neck', id);
  expect(far!.slips[0]).toMatchObject({ code, parameter: id });
  expectNear(far!.slips[0].meant, meant, 1e-3, 'mended, to the digits of the factor');
});

test('where no slip explains it, the number that would fit the wood is named', () => {
  // 60 times softer by its sag: no factor of ten, no inch.
  const far = farBlank(bent(1 / 60), 'neck', 'neckBlankSagMm')!;
  expect(far.slips.filter(({ parameter }) => parameter === 'neckBlankSagMm')).toEqual([]);
  expectNear(far.fitting!, bent(1).neckBlankSagMm!, 0.05, 'two digits');
});

test('every proposal mends the blank and can be entered (seed 10)', () => {
  const values = fc.record({
    neckBlankWidthMm: fc.double({ min: 20, max: 200, noNaN: true }),
    neckBlankThicknessMm: fc.double({ min: 3, max: 60, noNaN: true }),
    neckBlankLengthMm: fc.double({ min: 200, max: 1200, noNaN: true }),
    neckBlankSpanMm: fc.double({ min: 150, max: 1200, noNaN: true }),
    neckBlankLoadN: fc.double({ min: 0.5, max: 500, noNaN: true }),
    neckBlankSagMm: fc.double({ min: 0.05, max: 50, noNaN: true }),
    neckBlankMassG: fc.double({ min: 20, max: 5000, noNaN: true }),
    neckBlankFrequencyHz: fc.double({ min: 10, max: 3000, noNaN: true }),
    neckBlankTest: fc.constantFrom('tap' as const, 'sag' as const),
  });
  let proposed = 0;
  fc.assert(
    fc.property(values, fc.nat(), (drawn, at) => {
      const build = { ...BUILD, ...drawn };
      const ids = blankIds('neck', drawn.neckBlankTest);
      const typed = ids[at % ids.length];
      const far = farBlank(build, 'neck', typed);
      const ratio = measuredModulusMPa(build, 'neck')! / SPECIES_MPA;
      expect(far === undefined).toBe(ratio <= FAR_BLANK_RATIO && ratio >= 1 / FAR_BLANK_RATIO);
      for (const { parameter, meant } of far?.slips ?? []) {
        proposed += 1;
        const row = parameterById(parameter);
        if (row.kind !== 'number') throw new Error(parameter);
        expect(meant).toBeGreaterThanOrEqual(row.min);
        expect(meant).toBeLessThanOrEqual(row.max);
        expect(farBlank({ ...build, [parameter]: meant }, 'neck')).toBeUndefined();
      }
      const fitted = { ...build, [typed]: far?.fitting ?? build[typed] };
      expect(farBlank(fitted, 'neck') === undefined).toBe(far === undefined || far.fitting !== undefined);
    }),
    { seed: 10, numRuns: 3000 },
  );
  expect(proposed).toBeGreaterThan(500);
});

describe('a blank that is not wholly measured', () => {
  it.each(['neck', 'board'] as const)('changes nothing of the prediction: the %s', (part) => {
    const predictor = createPredictor();
    const plain = predictor.predict(BUILD).methods.press.settled.extremeMm;
    for (const how of ['tap', 'sag'] as const) {
      for (const id of blankIds(part, how)) {
        const build = { ...BUILD, [`${part}BlankTest`]: how, [id]: null };
        expect(measuredModulusMPa(build, part)).toBeUndefined();
        expect(predictor.predict(build).methods.press.settled.extremeMm).toBe(plain);
      }
    }
  });
});
