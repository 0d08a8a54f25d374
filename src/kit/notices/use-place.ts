/**
 * Keeps the passing messages clear of what is being worked on and read: numbers and charts (whatever is marked
 * `data-keep-clear`), the control that has the focus or was pressed last, and all that a dialog says while one is open.
 * On the page they stand over what is only there to be glanced at (marked `data-messages-here`) where that is in sight. They
 * stand beside a dialog where the window leaves room for them. Where all is full they stand at the foot of the window, and
 * the dialog grows by what they take: what they lie over there can be scrolled from under them.
 */
import { useLayoutEffect, useRef, type RefObject } from 'react';
import { overlap, placeFor, type Box } from './place.ts';

const MARGIN_PX = 12;
/** Air around what is kept clear, px. */
const AIR_PX = 6;
const IN_DIALOG =
  'button, a[href], input, select, textarea, summary, label, output, p, li, dt, dd, th, td, h2, h3, h4, svg';
/** What a message can be read in, px. */
const LEAST_WIDTH_PX = 230;
const RELEASES = ['pointerup', 'pointercancel'] as const;

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

/** What of a box is not scrolled out of another. */
function within(box: Box, outer: Box): Box {
  const [left, top] = [Math.max(box.left, outer.left), Math.max(box.top, outer.top)];
  const right = Math.min(box.left + box.width, outer.left + outer.width);
  const bottom = Math.min(box.top + box.height, outer.top + outer.height);
  return { left, top, width: right - left, height: bottom - top };
}

/** What is read, and what is worked on. */
function clearBoxes(region: HTMLElement, dialog: HTMLElement | null, pressed: Element | null): [Box[], Box[]] {
  const inSight = dialog
    ? [...dialog.querySelectorAll(IN_DIALOG)].filter((element) => !region.contains(element))
    : [...document.querySelectorAll('[data-keep-clear]')];
  const used = [document.activeElement, pressed].map((element) => inUse(element, region));
  const outer = dialog && boxOf(dialog);
  const boxesOf = (elements: readonly (Element | null)[]) => {
    const boxes = elements.filter((element) => element?.isConnected).map((element) => boxOf(element!));
    return outer ? boxes.map((box) => within(box, outer)) : boxes;
  };
  return [boxesOf(inSight), boxesOf(used)];
}

/** A column of the window, down to its foot, for messages: beside the dialog, or where the page keeps one; px. */
function spareRoom(dialog: HTMLElement | null): Pick<Box, 'left' | 'width'> | null {
  const outer = (dialog ?? document.querySelector('[data-messages-here]'))?.getBoundingClientRect();
  if (!outer || outer.width === 0 || (!dialog && outer.bottom < innerHeight - MARGIN_PX)) return null;
  const column = dialog ? { left: 0, right: outer.left } : outer;
  const width = column.right - column.left - 2 * MARGIN_PX;
  return width >= LEAST_WIDTH_PX ? { left: column.left + MARGIN_PX, width } : null;
}

/** @param key changes when what is shown does */
export function usePlace(region: RefObject<HTMLElement | null>, key: string): void {
  const pressed = useRef<Element | null>(null);
  /** A finger or button is down on a message: one that moved off under it would lose the press. */
  const isHeld = useRef(false);
  useLayoutEffect(() => {
    const element = region.current!;
    let frame = 0;

    const dialog = element.closest('dialog');
    const roomInFoot = (px: number): void => dialog?.style.setProperty('--notices', `${px}px`);

    function place(isMoved: boolean): void {
      if (isHeld.current) return;
      const spare = spareRoom(dialog);
      element.style.maxInlineSize = spare ? `${spare.width}px` : '';
      const { width, height } = element.getBoundingClientRect();
      roomInFoot(spare ? 0 : height);
      if (width === 0 || height === 0) return;
      const room = {
        left: MARGIN_PX,
        top: MARGIN_PX,
        width: Math.max(width, innerWidth - 2 * MARGIN_PX),
        height: Math.max(height, innerHeight - 2 * MARGIN_PX),
      };
      const [read, used] = clearBoxes(element, dialog, pressed.current);
      const covers = (box: Box) => [...read, ...used].some((other) => overlap(box, other) > 0);
      const now = boxOf(element);
      // It stays where it is as long as it can: what jumps about is read by nobody.
      if (!isMoved && !covers(now)) return;
      const foot = spare && { left: spare.left, top: innerHeight - MARGIN_PX - height, width, height };
      const free = foot && !covers(foot) ? foot : placeFor({ width, height }, room, [...read, ...used]);
      const place = covers(free) ? placeFor({ width, height }, room, used) : free;
      element.style.insetInlineStart = `${place.left}px`;
      element.style.insetBlockStart = `${place.top}px`;
    }

    const later = (): void => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => place(false));
    };
    const onPress = (event: Event): void => {
      const target = event.target instanceof Element ? event.target : null;
      isHeld.current = element.contains(target);
      pressed.current = target?.closest('button, a, label, select, .slider, summary') ?? null;
      later();
    };
    const onRelease = (): void => {
      isHeld.current = false;
      later();
    };
    place(true);
    const sizes = new ResizeObserver(() => place(true));
    sizes.observe(element);
    addEventListener('resize', later);
    document.addEventListener('scroll', later, { capture: true, passive: true });
    document.addEventListener('focusin', later);
    document.addEventListener('pointerdown', onPress, true);
    for (const release of RELEASES) document.addEventListener(release, onRelease, true);
    return () => {
      cancelAnimationFrame(frame);
      roomInFoot(0);
      sizes.disconnect();
      removeEventListener('resize', later);
      document.removeEventListener('scroll', later, { capture: true });
      document.removeEventListener('focusin', later);
      document.removeEventListener('pointerdown', onPress, true);
      for (const release of RELEASES) document.removeEventListener(release, onRelease, true);
    };
  }, [region, key]);
}
