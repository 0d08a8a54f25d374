/** What is refused, and what stands beside a number, in German: whole sentences, whatever their labels and counts. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { inBothLanguages } from './house.ts';

async function loadHouse() {
  return {
    build: await import('../../src/neck/build.ts'),
    schema: await import('../../src/neck/schema.ts'),
    file: await import('../../src/neck/file.ts'),
    woods: await import('../../src/neck/woods.ts'),
    quantity: await import('../../src/speech/quantity.ts'),
    spokenCautions: await import('../../src/speech/cautions.ts'),
    cautions: await import('../../src/fretwork/checks/cautions.ts'),
    problems: await import('../../src/speech/problems.ts'),
    summary: await import('../../src/pages/workshop/controls/group-summary.ts'),
    bowLabel: await import('../../src/scene/overlay/bow-label.ts'),
  };
}
type House = Awaited<ReturnType<typeof loadHouse>>;

const { english, german } = await inBothLanguages(loadHouse);

describe('a build that is refused', () => {
  const said = (change: object, system: 'metric' | 'inch' = 'metric') => {
    const checked = german.schema.checkBuild({ ...german.build.defaultBuild(), ...change });
    return checked.ok ? [] : german.problems.problemTexts(checked.problems, system);
  };
  const string = () => german.build.defaultBuild().strings[0];

  test.each([
    [{ kerfMm: 2 }, '„Schlitzbreite“ (kerfMm) ist 2\u00a0mm; möglich ist 0,3 bis 1,2\u00a0mm.'],
    [{ settleDays: 0 }, '„Gesetzt nach“ (settleDays) ist 0\u00a0Tage; möglich ist 1 bis 3650\u00a0Tage.'],
    [{ fretCount: 21.5 }, '„Bünde“ (fretCount) ist 21,5; möglich ist eine ganze Zahl, 12 bis 36.'],
    [{ strings: [] }, '„Saiten“ (strings) hat die Länge 0; möglich ist mindestens 1.'],
    [{ strings: {} }, '„Saiten“ (strings) ist {}; möglich ist eine Liste.'],
    [{ name: 'x'.repeat(201) }, '„Name des Entwurfs“ (name) hat 201 Zeichen; möglich sind höchstens 200.'],
    [
      { bodyJointFret: 24 },
      '„Korpusansatz am Bund“ ist 24; hier möglich ist höchstens 22: Das Griffbrett hat nur 22 Bünde.',
    ],
  ])('is told why: %j', (change, sentence) => {
    expect(said(change)).toEqual([sentence]);
  });

  test('is told where in a list', () => {
    expect(said({ strings: [{ ...string(), diameterMm: 9 }] })).toEqual([
      '„Saiten, Eintrag 1, Saitendurchmesser“ (strings.0.diameterMm) ist 9\u00a0mm; möglich ist 0,15 bis 4\u00a0mm.',
    ]);
  });

  test('is told in inches too, also numbers that stand in the sentence itself', () => {
    const wound = { ...string(), construction: 'steel-wound', diameterMm: 0.66, coreMm: 0.66 };
    expect(said({ strings: [wound] }, 'inch')).toEqual([
      'Saite 1 hat einen Kern von 0,026\u00a0in bei einem Durchmesser von 0,026\u00a0in; der Kern muss mindestens 0,0039\u00a0in dünner sein.',
    ]);
    expect(said({ kerfMm: 2 }, 'inch')).toEqual([
      '„Schlitzbreite“ (kerfMm) ist 0,0787\u00a0in; möglich ist 0,0119 bis 0,0472\u00a0in.',
    ]);
  });

  test('in a file without one is told so', () => {
    const read = german.file.readProject('{"format":"backbow project","version":1}');
    expect(read.ok ? [] : german.problems.problemTexts(read.problems, 'metric')).toEqual([
      'Der Entwurf ist nicht angegeben; möglich ist nur ein Objekt.',
    ]);
  });
});

test('units that are words are said, symbols stay', () => {
  expect(german.quantity.formatQuantity(90, 'day', 0, 'metric')).toBe('90\u00a0Tage');
  expect(german.quantity.formatQuantity(2, '% MC', 1, 'metric')).toBe('2,0\u00a0% Holzfeuchte');
  expect(german.quantity.formatQuantity(624, 'N', 0, 'metric')).toBe('624\u00a0N');
});

test('what is listed does not hang on the words of a note', () => {
  const listed = (house: House) => house.woods.WOODS.filter(({ trade }) => trade.is !== 'free').map(({ id }) => id);
  expect(listed(english)).toContain('indian-rosewood');
  expect(listed(german)).toEqual(listed(english));
  const build: Build = { ...german.build.defaultBuild(), boardWood: 'bubinga' };
  const caution = german.cautions.cautionsFor(build).get('listed-wood')!;
  expect(german.spokenCautions.cautionText(caution)).toMatch(/^Der Handel mit diesem Holz \(.*Bubinga/);
});

test('a summary is short of zeros after a decimal comma as well', () => {
  const build = { ...german.build.defaultBuild(), scaleLengthMm: 648, boardThicknessMm: 6, kerfMm: 0.6 };
  expect(german.summary.groupSummary('neck', build, 'metric')).toMatch(/^648\u00a0mm, /);
  expect(german.summary.groupSummary('board', build, 'metric')).toMatch(/, 6\u00a0mm$/);
  expect(german.summary.groupSummary('slots', build, 'metric')).toMatch(/^0,6\u00a0mm /);
  expect(english.summary.groupSummary('slots', build, 'metric')).toMatch(/^0\.6\u00a0mm /);
});

test('the factor in the picture has the sign of the language', () => {
  expect([english, german].map(({ bowLabel }) => bowLabel.factorText(2.5))).toEqual(['2.5', '2,5']);
  expect(german.bowLabel.factorText(40)).toBe('40');
});
