import { useMemo, useSyncExternalStore } from 'react';
import type { ProgressEntry } from './progress-entry.ts';
import { keptProgress, progressRecordOf, readableProgress, watchProgress } from './progress-store.ts';

/** What this device remembers of the lessons. */
export function useProgress(): readonly ProgressEntry[] {
  const text = useSyncExternalStore(watchProgress, keptProgress);
  return useMemo(() => {
    const record = progressRecordOf(text);
    return record ? readableProgress(record) : [];
  }, [text]);
}
