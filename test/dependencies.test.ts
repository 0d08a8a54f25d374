/** Every package in package.json is used, each where it says: in the page, or only in making and testing it. */
import { describe, expect, test } from 'vitest';
import packageJson from '../package.json' with { type: 'json' };
import { reachOf } from './tools/imports.ts';
import { readFiles, type SourceFile } from './tools/source-files.ts';

/** Programs that a script runs, and what they need beside them. */
const PROGRAMS: Readonly<Record<string, string>> = {
  '@stryker-mutator/core': 'stryker run',
  oxlint: 'oxlint',
  'oxlint-tsgolint': 'oxlint --type-aware',
  prettier: 'prettier',
  typescript: 'tsc',
};

const packageOf = (name: string) => name.split('/', name.startsWith('@') ? 2 : 1).join('/');

/** Packages that some files import, in code or in a style sheet. */
function importedBy(files: readonly SourceFile[]): Set<string> {
  const names = files.flatMap((file) =>
    file.path.endsWith('.css')
      ? [...file.text.matchAll(/url\(['"]?([^'")]+)/g)].map((match) => match[1])
      : reachOf(file).imports.map(({ name }) => name),
  );
  return new Set(names.filter((name) => !/^(\.|\/|#|data:|node:)/.test(name)).map(packageOf));
}

/** Surroundings that tests ask for at their head. */
const surroundings = readFiles('test', /\.test\.tsx?$/).flatMap(
  ({ text }) => /@vitest-environment ([\w-]+)/.exec(text.slice(0, 200))?.[1] ?? [],
);

/** What the mutation tool loads by name. */
const plugins = readFiles('test/mutation', /config\.mjs$/).flatMap(({ text }) =>
  [...(/plugins: \[(.*)\]/.exec(text)?.[1] ?? '').matchAll(/'([^']+)'/g)].map(([, name]) => name),
);

const source = importedBy(readFiles('src', /\.(tsx?|css)$/));
const everywhere = new Set([
  ...surroundings,
  ...plugins,
  ...source,
  ...importedBy(readFiles('test', /\.(tsx?|mjs)$/)),
  ...importedBy(readFiles('', /^vite\.config\.ts$/)),
]);

/** The package whose types "@types/…" holds. */
function typedPackage(name: string): string | undefined {
  const typed = /^@types\/(.+)$/.exec(name)?.[1];
  return typed?.includes('__') ? `@${typed.replace('__', '/')}` : typed;
}

function isUsed(name: string): boolean {
  const typed = typedPackage(name);
  // Node's own modules have their types there too; react-dom is what react is drawn with.
  if (typed !== undefined) return typed === 'node' || everywhere.has(typed);
  const command = PROGRAMS[name];
  if (command !== undefined) return Object.values(packageJson.scripts).some((script) => script.includes(command));
  return everywhere.has(name);
}

describe('package.json', () => {
  test('lists nothing for the page that the page does not import', () => {
    expect(Object.keys(packageJson.dependencies).filter((name) => !source.has(name))).toEqual([]);
  });

  test('lists nothing for making and testing that nothing uses', () => {
    expect(Object.keys(packageJson.devDependencies).filter((name) => !isUsed(name))).toEqual([]);
  });

  test('lists nothing twice, and every version exactly', () => {
    const { dependencies, devDependencies } = packageJson;
    expect(Object.keys(dependencies).filter((name) => name in devDependencies)).toEqual([]);
    const versions = Object.entries({ ...dependencies, ...devDependencies });
    expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))).toEqual([]);
  });
});

test('imports are found in code, in types, in lazy parts and in style sheets', () => {
  const files = [
    {
      path: 'a.ts',
      text: `import 'one/sub'; import type { T } from '@two/a/b'; export const c = () => import('three');`,
    },
    {
      path: 'b.css',
      text: `@font-face { src: url('@four/face/x.woff2') } a { background: url(#shade) url(./five.png) }`,
    },
    { path: 'c.ts', text: `import './six.ts'; import 'node:fs';` },
  ];
  expect([...importedBy(files)].sort()).toEqual(['@four/face', '@two/a', 'one', 'three']);
});
