import { useSyncExternalStore } from 'react';
import { keptStock, watchStock, type KeptStock } from './stock-store.ts';

/** The blades and wires of this device. */
export const useStock = (): KeptStock => useSyncExternalStore(watchStock, keptStock);
