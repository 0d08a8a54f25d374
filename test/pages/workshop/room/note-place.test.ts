/** The keys that walk over the notes. */
import { expect, test } from 'vitest';
import { stepTo } from '../../../../src/pages/workshop/room/note-place.ts';

const SIZE = { strings: 6, notes: 22 };
const key = (name: string, held: Partial<Record<'ctrlKey' | 'altKey' | 'metaKey', boolean>> = {}) => ({
  key: name,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  ...held,
});

test.each([
  ['ArrowLeft', { string: 2, note: 4 }],
  ['ArrowRight', { string: 2, note: 6 }],
  ['ArrowUp', { string: 1, note: 5 }],
  ['ArrowDown', { string: 3, note: 5 }],
  ['Home', { string: 2, note: 0 }],
  ['End', { string: 2, note: 21 }],
])('%s leads on', (name, place) => {
  expect(stepTo(key(name), { string: 2, note: 5 }, SIZE)).toEqual(place);
});

test('stops at every edge', () => {
  for (const name of ['ArrowLeft', 'ArrowUp'])
    expect(stepTo(key(name), { string: 0, note: 0 }, SIZE)).toEqual({ string: 0, note: 0 });
  for (const name of ['ArrowRight', 'ArrowDown'])
    expect(stepTo(key(name), { string: 5, note: 21 }, SIZE)).toEqual({ string: 5, note: 21 });
});

test('goes to the corners with Ctrl, and leaves other keys to the page', () => {
  expect(stepTo(key('Home', { ctrlKey: true }), { string: 2, note: 5 }, SIZE)).toEqual({ string: 0, note: 0 });
  expect(stepTo(key('End', { ctrlKey: true }), { string: 2, note: 5 }, SIZE)).toEqual({ string: 5, note: 21 });
  expect(stepTo(key('u'), { string: 2, note: 5 }, SIZE)).toBeNull();
  expect(stepTo(key('ArrowLeft', { altKey: true }), { string: 2, note: 5 }, SIZE)).toBeNull();
});
