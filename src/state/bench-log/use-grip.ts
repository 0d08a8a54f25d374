/** Strips and readings behind the grip of the build in hand. */
import type { Build } from '../../neck/build.ts';
import { biteStanding, gripStanding, type Measured } from '../../mechanics/bench-log/standing.ts';
import { resolveReference } from '../../mechanics/bench-log/reference.ts';
import { NO_EVIDENCE, type Evidence } from '../../mechanics/neck-readings/evidence.ts';
import { useMemo } from 'react';
import { useBackbow } from '../store.ts';

/** What speaks for a build: strips and readings that it refers to, or the necks of the log behind its bite. */
function spokenFor(measured: Measured, build: Build): Evidence {
  const grip = gripStanding(measured, build);
  if (grip) return grip.code === 'in-use' ? grip.evidence : NO_EVIDENCE;
  const standing = biteStanding(measured, build);
  if (standing.code !== 'in-use' || !build.biteReference) return NO_EVIDENCE;
  const { biteReference } = build;
  const referred = resolveReference(biteReference, measured.benchLog ?? [], build, standing.bite.measurements);
  return referred.code === 'here' ? { ...NO_EVIDENCE, entries: referred.entries } : NO_EVIDENCE;
}

/** What speaks for the build in hand already. */
export function useSpokenFor(): Evidence {
  const build = useBackbow((state) => state.build);
  return useSpokenForBuild(build);
}

export function useSpokenForBuild(build: Build): Evidence {
  const benchLog = useBackbow((state) => state.benchLog);
  const adoptedBites = useBackbow((state) => state.adoptedBites);
  const earlierBites = useBackbow((state) => state.earlierBites);
  const gripsHere = useBackbow((state) => state.gripsHere);
  return useMemo(
    () => spokenFor({ benchLog, adoptedBites, earlierBites, gripsHere }, build),
    [benchLog, adoptedBites, earlierBites, gripsHere, build],
  );
}
