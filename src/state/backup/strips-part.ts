/** Try strips in a backup. One that says something else here stays as it is here, as entries of the bench log do. */
import { checkStrip } from '../../mechanics/try-strip/document-problems.ts';
import { stripHash } from '../../mechanics/try-strip/document-file.ts';
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import { changedStrips, MOST_STRIPS, readableStrips, stripRecordOf } from '../strips/strip-record.ts';
import type { StripStorage } from '../strips/strip-storage.ts';
import type { StripStore } from '../strips/strip-store.ts';
import { checkedList, EMPTY_TALLY, NewerRecord, type Part, type Tally } from './part.ts';

function recordIn(stored: unknown) {
  const record = stripRecordOf(stored);
  if (!record) throw new NewerRecord();
  return record;
}

function compared(present: readonly TryStrip[], coming: readonly TryStrip[]) {
  const here = new Map(present.map((strip) => [strip.id, stripHash(strip)]));
  const fresh = coming.filter(({ id }) => !here.has(id));
  const stays = coming.filter((strip) => here.has(strip.id) && here.get(strip.id) !== stripHash(strip)).length;
  const tally: Tally = { ...EMPTY_TALLY, fresh: fresh.length, stays, known: coming.length - fresh.length - stays };
  return { fresh, tally };
}

/** @param store what the device could not keep lives in the page alone, and is saved from there */
export function stripsPart(storage: StripStorage, store: Pick<StripStore, 'now' | 'read'>): Part {
  async function add(coming: readonly TryStrip[]) {
    let found = compared([], []);
    await storage.change((stored) => {
      const before = recordIn(stored);
      found = compared(readableStrips(before), coming);
      return changedStrips(before, [], found.fresh);
    });
    const { fresh, tally } = found;
    const takeBack = () =>
      storage.change((stored) => {
        const before = recordIn(stored);
        const now = new Map(readableStrips(before).map((strip) => [strip.id, stripHash(strip)]));
        const untouched = fresh.filter((strip) => now.get(strip.id) === stripHash(strip));
        return changedStrips(before, untouched, []);
      });
    return { tally, takeBack };
  }

  return {
    id: 'strips',
    places: ['backbow-try-strips'],
    save: async () => {
      await store.read();
      const { strips, unreadable, trouble } = store.now();
      const value = strips ?? [];
      return { value, count: value.length, leftOut: unreadable, trouble: value.length === 0 ? trouble : null };
    },
    check: (value) =>
      checkedList<TryStrip>(value, {
        part: 'strips',
        most: MOST_STRIPS,
        read: (each) => {
          const checked = checkStrip(each);
          return checked.ok ? checked.strip : null;
        },
        idOf: ({ id }) => id,
        foresee: async (items) => compared(readableStrips(recordIn(await storage.read())), items).tally,
        add,
      }),
  };
}
