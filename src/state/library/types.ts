/** A neck in the library, as it is kept on this device. */
import type { StorageTrouble } from '../device/trouble.ts';

export interface LibraryEntry {
  readonly id: string;
  /** Name of the build, kept beside it so that lists need not read the build. */
  readonly name: string;
  /** ms since 1970. */
  readonly createdAt: number;
  readonly changedAt: number;
  /** 1 at first, one more with every change; tells whether another window has changed it meanwhile. */
  readonly revision: number;
  /** The build as its project file. */
  readonly project: string;
  /** Picture as a data address; null where none could be drawn. */
  readonly picture: string | null;
  /** When it was deleted; deleted necks are kept for a while. */
  readonly deletedAt: number | null;
}

export type LibraryTrouble =
  | StorageTrouble
  /** The neck is no longer there. */
  | 'gone';

export type Done<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly trouble: LibraryTrouble };

/** Deleted necks that can be brought back; the oldest beyond them are forgotten. Not by age: clocks go wrong. */
export const MOST_DELETED = 50;
