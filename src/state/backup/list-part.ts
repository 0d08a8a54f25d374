/** A part that is a list of documents in one record. One that says something else here stays as it is here. */
import type { RecordStorage } from '../device/database.ts';
import type { KeptList, ListForm } from '../device/kept-list.ts';
import { checkedList, EMPTY_TALLY, NewerRecord, type Part, type PartId, type Tally } from './part.ts';

export interface Documents<Stored, Item> {
  readonly id: PartId;
  readonly places: readonly string[];
  /** Most of them that a file may hold. */
  readonly most: number;
  readonly form: Pick<ListForm<Stored, Item>, 'recordOf' | 'readable'>;
  /** Null for what is no such document. */
  readonly read: (value: unknown) => Item | null;
  readonly idOf: (item: Item) => string;
  /** The same for those that say the same. */
  readonly hash: (item: Item) => string;
  readonly changed: (record: Stored, out: readonly Item[], into: readonly Item[]) => Stored;
}

/** @param store what the device could not keep lives in the page alone, and is saved from there */
export function listPart<Stored, Item>(
  { id, places, most, form, read, idOf, hash, changed }: Documents<Stored, Item>,
  storage: RecordStorage,
  store: Pick<KeptList<Stored, Item>, 'now' | 'read'>,
): Part {
  function recordIn(stored: unknown): Stored {
    const record = form.recordOf(stored);
    if (!record) throw new NewerRecord();
    return record;
  }

  function compared(record: Stored | null, coming: readonly Item[]) {
    const here = new Map((record ? form.readable(record) : []).map((item) => [idOf(item), hash(item)]));
    const fresh = coming.filter((item) => !here.has(idOf(item)));
    const stays = coming.filter((item) => here.has(idOf(item)) && here.get(idOf(item)) !== hash(item)).length;
    const tally: Tally = { ...EMPTY_TALLY, fresh: fresh.length, stays, known: coming.length - fresh.length - stays };
    return { fresh, tally };
  }

  async function add(coming: readonly Item[]) {
    let found = compared(null, []);
    await storage.change((stored) => {
      const before = recordIn(stored);
      found = compared(before, coming);
      return changed(before, [], found.fresh);
    });
    const { fresh, tally } = found;
    const takeBack = () =>
      storage.change((stored) => {
        const before = recordIn(stored);
        const now = new Map(form.readable(before).map((item) => [idOf(item), hash(item)]));
        return changed(
          before,
          fresh.filter((item) => now.get(idOf(item)) === hash(item)),
          [],
        );
      });
    return { tally, takeBack };
  }

  return {
    id,
    places,
    save: async () => {
      await store.read();
      const { items, unreadable, trouble } = store.now();
      const value = items ?? [];
      return { value, count: value.length, leftOut: unreadable, trouble: value.length === 0 ? trouble : null };
    },
    check: (value) =>
      checkedList<Item>(value, {
        part: id,
        most,
        read,
        idOf,
        foresee: async (items) => compared(recordIn(await storage.read()), items).tally,
        add,
      }),
  };
}
