/** Refusals in words: each names the place, the value, its range and its unit, in the reader's units. */
import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { readProject } from '../../src/neck/file.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { checkChange } from '../tools/check-change.ts';
import { givenText, placeText, problemTexts } from '../../src/speech/problems.ts';

const said = (change: object, system: 'metric' | 'inch') => problemTexts(checkChange(defaultBuild(), change), system);

describe('a refusal', () => {
  test.each([
    [
      { kerfMm: 3 },
      'Kerf (kerfMm) is 3\u00a0mm; it takes 0.3 to 1.2\u00a0mm.',
      'Kerf (kerfMm) is 0.1181\u00a0in; it takes 0.0119 to 0.0472\u00a0in.',
    ],
    [
      { rodSettingPercent: -130 },
      'Rod setting (rodSettingPercent) is −130\u00a0%; it takes −100 to 100\u00a0%.',
      'Rod setting (rodSettingPercent) is −130\u00a0%; it takes −100 to 100\u00a0%.',
    ],
    [
      { wallStiffnessNMm3: 10 },
      'Stiffness of a sawn wall (wallStiffnessNMm3) is 10\u00a0N/mm³; it takes 50 to 30000\u00a0N/mm³.',
      'Stiffness of a sawn wall (wallStiffnessNMm3) is 10\u00a0N/mm³; it takes 50 to 30000\u00a0N/mm³.',
    ],
    [
      { method: 'weld' },
      'Seating (method) is "weld"; it takes one of: press, glue, both.',
      'Seating (method) is "weld"; it takes one of: press, glue, both.',
    ],
    [
      { climateOn: 1 },
      'Seasonal humidity (climateOn) is 1; it takes true or false.',
      'Seasonal humidity (climateOn) is 1; it takes true or false.',
    ],
  ])('of %j', (change, metric, inch) => {
    expect(said(change, 'metric')).toEqual([metric]);
    expect(said(change, 'inch')).toEqual([inch]);
  });

  test('keeps every digit that was given, and does not touch a text of the maker’s own', () => {
    expect(said({ kerfMm: 1.234567 }, 'metric')[0]).toContain('is 1.234567\u00a0mm;');
    expect(said({ method: 'glued, 12 mm maple' }, 'inch')[0]).toContain('is "glued, 12 mm maple";');
  });

  test('of what cannot go together says its limit in the units of the page, rounded so that it is itself allowed', () => {
    const [metric] = said({ slotDepthMm: 6 }, 'metric');
    expect(metric).toMatch(
      /^Slot depth is 6\smm; here it can be at most [\d.]+\smm: the board is [\d.]+\smm thick .*, and 0\.3\smm must stay\.$/,
    );
    const [inch] = said({ slotDepthMm: 6 }, 'inch');
    const limit = Number(/at most ([\d.]+)\sin/.exec(inch)![1]) * 25.4;
    expect(said({ slotDepthMm: limit }, 'inch')).toEqual([]);
    expect(inch).toMatch(/^Slot depth is 0\.2362\sin; .* and 0\.0118\sin must stay\.$/);
  });

  test('is said once, however often it is met', () => {
    const problems = checkChange(defaultBuild(), { slotDepthMm: 6 });
    expect(problemTexts([...problems, ...problems], 'metric')).toHaveLength(1);
  });

  test('of a file names the file’s trouble', () => {
    const of = (text: string) => {
      const read = readProject(text);
      return read.ok ? [] : problemTexts(read.problems, 'inch');
    };
    expect(of('{')[0]).toMatch(/^This is not a project file: it is not JSON \(.+\)\.$/);
    expect(of('{}')).toEqual(['This is not a project file: it has no "format": "backbow project".']);
    const format = '{"format":"backbow project"';
    expect(of(`${format},"version":0}`)).toEqual([
      'The project file’s version is 0; it must be a whole number from 1 to 4.',
    ]);
    expect(of(`${format},"version":9}`)[0]).toContain('is version 9; this program reads versions 1 to 4.');
    expect(of(`${format},"version":1}`)).toEqual(['The build is nothing; it must be an object.']);
  });
});

test('places are called by their names, and those of strangers as they are', () => {
  expect(
    ['kerfMm', 'strings.2.diameterMm', 'startingReliefMm.1', 'laminates', 'laminates.0.__proto__', 'toString'].map(
      placeText,
    ),
  ).toEqual([
    'Kerf',
    'Strings, entry 3, string diameter',
    'Measured relief per fret, entry 2',
    'Neck laminates',
    'Neck laminates, entry 1, __proto__',
    'toString',
  ]);
});

test('values are told short', () => {
  expect([undefined, null, 'a', 1e21, Infinity].map(givenText)).toEqual([
    'nothing',
    'null',
    '"a"',
    '1e+21',
    'Infinity',
  ]);
  expect(givenText('x'.repeat(100))).toHaveLength(38);
});

test('every problem that hostile builds make is a whole sentence', () => {
  const hostile: unknown[] = [
    null,
    [],
    {},
    'x',
    { ...defaultBuild(), strings: [{}] },
    { ...defaultBuild(), regions: [1] },
  ];
  for (const build of hostile) {
    const checked = checkBuild(build);
    for (const text of checked.ok ? [] : problemTexts(checked.problems, 'inch')) {
      expect(text).toMatch(/^\S.*\.$/);
      expect(text).not.toMatch(/undefined|NaN|\[object/);
    }
  }
});
