/** A file that is no project: a backup of the whole device, or several necks. Each is shown where it belongs. */
import { LIBRARY_WORDS } from '../../../speech/en/pages/library.ts';
import { looksLikeCollection } from '../../../state/share/file.ts';
import type { BackbowStore } from '../../../state/store.ts';
import { beginsAsBackup, offeredBackup } from '../../library/backup/offered-backup.ts';
import { openCollection } from '../../share/open-collection.ts';

/**
 * @param text what is in it; null where it is larger than necks are
 * @returns whether it is such a file; and what is wrong with it, if it was not shown
 */
export async function openOther(
  store: BackbowStore,
  file: File,
  text: string | null,
): Promise<{ readonly isOther: boolean; readonly why?: string }> {
  if (await beginsAsBackup(file)) {
    offeredBackup.setState({ file });
    store.getState().openDialog('library');
    return { isOther: true };
  }
  if (text === null || !looksLikeCollection(text)) return { isOther: false };
  const trouble = openCollection(store, text);
  return trouble === null ? { isOther: true } : { isOther: true, why: LIBRARY_WORDS.fileTroubles[trouble] };
}
