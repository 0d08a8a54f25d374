/** Strips and readings behind the grip of the build in hand. */
import { biteStanding } from '../../mechanics/bench-log/standing.ts';
import { resolveReference } from '../../mechanics/bench-log/reference.ts';
import { NO_EVIDENCE, type Evidence } from '../../mechanics/neck-readings/evidence.ts';
import { useMemo } from 'react';
import { useBackbow } from '../store.ts';
import { useGripStanding } from './use-grip-standing.ts';

/** What speaks for the build already: strips and readings that it refers to, or the necks of the log behind its bite. */
export function useSpokenFor(): Evidence {
  const build = useBackbow((state) => state.build);
  const benchLog = useBackbow((state) => state.benchLog);
  const adoptedBites = useBackbow((state) => state.adoptedBites);
  const earlierBites = useBackbow((state) => state.earlierBites);
  const grip = useGripStanding();
  return useMemo(() => {
    if (grip) return grip.code === 'in-use' ? grip.evidence : NO_EVIDENCE;
    const standing = biteStanding({ benchLog, adoptedBites, earlierBites }, build);
    if (standing.code !== 'in-use' || !build.biteReference) return NO_EVIDENCE;
    const referred = resolveReference(build.biteReference, benchLog ?? [], build, standing.bite.measurements);
    return referred.code === 'here' ? { ...NO_EVIDENCE, entries: referred.entries } : NO_EVIDENCE;
  }, [grip, benchLog, adoptedBites, earlierBites, build]);
}
