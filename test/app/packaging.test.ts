/** How the page is packed: the policy, what comes in one file, the list of files that are kept, the licences. */
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { fileOf } from '../../src/app/packaging/chunks.ts';
import { licenceOf, packageFolderOf } from '../../src/app/packaging/licences.ts';
import { listKeptFiles } from '../../src/app/packaging/offline-files.ts';
import { SECURITY_HEADERS, SECURITY_POLICY } from '../../src/app/packaging/headers.mjs';
import { apacheLines, headerFileLines, nginxLines } from '../../src/app/packaging/other-hosts.mjs';
import { root } from '../tools/project.mjs';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

function write(path: string, text: string): void {
  mkdirSync(join(folder, path, '..'), { recursive: true });
  writeFileSync(join(folder, path), text);
}

describe('the security policy', () => {
  const directives = new Map(
    SECURITY_POLICY.split('; ').map((part): [string, string[]] => {
      const [name = '', ...sources] = part.split(' ');
      return [name, sources];
    }),
  );

  test('forbids what it does not name, and names no other host and no unsafe kind', () => {
    expect(directives.get('default-src')).toEqual(["'none'"]);
    const sources = new Set([...directives.values()].flat());
    expect([...sources].filter((source) => !/^('self'|'none'|data:|blob:|'sha256-[\w+/]+=*')$/.test(source))).toEqual(
      [],
    );
    expect(SECURITY_POLICY).not.toMatch(/unsafe|http|\*/);
  });

  test('lets pictures alone come as data', () => {
    expect([...directives].filter(([, sources]) => sources.includes('data:')).map(([name]) => name)).toEqual([
      'img-src',
    ]);
  });

  test('allows an empty style element and no other', () => {
    const hashes = directives.get('style-src')?.filter((source) => source.includes('sha256'));
    // Hash of no bytes at all, FIPS 180-4, as any handbook prints it: e3b0c442…b855.
    const nothing = Buffer.from('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855', 'hex');
    expect(hashes).toEqual([`'sha256-${nothing.toString('base64')}'`]);
  });
});

describe('the headers', () => {
  test('carry the same policy, and that nobody may show the page in a frame', () => {
    expect(SECURITY_HEADERS['Content-Security-Policy']).toBe(`${SECURITY_POLICY}; frame-ancestors 'none'`);
  });

  test('leave the page the devices that it may ask for and no others', () => {
    const devices = SECURITY_HEADERS['Permissions-Policy'].split(', ').map((part) => part.split('='));
    expect(devices.filter(([, who]) => who === '(self)').map(([name]) => name)).toEqual([
      'camera',
      'microphone',
      'screen-wake-lock',
    ]);
    expect(devices.filter(([, who]) => who !== '(self)' && who !== '()')).toEqual([]);
  });

  test('can stand within the quotes of other servers’ files', () => {
    for (const [name, value] of Object.entries(SECURITY_HEADERS)) {
      expect(name).toMatch(/^[A-Za-z-]+$/);
      // Printable ASCII (RFC 9110, 5.5); no double quote, no dollar sign, no per cent sign, no backslash.
      expect(value).toMatch(/^[ !#&-[\]-~]+$/);
    }
  });

  test.each([
    ['nginx', nginxLines],
    ['Apache', apacheLines],
    ['a file of headers', headerFileLines],
  ])('stand in the README as lines for %s', (_server, lines) => {
    const readme = readFileSync(join(root, 'README.md'), 'utf8');
    expect(readme.includes(`\n${lines()}\n\`\`\``), `README.md must hold these lines:\n${lines()}\n`).toBe(true);
  });
});

test('what always comes together comes in one file, and nobody is sent what his part does not import', () => {
  const imports: Record<string, string[]> = {
    'src/app/main.tsx': ['language'],
    'src/app/workshop.tsx': ['language', 'panels', 'react', 'build'],
    'src/app/customer.tsx': ['language', 'react', 'cards', 'build'],
    'src/scene/index.ts': ['three', 'geometry'],
    panels: ['geometry', 'dialog-frame'],
    geometry: ['build'],
    build: ['panels'], // in a circle
    dialog: ['dialog-frame', 'papers'],
  };
  const id = (name: string) => (name.startsWith('src/') ? join(folder, name) : name);
  const graph = new Map(Object.entries(imports).map(([name, others]) => [id(name), others]));
  const context = {
    getModuleInfo: (module: string) => ({ importedIds: graph.get(module) ?? [] }),
  } as unknown as Parameters<ReturnType<typeof fileOf>>[1];
  const of = fileOf(folder);
  const file = (name: string) => of(id(name), context);
  expect(file('src/app/workshop.tsx')).toBe('workshop');
  expect(file('react')).toBe('common');
  expect(file('geometry')).toBe('common');
  expect(file('three')).toBe('picture');
  const left = ['src/app/main.tsx', 'language', 'src/app/customer.tsx', 'cards', 'dialog', 'papers'];
  expect(left.filter((name) => file(name) !== null)).toEqual([]);
  // Reached by way of the circle from the customer's page as well.
  expect(['panels', 'dialog-frame'].map(file)).toEqual(['common', 'common']);
});

describe('the files that are kept', () => {
  test('are all files of the folder but the worker and pictures for the README, by their hashes', () => {
    write('index.html', 'page');
    write('assets/a-1.js', 'code');
    write('icons/icon.svg', '<svg/>');
    write('service-worker.js', 'worker');
    write('picture-neck.png', 'picture');
    const hash = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;
    expect(listKeptFiles(folder)).toEqual([
      { address: './', integrity: hash('page') },
      { address: 'assets/a-1.js', integrity: hash('code') },
      { address: 'icons/icon.svg', integrity: hash('<svg/>') },
    ]);
  });
});

describe('licences', () => {
  test.each([
    ['node_modules/react/index.js', 'node_modules/react'],
    ['node_modules/@react-three/fiber/dist/index.js?v=1', 'node_modules/@react-three/fiber'],
    ['node_modules/leva/node_modules/zustand/index.mjs', 'node_modules/leva/node_modules/zustand'],
    ['\0node_modules/react/index.js?commonjs-module', 'node_modules/react'],
    ['\0vite/preload-helper.js', 'node_modules/vite'],
  ])('%s belongs to %s', (id, expected) => {
    expect(packageFolderOf(id, '/project')).toBe(join('/project', expected));
  });

  test('our own files belong to no package', () => {
    expect(packageFolderOf('/project/src/app/main.tsx', '/project')).toBeUndefined();
    expect(packageFolderOf('\0virtual:something', '/project')).toBeUndefined();
  });

  test('are read from the package', () => {
    const licence = licenceOf(join(root, 'node_modules', 'three'));
    expect(licence).toMatchObject({ name: 'three', licence: 'MIT' });
    expect(licence.text).toMatch(/Permission is hereby granted, free of charge/);
  });

  test('leave out what a tool itself was built from', () => {
    write('package.json', '{ "name": "tool", "version": "1.0.0", "license": "MIT", "author": "A <a@b.example> (c)" }');
    write('LICENSE.md', 'The licence\r\n\r\n# Licenses of bundled dependencies\r\nmany');
    expect(licenceOf(folder)).toEqual({
      name: 'tool',
      version: '1.0.0',
      licence: 'MIT',
      by: 'A',
      text: 'The licence',
    });
  });

  test('that are missing stop the build', () => {
    write('package.json', '{ "name": "mystery", "version": "2.0.0" }');
    expect(() => licenceOf(folder)).toThrow('mystery 2.0.0 states no licence');
  });
});
