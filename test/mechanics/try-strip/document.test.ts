/** A try strip as a document: what it refuses and why, its hash, the way to JSON and back, where its slots are. */
import { describe, expect, it, test } from 'vitest';
import {
  readingErrorMm,
  signedMm,
  STRIP_NUMBERS,
  type StripNumber,
  type TryStrip,
} from '../../../src/mechanics/try-strip/document.ts';
import { checkStrip } from '../../../src/mechanics/try-strip/document-problems.ts';
import { readStrips, stripHash, writeStrips } from '../../../src/mechanics/try-strip/document-file.ts';
import { evenEndMm, groupOfSlot, slotXMm, spanOf } from '../../../src/mechanics/try-strip/layout.ts';
import { ROUNDING, expectNear } from '../../expect-near.ts';
import { STRIP } from './strips.ts';

type Path = readonly (string | number)[];

/** The strip with another value somewhere in it. */
function having(path: Path, value: unknown, strip: unknown = STRIP): unknown {
  const copy = structuredClone(strip) as Record<string | number, unknown>;
  let inner = copy;
  for (const key of path.slice(0, -1)) inner = inner[key] as Record<string | number, unknown>;
  inner[path.at(-1)!] = value;
  return copy;
}

function problemsOf(value: unknown) {
  const checked = checkStrip(value);
  return checked.ok ? [] : checked.problems;
}

const WEIGHED = having(['offcut', 'stiffness'], {
  test: 'weight',
  state: 'slotted',
  loadN: null,
  loadG: 500,
  spanMm: 280,
  sagMm: 1.1,
});
const TAPPED = having(['offcut', 'stiffness'], { test: 'tap', state: 'plain', massG: 90, frequencyHz: 330 });
const OWN = having(['offcut'], { ...STRIP.offcut, wood: 'own', ownModulusGPa: 14, ownDensityKgM3: 900 });

describe('a strip', () => {
  it('is accepted as it is, weighed, tapped, and of a wood of one’s own', () => {
    for (const strip of [STRIP, WEIGHED, TAPPED, OWN]) expect(problemsOf(strip)).toEqual([]);
  });

  /** Every number of the document, and a strip in which it stands. */
  const PLACES: readonly (readonly [StripNumber, Path, unknown])[] = [
    ...(['lengthMm', 'widthMm', 'thicknessMm'] as const).map((key) => [key, ['offcut', key], STRIP] as const),
    ...(['ownModulusGPa', 'ownDensityKgM3'] as const).map((key) => [key, ['offcut', key], OWN] as const),
    ...(['loadN', 'loadG', 'spanMm', 'sagMm'] as const).map(
      (key) => [key, ['offcut', 'stiffness', key], WEIGHED] as const,
    ),
    ...(['massG', 'frequencyHz'] as const).map((key) => [key, ['offcut', 'stiffness', key], TAPPED] as const),
    ...(['tangWidthMm', 'tangDepthMm', 'studWidthMm', 'studAreaMm2', 'studPitchMm', 'studShape'] as const).map(
      (key) => [key, ['wire', key], STRIP] as const,
    ),
    ...(['slotDepthMm', 'endMm'] as const).map((key) => [key, [key], STRIP] as const),
    ...(['kerfMm', 'kerfErrorMm', 'frets'] as const).map((key) => [key, ['groups', 1, key], STRIP] as const),
    ...(['days', 'sizeMm'] as const).map((key) => [key, ['readings', 0, key], STRIP] as const),
    ['errorMm', ['readings', 2, 'ownErrorMm'], STRIP],
  ];

  test('the table of numbers has a place in the document for each', () => {
    expect(PLACES.map(([name]) => name).toSorted()).toEqual(Object.keys(STRIP_NUMBERS).toSorted());
  });

  it.each(PLACES)(
    'refuses %s beyond its range, with value, range and unit, and what is no number',
    (name, path, strip) => {
      const limits = STRIP_NUMBERS[name];
      const at = path.join('.');
      for (const value of [limits.min - 0.001, limits.max + 1])
        expect(problemsOf(having(path, value, strip))).toContainEqual(
          expect.objectContaining({ at, value, ...limits }),
        );
      expect(problemsOf(having(path, 'three', strip))).toContainEqual(
        expect.objectContaining({ code: 'not-a-number', at, value: 'three', ...limits }),
      );
      expect(problemsOf(having(path, undefined, strip))).toContainEqual(
        expect.objectContaining({ code: 'missing', at }),
      );
    },
  );

  it.each([
    [
      'slots through the wood',
      ['slotDepthMm'],
      5.6,
      { code: 'impossible', because: 'wood-below-slots', max: 5.5, unit: 'mm' },
    ],
    ['a tang on the floor of the slot', ['wire', 'tangDepthMm'], 3, { because: 'tang-in-slot', max: 3 }],
    ['studs narrower than the tang', ['wire', 'studWidthMm'], 0.45, { because: 'studs-over-tang', min: 0.5 }],
    ['outer slots that have passed each other', ['endMm'], 150, { because: 'ends-in-strip', max: 150 }],
    ['slots that break into each other', ['endMm'], 140, { because: 'wood-between-slots', at: 'groups' }],
    ['more frets than a strip takes', ['groups', 0, 'frets'], 33, { because: 'frets-of-strip', value: 41, max: 40 }],
    ['a reading over a group that is not there', ['readings', 1, 'over'], 3, { because: 'group-of-reading', max: 2 }],
    ['a wood that no table has', ['offcut', 'wood'], 'cheese', { code: 'not-an-option', at: 'offcut.wood' }],
    ['a bow with neither name', ['readings', 0, 'bow'], 'back', { code: 'not-an-option', options: ['hump', 'hollow'] }],
    ['a day that the calendar has not', ['date'], '2026-02-30', { code: 'not-a-day', value: '2026-02-30' }],
    ['an id that is none', ['id'], 'aeiou', { code: 'not-an-id' }],
    ['a stiffness of a wood of the table', ['offcut', 'ownModulusGPa'], 12, { code: 'not-needed', unit: 'GPa' }],
    ['an own wood without its stiffness', ['offcut', 'wood'], 'own', { code: 'needed', at: 'offcut.ownModulusGPa' }],
    ['an own instrument without its error', ['readings', 2, 'ownErrorMm'], null, { code: 'needed', unit: 'mm' }],
    ['no group at all', ['groups'], [], { code: 'wrong-size', min: 1 }],
    ['a key that nobody knows', ['offcut', 'colour'], 'red', { code: 'unknown', at: 'offcut.colour', value: 'red' }],
    ['a text that is too long', ['name'], 'n'.repeat(201), { code: 'wrong-size', max: 200 }],
  ] as const)('refuses %s', (_what, path, value, problem) => {
    expect(problemsOf(having(path, value))).toContainEqual(expect.objectContaining(problem));
  });

  it('refuses two weights, none, and a span longer than the offcut', () => {
    const stiffness = ['offcut', 'stiffness'];
    expect(problemsOf(having([...stiffness, 'loadN'], 5, WEIGHED))).toMatchObject([{ code: 'one-weight' }]);
    expect(problemsOf(having([...stiffness, 'loadG'], null, WEIGHED))).toMatchObject([{ code: 'one-weight' }]);
    expect(problemsOf(having([...stiffness, 'spanMm'], 301, WEIGHED))).toMatchObject([
      { because: 'span-on-offcut', value: 301, max: 300, unit: 'mm' },
    ]);
  });

  it('has an instrument’s error, and the sign of a hump', () => {
    expect(STRIP.readings.map(readingErrorMm)).toEqual([0.05, 0.05, 0.1]);
    expect(signedMm({ bow: 'hump', sizeMm: 2 })).toBe(2);
    expect(signedMm({ bow: 'hollow', sizeMm: 2 })).toBe(-2);
  });
});

