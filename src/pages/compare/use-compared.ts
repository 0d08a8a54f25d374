/** What stands beside each other, for a component. */
import { useMemo, useState } from 'react';
import { comparedNecks, type Compared } from '../../state/compare/comparison-slice.ts';
import { useBackbow } from '../../state/store.ts';

export function useCompared(): Compared {
  const columns = useBackbow((state) => state.columns);
  const build = useBackbow((state) => state.build);
  return useMemo(() => comparedNecks(columns, build), [columns, build]);
}

/** The list of before as long as it holds the same. */
export function useSame<T>(list: readonly T[]): readonly T[] {
  const [kept, setKept] = useState(list);
  const isSame = kept.length === list.length && kept.every((each, index) => each === list[index]);
  if (!isSame) setKept(list);
  return isSame ? kept : list;
}
