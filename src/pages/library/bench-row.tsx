/** The neck on the bench: keep it, or see that it is kept. */
import { store, useBackbow } from '../../state/store.ts';
import { benchKeeper } from '../../state/journal/page-keeper.ts';
import type { Build } from '../../neck/build.ts';
import { EarlierStates } from './earlier-states.tsx';
import { keepBench } from './keep.ts';
import { library, useLibrary } from './page-library.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';

export function BenchRow() {
  const name = useBackbow((state) => state.build.name);
  // Both are asked of the library; these two say when to ask again.
  useBackbow((state) => state.build);
  useLibrary((state) => state.entries);
  const isFromLibrary = library.benchId() !== null;
  const isKept = library.benchEntry() !== null;
  const record = benchKeeper.current();
  function bring(build: Build, when: string): void {
    const { change, notify, closeDialog } = store.getState();
    change(build, LIBRARY_WORDS.stepEarlier);
    notify('info', LIBRARY_WORDS.earlierBack(build.name, when));
    closeDialog();
  }
  return (
    <div className="bench-row">
      {isKept ? (
        <p>{LIBRARY_WORDS.isKept(name)}</p>
      ) : (
        <button type="button" onClick={() => void keepBench(store)}>
          {isFromLibrary ? LIBRARY_WORDS.keepChanges(name) : LIBRARY_WORDS.keep(name)}
        </button>
      )}
      {isFromLibrary && (
        <button type="button" onClick={() => void keepBench(store, true)}>
          {LIBRARY_WORDS.keepNew}
        </button>
      )}
      {record && <EarlierStates record={record} bring={bring} />}
    </div>
  );
}
