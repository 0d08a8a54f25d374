/** A part that is a list of documents in one text of the browser's own storage. */
import type { RecordStorage } from '../device/database.ts';
import { KeptList, type ListForm } from '../device/kept-list.ts';
import type { TextStorage } from '../journal/journal.ts';
import { listPart, type Documents } from './list-part.ts';
import type { Part } from './part.ts';

interface Texts<Stored> {
  readonly texts: () => TextStorage;
  readonly key: string;
  readonly textOf: (record: Stored) => string;
}

function recordIn<Stored>({ texts, key, textOf }: Texts<Stored>): RecordStorage {
  return {
    read: async () => texts().getItem(key),
    change: async (change) => {
      const before = texts().getItem(key);
      // What comes out is what `changed` of the list made.
      const after = textOf(change(before) as Stored);
      if (after !== before) texts().setItem(key, after);
    },
  };
}

/** Read anew each time: what the device did not keep is not in a backup. */
export function textPart<Stored, Item>(
  documents: Omit<Documents<Stored, Item>, 'places' | 'form'> & { readonly form: ListForm<Stored, Item> },
  at: Texts<Stored>,
): Part {
  const storage = recordIn(at);
  const listed = () => new KeptList(storage, documents.form);
  let list = listed();
  return listPart({ ...documents, places: [at.key] }, storage, {
    read: () => (list = listed()).read(),
    now: () => list.now(),
  });
}
