/** The focus goes back to what opened a dialog, or, where that is gone, to what is left nearest to it. */

/** What the focus can be handed to unasked: no field, which would bring up the keyboard of a phone. */
const HANDLES = 'button:not(:disabled), a[href]:not(.skip), summary, input[type="range"], [tabindex="0"]';

function isUsable(element: HTMLElement): boolean {
  return (
    element.isConnected &&
    !element.matches(':disabled') &&
    !element.closest('[inert]') &&
    element.checkVisibility({ visibilityProperty: true })
  );
}

function tryFocus(element: HTMLElement): boolean {
  element.focus({ preventScroll: true });
  return document.activeElement === element;
}

/**
 * Remembers where the focus is now.
 * @returns gives it back there, unless something else has taken it meanwhile
 */
export function rememberFocus(): () => void {
  const opener = document.activeElement;
  if (!(opener instanceof HTMLElement) || opener === document.body) return () => undefined;
  // Kept as a list: what is taken out of the page no longer knows where it was.
  const around: HTMLElement[] = [];
  for (let element = opener.parentElement; element; element = element.parentElement) around.push(element);

  return () => {
    const now = document.activeElement;
    if (now !== null && now !== document.body && !now.closest('dialog')) return;
    if (isUsable(opener) && tryFocus(opener)) return;
    for (const element of around) {
      if (!element.isConnected) continue;
      const left = [...element.querySelectorAll<HTMLElement>(HANDLES)].filter(isUsable);
      if (left.some(tryFocus)) return;
    }
  };
}
