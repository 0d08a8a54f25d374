/**
 * Pointing at the chart points at a fret, here and in the picture; pressing puts that fret in view. The wheel with Ctrl (a
 * pinch on a touch pad) and two fingers zoom; the wheel by itself scrolls the page.
 */
import { useEffect, useRef, type RefObject } from 'react';
import { store } from '../../state/store.ts';

/** A turn of the wheel that shows half as much again, px. */
const WHEEL_PX = 240;

/**
 * Listens by hand, since the drawing is an image and no control: what the pointer does here the keys do elsewhere.
 * @param fretAt the fret at a share of the width, 0 at the left edge
 * @param zoom shows more (a factor above 1) or less about a share of the width
 */
export function useFretPointer(
  fretAt: (share: number) => number,
  zoom: (share: number, factor: number) => void,
): RefObject<SVGSVGElement | null> {
  const drawing = useRef<SVGSVGElement>(null);
  const latest = useRef({ fretAt, zoom });

  useEffect(() => {
    latest.current = { fretAt, zoom };
  });

  useEffect(() => {
    const element = drawing.current!;
    const fingers = new Map<number, number>();
    let spread = 0;
    function shareOf(clientX: number): number {
      const box = element.getBoundingClientRect();
      return (clientX - box.left) / box.width;
    }
    const fretUnder = (event: MouseEvent) => latest.current.fretAt(shareOf(event.clientX));
    const spreadNow = () => Math.max(...fingers.values()) - Math.min(...fingers.values());

    const onDown = (event: PointerEvent) => {
      if (event.pointerType !== 'touch') return;
      fingers.set(event.pointerId, event.clientX);
      spread = spreadNow();
    };
    const onUp = (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      spread = spreadNow();
    };
    const onMove = (event: PointerEvent) => {
      if (fingers.has(event.pointerId)) fingers.set(event.pointerId, event.clientX);
      if (fingers.size < 2) {
        store.getState().hoverFret(fretUnder(event));
        return;
      }
      const now = spreadNow();
      // Steps large enough that a whole fret comes or goes.
      if (spread < 20 || now < 20 || Math.abs(Math.log(now / spread)) < 0.12) return;
      const middle = [...fingers.values()].reduce((sum, x) => sum + x, 0) / fingers.size;
      latest.current.zoom(shareOf(middle), spread / now);
      spread = now;
    };
    const onLeave = (event: PointerEvent) => {
      onUp(event);
      store.getState().hoverFret(null);
    };
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      latest.current.zoom(shareOf(event.clientX), 1.5 ** (event.deltaY / WHEEL_PX));
    };
    const onClick = (event: MouseEvent) => store.getState().selectFret(fretUnder(event));

    element.addEventListener('pointerdown', onDown);
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointercancel', onUp);
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerleave', onLeave);
    element.addEventListener('wheel', onWheel, { passive: false });
    element.addEventListener('click', onClick);
    return () => {
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('pointerup', onUp);
      element.removeEventListener('pointercancel', onUp);
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerleave', onLeave);
      element.removeEventListener('wheel', onWheel);
      element.removeEventListener('click', onClick);
    };
  }, []);
  return drawing;
}
