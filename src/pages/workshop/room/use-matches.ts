/** The necks that just buzzed of this device, and the strength that the accepted ones leave. */
import { useEffect, useMemo, useSyncExternalStore } from 'react';
import type { OwnStrength } from '../../../playing/own-strength.ts';
import { keptMatches, matchRecordOf, watchMatches, type MatchRecord } from '../../../state/matches/match-store.ts';
import { useKeptStrength } from '../../../state/matches/use-kept-strength.ts';
import { store, useBackbow } from '../../../state/store.ts';

/** Null where a newer release keeps them. */
export function useMatches(): MatchRecord | null {
  const text = useSyncExternalStore(watchMatches, keptMatches);
  return useMemo(() => matchRecordOf(text), [text]);
}

/** The strength of the accepted matches; the hand takes it, unless somebody has chosen another. */
export function useOwnStrength(): OwnStrength | null {
  const own = useKeptStrength();
  const inHand = useBackbow((state) => state.hand.ownForceN);
  const forceN = own?.forceN;
  useEffect(() => {
    const { setHand } = store.getState();
    if (forceN === undefined) {
      if (typeof inHand === 'number') setHand({ ownForceN: null });
    } else if (inHand !== null && inHand !== forceN) setHand({ ownForceN: forceN, ownBandN: [own!.p05N, own!.p95N] });
  }, [forceN, inHand, own]);
  return own;
}
