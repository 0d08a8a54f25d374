/** The browser is asked once to keep everything for good, when there is something to keep. */
import { expect, test } from 'vitest';
import { createKeepAlways } from '../../../src/state/device/keep-always.ts';
import { textStorage } from '../library/memory.ts';

/** A browser that answers so, and counts how often it was asked. */
function browser(answer: boolean) {
  let promised = false;
  const asked = { times: 0 };
  const manager = {
    persisted: async () => promised,
    persist: async () => {
      asked.times += 1;
      return (promised = answer);
    },
  };
  const memory = textStorage();
  return {
    asked,
    page: () =>
      createKeepAlways(
        () => manager,
        () => memory,
      ),
  };
}

test('looking asks nobody', async () => {
  const { page, asked } = browser(true);
  const keep = page();
  await keep.look();
  expect([keep.state.getState(), asked.times]).toEqual(['not-asked', 0]);
});

test('a promise is kept and is not asked for again', async () => {
  const { page, asked } = browser(true);
  const keep = page();
  await Promise.all([keep.ask(), keep.ask()]);
  expect([keep.state.getState(), asked.times]).toEqual(['granted', 1]);
  const next = page();
  await next.look();
  expect(next.state.getState()).toBe('granted');
  await next.ask();
  expect(asked.times).toBe(1);
});

test('a refusal is not met with the same question in every page, but the person may ask', async () => {
  const { page, asked } = browser(false);
  await page().ask();
  const next = page();
  await next.look();
  expect(next.state.getState()).toBe('denied');
  await next.ask();
  expect([next.state.getState(), asked.times]).toEqual(['denied', 1]);
  await next.askAgain();
  expect(asked.times).toBe(2);
});

test.each<[string, () => StorageManager | undefined]>([
  ['a browser without it, or a plain address', () => undefined],
  ['an old one', () => ({}) as StorageManager],
  [
    'one that throws',
    () => {
      throw new Error('SecurityError');
    },
  ],
  [
    'one that refuses to answer',
    () =>
      ({ persisted: () => Promise.reject(new Error('no')), persist: async () => true }) as unknown as StorageManager,
  ],
])('%s: it cannot be asked', async (_what, manager) => {
  const keep = createKeepAlways(manager, () => textStorage());
  await keep.ask();
  expect(keep.state.getState()).toBe('unavailable');
});

test('where nothing can be remembered it is still asked', async () => {
  const { asked } = browser(true);
  const keep = createKeepAlways(
    () => ({ persisted: async () => false, persist: async () => ((asked.times += 1), true) }),
    () => {
      throw new Error('SecurityError');
    },
  );
  await keep.ask();
  expect([keep.state.getState(), asked.times]).toEqual(['granted', 1]);
});
