import { useMemo, useSyncExternalStore } from 'react';
import type { OwnStrength } from '../../playing/own-strength.ts';
import { strengthIn } from './kept-strength.ts';
import { keptMatches, watchMatches } from './match-store.ts';

/** The strength of the readings accepted on this device; null where there is none. */
export function useKeptStrength(): OwnStrength | null {
  const text = useSyncExternalStore(watchMatches, keptMatches);
  return useMemo(() => strengthIn(text), [text]);
}
