/**
 * What is open in place of the neck: it stands in the address after "#", so that going back in the browser closes it, and a
 * bookmark or a reload opens it.
 *
 *   #/plan       the fretwork plan, which prints as the bench sheet
 *   #/template   the cutting template at 1:1
 *   #/files      files to take along
 *   #/bench      at the bench; with the id of a job behind it that job
 */
import { useSyncExternalStore } from 'react';

export const SHEETS = ['plan', 'template', 'files'] as const;
export type SheetId = (typeof SHEETS)[number];

/** A paper, or the bench with the job that is open there. */
export type Place = { readonly at: SheetId } | { readonly at: 'bench'; readonly job: string | null };
export type PlaceId = Place['at'];

/** What a fragment names; null for any other fragment. */
export function placeOf(hash: string): Place | null {
  const [, name, job] = /^#\/([a-z]+)(?:\/([a-z]+))?$/.exec(hash) ?? [];
  if (name === 'bench') return { at: 'bench', job: job ?? null };
  const sheet = SHEETS.find((known) => known === name);
  return sheet && job === undefined ? { at: sheet } : null;
}

/** @param job that is to be open at the bench */
export const hrefOf = (place: PlaceId, job?: string): string => `#/${place}${job === undefined ? '' : `/${job}`}`;

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

/** What is open now. */
export function openPlace(): Place | null {
  return placeOf(window.location.hash);
}

export function usePlace(): Place | null {
  const hash = useSyncExternalStore(subscribe, () => window.location.hash);
  return placeOf(hash);
}

/** What had the focus when it was opened over the neck. */
let leftFrom: Element | null = null;

/** Gives the focus back to where it was opened from, as far as that is still there. */
export function returnFocus(): void {
  if (leftFrom instanceof HTMLElement && leftFrom.isConnected) leftFrom.focus({ preventScroll: true });
  leftFrom = null;
}

/** Opens a paper or the bench, or with null goes back to the neck. */
export function goTo(place: PlaceId | null, job?: string): void {
  if (place !== null) {
    if (openPlace() === null) leftFrom = document.activeElement;
    window.location.hash = hrefOf(place, job);
    return;
  }
  window.history.pushState(null, '', window.location.pathname + window.location.search);
  for (const changed of listeners) changed();
}
