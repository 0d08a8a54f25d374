/**
 * What has to come over the wire before the first picture: the entry, the workshop and the drawing with three in it, and
 * what these import at once. Compressed as any server does it. Everything else comes when it is asked for.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { root } from '../tools/project.mjs';

const assets = join(root, 'dist', 'assets');
const read = (name: string) => readFileSync(join(assets, name), 'utf8');
const scripts = () => readdirSync(assets).filter((name) => name.endsWith('.js'));

/** Files that a file imports at once. */
function importsOf(name: string): string[] {
  return [...read(name).matchAll(/(?:import|from)\s*["'`]\.\/([^"'`]+\.js)["'`]/g)].map((match) => match[1]);
}

/** Some files and everything that they import at once. */
function withImports(names: readonly string[]): Set<string> {
  const found = new Set<string>();
  const visit = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    for (const other of importsOf(name)) visit(other);
  };
  for (const name of names) visit(name);
  return found;
}

const kilobytes = (names: Iterable<string>) =>
  [...names].reduce((sum, name) => sum + gzipSync(read(name)).length, 0) / 1000;

/** The one script whose name starts so and which holds a text. */
function script(start: string, holding: string): string {
  const found = scripts().filter((name) => name.startsWith(`${start}-`) && read(name).includes(holding));
  expect(found, `${start} with “${holding}”`).toHaveLength(1);
  return found[0];
}

test('the script for the first picture is at most 400 kB, three included', () => {
  const entry = /src="\.\/assets\/([^"]+\.js)"/.exec(readFileSync(join(root, 'dist', 'index.html'), 'utf8'))?.[1] ?? '';
  const first = withImports([entry, script('workshop', 'predictionVersion'), script('picture', 'webgl2')]);
  const size = kilobytes(first);
  console.log(`first picture: ${size.toFixed(1)} kB of script in ${first.size} files, compressed`);
  expect([...first].some((name) => read(name).includes('WebGLRenderer'))).toBe(true);
  expect(size).toBeGreaterThan(200);
  expect(size).toBeLessThanOrEqual(400);
});

test('the controls come by themselves, and neither papers, lessons nor dialogs come before they are asked for', () => {
  const entry = /src="\.\/assets\/([^"]+\.js)"/.exec(readFileSync(join(root, 'dist', 'index.html'), 'utf8'))?.[1] ?? '';
  const workshop = withImports([entry, script('workshop', 'predictionVersion')]);
  const late = scripts().filter((name) => /^(picture|sheets|lesson-panel|[\w]+-dialog|neck-file|csv)-/.test(name));
  expect(late.length).toBeGreaterThan(5);
  expect(late.filter((name) => workshop.has(name))).toEqual([]);
  // The style library of the controls.
  expect([...workshop].filter((name) => read(name).includes('sxs.internal'))).toEqual([]);
});
