/** The neck on the bench: keep it, or see that it is kept. */
import { store, useBackbow } from '../../state/store.ts';
import { keepBench } from './keep.ts';
import { library, useLibrary } from './page-library.ts';
import { LIBRARY_WORDS } from '../../speech/en/library.ts';

export function BenchRow() {
  const name = useBackbow((state) => state.build.name);
  // Both are asked of the library; these two say when to ask again.
  useBackbow((state) => state.build);
  useLibrary((state) => state.entries);
  const isFromLibrary = library.benchId() !== null;
  const isKept = library.benchEntry() !== null;
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
    </div>
  );
}
