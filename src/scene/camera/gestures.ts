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
  readonly fit: () => void;
  /** Pointer at (x, y) pixels of the picture; null = it left. */
  readonly hover: (at: { x: number; y: number } | null) => void;
  readonly pick: (at: { x: number; y: number }) => void;
}

const TURN_PER_PX = 0.0065;
const CLICK_PX = 4;
const KEY_TURN = (5 * Math.PI) / 180;
const KEY_PAN = 0.05;
const KEY_ZOOM = 1.12;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** What is on the picture now. */
interface Hands {
  drag: { readonly id: number; x: number; y: number; readonly pans: boolean; moved: number } | null;
  fingers: (Point & { readonly spread: number }) | null;
}

/** The picture, what its gestures do, and what ends them. */
interface Ground extends GestureTargets {
  readonly element: HTMLElement;
  readonly signal: AbortSignal;
}

const heightOf = (element: HTMLElement): number => Math.max(1, element.clientHeight);

function pixelOf(element: HTMLElement, event: { clientX: number; clientY: number }): Point {
  const box = element.getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
}

/** Drags and clicks of the mouse, taps of a finger. */
function listenForPointer({ element, signal, director, hover, pick }: Ground, hands: Hands): void {
  element.addEventListener(
    'pointerdown',
    (event) => {
      const isTouch = event.pointerType === 'touch';
      if (!isTouch) element.setPointerCapture(event.pointerId);
      const pans = !isTouch && (event.button !== 0 || event.shiftKey);
      hands.drag = { id: event.pointerId, x: event.clientX, y: event.clientY, pans, moved: 0 };
    },
    { signal },
  );
  element.addEventListener(
    'pointermove',
    (event) => {
      const { drag } = hands;
      if (drag?.id !== event.pointerId) {
        if (event.pointerType !== 'touch') hover(pixelOf(element, event));
        return;
      }
      const dx = event.clientX - drag.x;
      const dy = event.clientY - drag.y;
      drag.moved += Math.abs(dx) + Math.abs(dy);
      drag.x = event.clientX;
      drag.y = event.clientY;
      if (event.pointerType === 'touch' || drag.moved <= CLICK_PX) return;
      if (drag.pans) director.pan(-dx / heightOf(element), dy / heightOf(element));
      else director.turn(-dx * TURN_PER_PX, dy * TURN_PER_PX);
    },
    { signal },
  );
  const release = (event: PointerEvent): void => {
    const { drag, fingers } = hands;
    if (drag?.id !== event.pointerId) return;
    if (event.type === 'pointerup' && drag.moved <= CLICK_PX && event.button === 0 && fingers === null) {
      pick(pixelOf(element, event));
    }
    hands.drag = null;
  };
  element.addEventListener('pointerup', release, { signal });
  element.addEventListener('pointercancel', release, { signal });
  element.addEventListener('pointerleave', () => hover(null), { signal });
}

function listenForWheel({ element, signal, director }: Ground): void {
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
}

function twoFingers(touches: TouchList): NonNullable<Hands['fingers']> {
  const [a, b] = [touches[0], touches[1]];
  return {
    x: (a.clientX + b.clientX) / 2,
    y: (a.clientY + b.clientY) / 2,
    spread: Math.max(20, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)),
  };
}

function listenForFingers({ element, signal, director }: Ground, hands: Hands): void {
  element.addEventListener(
    'touchstart',
    (event) => {
      if (event.touches.length < 2) return;
      event.preventDefault();
      hands.fingers = twoFingers(event.touches);
      // Whichever of the two is lifted last has not tapped a fret.
      hands.drag = null;
    },
    { signal, passive: false },
  );
  element.addEventListener(
    'touchmove',
    (event) => {
      const { fingers } = hands;
      if (event.touches.length < 2 || fingers === null) return;
      event.preventDefault();
      const next = twoFingers(event.touches);
      const [dx, dy] = [next.x - fingers.x, next.y - fingers.y];
      if (event.touches.length > 2) director.pan(-dx / heightOf(element), dy / heightOf(element));
      else director.turn(-dx * TURN_PER_PX, dy * TURN_PER_PX);
      director.zoom(fingers.spread / next.spread);
      hands.fingers = next;
    },
    { signal, passive: false },
  );
  const lift = (event: TouchEvent): void => {
    hands.fingers = event.touches.length < 2 ? null : twoFingers(event.touches);
  };
  element.addEventListener('touchend', lift, { signal });
  element.addEventListener('touchcancel', lift, { signal });
}

function listenForKeys({ element, signal, director, fit }: Ground): void {
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
      else if (event.key === '0' || event.key === 'Home') fit();
      else return;
      event.preventDefault();
    },
    { signal },
  );
}

/** Listens on the element. @returns the function that ends it */
export function listenForGestures(element: HTMLElement, targets: GestureTargets): () => void {
  const ends = new AbortController();
  const { signal } = ends;
  const ground: Ground = { ...targets, element, signal };
  const hands: Hands = { drag: null, fingers: null };
  listenForPointer(ground, hands);
  listenForWheel(ground);
  listenForFingers(ground, hands);
  listenForKeys(ground);
  element.addEventListener('contextmenu', (event) => event.preventDefault(), { signal });
  element.addEventListener('dblclick', () => targets.fit(), { signal });
  return () => ends.abort();
}
