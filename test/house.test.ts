/** The house stays one that can be found one's way in: nothing that nobody uses, no room or folder that swallows the rest. */
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exportedValues, unusedExports } from './tools/exports.ts';
import { readFiles } from './tools/source-files.ts';

const sources = readFiles('src', /\.tsx?$/);

/** Libraries whose pages are still to come, and what the bundler and tests of whole tables ask for. */
const WAITING = [
  // A bow by its kind and size, and the hash that a build refers to its measurements by.
  /^src\/kit\/bow-number/,
  /bench-log\/identity\.ts: hashOfSet/,
];
const FOR_EVERY_ROW = ['src/neck/quantities.ts: COMPUTED_KEYS'];

describe('exports', () => {
  test('are taken by the program, not by tests alone', () => {
    const takers = [...sources, ...readFiles('', /^vite\.config\.ts$/)];
    const unused = unusedExports(sources, takers).filter(
      (found) => !WAITING.some((room) => room.test(found)) && !FOR_EVERY_ROW.includes(found),
    );
    expect(sources.length).toBeGreaterThan(400);
    expect(unused).toEqual([]);
  });

  test('that nothing takes are found', () => {
    const file = (path: string, text: string) => ({ path, text });
    const own = file(
      'src/a.ts',
      `export const used = 1; export function dead() {} export const inside = 2; use(inside);`,
    );
    const other = file('src/b.ts', `import { used } from './a.ts'; export type T = typeof used; export class Dead {}`);
    expect(exportedValues(own)).toEqual(['used', 'dead', 'inside']);
    expect(unusedExports([own, other], [own, other])).toEqual(['src/a.ts: dead', 'src/b.ts: Dead']);
  });
});

describe('rooms', () => {
  const linesOf = (text: string) => text.split('\n').length;

  test('hold no more than a third of the source', () => {
    const rooms = new Map<string, number>();
    for (const { path, text } of sources) {
      const room = path.split('/')[1] ?? '';
      rooms.set(room, (rooms.get(room) ?? 0) + linesOf(text));
    }
    const all = [...rooms.values()].reduce((sum, lines) => sum + lines, 0);
    expect([...rooms].filter(([, lines]) => lines > all / 3)).toEqual([]);
  });

  test('have no folder of more than 25 files', () => {
    const folders = new Map<string, number>();
    for (const { path } of readFiles('src', /./)) {
      const folder = posix.dirname(path);
      folders.set(folder, (folders.get(folder) ?? 0) + 1);
    }
    expect([...folders].filter(([, files]) => files > 25)).toEqual([]);
  });
});
