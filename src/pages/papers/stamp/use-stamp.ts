import type { Build } from '../../../neck/build.ts';
import { useKeptStrength } from '../../../state/matches/use-kept-strength.ts';
import { useBackbow } from '../../../state/store.ts';
import { stampHere } from '../../../verdict/stamp.ts';

/** The stamp of a build with what this device has measured. */
export function useStamp(build: Build): string {
  const own = useKeptStrength();
  return useBackbow((state) => stampHere(state, build, own));
}
