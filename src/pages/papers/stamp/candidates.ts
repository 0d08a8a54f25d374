/** Every neck that this device knows: steps back on the bench, necks that were on it, and those of the library. */
import { buildOf } from '../../../state/library/entry.ts';
import { benchKeeper } from '../../../state/journal/page-keeper.ts';
import { readStanding } from '../../../state/journal/record.ts';
import { store } from '../../../state/store.ts';
import type { Candidate } from '../../../verdict/stamp.ts';
import { library } from '../../library/page-library.ts';

export async function knownNecks(): Promise<readonly Candidate[]> {
  await library.refresh();
  const { past, future } = store.getState().history;
  const kept = (library.state.getState().entries ?? []).flatMap((entry): Candidate[] => {
    const read = buildOf(entry);
    return read.ok ? [{ build: read.build, at: entry.changedAt }] : [];
  });
  const worked = benchKeeper.journal.all().flatMap(({ standings }) =>
    standings.flatMap((standing): Candidate[] => {
      const read = readStanding(standing);
      return read.ok ? [{ build: read.build, at: standing.at }] : [];
    }),
  );
  const steps = [...past, ...future].map(({ build }): Candidate => ({ build, at: null }));
  return [...kept, ...worked, ...steps];
}
