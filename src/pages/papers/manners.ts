/** How what is open in place of the neck behaves: its name on the window, its top in view, Escape leads back. */
import { useEffect, useLayoutEffect } from 'react';
import { goTo, returnFocus } from './route.ts';

/**
 * @param shown what is in sight: when it changes, its top is shown again
 * @param title of the window; a saved PDF takes it
 * @param heading id of the element that takes the focus
 */
export function usePlaceManners(shown: string, title: string, heading: string): void {
  useEffect(() => {
    const before = document.title;
    document.title = title;
    return () => {
      document.title = before;
    };
  }, [title]);
  useLayoutEffect(() => {
    const { scrollX, scrollY } = window;
    return () => window.scrollTo(scrollX, scrollY);
  }, []);
  // Once the neck is in sight again.
  useEffect(() => returnFocus, []);
  useLayoutEffect(() => {
    window.scrollTo(0, 0);
    document.getElementById(heading)?.focus({ preventScroll: true });
  }, [shown, heading]);
  useEffect(() => {
    function onKey(event: KeyboardEvent): void {
      if (event.key !== 'Escape' || event.defaultPrevented || document.querySelector('dialog[open]')) return;
      if (event.target instanceof HTMLElement && event.target.matches('select, input, textarea')) return;
      goTo(null);
    }
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
