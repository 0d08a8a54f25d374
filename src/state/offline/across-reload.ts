/**
 * Carries the build over when the page is loaded again for a new version. It is kept for this window alone and for one
 * load, and read as any project file is.
 */
import type { Build } from '../../build/build.ts';
import { readProject, writeProject } from '../../build/file.ts';

const KEY = 'backbow.across-reload';

/** A window that may keep nothing loses nothing but this convenience. */
export function keepAcrossReload(build: Build, storage: () => Pick<Storage, 'setItem'> = () => sessionStorage): void {
  try {
    storage().setItem(KEY, writeProject(build));
  } catch {
    // Storage refused or full.
  }
}

/** @returns the build that was kept, once; null when there is none or it cannot be read */
export function takeAcrossReload(
  storage: () => Pick<Storage, 'getItem' | 'removeItem'> = () => sessionStorage,
): Build | null {
  try {
    const text = storage().getItem(KEY);
    if (text === null) return null;
    storage().removeItem(KEY);
    const read = readProject(text);
    return read.ok ? read.build : null;
  } catch {
    return null;
  }
}
