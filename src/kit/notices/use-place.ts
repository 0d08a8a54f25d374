/**
 * Keeps the passing messages clear of what is being worked on: the numbers (whatever is marked `data-keep-clear`), the
 * control that has the focus or was pressed last, and every button of the dialog that is open.
 */
import { useLayoutEffect, useRef, type RefObject } from 'react';
import { overlap, placeFor, type Box } from './place.ts';

const MARGIN_PX = 12;
/** Air around what is kept clear, px. */
const AIR_PX = 6;
const IN_DIALOG = 'button, a[href], input, select, textarea, summary';

function boxOf(element: Element): Box {
  const { left, top, width, height } = element.getBoundingClientRect();
  return { left: left - AIR_PX, top: top - AIR_PX, width: width + 2 * AIR_PX, height: height + 2 * AIR_PX };
}

/** A control with its name and all that belongs to it; null for what fills the window, such as the picture. */
function inUse(element: Element | null, region: Element): Element | null {
  if (!element || element === document.body || region.contains(element)) return null;
  const control = element.closest('[data-parameter], label') ?? element;
  const { width, height } = control.getBoundingClientRect();
  return width * height > (innerWidth * innerHeight) / 3 ? null : control;
}

function clearBoxes(region: HTMLElement, pressed: Element | null): Box[] {
  const dialog = region.closest('dialog');
  const inSight = dialog
    ? [...dialog.querySelectorAll(IN_DIALOG)].filter((element) => !region.contains(element))
    : [...document.querySelectorAll('[data-keep-clear]')];
  const used = [document.activeElement, pressed].map((element) => inUse(element, region));
  return [...inSight, ...used].filter((element) => element?.isConnected).map((element) => boxOf(element!));
}

/** @param key changes when what is shown does */
export function usePlace(region: RefObject<HTMLElement | null>, key: string): void {
  const pressed = useRef<Element | null>(null);
  useLayoutEffect(() => {
    const element = region.current!;
    let frame = 0;

    function place(isMoved: boolean): void {
      const { width, height } = element.getBoundingClientRect();
      if (width === 0 || height === 0) return;
      const within = (element.closest('dialog') ?? document.documentElement).getBoundingClientRect();
      const [left, top] = [Math.max(0, within.left) + MARGIN_PX, Math.max(0, within.top) + MARGIN_PX];
      const [right, bottom] = [Math.min(innerWidth, within.right), Math.min(innerHeight, within.bottom)];
      const room = { left, top, width: right - left - MARGIN_PX, height: bottom - top - MARGIN_PX };
      const clear = clearBoxes(element, pressed.current);
      const now = boxOf(element);
      // It stays where it is as long as it can: what jumps about is read by nobody.
      if (!isMoved && clear.every((box) => overlap(now, box) === 0)) return;
      const place = placeFor({ width, height }, room, clear);
      element.style.insetInlineStart = `${place.left}px`;
      element.style.insetBlockStart = `${place.top}px`;
    }

    const later = (): void => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => place(false));
    };
    const onPress = (event: Event): void => {
      const target = event.target instanceof Element ? event.target : null;
      pressed.current = target?.closest('button, a, label, select, .slider, summary') ?? null;
      later();
    };
    place(true);
    const sizes = new ResizeObserver(() => place(true));
    sizes.observe(element);
    addEventListener('resize', later);
    document.addEventListener('scroll', later, { capture: true, passive: true });
    document.addEventListener('focusin', later);
    document.addEventListener('pointerdown', onPress, true);
    return () => {
      cancelAnimationFrame(frame);
      sizes.disconnect();
      removeEventListener('resize', later);
      document.removeEventListener('scroll', later, { capture: true });
      document.removeEventListener('focusin', later);
      document.removeEventListener('pointerdown', onPress, true);
    };
  }, [region, key]);
}
