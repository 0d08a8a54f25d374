/** A backup file that was brought to the page elsewhere than in its own place: the library opens with it. */
import { createStore } from 'zustand/vanilla';

export const offeredBackup = createStore<{ readonly file: File | null }>(() => ({ file: null }));

/** Is a file a backup of a whole device? Its first characters tell; what is wrong with it the backup's own reader says. */
export async function beginsAsBackup(file: File): Promise<boolean> {
  try {
    return /^\s*\{\s*"format"\s*:\s*"backbow backup"/.test(await file.slice(0, 200).text());
  } catch {
    return false;
  }
}
