/** The try strips of this device, read when a component first shows them. */
import { useEffect, useSyncExternalStore } from 'react';
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import type { KeptItems } from '../device/kept-list.ts';
import { stripStore } from './strip-store.ts';

export function useStrips(): KeptItems<TryStrip> {
  useEffect(() => {
    void stripStore.read();
  }, []);
  return useSyncExternalStore(stripStore.watch, stripStore.now);
}
