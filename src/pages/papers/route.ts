/**
 * Which of the papers is open: it stands in the address after "#", so that going back in the browser closes it, and a
 * bookmark opens it.
 *
 *   #/plan       the fretwork plan, which prints as the bench sheet
 *   #/template   the cutting template at 1:1
 *   #/files      files to take along
 */
import { useSyncExternalStore } from 'react';

export const SHEETS = ['plan', 'template', 'files'] as const;
export type SheetId = (typeof SHEETS)[number];

/** The paper that a fragment names; null for any other fragment. */
export function sheetOf(hash: string): SheetId | null {
  const name = /^#\/([a-z]+)$/.exec(hash)?.[1];
  return SHEETS.find((known) => known === name) ?? null;
}

export const hrefOf = (sheet: SheetId): string => `#/${sheet}`;

const listeners = new Set<() => void>();

function subscribe(changed: () => void): () => void {
  listeners.add(changed);
  window.addEventListener('hashchange', changed);
  window.addEventListener('popstate', changed);
  return () => {
    listeners.delete(changed);
    window.removeEventListener('hashchange', changed);
    window.removeEventListener('popstate', changed);
  };
}

/** The paper that is open now. */
export function openSheet(): SheetId | null {
  return sheetOf(window.location.hash);
}

export function useSheet(): SheetId | null {
  return useSyncExternalStore(subscribe, openSheet);
}

/** What had the focus when a paper was opened over the neck. */
let leftFrom: Element | null = null;

/** Gives the focus back to where a paper was opened from, as far as that is still there. */
export function returnFocus(): void {
  if (leftFrom instanceof HTMLElement && leftFrom.isConnected) leftFrom.focus({ preventScroll: true });
  leftFrom = null;
}

/** Opens a paper, or with null goes back to the neck. */
export function goTo(sheet: SheetId | null): void {
  if (sheet !== null) {
    if (openSheet() === null) leftFrom = document.activeElement;
    window.location.hash = hrefOf(sheet);
    return;
  }
  window.history.pushState(null, '', window.location.pathname + window.location.search);
  for (const changed of listeners) changed();
}
