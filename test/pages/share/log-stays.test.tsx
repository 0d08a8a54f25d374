// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { ShareComparison } from '../../../src/pages/compare/share-comparison.tsx';
import { ShareDialog } from '../../../src/pages/share/share-dialog.tsx';
import { SHARE_WORDS } from '../../../src/speech/en/pages/share.ts';
import { isNarrowed } from '../../../src/state/bench-log/adopted.ts';
import { store } from '../../../src/state/store.ts';

const initial = store.getState();
beforeEach(() => store.setState(initial, true));
afterEach(cleanup);

const BITE = { biteFactor: 1.23, logSpread: 0.15, necks: 4 };
const measured = { ...defaultBuild(), biteFactor: 1.23 };

test('bands are narrowed for builds with the bite that the log gave, unless nothing bites', () => {
  expect(isNarrowed([BITE], measured)).toBe(true);
  expect(isNarrowed([BITE], { ...measured, method: 'glue' })).toBe(false);
  expect(isNarrowed([BITE], defaultBuild())).toBe(false);
  expect(isNarrowed([], measured)).toBe(false);
});

test('the dialog of sharing says that the log stays here, where its bands are seen', () => {
  render(<ShareDialog />);
  expect(screen.queryByText(SHARE_WORDS.logStays)).toBeNull();
  cleanup();
  store.setState({ adoptedBites: [BITE], build: measured });
  render(<ShareDialog />);
  expect(screen.getByText(SHARE_WORDS.logStays)).toBeTruthy();
});

test('so does sharing a comparison in which one neck has such bands', () => {
  store.setState({ adoptedBites: [BITE] });
  render(<ShareComparison builds={[defaultBuild(), { ...measured, method: 'glue' }]} />);
  expect(screen.queryByText(SHARE_WORDS.logStays)).toBeNull();
  cleanup();
  render(<ShareComparison builds={[defaultBuild(), measured]} />);
  expect(screen.getByText(SHARE_WORDS.logStays)).toBeTruthy();
});
