/** The try strips of this device, read when a component first shows them. */
import { useEffect, useSyncExternalStore } from 'react';
import { stripStore, type KeptStrips } from './strip-store.ts';

export function useStrips(): KeptStrips {
  useEffect(() => {
    void stripStore.read();
  }, []);
  return useSyncExternalStore(stripStore.watch, stripStore.now);
}
