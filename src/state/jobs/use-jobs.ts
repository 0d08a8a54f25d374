/** The jobs of this device: read when a component first shows them, and again when the window comes back into sight. */
import { useEffect, useSyncExternalStore } from 'react';
import type { KeptItems } from '../device/kept-list.ts';
import type { BenchJob } from './job-document.ts';
import { jobStore } from './job-store.ts';

export function useJobs(): KeptItems<BenchJob> {
  useEffect(() => {
    const look = () => void jobStore.read();
    look();
    window.addEventListener('focus', look);
    document.addEventListener('visibilitychange', look);
    return () => {
      window.removeEventListener('focus', look);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  return useSyncExternalStore(jobStore.watch, jobStore.now);
}
