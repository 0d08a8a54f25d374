/** Follows the fret under the pointer, in the picture or in a chart, without rendering. */
import { useEffect } from 'react';
import { store } from '../../../state/store.ts';

/** @param place told the fret, or null; it is called anew when it is another function */
export function useHoveredFret(place: (fret: number | null) => void): void {
  useEffect(() => {
    place(store.getState().hoveredFret);
    return store.subscribe((state, before) => {
      if (state.hoveredFret !== before.hoveredFret) place(state.hoveredFret);
    });
  }, [place]);
}
