/**
 * The house keeps its rules, and the rules notice when it does not.
 */
import { describe, expect, test } from 'vitest';
import packageJson from '../package.json' with { type: 'json' };
import { checkHouse, findCycles, findForeignAddresses } from './tools/architecture.ts';
import { readFiles } from './tools/source-files.ts';

const dependencies = new Set(Object.keys(packageJson.dependencies));

describe('the source', () => {
  test('keeps the rules of the house', () => {
    expect(checkHouse(readFiles('src', /./), dependencies)).toEqual([]);
  });

  test('names no package registry and no path of one machine', () => {
    const files = readFiles('', /\.(tsx?|mjs|json|md|html|css|svg|csv|txt|webmanifest)$|(^|\/)\.[a-z]+rc$|^\.ci\/run$/);
    expect(files.length).toBeGreaterThan(10);
    expect(findForeignAddresses(files)).toEqual([]);
  });
});

/** Violations of the house when it consists of these files, by path and text. */
function violationsOf(texts: Record<string, string>): string[] {
  return checkHouse(
    Object.entries(texts).map(([path, text]) => ({ path, text })),
    new Set(['react', 'three', 'zod', '@react-three/fiber', 'leva']),
  );
}

describe('the rules of the house', () => {
  test('accept a sound house', () => {
    expect(
      violationsOf({
        'src/neck/a.ts': `import * as z from 'zod/mini'; export const a = z;`,
        'src/mechanics/b.ts': `import { a } from '../neck/a.ts'; export const location = a; export const b = location;`,
        'src/geometry/c.ts': `import { b } from '../mechanics/b.ts'; export const c = { document: b }.document;`,
        'src/scene/d.tsx': `import { Mesh } from 'three'; import { c } from '../geometry/c.ts'; export const d = [Mesh, c, window];`,
        'src/app/e.tsx': `import { d } from '../scene/d.tsx'; export { b } from '../mechanics/b.ts'; export const e = d;`,
        'src/app/predict.ts': `import { readFileSync } from 'node:fs'; export const f = readFileSync;`,
      }),
    ).toEqual([]);
  });

  test('refuse a house without files', () => {
    expect(violationsOf({})).toEqual(['there are no source files']);
    expect(violationsOf({ 'src/neck/woods.json': '{}' })).toEqual(['there are no source files']);
  });

  test.each([
    ['a static import', `import { d } from '../scene/d.ts'; export const a = d;`],
    ['a type', `import type { d } from '../scene/d.ts'; export type A = typeof d;`],
    ['a type in place', `export type A = typeof import('../scene/d.ts');`],
    ['a re-export', `export * from '../scene/d.ts';`],
    ['a dynamic import', `export const a = () => import('../scene/d.ts');`],
    ['a worker', `export const a = new URL('../scene/d.ts', import.meta.url);`],
    ['an import without extension', `import { d } from '../scene/d'; export const a = d;`],
  ])('refuse a room that reaches upwards by %s', (_kind, text) => {
    const found = violationsOf({ 'src/mechanics/a.ts': text, 'src/scene/d.ts': `export const d = 1;` });
    expect(found).toContain('src/mechanics/a.ts imports src/scene/d.ts: mechanics stands below scene');
  });

  test.each(['neck', 'fretwork', 'mechanics', 'verdict', 'geometry'])(
    'refuse page packages and page names in %s',
    (room) => {
      const path = `src/${room}/a.ts`;
      for (const name of ['react', 'react/jsx-runtime', 'three', 'three/addons/x.js', '@react-three/fiber', 'leva'])
        expect(violationsOf({ [path]: `import * as x from '${name}'; export { x };` })).toEqual([
          `${path} imports ${name}; ${room} is plain computation`,
        ]);
      for (const [text, name] of [
        [`export const w = document.title;`, 'document'],
        [`export function f() { return window.innerWidth; }`, 'window'],
        [`export let e: HTMLCanvasElement | undefined;`, 'HTMLCanvasElement'],
        [`export const r = () => requestAnimationFrame(() => {});`, 'requestAnimationFrame'],
      ] as const)
        expect(violationsOf({ [path]: text })).toEqual([`${path} uses ${name}; ${room} is plain computation`]);
      expect(violationsOf({ [`src/${room}/a.tsx`]: `export const a = 1;` })).toHaveLength(1);
    },
  );

  test('refuse Node’s modules in a page', () => {
    expect(violationsOf({ 'src/mechanics/a.ts': `import 'node:fs';` })).toEqual([
      'src/mechanics/a.ts imports node:fs, which a page has not',
    ]);
  });

  test('refuse unknown rooms, files outside rooms, missing files and undeclared packages', () => {
    expect(violationsOf({ 'src/attic/a.ts': `export {};` })).toEqual([
      'src/attic/a.ts is in “attic”, which is no room of the house',
    ]);
    expect(violationsOf({ 'src/a.ts': `export {};` })).toEqual(['src/a.ts is in no room']);
    expect(violationsOf({ 'src/app/a.ts': `import './b.ts';` })).toEqual([
      'src/app/a.ts imports ./b.ts, which is no file under src',
    ]);
    expect(violationsOf({ 'src/app/a.ts': `import '@scope/name/sub';` })).toEqual([
      'src/app/a.ts imports @scope/name/sub, which is not among the dependencies in package.json',
    ]);
  });

  test('refuse files and rooms that import each other', () => {
    expect(
      violationsOf({
        'src/neck/a.ts': `import { b } from './b.ts'; export const a = b;`,
        'src/neck/b.ts': `import { a } from './a.ts'; export const b = a;`,
      }),
    ).toEqual(['files import each other: src/neck/a.ts → src/neck/b.ts → src/neck/a.ts']);
    for (const types of [`import type { A }`, `import { type A }`, `export type { A }`])
      expect(
        violationsOf({
          'src/neck/a.ts': `import { b } from './b.ts'; export const a = b; export type A = typeof b;`,
          'src/neck/b.ts': `${types} from './a.ts'; export const b = 1;`,
        }),
      ).toEqual([]);
    expect(
      violationsOf({
        'src/pages/a.ts': `import '../state/b.ts';`,
        'src/pages/c.ts': ``,
        'src/state/b.ts': `import '../pages/c.ts';`,
      }),
    ).toEqual(['rooms import each other: pages → state → pages']);
  });

  test('refuse a file that cannot be parsed', () => {
    expect(() => violationsOf({ 'src/app/a.ts': `import {` })).toThrow('src/app/a.ts cannot be parsed');
  });
});

