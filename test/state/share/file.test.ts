/** Collections: what is whole comes back as it was, what is not is named and harms nothing else. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { looksLikeCollection, MOST_BUILDS, readCollection, writeCollection } from '../../../src/state/share/file.ts';
import { EMPTY_PAGE } from '../../../src/state/share/shared.ts';
import { anyShared } from './arbitrary-shared.ts';
import { problemText } from '../../../src/speech/problems.ts';

const presets = PRESETS.map(({ build }, index) => ({
  build,
  changedAt: index === 0 ? null : 1_700_000_000_000 + index,
}));

test('the presets come back with their dates', () => {
  expect(readCollection(writeCollection(presets))).toEqual({
    ok: true,
    builds: presets,
    refused: [],
    page: EMPTY_PAGE,
  });
});

test('random comparisons come back with their page (seed 81)', () => {
  fc.assert(
    fc.property(anyShared, ({ builds, page }) => {
      const collected = builds.map((build) => ({ build, changedAt: null }));
      const read = readCollection(writeCollection(collected, page));
      expect(read).toEqual(JSON.parse(JSON.stringify({ ok: true, builds: collected, refused: [], page })));
    }),
    { numRuns: 100, seed: 81 },
  );
});

test('a build that is refused is named with its place, and the others are read', () => {
  const data = JSON.parse(writeCollection(presets)) as { builds: { project: { build: Record<string, unknown> } }[] };
  data.builds[1].project.build['kerfMm'] = 70;
  data.builds[3] = { project: 'nothing' as never };
  const read = readCollection(JSON.stringify(data));
  if (!read.ok) throw new Error(read.trouble);
  const whole = PRESETS.filter((_, index) => index !== 1 && index !== 3);
  expect(read.builds.map(({ build }) => build.name)).toEqual(whole.map(({ label }) => label));
  expect(read.refused.map(({ place, name }) => [place, name])).toEqual([
    [2, PRESETS[1].label],
    [4, null],
  ]);
  expect(problemText(read.refused[0].problems[0], 'metric')).toContain('Kerf (kerfMm) is 70\u00a0mm; it takes');
  expect(read.page).toBeNull();
});

test.each([
  ['text', 'hello', 'not-json'],
  ['a project file', JSON.stringify({ format: 'backbow project', version: 1 }), 'not-a-collection'],
  ['a list', '[]', 'not-a-collection'],
  ['a version of text', '{"format":"backbow collection","version":"1","builds":[]}', 'not-a-collection'],
  ['no builds', '{"format":"backbow collection","version":1}', 'not-a-collection'],
  ['a later version', '{"format":"backbow collection","version":2,"builds":[]}', 'newer'],
  [
    'far too many',
    JSON.stringify({
      format: 'backbow collection',
      version: 1,
      builds: Array.from({ length: MOST_BUILDS + 1 }, () => 1),
    }),
    'too-many',
  ],
])('%s is refused whole', (_what, text, trouble) => {
  expect(readCollection(text)).toEqual({ ok: false, trouble });
});

test('texts of a page that are no texts are not taken', () => {
  const data = { ...(JSON.parse(writeCollection(presets)) as object), page: { from: 7 } };
  expect(readCollection(JSON.stringify(data))).toMatchObject({ ok: true, page: null });
});

test('a collection is known by its format, before it is read', () => {
  expect(looksLikeCollection(writeCollection([]))).toBe(true);
  expect(looksLikeCollection('{"format":"backbow project"}')).toBe(false);
  expect(looksLikeCollection('no')).toBe(false);
});

test('random JSON in a collection never throws (seed 82)', () => {
  fc.assert(
    fc.property(fc.array(fc.jsonValue(), { maxLength: 5 }), fc.jsonValue(), (builds, page) => {
      const read = readCollection(JSON.stringify({ format: 'backbow collection', version: 1, builds, page }));
      expect(read).toMatchObject({ ok: true, builds: [], refused: builds.map((_, index) => ({ place: index + 1 })) });
    }),
    { numRuns: 800, seed: 82 },
  );
});
