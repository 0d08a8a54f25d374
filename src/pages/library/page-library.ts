/** The one library of the page. */
import { useStore } from 'zustand';
import { createPageLibrary, type LibraryState } from '../../state/library/library-store.ts';
import { store } from '../../state/store.ts';

export const library = createPageLibrary(store);

export function useLibrary<T>(select: (state: LibraryState) => T): T {
  return useStore(library.state, select);
}