test('cycles are found wherever they are', () => {
  const graph = (edges: Record<string, string[]>) => new Map(Object.entries(edges).map(([a, b]) => [a, new Set(b)]));
  expect(findCycles(graph({ a: ['b', 'c'], b: ['d'], c: ['d'], d: [] }))).toEqual([]);
  expect(findCycles(graph({ a: ['a'] }))).toEqual([['a', 'a']]);
  expect(findCycles(graph({ a: ['b'], b: ['c'], c: ['d'], d: ['b'] }))).toEqual([['b', 'c', 'd', 'b']]);
});

test.each([
  ['a registry', 'https://registry.' + 'npm' + 'js.org/react'],
  ['another', 'see www.n' + 'pmjs.com/package/react'],
  ['a mirror of files', `import x from 'https://es` + `m.sh/react'`],
  ['a folder of one machine', 'read "/ho' + 'me/somebody/neck.json"'],
  ['another folder', '/wo' + 'rk/neck.json'],
  ['a Windows folder', 'C:\\Us' + 'ers\\somebody'],
])('foreign addresses are found: %s', (_kind, line) => {
  expect(findForeignAddresses([{ path: 'a.md', text: `first line\n${line}` }])).toEqual([`a.md:2: ${line}`]);
});

test('ordinary text is no foreign address', () => {
  const text = 'framework/home/x, ./tmp/y, test/work/z, https://example.org/home/page, /usr/bin/chromium, and/or';
  expect(findForeignAddresses([{ path: 'a.md', text }])).toEqual([]);
});
