// @vitest-environment happy-dom
/** A stop is spoken when it comes and when it goes, and not while a thumb is on its way. */
import { act, cleanup, render } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SpokenStops } from '../../../src/pages/workshop/checks/spoken-stops.tsx';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { checkFretwork } from '../../../src/fretwork/checks/checks.ts';
import { store } from '../../../src/state/store.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  store.getState().endGesture();
  cleanup();
  vi.useRealTimers();
});

const checksOf = (change: Partial<Build> = {}) => checkFretwork({ ...defaultBuild(), ...change });
/** A slot that leaves too little of the board. */
const DEEP = { boardThicknessMm: 3.2, slotDepthMm: 3 };
function rest(ms = 1000): void {
  act(() => {
    vi.advanceTimersByTime(ms);
  });
}

test('the build of the test has a stop, and the one before it has none', () => {
  expect(checksOf().filter(({ severity }) => severity === 'stop')).toEqual([]);
  expect(checksOf(DEEP).some(({ severity }) => severity === 'stop')).toBe(true);
});

test('it says what came, once the value rests, and what is left when it has gone', () => {
  const { container, rerender } = render(<SpokenStops checks={checksOf()} />);
  const said = () => container.querySelector('[aria-live="assertive"]')!.textContent;
  rest();
  expect(said()).toBe('');
  rerender(<SpokenStops checks={checksOf(DEEP)} />);
  expect(said()).toBe('');
  rest();
  expect(said()).toMatch(/^Stop: Slot depth\. .*mm/);
  const first = said();
  // The same stop with another number is no news.
  rerender(<SpokenStops checks={checksOf({ ...DEEP, slotDepthMm: 2.95 })} />);
  rest();
  expect(said()).toBe(first);
  rerender(<SpokenStops checks={checksOf()} />);
  rest();
  expect(said()).toBe('Solved: Slot depth. No stops left.');
});

test('while a thumb is held nothing is said, and nothing at all where it went back', () => {
  const { container, rerender } = render(<SpokenStops checks={checksOf()} />);
  const said = () => container.querySelector('[aria-live="assertive"]')!.textContent;
  rest();
  act(() => store.getState().beginGesture('Slot depth'));
  for (const slotDepthMm of [2.8, 2.9, 3]) {
    rerender(<SpokenStops checks={checksOf({ ...DEEP, slotDepthMm })} />);
    rest(5000);
  }
  expect(said()).toBe('');
  rerender(<SpokenStops checks={checksOf()} />);
  act(() => store.getState().endGesture());
  rest(5000);
  expect(said()).toBe('');
});
