/**
 * The neck on the bench, kept while it is worked on so that a reload or a crash loses nothing. Each window has a draft of
 * its own, so two windows never write over each other; it is written in one step, which also works while a page is closed.
 */
import type { Build } from '../../neck/build.ts';
import { readProject, writeProject } from '../../neck/file.ts';
import { troubleOf } from './storage.ts';
import type { StorageTrouble } from './types.ts';

export type TextStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

export interface Draft {
  /** Of the window that wrote it. */
  readonly windowId: string;
  readonly savedAt: number;
  readonly build: Build;
}

const PREFIX = 'backbow.draft.';

/** Drafts of closed windows that are kept; the oldest beyond them are forgotten. */
export const MOST_DRAFTS = 12;

export interface Drafts {
  /** Drafts that can be read, newest first. */
  all(): readonly Draft[];
  read(windowId: string): Draft | null;
  /** @returns why it could not be kept, or null */
  write(draft: Draft): StorageTrouble | null;
  remove(windowId: string): void;
}

/** @param storage may throw, as browsers do that keep nothing for a page */
export function createDrafts(storage: () => TextStorage): Drafts {
  function read(windowId: string): Draft | null {
    try {
      const data: unknown = JSON.parse(storage().getItem(PREFIX + windowId) ?? 'null');
      if (typeof data !== 'object' || data === null) return null;
      const { savedAt, project } = data as Record<string, unknown>;
      if (typeof savedAt !== 'number' || !Number.isFinite(savedAt) || typeof project !== 'string') return null;
      const checked = readProject(project);
      return checked.ok ? { windowId, savedAt, build: checked.build } : null;
    } catch {
      return null;
    }
  }

  function windowIds(): string[] {
    try {
      const kept = storage();
      const keys = Array.from({ length: kept.length }, (_, index) => kept.key(index) ?? '');
      return keys.filter((key) => key.startsWith(PREFIX)).map((key) => key.slice(PREFIX.length));
    } catch {
      return [];
    }
  }

  function all(): readonly Draft[] {
    return windowIds()
      .flatMap((id) => read(id) ?? [])
      .sort((a, b) => b.savedAt - a.savedAt);
  }

  function remove(windowId: string): void {
    try {
      storage().removeItem(PREFIX + windowId);
    } catch {
      // Nothing is kept, so nothing is left behind.
    }
  }

  return {
    all,
    read,
    remove,
    write({ windowId, savedAt, build }) {
      try {
        storage().setItem(PREFIX + windowId, JSON.stringify({ savedAt, project: writeProject(build) }));
      } catch (error) {
        return troubleOf(error);
      }
      // Drafts are read only when there are too many: this is done while a slider moves.
      if (windowIds().length > MOST_DRAFTS)
        for (const old of all().slice(MOST_DRAFTS)) if (old.windowId !== windowId) remove(old.windowId);
      return null;
    },
  };
}
