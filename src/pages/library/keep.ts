/** Keeping the neck on the bench, with what is said of it. */
import type { BackbowStore } from '../../state/store.ts';
import { library } from './page-library.ts';
import { benchPicture } from './thumbnail.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';

/** @returns whether it is kept */
export async function keepBench(store: BackbowStore, asNew = false): Promise<boolean> {
  const { notify, markSaved, build } = store.getState();
  const kept = await library.keepBench(await benchPicture(), asNew);
  if (!kept.ok) {
    // While the library is open it says so itself, where the person is looking.
    if (store.getState().dialog !== 'library') notify('error', LIBRARY_WORDS.troubles[kept.trouble]);
    return false;
  }
  const { entry, besideAnother } = kept.value;
  if (store.getState().build === build) markSaved(build);
  if (besideAnother) notify('warning', LIBRARY_WORDS.keptBeside(entry.name));
  else notify('info', LIBRARY_WORDS.kept(entry.name));
  return true;
}
