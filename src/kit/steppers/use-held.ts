/**
 * A button that acts once for each press and goes on acting while it is held. It acts when it is let go, so that a finger
 * that only passes over it on its way through the page does nothing; once it acts because it is held, the page stays.
 */
import { useCallback, useEffect, useRef, type PointerEvent } from 'react';

/** So long a press is one step; after it the button repeats, ms. */
const HOLD_MS = 450;
const REPEAT_MS = 110;
/** A finger that wandered further is on its way elsewhere, px. */
const SLOP_PX = 10;

interface Held {
  readonly act: () => void;
  /** Everything between the two is one gesture. */
  readonly begin: () => void;
  readonly end: () => void;
}

export function useHeld(held: Held) {
  const button = useRef<HTMLButtonElement>(null);
  const latest = useRef(held);
  const press = useRef<{ timer: ReturnType<typeof setTimeout>; x: number; y: number; repeating: boolean } | null>(null);
  const hasRepeated = useRef(false);

  useEffect(() => {
    latest.current = held;
  });

  const release = useCallback(() => {
    const pressed = press.current;
    press.current = null;
    if (!pressed) return;
    clearTimeout(pressed.timer);
    if (pressed.repeating) latest.current.end();
  }, []);

  useEffect(() => {
    const element = button.current!;
    const keepPage = (event: TouchEvent) => {
      if (press.current?.repeating) event.preventDefault();
    };
    // By hand, since only a listener that is not passive can keep the page from scrolling.
    element.addEventListener('touchmove', keepPage, { passive: false });
    return () => {
      element.removeEventListener('touchmove', keepPage);
      release();
    };
  }, [release]);

  function repeat(): void {
    const pressed = press.current;
    if (!pressed) return;
    if (!pressed.repeating) {
      pressed.repeating = true;
      hasRepeated.current = true;
      latest.current.begin();
    }
    latest.current.act();
    pressed.timer = setTimeout(repeat, REPEAT_MS);
  }

  return {
    ref: button,
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return;
      release();
      hasRepeated.current = false;
      press.current = { timer: setTimeout(repeat, HOLD_MS), x: event.clientX, y: event.clientY, repeating: false };
    },
    onPointerMove: (event: PointerEvent) => {
      const pressed = press.current;
      if (!pressed || pressed.repeating) return;
      if (Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) > SLOP_PX) release();
    },
    onPointerUp: release,
    onPointerCancel: release,
    onPointerLeave: release,
    // A long press asks some browsers for their menu.
    onContextMenu: (event: { preventDefault(): void }) => event.preventDefault(),
    onClick: () => {
      if (hasRepeated.current) hasRepeated.current = false;
      else latest.current.act();
    },
  };
}
