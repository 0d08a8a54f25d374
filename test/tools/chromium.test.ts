import { expect, test } from 'vitest';
import { findChromium } from './chromium.mjs';

test('CHROMIUM_PATH decides alone when it is set', () => {
  expect(findChromium({ CHROMIUM_PATH: process.execPath, PATH: '' })).toBe(process.execPath);
  expect(findChromium({ CHROMIUM_PATH: '/nowhere/chromium', PATH: process.env['PATH'] })).toBeUndefined();
});
