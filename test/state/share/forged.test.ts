/** A link with a right sum and wrong contents is checked like a file: refused, with what is wrong. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PROJECT_VERSION } from '../../../src/neck/file.ts';
import { readLink } from '../../../src/state/share/link.ts';
import { forged, forgedBytes } from './forged.ts';
import { problemTexts } from '../../../src/speech/problems.ts';

/** The version of the base that a link's changes are made against: it needs no more to be whole. */
const BASE_VERSION = 1;
const one = (set: object, more: object = {}) => ({ project: BASE_VERSION, builds: [{ set, drop: [] }], ...more });

test('what is forged well opens', () => {
  const read = readLink(forged(one({ name: 'Forged', kerfMm: 0.6 })));
  expect(read).toMatchObject({ ok: true, shared: { builds: [{ name: 'Forged', kerfMm: 0.6 }] } });
});

test.each([
  ['a kerf out of range', one({ kerfMm: 7 }), 'Kerf (kerfMm) is 7\u00a0mm; it takes'],
  ['a text for a number', one({ fretCount: '22' }), 'Frets (fretCount) is "22"; it takes a whole number'],
  ['an impossible combination', one({ slotDepthMm: 6, boardThicknessMm: 4 }), 'Slot depth'],
  ['an unknown value', one({ colourOfTheSky: 'blue' }), 'is not something a build has'],
  ['a newer build without its newest value', { ...one({}), project: 3 }, '(studShape) is missing'],
  ['a missing value', { project: BASE_VERSION, builds: [{ set: {}, drop: ['kerfMm'] }] }, 'Kerf (kerfMm) is missing'],
])('%s is refused and named', (_what, json, message) => {
  const read = readLink(forged(json));
  if (read.ok || read.trouble.code !== 'refused') throw new Error(`not refused: ${JSON.stringify(read)}`);
  expect(problemTexts(read.trouble.problems, 'metric').join('\n')).toContain(message);
});

test('an own __proto__ is a value like any other that a build has not', () => {
  const read = readLink(forged(`{"project":${BASE_VERSION},"builds":[{"set":{"__proto__":{"kerfMm":1}},"drop":[]}]}`));
  expect(read).toMatchObject({ ok: false, trouble: { code: 'refused' } });
});

test('a later project version is told as newer', () => {
  const project = PROJECT_VERSION + 1;
  expect(readLink(forged({ project, builds: [{ set: {}, drop: [] }] }))).toEqual({
    ok: false,
    trouble: { code: 'newer', version: project, newest: PROJECT_VERSION },
  });
});

test.each([
  ['no build', { project: 1, builds: [] }],
  ['four builds', { project: 1, builds: Array.from({ length: 4 }, () => ({ set: {}, drop: [] })) }],
  ['a build that is a list', { project: 1, builds: [[]] }],
  ['no project version', { builds: [{ set: {}, drop: [] }] }],
  ['a list', [1, 2]],
  ['a number', 7],
  ['null', null],
  ['a page with a long note', one({}, { page: { from: '', to: '', note: 'x'.repeat(3001), advised: null } })],
  ['a page that advises what is not there', one({}, { page: { from: '', to: '', note: '', advised: 1 } })],
  ['a page with more on it', one({}, { page: { from: '', to: '', note: '', advised: null, script: '<b>' } })],
  ['a page that is a text', one({}, { page: 'hello' })],
  ['no JSON', '{"project":1,'],
])('%s is broken', (_what, json) => {
  expect(readLink(forged(json))).toEqual({ ok: false, trouble: { code: 'broken' } });
});

test('bytes that are no UTF-8 are broken', () => {
  expect(readLink(forgedBytes(Uint8Array.from([0x7b, 0xff, 0xfe, 0x7d])))).toMatchObject({
    trouble: { code: 'broken' },
  });
});

test('a link that unpacks to far more than a build is broken', () => {
  const text = forged(one({ notes: ' '.repeat(5_000_000) }));
  expect(text.length).toBeLessThan(32_000);
  expect(readLink(text)).toMatchObject({ trouble: { code: 'broken' } });
});

test('random JSON never throws and never opens (seed 76)', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (json) => {
      expect(readLink(forged(json)).ok).toBe(false);
    }),
    { numRuns: 1500, seed: 76 },
  );
});

test('random values in a build are refused as a file’s are (seed 77)', () => {
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom('kerfMm', 'fretCount', 'method', 'strings', 'laminates', 'name'), fc.jsonValue()),
      (set) => {
        const read = readLink(forged(one(set)));
        const got = read.ok ? read.shared.builds[0] : { refused: read.trouble.code };
        const wanted: unknown = read.ok ? JSON.parse(JSON.stringify(set)) : { refused: 'refused' };
        expect(got).toMatchObject(wanted as object);
      },
    ),
    { numRuns: 1500, seed: 77 },
  );
});
