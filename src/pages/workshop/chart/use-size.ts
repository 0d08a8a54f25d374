/** Size of an element as it is laid out, px. */
import { useLayoutEffect, useState, type RefObject } from 'react';
import type { ChartSize } from './chart-scales.ts';

export function useSize(element: RefObject<HTMLElement | null>, first: ChartSize): ChartSize {
  const [size, setSize] = useState(first);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return undefined;
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = watched;
      if (width > 0 && height > 0)
        setSize((old) => (old.width === width && old.height === height ? old : { width, height }));
    });
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
