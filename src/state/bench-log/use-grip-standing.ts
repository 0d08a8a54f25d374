/** What the grip of the build in hand rests on, where strips or its own readings speak. */
import { useMemo } from 'react';
import { gripStanding, type GripStanding } from '../../mechanics/bench-log/standing.ts';
import { useBackbow } from '../store.ts';

export function useGripStanding(): GripStanding | undefined {
  const build = useBackbow((state) => state.build);
  const gripsHere = useBackbow((state) => state.gripsHere);
  return useMemo(() => gripStanding({ gripsHere }, build), [gripsHere, build]);
}
