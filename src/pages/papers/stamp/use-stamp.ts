import type { Build } from '../../../neck/build.ts';
import { useBackbow } from '../../../state/store.ts';
import { stampHere } from '../../../verdict/stamp.ts';

/** The stamp of a build with what this device has measured. */
export function useStamp(build: Build): string {
  return useBackbow((state) => stampHere(state, build));
}
