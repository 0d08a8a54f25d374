/** The build outlives one load of the page, and no more. */
import { expect, test } from 'vitest';
import { PRESETS } from '../../../src/build/presets.ts';
import { keepAcrossReload, takeAcrossReload } from '../../../src/state/offline/across-reload.ts';

function storage(kept = new Map<string, string>()) {
  return () => ({
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  });
}

test('the build comes back once', () => {
  const here = storage();
  keepAcrossReload(PRESETS[2]!.build, here);
  expect(takeAcrossReload(here)).toEqual(PRESETS[2]!.build);
  expect(takeAcrossReload(here)).toBeNull();
});

test('what is no build is forgotten', () => {
  const kept = new Map([['backbow.across-reload', '{"format": "something"']]);
  expect(takeAcrossReload(storage(kept))).toBeNull();
  expect(kept.size).toBe(0);
});

test('refused storage is no trouble', () => {
  const refused = () => {
    throw new DOMException('refused', 'SecurityError');
  };
  keepAcrossReload(PRESETS[0]!.build, refused);
  expect(takeAcrossReload(refused)).toBeNull();
});
