/** The one comparison of the page. */
import { useStore } from 'zustand';
import { createComparison, type Comparison } from '../../state/compare/comparison.ts';
import { store } from '../../state/store.ts';

export const comparison = createComparison(store);

export function useComparison<T>(select: (state: Comparison) => T): T {
  return useStore(comparison.state, select);
}
