import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PROGRAM_VERSION } from '../../../src/neck/version.ts';

test('sheets and files carry the version of the package', () => {
  const { version } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as {
    version: string;
  };
  expect(PROGRAM_VERSION).toBe(version);
});
