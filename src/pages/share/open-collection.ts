/** Opens a file that holds several necks: it shows them, and changes nothing until one is chosen. */
import { readCollection, type CollectionTrouble } from '../../state/share/file.ts';
import { EMPTY_PAGE } from '../../state/share/shared.ts';
import type { BackbowStore } from '../../state/store.ts';
import { keepReceived } from './received-store.ts';

/** @returns why the file was refused whole, or null */
export function openCollection(store: BackbowStore, text: string): CollectionTrouble | null {
  const read = readCollection(text);
  if (!read.ok) return read.trouble;
  const { builds, refused, page, offers = [] } = read;
  keepReceived({ builds, refused, page: page ?? EMPTY_PAGE, offers, pageRefused: page === null });
  store.getState().openDialog('received');
  return null;
}
