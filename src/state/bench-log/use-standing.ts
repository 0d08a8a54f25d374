/** What the bite of the build in hand rests on. */
import { biteStanding, type BiteStanding } from '../../mechanics/bench-log/standing.ts';
import { useBackbow } from '../store.ts';

export function useStanding(): BiteStanding {
  const build = useBackbow((state) => state.build);
  const benchLog = useBackbow((state) => state.benchLog);
  const adoptedBites = useBackbow((state) => state.adoptedBites);
  const earlierBites = useBackbow((state) => state.earlierBites);
  return biteStanding({ benchLog, adoptedBites, earlierBites }, build);
}
