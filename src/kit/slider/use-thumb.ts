/**
 * Dragging the thumb of a slider.
 *
 * A mouse does what it does on every slider: it presses anywhere and takes the thumb along. A finger or a pen takes hold of
 * nothing but the thumb, and only by a sideways movement: a movement up or down belongs to the page that is scrolled, and
 * one that the page takes over after all leaves the value that was there before.
 */
import { useRef, type PointerEvent, type RefObject } from 'react';

/** A finger that wandered less than this has not moved yet, px. */
const SLOP_PX = 8;
/** Half of what a finger takes hold of around the middle of the thumb, px. */
const REACH_PX = 24;

/** A movement is sideways when it goes so many times as far across as up or down: one that leans may become a scroll. */
const SIDEWAYS = 2;

export interface ThumbHolder {
  readonly min: number;
  readonly max: number;
  readonly value: number;
  /** Told where the thumb is, between min and max, on no grid. */
  readonly slide: (value: number) => void;
  readonly begin: () => void;
  readonly end: () => void;
}

interface Hold {
  readonly pointer: number;
  readonly byFinger: boolean;
  /** Where the movement counts from, px of the window. */
  x: number;
  readonly y: number;
  /** Value that the movement counts from. */
  readonly from: number;
  /** A finger that lies on the thumb has not taken it along yet. */
  moving: boolean;
}

/** Where the middle of the thumb can be: from `left` on for `width`, px of the window. */
function trackOf(element: HTMLElement): { readonly left: number; readonly width: number } {
  const box = element.getBoundingClientRect();
  const thumb = Number.parseFloat(getComputedStyle(element).getPropertyValue('--thumb')) || 0;
  return { left: box.left + thumb / 2, width: box.width - thumb };
}

function within({ min, max }: ThumbHolder, value: number): number {
  return Math.min(max, Math.max(min, value));
}

/** @param input the range input inside the element that the handlers are put on; it takes no pointers itself */
export function useThumb(input: RefObject<HTMLInputElement | null>, holder: ThumbHolder) {
  const held = useRef<Hold | null>(null);

  function take(hold: Hold, element: HTMLElement): void {
    held.current = hold;
    hold.moving = true;
    element.setPointerCapture?.(hold.pointer);
    input.current?.focus({ preventScroll: true });
    holder.begin();
  }

  function letGo(): void {
    const hold = held.current;
    held.current = null;
    if (hold?.moving) holder.end();
  }

  function onPointerDown(event: PointerEvent<HTMLElement>): void {
    if (event.button !== 0) return;
    const byFinger = event.pointerType === 'touch' || event.pointerType === 'pen';
    const { min, max, value } = holder;
    const { left, width } = trackOf(event.currentTarget);
    const thumbX = left + ((within(holder, value) - min) / (max - min)) * width;
    const away = Math.abs(event.clientX - thumbX);
    const hold = { pointer: event.pointerId, byFinger, x: event.clientX, y: event.clientY, from: value, moving: false };
    if (byFinger) {
      // A second finger is no drag: it turns, it pinches, or it slipped.
      held.current = event.isPrimary && away <= REACH_PX && held.current === null ? hold : null;
      return;
    }
    const thumb = Number.parseFloat(getComputedStyle(event.currentTarget).getPropertyValue('--thumb')) || 0;
    const onThumb = away <= thumb / 2;
    const pressed = onThumb || width <= 0 ? value : min + ((event.clientX - left) / width) * (max - min);
    take({ ...hold, from: within(holder, pressed) }, event.currentTarget);
    if (pressed !== value) holder.slide(within(holder, pressed));
  }

  function onPointerMove(event: PointerEvent<HTMLElement>): void {
    const hold = held.current;
    if (hold?.pointer !== event.pointerId) return;
    if (!hold.moving) {
      const [across, along] = [Math.abs(event.clientX - hold.x), Math.abs(event.clientY - hold.y)];
      if (Math.max(across, along) < SLOP_PX) return;
      if (across < SIDEWAYS * along) {
        held.current = null;
        return;
      }
      take(hold, event.currentTarget);
      hold.x = event.clientX;
    }
    const { width } = trackOf(event.currentTarget);
    if (width <= 0) return;
    const wanted = hold.from + ((event.clientX - hold.x) / width) * (holder.max - holder.min);
    holder.slide(within(holder, wanted));
  }

  /** The page has taken the movement over, as a scroll or a pinch. */
  function onPointerCancel(event: PointerEvent<HTMLElement>): void {
    const hold = held.current;
    if (hold?.pointer !== event.pointerId) return;
    if (hold.moving && hold.byFinger) holder.slide(hold.from);
    letGo();
  }

  const onPointerUp = (event: PointerEvent<HTMLElement>): void => {
    if (held.current?.pointer === event.pointerId) letGo();
  };

  /** A finger is held by what it was laid on, until `take` holds it here: what lies inside loses it and nothing ends. */
  const onLostPointerCapture = (event: PointerEvent<HTMLElement>): void => {
    if (event.target === event.currentTarget) onPointerUp(event);
  };

  return { onPointerDown, onPointerMove, onPointerUp, onLostPointerCapture, onPointerCancel };
}
