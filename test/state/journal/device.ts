/**
 * A device with a browser for tests: its storage outlives pages, its tabs can be reloaded, duplicated, closed and killed,
 * and every writing into its storage can be made the last thing that a page does.
 */
import { createBenchKeeper } from '../../../src/state/journal/keep-bench.ts';
import { ownBuild } from '../../../src/state/lesson-slice.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';
import { textStorage } from '../library/memory.ts';

/** The page is gone in the middle of what it did. */
export class PageDied extends Error {}

export interface Tab {
  readonly session: Storage;
}

/** @param isSecure whether pages can tell for certain which of them are open */
export function device(isSecure: boolean, local: () => Storage = always(textStorage())) {
  /** Pages that are open and answer. */
  const open = new Set<string>();
  let pages = 0;
  let clock = 1_000_000;
  /** Steps of writing until the next page dies; Infinity when none is to. */
  let stepsLeft = Infinity;
  let isFull = false;

  /** A page's view of a storage: dead pages write nothing more. */
  function seenBy(id: () => string, storage: () => Storage): () => Storage {
    function step(): void {
      if (!alive.has(id())) throw new PageDied();
      stepsLeft -= 1;
      if (stepsLeft >= 0 && isFull) throw new DOMException('no room', 'QuotaExceededError');
      if (stepsLeft >= 0) return;
      stepsLeft = Infinity;
      alive.delete(id());
      open.delete(id());
      throw new PageDied();
    }
    return () => {
      const kept = storage();
      return {
        get length() {
          return kept.length;
        },
        key: (at) => kept.key(at),
        getItem: (key) => kept.getItem(key),
        setItem: (key, value) => {
          step();
          kept.setItem(key, value);
        },
        removeItem: (key) => {
          step();
          kept.removeItem(key);
        },
        clear: () => kept.clear(),
      };
    };
  }
  const alive = new Set<string>();

  return {
    local,
    newTab: (): Tab => ({ session: textStorage() }),
    /** A duplicate starts with what the tab remembers. */
    duplicate: ({ session }: Tab): Tab => {
      const copy = textStorage();
      for (let at = 0; at < session.length; at += 1) copy.setItem(session.key(at)!, session.getItem(session.key(at)!)!);
      return { session: copy };
    },
    /** The next page that writes so many times dies before the next writing. */
    dieAfter: (steps: number) => void (stepsLeft = steps),
    /** Has the device refuse every writing, or take it again. */
    setFull: (full: boolean) => void (isFull = full),
    wait: (ms: number) => void (clock += ms),
    /** Opens the page in a tab. */
    async page(tab: Tab, fromOthers = true) {
      const id = `p${(pages += 1)}`;
      alive.add(id);
      const store = createBackbowStore(STANDARD_PREFERENCES);
      const keeper = createBenchKeeper(store, ownBuild, {
        local: seenBy(() => id, local),
        tab: seenBy(
          () => id,
          () => tab.session,
        ),
        page: id,
        open: async () => ({ ids: new Set(open), isCertain: isSecure }),
        now: () => (clock += 1000),
      });
      let stop = (): void => undefined;
      await keeper.restore(fromOthers);
      open.add(id);
      stop = keeper.follow();
      return {
        id,
        tab,
        store,
        keeper,
        isAlive: () => alive.has(id),
        /** Writes what waits, as it is written a moment after each change. */
        rest: () => dispatchEvent(new Event('visibilitychange')),
        /** Closed or reloaded as pages are. */
        close: () => {
          stop();
          alive.delete(id);
          open.delete(id);
        },
        /** Gone without a word; what it still does reaches nothing. */
        kill: () => {
          alive.delete(id);
          open.delete(id);
          stop();
        },
        change: (name: string) => store.getState().change({ name }, 'Name'),
        name: () => store.getState().build.name,
        notices: () => store.getState().notices.map(({ text }) => text),
      };
    },
  };
}

export const always =
  <Value>(value: Value): (() => Value) =>
  () =>
    value;

export type Device = ReturnType<typeof device>;
export type Page = Awaited<ReturnType<Device['page']>>;
