// @vitest-environment happy-dom
import { STANDARD_LAW } from '../../../src/mechanics/bench-log/law.ts';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { ShareComparison } from '../../../src/pages/compare/share-comparison.tsx';
import { ShareDialog } from '../../../src/pages/share/share-dialog.tsx';
import { SHARE_WORDS } from '../../../src/speech/en/pages/share.ts';
import { referenceTo } from '../../../src/mechanics/bench-log/reference.ts';
import { entry } from '../../state/bench-log/entries.ts';
import { store } from '../../../src/state/store.ts';

const initial = store.getState();
beforeEach(() => store.setState(initial, true));
afterEach(cleanup);

const ENTRIES = [entry('A'), entry('B')];
const BITE = referenceTo(
  ENTRIES,
  { median: 1.23, p05: 1, p95: 1.5, logSpread: 0.15, necks: 2, doubts: [] },
  STANDARD_LAW,
);
const HERE = { benchLog: ENTRIES, adoptedBites: [BITE] };
const measured = { ...defaultBuild(), biteFactor: 1.23, biteReference: BITE };

test('the dialog of sharing says that the log stays here, where its bands are seen', () => {
  render(<ShareDialog />);
  expect(screen.queryByText(SHARE_WORDS.logStays)).toBeNull();
  cleanup();
  store.setState({ ...HERE, build: measured });
  render(<ShareDialog />);
  expect(screen.getByText(SHARE_WORDS.logStays)).toBeTruthy();
});

test('so does sharing a comparison in which one neck has such bands', () => {
  store.setState(HERE);
  render(<ShareComparison builds={[defaultBuild(), { ...measured, method: 'glue' }]} />);
  expect(screen.queryByText(SHARE_WORDS.logStays)).toBeNull();
  cleanup();
  render(<ShareComparison builds={[defaultBuild(), measured]} />);
  // With the link to the comparison, and with the customer's.
  const places = screen.getAllByText(SHARE_WORDS.logStays).map((line) => line.closest('details')?.textContent);
  expect(places.length).toBe(2);
  expect(new Set(places).size).toBe(2);
});
