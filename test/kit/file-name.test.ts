import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileName, fileStem } from '../../src/kit/file-name.ts';
import { fileNameOf } from '../../src/pages/workshop/project/project-file.ts';

test.each([
  ['Hütte', 'hutte'],
  ['Ångström № 3', 'angstrom-no-3'],
  ['', 'neck'],
  ['…', 'neck'],
  ['../../etc/passwd', 'etc-passwd'],
  ['木のネック', '木のネック'],
  // Names of devices on Windows, whatever ending follows.
  ['CON', 'con-neck'],
  ['com1', 'com1-neck'],
  ['Conny', 'conny'],
])('a build called “%s” is saved as %s', (name, stem) => {
  expect(fileStem(name)).toBe(stem);
  expect(fileName(name, 'slots.csv')).toBe(`${stem}-slots.csv`);
  expect(fileNameOf(name)).toBe(`${stem}.backbow.json`);
});

test('a name never breaks out of its folder, hides, or grows too long for a file system (seed 255)', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (name) => {
      for (const file of [fileName(name, 'template.svg'), fileNameOf(name)]) {
        expect(file).toMatch(/^[\p{Letter}\p{Number}-]+\.[a-z.]+$/u);
        expect(file).not.toMatch(/^-|\p{Mark}/u);
        expect(new TextEncoder().encode(file).length).toBeLessThanOrEqual(255);
      }
    }),
    { seed: 255, numRuns: 500 },
  );
});