describe('the hash of a strip', () => {
  it('stays when it is written and read, under another id, and with its keys in another order', () => {
    const turned = Object.fromEntries(Object.entries(STRIP).toReversed()) as unknown as TryStrip;
    const read = readStrips(writeStrips([STRIP]));
    expect(read).toEqual({ ok: true, strips: [STRIP] });
    const hashes = [turned, { ...STRIP, id: 'zxwvtsrqpnmlkj' }, ...(read.ok ? read.strips : [])].map(stripHash);
    expect(new Set(hashes)).toEqual(new Set([stripHash(STRIP)]));
    expect(stripHash(STRIP)).toMatch(/^[0-9a-f]{32}$/);
  });

  it('changes with whatever the strip says', () => {
    const changes: readonly (readonly [Path, unknown])[] = [
      [['name'], 'another'],
      [['offcut', 'thicknessMm'], 6.000001],
      [['offcut', 'cutFrom'], 'No. 12'],
      [['groups', 2, 'kerfMm'], 0.63],
      [['readings', 0, 'bow'], 'hollow'],
      [['readings', 0, 'over'], 1],
      [['readings'], []],
    ];
    const hashes = changes.map(([path, value]) => stripHash(having(path, value) as TryStrip));
    expect(new Set([...hashes, stripHash(STRIP)]).size).toBe(changes.length + 1);
  });
});

describe('reading strips', () => {
  it.each([
    ['no JSON', '{', { code: 'not-json' }],
    ['something else', '{"format":"backbow project"}', { code: 'not-strips' }],
    ['nothing', 'null', { code: 'not-strips' }],
    [
      'a later version',
      '{"format":"backbow try strips","version":2,"strips":[]}',
      { code: 'newer-version', value: 2, max: 1 },
    ],
  ])('refuses %s', (_what, text, problem) => {
    expect(readStrips(text)).toMatchObject({ ok: false, problems: [problem] });
  });

  it('says which strip of the file is wrong', () => {
    const text = writeStrips([STRIP, having(['slotDepthMm'], 7) as TryStrip]);
    expect(readStrips(text)).toMatchObject({
      ok: false,
      problems: [{ at: 'strips.1.slotDepthMm', max: 6, unit: 'mm' }],
    });
  });
});

describe('the slots of a strip', () => {
  it('share it evenly when the ends are half a pitch long, and groups have their stretches', () => {
    expect(slotXMm(STRIP)).toEqual(Array.from({ length: 12 }, (_, slot) => 12.5 + 25 * slot));
    expectNear(evenEndMm(300, 12), 12.5, ROUNDING, 'a division');
    expect(groupOfSlot(STRIP)).toEqual([0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2]);
    expect([0, 1, 2].map((group) => spanOf(STRIP, group))).toEqual([
      [0, 100],
      [100, 200],
      [200, 300],
    ]);
    expect(spanOf(STRIP, 'ends')).toEqual([0, 300]);
    expect(() => spanOf(STRIP, 3)).toThrow('group 3 of the strip; it must be between 0 and 2');
  });

  it('stay within the strip, and one slot is in the middle', () => {
    expect(spanOf({ ...STRIP, endMm: 5 }, 0)[0]).toBe(0);
    const one = { ...STRIP, groups: [{ ...STRIP.groups[0], frets: 1 }] };
    expect([slotXMm(one), spanOf(one, 0)]).toEqual([[150], [0, 300]]);
  });
});
