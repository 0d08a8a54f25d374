/** The stamp: the same for the same numbers, another for others, readable by eye and hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { readProject, writeProject } from '../../src/neck/file.ts';
import type { Parameter } from '../../src/neck/parameter-kinds.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import {
  isOneLetterOff,
  isUnmeasured,
  neckOfStamp,
  readStamp,
  stampDifferences,
  stampHere,
  stampOf,
  stampText,
} from '../../src/verdict/stamp.ts';
import { readLink, writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { anyBuild } from '../arbitrary/any-build.ts';

const BUILD = defaultBuild();
const NOTHING = { benchLog: [], adoptedBites: [], earlierBites: [] };
const text = (build: Build) => stampText(stampOf(build));

/** Another value that the table allows. */
function other(parameter: Parameter, value: unknown): unknown {
  switch (parameter.kind) {
    case 'number':
      if (value === null) return parameter.default;
      return (value as number) + (parameter.integer ? 1 : parameter.step / 10);
    case 'choice':
      return parameter.options.find((option) => option !== value);
    case 'flag':
      return value !== true;
  }
}

describe('the same numbers', () => {
  test('whatever the order of keys, name, notes and colours', () => {
    const turned = Object.fromEntries(Object.entries(BUILD).toReversed()) as unknown as Build;
    const strings = BUILD.strings.map(({ pitch, diameterMm, construction, ...more }) => ({
      ...more,
      construction,
      diameterMm,
      pitch,
    }));
    const binding = BUILD.binding.map((line) => ({ ...line, colour: '#000000' }));
    expect(text({ ...turned, strings, binding, name: 'Another', notes: 'Said' })).toBe(text(BUILD));
  });

  test('through project file and link, for 200 builds (seed 417)', () => {
    fc.assert(
      fc.property(anyBuild, (build) => {
        const file = readProject(writeProject(build));
        expect(file.ok && text(file.build)).toBe(text(build));
        const written = writeLink({ builds: [build], page: EMPTY_PAGE });
        const link = written.ok ? readLink(written.text) : null;
        expect(link?.ok && text(link.shared.builds[0])).toBe(text(build));
      }),
      { seed: 417, numRuns: 200 },
    );
  });

  test('without a value that a later release adds, at its default', () => {
    // Every parameter is left out at its default, so one that an earlier release did not have changes nothing.
    for (const { id } of PARAMETERS.filter((parameter) => parameter.id !== 'bindingLineCount')) {
      const { [id]: _value, ...earlier } = BUILD;
      expect([id, text(earlier as Build)]).toEqual([id, text(BUILD)]);
    }
  });
});

describe('other numbers', () => {
  test.each(PARAMETERS.map((parameter) => [parameter.id, parameter as Parameter] as const))('%s', (id, parameter) => {
    const changed = { ...BUILD, [id]: other(parameter, BUILD[id]) };
    expect(stampDifferences(stampOf(changed), stampOf(BUILD))).toEqual(['build']);
  });

  test.each<[string, Partial<Build>]>([
    [
      'laminates',
      {
        laminates: [
          { wood: 'sugar-maple', share: 0.5 },
          { wood: 'black-walnut', share: 0.5 },
        ],
      },
    ],
    ['order of strings', { strings: BUILD.strings.toReversed() }],
    ['a string less', { strings: BUILD.strings.slice(1) }],
    ['regions', { regions: [{ fromFret: 1, toFret: 3, kerfMm: 0.6, tangWidthMm: 0.5, studWidthMm: 0.8 }] }],
    ['starting relief', { startingReliefMm: [0.1] }],
    [
      'a line of binding in use',
      { bindingLineCount: 1, binding: [{ thicknessMm: 1, colour: '#f2ead7' }, ...BUILD.binding.slice(1)] },
    ],
  ])('%s', (_what, change) => {
    const without = 'bindingLineCount' in change ? { ...BUILD, bindingLineCount: 1 } : BUILD;
    expect(text({ ...BUILD, ...change })).not.toBe(text(without));
  });

  test('a hundredth of a micrometre counts, the noise of a sum does not', () => {
    expect(text({ ...BUILD, kerfMm: 0.58001 })).not.toBe(text({ ...BUILD, kerfMm: 0.58 }));
    expect(text({ ...BUILD, kerfMm: 0.1 + 0.2 })).toBe(text({ ...BUILD, kerfMm: 0.3 }));
  });

  test('200 builds have 200 stamps (seed 418)', () => {
    const builds = fc.sample(anyBuild, { seed: 418, numRuns: 200 });
    expect(new Set(builds.map(text)).size).toBe(200);
    expect(new Set(PRESETS.map(({ build }) => text(build))).size).toBe(PRESETS.length);
  });

  test('program and measurements have parts of their own', () => {
    const bite = { hash: 'a'.repeat(32) };
    expect(stampDifferences(stampOf(BUILD, undefined, '0.0.9'), stampOf(BUILD))).toEqual(['program']);
    expect(stampDifferences(stampOf(BUILD, bite), stampOf(BUILD))).toEqual(['measurements']);
    expect([isUnmeasured(stampOf(BUILD)), isUnmeasured(stampOf(BUILD, bite))]).toEqual([true, false]);
    // A reference that nothing here stands behind narrows nothing, and is not in the stamp.
    const biteReference = {
      factor: BUILD.biteFactor,
      measurements: [],
      hash: 'b'.repeat(32),
      necks: 2,
      logSpread: 0.2,
    };
    expect(stampHere(NOTHING, { ...BUILD, biteReference })).toBe(text(BUILD));
  });
});

describe('by eye and hand', () => {
  test('letters that no one takes for digits, in three short parts', () => {
    expect(text(BUILD)).toMatch(/^[BCDFGHJKLMNPQRSTVWXZ]{6}(-[BCDFGHJKLMNPQRSTVWXZ]{3}){2}$/);
  });

  test.each([
    (t: string) => t.toLowerCase(),
    (t: string) => t.replaceAll('-', ''),
    (t: string) => ` ${t.replaceAll('-', ' – ')} `,
  ])('is read however it is typed (%#)', (typed) => expect(readStamp(typed(text(BUILD)))).toEqual(stampOf(BUILD)));

  test.each(['', 'HGKDRT', 'HGKDRT-BXQ-PL', 'HGKDRT-BXQ-PLMN', 'HGKDR0-BXQ-PLM', 'AEIOUY-AEI-OUY', '💥'])(
    '“%s” is no stamp',
    (typed) => expect(readStamp(typed)).toBeNull(),
  );

  test('one letter that was misread is noticed', () => {
    const here = readStamp('HGKDRT-BXQ-PLM')!;
    expect(isOneLetterOff(readStamp('HGKDRT-BXQ-PLN')!, here)).toBe(true);
    expect(isOneLetterOff(here, here)).toBe(false);
    expect(isOneLetterOff(readStamp('HGKDRS-BXQ-PLN')!, here)).toBe(false);
  });
});

test('the newest neck of a stamp is found among others', () => {
  const wide = { ...BUILD, kerfMm: 0.6 };
  const candidates = [
    { build: { ...wide, name: 'Old' }, at: 1 },
    { build: { ...wide, name: 'New' }, at: 2 },
    { build: BUILD, at: 3 },
  ];
  expect(neckOfStamp(stampOf(wide), candidates)?.build.name).toBe('New');
  expect(neckOfStamp(stampOf({ ...BUILD, kerfMm: 0.61 }), candidates)).toBeUndefined();
});
