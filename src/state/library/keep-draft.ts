/** Keeps the neck on the bench as it changes, and brings it back when the page opens again. */
import { formatWhen } from './when.ts';
import { sameBuild } from '../history.ts';
import type { BackbowState, BackbowStore } from '../store.ts';
import type { Build } from '../../neck/build.ts';
import { createDrafts, type Draft, type Drafts } from './drafts.ts';
import type { StorageTrouble } from './types.ts';
import { holdWindow, openWindows, renewWindow, thisWindow, type ThisWindow } from './windows.ts';
import { DRAFT_WORDS } from '../../speech/en/drafts.ts';

/** Changes that follow each other faster than this are written once. */
const REST_MS = 300;

export interface DraftKeeper {
  readonly drafts: Drafts;
  /** Id of this window. */
  readonly windowId: () => string;
  /**
   * Brings back what this window had on the bench, or else what the last one that was closed had.
   * @param fromOthers false when something else is about to be opened: then only this window's own work comes back
   */
  readonly restore: (fromOthers: boolean) => Promise<void>;
  /** Drafts of windows that are no longer open. */
  readonly left: () => Promise<readonly Draft[]>;
  /** Keeps every change from now on. @returns a function that stops it */
  readonly follow: () => () => void;
  /** Keeps what changed last, before the page goes. @returns why it cannot be kept, or null */
  readonly keepNow: () => StorageTrouble | null;
}

interface Surroundings {
  readonly local: () => Storage;
  readonly here: ThisWindow;
  readonly open: () => Promise<ReadonlySet<string>>;
  readonly hold: (id: string) => Promise<boolean>;
  readonly renew: () => string;
  readonly now: () => number;
}

const BROWSER = (): Surroundings => ({
  local: () => localStorage,
  here: thisWindow(),
  open: openWindows,
  hold: holdWindow,
  renew: renewWindow,
  now: () => Date.now(),
});

/** The build that is the person's own: what a lesson puts on the bench for a while is not. */
export type OwnBuild = (state: BackbowState) => Build;

export function createDraftKeeper(
  store: BackbowStore,
  ownBuild: OwnBuild,
  around: Surroundings = BROWSER(),
): DraftKeeper {
  const drafts = createDrafts(around.local);
  let id = around.here.id;
  let adopted: string | null = null;
  /** Of the last writing. */
  let told: StorageTrouble | null = null;
  let keepLast = (): void => undefined;

  function bringBack(draft: Draft): void {
    const { build, replaceBuild, notify } = store.getState();
    // Nothing to tell when it is there already.
    if (sameBuild(build, draft.build)) return;
    replaceBuild(draft.build, DRAFT_WORDS.stepRestore);
    notify('info', DRAFT_WORDS.restored(draft.build.name, formatWhen(draft.savedAt, around.now())));
  }

  async function restore(fromOthers: boolean): Promise<void> {
    const own = around.here.isKnown ? drafts.read(id) : null;
    if (own) bringBack(own);
    if (!(await around.hold(id))) {
      // A duplicated tab: it goes on with a copy of the work, under an id of its own.
      id = around.renew();
      void around.hold(id);
    }
    if (own || around.here.isKnown || !fromOthers) return;
    const [newest] = await left();
    if (!newest) return;
    bringBack(newest);
    adopted = newest.windowId;
  }

  async function left(): Promise<readonly Draft[]> {
    const others = drafts.all().filter(({ windowId }) => windowId !== id);
    if (others.length === 0) return [];
    const open = await around.open();
    return others.filter(({ windowId }) => !open.has(windowId));
  }

  function write(build: Build): void {
    const trouble = drafts.write({ windowId: id, savedAt: around.now(), build });
    if (trouble === null && adopted !== null) {
      drafts.remove(adopted);
      adopted = null;
    }
    if (trouble !== null && trouble !== told) store.getState().notify('warning', DRAFT_WORDS[trouble]);
    told = trouble;
  }

  function follow(): () => void {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let kept = ownBuild(store.getState());
    function flush(): void {
      clearTimeout(timer);
      timer = undefined;
      const build = ownBuild(store.getState());
      if (build === kept || sameBuild(build, kept)) return;
      kept = build;
      write(build);
    }
    keepLast = flush;
    const stop = store.subscribe((state, before) => {
      if (state.build === before.build || ownBuild(state) === kept) return;
      timer ??= setTimeout(flush, REST_MS);
    });
    const onHide = (): void => {
      if (document.visibilityState === 'hidden') flush();
    };
    addEventListener('pagehide', flush);
    document.addEventListener('visibilitychange', onHide);
    if (adopted !== null) write(kept);
    return () => {
      stop();
      flush();
      removeEventListener('pagehide', flush);
      document.removeEventListener('visibilitychange', onHide);
    };
  }

  function keepNow(): StorageTrouble | null {
    keepLast();
    return told;
  }

  return { drafts, windowId: () => id, restore, left, follow, keepNow };
}
