/** Links carry every build whole, and refuse everything that is not a link of ours. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { MOST_CHARACTERS, readLink, writeLink } from '../../../src/state/share/link.ts';
import { decode } from '../../../src/state/share/v1/codec.ts';
import { EMPTY_PAGE, type Shared } from '../../../src/state/share/shared.ts';
import { anyBuild, anyShared } from './arbitrary-shared.ts';
import { draw } from '../../draw.ts';
import { BITE_REFERENCE } from '../../neck/bite-reference.ts';

function written(shared: Shared): string {
  const link = writeLink(shared);
  if (!link.ok) throw new Error(`not written: ${link.trouble.code}`);
  return link.text;
}

const alone = (build: Build): Shared => ({ builds: [build], page: EMPTY_PAGE });

/** JSON knows no minus zero, and no build means anything by it. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a link', () => {
  test(`brings back ${draw(1000)} random builds as they were (seed 71)`, () => {
    fc.assert(
      fc.property(anyBuild, (build) => {
        const read = readLink(written(alone(build)));
        expect(read).toEqual({ ok: true, shared: plain(alone(build)) });
      }),
      { numRuns: draw(1000), seed: 71 },
    );
  });

  test('brings back comparisons with their page as they were (seed 72)', () => {
    fc.assert(
      fc.property(anyShared, (shared) => {
        expect(readLink(written(shared))).toEqual({ ok: true, shared: plain(shared) });
      }),
      { numRuns: draw(300), seed: 72 },
    );
  });

  test('carries a summary of the measurements behind a bite, without their ids; a reader that knows none opens the neck', () => {
    const reference = BITE_REFERENCE;
    const measured = { ...PRESETS[0].build, biteFactor: 1.18, biteReference: reference };
    const { build: plainOne } = PRESETS[1];
    const text = written({ builds: [plainOne, measured], page: EMPTY_PAGE });
    const read = readLink(text);
    const summary = { ...reference, measurements: [] };
    expect(read.ok && read.shared.builds).toEqual([plainOne, { ...measured, biteReference: summary }]);
    expect(written({ builds: [measured], page: EMPTY_PAGE }).length).toBeLessThan(600);
    // What the builds are made of is the same with and without it.
    const { biteReference: _none, ...bare } = measured;
    expect(decode(text.slice(2))!.builds).toEqual(
      decode(written({ builds: [plainOne, bare], page: EMPTY_PAGE }).slice(2))!.builds,
    );
  });

  test('of a preset fits in a QR code that a phone reads from a screen', () => {
    // With the address some 640 characters: a code of 85 squares a side, on a phone four pixels each.
    for (const { build } of PRESETS) expect(written(alone(build)).length).toBeLessThan(600);
  });

  test('of three ways of seating one neck is hardly longer than that of one', () => {
    const { build } = PRESETS[1];
    const builds = (['press', 'glue', 'both'] as const).map((method) => ({ ...build, method }));
    expect(written({ builds, page: EMPTY_PAGE }).length).toBeLessThan(written(alone(build)).length + 100);
  });

  test('holds characters that an address takes unchanged, and nothing else', () => {
    for (const { build } of PRESETS) expect(written(alone(build))).toMatch(/^1\.[A-Za-z0-9_-]+$/);
  });

  test('that would be too long is not written', () => {
    // Ten thousand characters that do not compress, three times.
    const noise = (seed: number) =>
      fc
        .sample(fc.string({ unit: 'binary', minLength: 9900, maxLength: 9900 }), { seed, numRuns: 1 })[0]
        .slice(0, 10_000);
    const builds = [1, 2, 3].map((seed) => ({ ...defaultBuild(), notes: noise(seed) }));
    expect(writeLink({ builds, page: EMPTY_PAGE })).toMatchObject({
      ok: false,
      trouble: { code: 'too-long', most: MOST_CHARACTERS },
    });
  });
});

describe('what is no link', () => {
  const good = written(alone(PRESETS[2].build));

  test.each([
    ['nothing', ''],
    ['a word', 'neck'],
    ['a version without a body', '1.'],
    ['a version zero', `0${good.slice(1)}`],
    ['no version', good.slice(2)],
    ['a body that is no deflate', '1.AAAAAAAAAAAA'],
    ['spaces inside', `${good.slice(0, 30)} ${good.slice(30)}`],
    ['a fraction as version', `1.5.${good.slice(2)}`],
    ['a stray character', `${good}!`],
    ['padding', `${good}=`],
  ])('%s is broken', (_what, text) => {
    expect(readLink(text)).toEqual({ ok: false, trouble: { code: 'broken' } });
  });

  test('a newer version is told from a broken link', () => {
    expect(readLink(`2${good.slice(1)}`)).toEqual({ ok: false, trouble: { code: 'newer', version: 2, newest: 1 } });
    expect(readLink('87.whatever-it-may-hold')).toMatchObject({ trouble: { code: 'newer', version: 87 } });
  });

  test('one that is far too long is not even unpacked', () => {
    expect(readLink(`1.${'A'.repeat(MOST_CHARACTERS)}`)).toMatchObject({ trouble: { code: 'too-long' } });
  });

  test('every truncated link is refused, wherever it was cut', () => {
    for (let length = 0; length < good.length; length += 1) {
      expect(readLink(good.slice(0, length))).toMatchObject({ ok: false, trouble: { code: 'broken' } });
    }
  });

  test('every link with one character changed is refused (seed 73)', () => {
    const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: good.length - 1 }),
        fc.constantFrom(...Array.from(alphabet)),
        (at, character) => {
          fc.pre(good[at] !== character);
          const read = readLink(good.slice(0, at) + character + good.slice(at + 1));
          expect(read).toMatchObject({ ok: false, trouble: { code: 'broken' } });
        },
      ),
      { numRuns: draw(2000), seed: 73 },
    );
  });

  test('tampered links of random builds never throw and never open as another build (seed 74)', () => {
    const tampering = fc.record({
      at: fc.double({ min: 0, max: 0.999, noNaN: true }),
      take: fc.nat({ max: 12 }),
      put: fc.string({ unit: fc.constantFrom(...Array.from('ABCxyz019-_.%#~= é')), maxLength: 12 }),
    });
    const sources = fc.sample(anyShared, { seed: 74, numRuns: 60 }).flatMap((shared) => {
      const link = writeLink(shared);
      return link.ok ? [link.text] : [];
    });
    expect(sources.length).toBeGreaterThan(40);
    let opened = 0;
    fc.assert(
      fc.property(fc.constantFrom(...sources), fc.array(tampering, { minLength: 1, maxLength: 3 }), (link, changes) => {
        let text = link;
        for (const { at, take, put } of changes) {
          const start = Math.floor(at * text.length);
          text = text.slice(0, start) + put + text.slice(start + take);
        }
        const read = readLink(text);
        if (!read.ok) return;
        // Only what says the same as before may open.
        opened += 1;
        expect(text).toBe(link);
      }),
      { numRuns: draw(4000), seed: 74 },
    );
    expect(opened).toBeLessThan(400);
  });

  test('random text never throws (seed 75)', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 300 }),
          fc.string({ maxLength: 300 }).map((t) => `1.${t}`),
        ),
        (text) => {
          expect(readLink(text).ok).toBe(false);
        },
      ),
      { numRuns: draw(2000), seed: 75 },
    );
  });
});
