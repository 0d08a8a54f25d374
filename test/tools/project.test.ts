import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { isBuilt, isInstalled, root } from './project.mjs';

let folder = '';

/** Writes a file of the pretended project. */
function write(path: string, text = ''): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

function writeLockfile(path: string, packages: Record<string, { version?: string; optional?: boolean }>): void {
  write(path, JSON.stringify({ packages }));
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('the root is the folder of package.json', () => {
  expect(join(root, 'test', 'tools', 'project.test.ts')).toBe(import.meta.filename);
});

describe('what is installed', () => {
  const wanted = {
    '': { version: '0.1.0' },
    'node_modules/one': { version: '1.0.0' },
    'node_modules/other-system': { version: '1.0.0', optional: true },
  };

  beforeEach(() => {
    writeLockfile('package-lock.json', wanted);
    writeLockfile('node_modules/.package-lock.json', { 'node_modules/one': { version: '1.0.0' } });
    write('node_modules/one/package.json', '{}');
  });

  test('is enough when every package that is not optional is there', () => {
    expect(isInstalled(folder)).toBe(true);
  });

  test('is not enough without node_modules', () => {
    rmSync(join(folder, 'node_modules'), { recursive: true });
    expect(isInstalled(folder)).toBe(false);
  });

  test('is not enough when the lockfile asks for another version or one more package', () => {
    writeLockfile('package-lock.json', { ...wanted, 'node_modules/one': { version: '1.0.1' } });
    expect(isInstalled(folder)).toBe(false);
    writeLockfile('package-lock.json', { ...wanted, 'node_modules/two': { version: '1.0.0' } });
    expect(isInstalled(folder)).toBe(false);
  });

  test('is not enough when a package’s folder was deleted or the list is broken', () => {
    rmSync(join(folder, 'node_modules/one'), { recursive: true });
    expect(isInstalled(folder)).toBe(false);
    write('node_modules/one/package.json', '{}');
    write('node_modules/.package-lock.json', '{');
    expect(isInstalled(folder)).toBe(false);
  });
});

describe('what is built', () => {
  const setTime = (path: string, seconds: number) => utimesSync(join(folder, path), seconds, seconds);

  beforeEach(() => {
    write('index.html');
    write('src/app/main.ts');
    write('dist/index.html');
    for (const path of ['index.html', 'src/app/main.ts', 'src/app', 'src']) setTime(path, 1000);
    setTime('dist/index.html', 2000);
  });

  test('is current when nothing is newer', () => {
    expect(isBuilt(folder)).toBe(true);
  });

  test('is missing without dist', () => {
    rmSync(join(folder, 'dist'), { recursive: true });
    expect(isBuilt(folder)).toBe(false);
  });

  test('is old when a file deep in src changed', () => {
    setTime('src/app/main.ts', 3000);
    expect(isBuilt(folder)).toBe(false);
  });

  test('is old when a file in src was deleted', () => {
    rmSync(join(folder, 'src/app/main.ts'));
    expect(isBuilt(folder)).toBe(false);
  });

  test('does not depend on tests or documents', () => {
    write('test/a.test.ts');
    write('README.md');
    expect(isBuilt(folder)).toBe(true);
  });
});
