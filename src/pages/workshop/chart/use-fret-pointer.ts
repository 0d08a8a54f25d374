/**
 * Pointing at the chart points at a fret, here and in the picture; pressing puts that fret in view. The wheel with Ctrl (a
 * pinch on a touch pad) and two fingers zoom; the wheel by itself scrolls the page.
 */
import { useEffect, useRef, type RefObject } from 'react';
import { store } from '../../../state/store.ts';

/** A turn of the wheel that shows half as much again, px. */
const WHEEL_PX = 240;

/**
 * Listens by hand, since the drawing is an image and no control: what the pointer does here the keys do elsewhere.
 * @param fretAt the fret at a share of the width, 0 at the left edge
 * @param zoom shows more (a factor above 1) or less about a share of the width; without it the drawing is not zoomed
 * @param press puts a fret in view
 */
export function useFretPointer(
  fretAt: (share: number) => number,
  zoom?: (share: number, factor: number) => void,
  press?: (fret: number) => void,
): RefObject<SVGSVGElement | null> {
  const drawing = useRef<SVGSVGElement>(null);
  const latest = useRef({ fretAt, zoom, press });

  useEffect(() => {
    latest.current = { fretAt, zoom, press };
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
      const { zoom: zoomNow } = latest.current;
      if (fingers.size < 2 || !zoomNow) {
        store.getState().hoverFret(fretUnder(event));
        return;
      }
      const now = spreadNow();
      // Steps large enough that a whole fret comes or goes.
      if (spread < 20 || now < 20 || Math.abs(Math.log(now / spread)) < 0.12) return;
      const middle = [...fingers.values()].reduce((sum, x) => sum + x, 0) / fingers.size;
      zoomNow(shareOf(middle), spread / now);
      spread = now;
    };
    const onLeave = (event: PointerEvent) => {
      onUp(event);
      store.getState().hoverFret(null);
    };
    const onWheel = (event: WheelEvent) => {
      const { zoom: zoomNow } = latest.current;
      if (!zoomNow || (!event.ctrlKey && !event.metaKey)) return;
      event.preventDefault();
      zoomNow(shareOf(event.clientX), 1.5 ** (event.deltaY / WHEEL_PX));
    };
    const onClick = (event: MouseEvent) => latest.current.press?.(fretUnder(event));

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
