/** Why the device did not do as it was asked. */
export type StorageTrouble =
  /** No room is left. */
  | 'full'
  /** The browser keeps nothing for this page: a private window, or storage is blocked. */
  | 'refused'
  /** The browser's database does not answer; what was asked of it may still be done later. */
  | 'silent';

/** A database that has not answered within its time. */
export class NoAnswer extends Error {}

/** What a failure of the device means for the person. */
export function troubleOf(error: unknown): StorageTrouble {
  if (error instanceof NoAnswer) return 'silent';
  return error instanceof Error && error.name === 'QuotaExceededError' ? 'full' : 'refused';
}
