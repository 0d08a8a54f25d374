/** @vitest-environment happy-dom */
/** A new version is asked about once: what was put off stays so, whatever is opened meanwhile. */
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { NewVersion } from '../../src/pages/workshop/offline/new-version.tsx';
import { offlineStore } from '../../src/state/offline/offline-store.ts';
import { OFFLINE_WORDS } from '../../src/speech/en/workshop/offline.ts';

afterEach(() => {
  cleanup();
  offlineStore.setState({ newVersion: 'none', putOff: 'none' });
});

test('put off, it is not asked about again in a dialog that opens; another window’s taking over is told', () => {
  offlineStore.setState({ newVersion: 'waiting' });
  const page = render(<NewVersion />);
  expect(screen.getByText(OFFLINE_WORDS.waiting)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: OFFLINE_WORDS.later }));
  expect(screen.queryByText(OFFLINE_WORDS.waiting)).toBeNull();
  // Messages stand inside the dialog that is open: there it is made anew.
  page.unmount();
  const inDialog = render(<NewVersion />);
  expect(screen.queryByText(OFFLINE_WORDS.waiting)).toBeNull();
  offlineStore.setState({ newVersion: 'in-use' });
  inDialog.rerender(<NewVersion />);
  expect(screen.getByText(OFFLINE_WORDS.inUse)).toBeTruthy();
});
