// @vitest-environment happy-dom
/** Passing messages pass; what has to be dealt with stays. */
import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Notices } from '../../src/kit/notices/notices.tsx';
import { stayMs } from '../../src/kit/notices/use-leaving.ts';
import { store } from '../../src/state/store.ts';

beforeEach(() => {
  vi.useFakeTimers();
  for (const { id } of store.getState().notices) store.getState().dismiss(id);
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const TEXT = 'Saved as neck.json.';
const say = (...notice: Parameters<ReturnType<typeof store.getState>['notify']>) =>
  act(() => store.getState().notify(...notice));
function wait(ms: number): void {
  act(() => {
    vi.advanceTimersByTime(ms);
  });
}

describe('a message', () => {
  test.each(['info', 'warning'] as const)('of the kind %s leaves by itself, once it could be read', (kind) => {
    render(<Notices />);
    say(kind, TEXT);
    wait(stayMs(TEXT.length) - 1);
    expect(screen.queryByText(TEXT)).not.toBeNull();
    wait(2);
    expect(screen.queryByText(TEXT)).toBeNull();
  });

  test('stays longer the longer it is, its further lines included', () => {
    render(<Notices />);
    const details = ['a'.repeat(200), 'b'.repeat(100)];
    say('info', TEXT, details);
    wait(stayMs(TEXT.length) + 1);
    expect(screen.queryByText(TEXT)).not.toBeNull();
    wait(stayMs(TEXT.length + 300));
    expect(screen.queryByText(TEXT)).toBeNull();
    // Twice as long as silent reading at 238 words a minute takes: Brysbaert 2019, six characters a word.
    expect(stayMs(600)).toBeGreaterThan((2 * 100 * 60_000) / 238);
  });

  test('stays for as long as it is pointed at or holds the focus, and then its whole time', () => {
    render(<Notices />);
    say('info', TEXT);
    const box = screen.getByText(TEXT).closest('.notice')!;
    fireEvent.pointerEnter(box);
    wait(60_000);
    expect(screen.queryByText(TEXT)).not.toBeNull();
    fireEvent.focus(screen.getByRole('button'));
    fireEvent.pointerLeave(box);
    wait(60_000);
    expect(screen.queryByText(TEXT)).not.toBeNull();
    fireEvent.blur(screen.getByRole('button'));
    wait(stayMs(TEXT.length) - 1);
    expect(screen.queryByText(TEXT)).not.toBeNull();
    wait(2);
    expect(screen.queryByText(TEXT)).toBeNull();
  });

  test.each([
    ['an error', 'error', {}],
    ['something to copy', 'warning', { copy: { label: 'Copy the link', text: 'https://example.org' } }],
  ] as const)('that is %s stays until it is closed', (_what, kind, more) => {
    render(<Notices />);
    say(kind, TEXT, [], more);
    wait(3_600_000);
    expect(screen.queryByText(TEXT)).not.toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(screen.queryByText(TEXT)).toBeNull();
  });
});
