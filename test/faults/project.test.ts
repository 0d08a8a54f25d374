/**
 * Project files that are damaged, invented or hostile: refused with a reason or taken exactly as they are, and a refused
 * one leaves the build on the bench as it was.
 */
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { readCollection } from '../../src/state/share/file.ts';
import { readProject, writeProject } from '../../src/neck/file.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild, type CheckedBuild } from '../../src/neck/schema.ts';
import { readProjectFile } from '../../src/pages/workshop/project/project-file.ts';
import { problemTexts } from '../../src/speech/problems.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { createBackbowStore } from '../../src/state/store.ts';
import { hold, holdFinite } from '../sweep/invariant.ts';
import { damaged, hostileText, spoilt } from './hostile.ts';
import { RUNS } from './runs.ts';
import { draw } from '../draw.ts';

const FILES = PRESETS.map(({ build }) => writeProject(build));
const DATA = FILES.map((text) => JSON.parse(text) as unknown);

/** What was read is what was written, or there is a reason in words. */
function holdHonest(text: string, read: CheckedBuild): void {
  if (!read.ok) {
    hold(read.problems.length > 0, () => 'refused without a reason');
    for (const system of ['metric', 'inch'] as const)
      for (const sentence of problemTexts(read.problems, system))
        hold(sentence.length > 10 && sentence.length < 2500, () => `no sentence: “${sentence}”`);
    return;
  }
  const stored = (JSON.parse(text) as { build: Build }).build;
  hold(isDeepStrictEqual(read.build, stored), () => 'something was changed silently');
  hold(checkBuild(read.build).ok, () => 'what was read is no build');
  holdFinite(read.build, 'build');
  const again = readProject(writeProject(read.build));
  hold(JSON.stringify(again) === JSON.stringify(read), () => 'written and read again it is another');
}

describe('project files', () => {
  test(`with characters lost, doubled or exchanged (seed ${RUNS.projectText.seed})`, () => {
    const text = fc.constantFrom(...FILES).chain(damaged);
    fc.assert(
      fc.property(text, (input) => holdHonest(input, readProject(input))),
      RUNS.projectText,
    );
  });

  test(`with values spoilt (seed ${RUNS.projectValues.seed})`, () => {
    let taken = 0;
    const data = fc.constantFrom(...DATA).chain(spoilt);
    fc.assert(
      fc.property(data, (input) => {
        const text = JSON.stringify(input) ?? 'undefined';
        const read = readProject(text);
        if (read.ok) taken += 1;
        holdHonest(text, read);
      }),
      RUNS.projectValues,
    );
    // Both ways are tried: most are refused, some are harmless.
    expect(taken).toBeGreaterThan(draw(20, 3));
    expect(taken).toBeLessThan(RUNS.projectValues.numRuns / 2);
  });

  test(`that are anything at all (seed ${RUNS.anyText.seed})`, () => {
    fc.assert(
      fc.property(hostileText, (input) => holdHonest(input, readProject(input))),
      RUNS.anyText,
    );
  });

  test(`that are refused leave the build on the bench, and say so (seed ${RUNS.refusals.seed})`, async () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    const text = fc.oneof(hostileText, fc.constantFrom(...FILES).chain(damaged));
    let refused = 0;
    await fc.assert(
      fc.asyncProperty(text, async (input) => {
        const { build: before, history } = store.getState();
        await readProjectFile(store, new File([input], 'neck.json'));
        const { build, history: after, notices } = store.getState();
        // A file is read as UTF-8: a mark at its start is taken off, half a character becomes a whole wrong one.
        const read = readProject(await new File([input], 'neck.json').text());
        if (read.ok) {
          hold(isDeepStrictEqual(build, read.build), () => 'another build is on the bench');
          return;
        }
        refused += 1;
        hold(build === before && after === history, () => 'the build or its history was touched');
        const notice = notices.at(-1);
        hold(notice?.kind === 'error' && notice.details.length > 0, () => 'nothing was said');
      }),
      RUNS.refusals,
    );
    expect(refused).toBeGreaterThan(RUNS.refusals.numRuns / 2);
  });

  test('nested deeper than any file are refused, not followed to the ground', () => {
    for (const text of ['['.repeat(100_000), `${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}`]) {
      expect(readProject(text).ok).toBe(false);
    }
  });

  test('with deep nesting in the place of any value are refused with a short sentence for it', () => {
    const file = JSON.parse(FILES[0]) as Record<string, unknown>;
    const build = file['build'] as Record<string, unknown>;
    const deep = ['['.repeat(20_000) + ']'.repeat(20_000), `${'{"a":'.repeat(20_000)}1${'}'.repeat(20_000)}`];
    const places = [
      ...Object.keys(file).map((key) => ({ ...file, [key]: '@' })),
      ...[...Object.keys(build), 'more'].map((key) => ({ ...file, build: { ...build, [key]: '@' } })),
      { ...file, build: { ...build, strings: ['@'] } },
    ];
    for (const place of places) {
      for (const nested of deep) {
        const text = JSON.stringify(place).replace('"@"', () => nested);
        const read = readProject(text);
        holdHonest(text, read);
        const texts = read.ok ? [] : problemTexts(read.problems, 'metric');
        hold(!read.ok && texts.every((said) => said.length < 2000), () => text.slice(0, 100));
        expect(readCollection(text).ok).toBe(false);
        const many = JSON.stringify({ format: 'backbow collection', version: 1, builds: [{ project: '@' }] });
        readCollection(many.replace('"@"', () => text));
      }
    }
  });

  test('cannot reach the prototypes of the program', () => {
    const [text = ''] = FILES;
    const hostile = text.replace('"build": {', '"build": { "__proto__": { "hacked": true }, "constructor": 1,');
    expect(readProject(hostile).ok).toBe(false);
    expect('hacked' in {}).toBe(false);
  });

  test('larger than any file are refused before they are read', async () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    const { build } = store.getState();
    await readProjectFile(store, new File(['x'.repeat(1_000_001)], 'neck.json'));
    expect(store.getState().build).toBe(build);
    expect(store.getState().notices.at(-1)?.details.join(' ')).toContain('1000 kB');
  });
});
