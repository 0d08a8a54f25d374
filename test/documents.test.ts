/**
 * The documents at the top of the project speak of files and commands that are there.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import packageJson from '../package.json' with { type: 'json' };
import { root } from './tools/project.mjs';
import { readFiles } from './tools/source-files.ts';

const documents = readFiles('', /^(README|DEVELOPERS)\.md$/).map(({ path, text }) => [path, text] as const);

describe.each(documents)('%s', (_path, text) => {
  test('links to files that exist', () => {
    const targets = [...text.matchAll(/\]\((?!https?:)([^)#]+)/g)].map((match) => match[1] ?? '');
    expect(targets.filter((target) => !existsSync(join(root, target)))).toEqual([]);
  });

  test('names folders and files of the source that exist', () => {
    const named = [...text.matchAll(/`((?:src|test|public)\/[\w./-]+)`/g)].map((match) => match[1] ?? '');
    expect(named.filter((path) => !path.startsWith('test/output/') && !existsSync(join(root, path)))).toEqual([]);
  });

  test('gives commands that package.json has', () => {
    const commands = [...text.matchAll(/\bnpm (?:run (?:--silent )?)?(\w[\w:]*)/g)].map((match) => match[1] ?? '');
    const known = new Set([...Object.keys(packageJson.scripts), 'ci', 'install', 'run', 'audit', 'outdated']);
    expect(commands.filter((command) => !known.has(command))).toEqual([]);
  });
});

test('both documents are there', () => {
  expect(documents.map(([path]) => path)).toEqual(['DEVELOPERS.md', 'README.md']);
});

test('the changelog closes the README and starts with the current version', () => {
  const readme = readFiles('', /^README\.md$/)[0]?.text ?? '';
  const sections = [...readme.matchAll(/^## (.+)$/gm)].map((match) => match[1]);
  expect(sections.at(-1)).toBe('Changelog');
  const versions = [...readme.matchAll(/^### (\d+\.\d+\.\d+)/gm)].map((match) => match[1]);
  expect(versions[0]).toBe(packageJson.version);
});
