/** Pointing at the chart points at a fret, here and in the picture; pressing puts that fret in view. */
import { useEffect, useRef, type RefObject } from 'react';
import { store } from '../../state/store.ts';

/**
 * Listens by hand, since the drawing is an image and no control: what the pointer does here the keys do elsewhere.
 * @param fretAt the fret at a share of the width, 0 at the left edge
 */
export function useFretPointer(fretAt: (share: number) => number): RefObject<SVGSVGElement | null> {
  const drawing = useRef<SVGSVGElement>(null);
  const latest = useRef(fretAt);

  useEffect(() => {
    latest.current = fretAt;
  });

  useEffect(() => {
    const element = drawing.current!;
    function fretUnder(event: MouseEvent): number {
      const box = element.getBoundingClientRect();
      return latest.current((event.clientX - box.left) / box.width);
    }
    const onMove = (event: PointerEvent) => store.getState().hoverFret(fretUnder(event));
    const onLeave = () => store.getState().hoverFret(null);
    const onClick = (event: MouseEvent) => store.getState().selectFret(fretUnder(event));
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerleave', onLeave);
    element.addEventListener('click', onClick);
    return () => {
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerleave', onLeave);
      element.removeEventListener('click', onClick);
    };
  }, []);
  return drawing;
}
