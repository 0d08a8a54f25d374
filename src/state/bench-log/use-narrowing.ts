/** What narrows the bands of the build in hand. */
import { useRef } from 'react';
import { narrowingOptions, sameNarrowing, type BandNarrowing } from '../../mechanics/bench-log/standing.ts';
import { useBackbow } from '../store.ts';

export function useNarrowing(): BandNarrowing {
  const last = useRef<BandNarrowing>({});
  return useBackbow((state) => {
    const now = narrowingOptions(state, state.build);
    if (!sameNarrowing(now, last.current)) last.current = now;
    return last.current;
  });
}
