/**
 * Mouse, touch and keys on the picture.
 *
 * Mouse: drag turns, drag with Shift or the right button moves, the wheel zooms (with Ctrl where the page itself scrolls), a
 * double click fits, a click picks. Touch: one finger belongs to the page, two turn and zoom. Keys: arrows turn, with Shift
 * they move, + and − zoom, 0 or Home fits.
 */
import type { Director } from './director.ts';

export interface GestureTargets {
  readonly director: Director;
  fit(): void;
  /** Pointer at (x, y) pixels of the picture; null = it left. */
  hover(at: { x: number; y: number } | null): void;
  pick(at: { x: number; y: number }): void;
}

const TURN_PER_PX = 0.0065;
const CLICK_PX = 4;
const KEY_TURN = (5 * Math.PI) / 180;
const KEY_PAN = 0.05;
const KEY_ZOOM = 1.12;

/** Listens on the element. @returns the function that ends it */
export function listenForGestures(element: HTMLElement, targets: GestureTargets): () => void {
  const { director } = targets;
  const ends = new AbortController();
  const { signal } = ends;
  let drag: { id: number; x: number; y: number; pans: boolean; moved: number } | null = null;
  let fingers: { x: number; y: number; spread: number } | null = null;

  const at = (event: { clientX: number; clientY: number }): { x: number; y: number } => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const height = (): number => Math.max(1, element.clientHeight);

  element.addEventListener(
    'pointerdown',
    (event) => {
      if (event.pointerType === 'touch') {
        drag = { id: event.pointerId, x: event.clientX, y: event.clientY, pans: false, moved: 0 };
        return;
      }
      element.setPointerCapture(event.pointerId);
      const pans = event.button !== 0 || event.shiftKey;
      drag = { id: event.pointerId, x: event.clientX, y: event.clientY, pans, moved: 0 };
    },
    { signal },
  );
  element.addEventListener(
    'pointermove',
    (event) => {
      if (drag?.id !== event.pointerId) {
        if (event.pointerType !== 'touch') targets.hover(at(event));
        return;
      }
      const dx = event.clientX - drag.x;
      const dy = event.clientY - drag.y;
      drag.moved += Math.abs(dx) + Math.abs(dy);
      drag.x = event.clientX;
      drag.y = event.clientY;
      if (event.pointerType === 'touch' || drag.moved <= CLICK_PX) return;
      if (drag.pans) director.pan(-dx / height(), dy / height());
      else director.turn(-dx * TURN_PER_PX, dy * TURN_PER_PX);
    },
    { signal },
  );
  const release = (event: PointerEvent): void => {
    if (drag?.id !== event.pointerId) return;
    if (event.type === 'pointerup' && drag.moved <= CLICK_PX && event.button === 0 && fingers === null) {
      targets.pick(at(event));
    }
    drag = null;
  };
  element.addEventListener('pointerup', release, { signal });
  element.addEventListener('pointercancel', release, { signal });
  element.addEventListener('pointerleave', () => targets.hover(null), { signal });
  element.addEventListener('contextmenu', (event) => event.preventDefault(), { signal });
  element.addEventListener('dblclick', () => targets.fit(), { signal });

  element.addEventListener(
    'wheel',
    (event) => {
      const page = element.ownerDocument.documentElement;
      const pageScrolls = page.scrollHeight > page.clientHeight + 1;
      if (pageScrolls && !event.ctrlKey && element.ownerDocument.activeElement !== element) return;
      event.preventDefault();
      const lines = event.deltaMode === 1 ? 16 : event.deltaMode === 2 ? 400 : 1;
      director.zoom(Math.exp(event.deltaY * lines * 0.0012));
    },
    { signal, passive: false },
  );

  const twoFingers = (touches: TouchList): { x: number; y: number; spread: number } => {
    const [a, b] = [touches[0], touches[1]];
    return {
      x: (a.clientX + b.clientX) / 2,
      y: (a.clientY + b.clientY) / 2,
      spread: Math.max(20, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)),
    };
  };
  element.addEventListener(
    'touchstart',
    (event) => {
      if (event.touches.length < 2) return;
      event.preventDefault();
      fingers = twoFingers(event.touches);
      // Whichever of the two is lifted last has not tapped a fret.
      drag = null;
    },
    { signal, passive: false },
  );
  element.addEventListener(
    'touchmove',
    (event) => {
      if (event.touches.length < 2 || fingers === null) return;
      event.preventDefault();
      const next = twoFingers(event.touches);
      const [dx, dy] = [next.x - fingers.x, next.y - fingers.y];
      if (event.touches.length > 2) director.pan(-dx / height(), dy / height());
      else director.turn(-dx * TURN_PER_PX, dy * TURN_PER_PX);
      director.zoom(fingers.spread / next.spread);
      fingers = next;
    },
    { signal, passive: false },
  );
  const lift = (event: TouchEvent): void => {
    if (event.touches.length < 2) fingers = null;
    else fingers = twoFingers(event.touches);
  };
  element.addEventListener('touchend', lift, { signal });
  element.addEventListener('touchcancel', lift, { signal });

  element.addEventListener(
    'keydown',
    (event) => {
      if (event.target !== element || event.ctrlKey || event.metaKey || event.altKey) return;
      const across = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0;
      const up = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
      if (across !== 0 || up !== 0) {
        if (event.shiftKey) director.pan(across * KEY_PAN, up * KEY_PAN);
        else director.turn(across * KEY_TURN, up * KEY_TURN);
      } else if (event.key === '+' || event.key === '=') director.zoom(1 / KEY_ZOOM);
      else if (event.key === '-' || event.key === '_') director.zoom(KEY_ZOOM);
      else if (event.key === '0' || event.key === 'Home') targets.fit();
      else return;
      event.preventDefault();
    },
    { signal },
  );
  return () => ends.abort();
}
