/** A text that this device keeps, and who is told when it changes, in this window or another. */

export interface Watchers {
  /** @returns what ends it */
  readonly watch: (told: () => void) => () => void;
  readonly tell: () => void;
}

/** Other windows tell by the storage itself. */
export function storageWatchers(): Watchers {
  const watching = new Set<() => void>();
  return {
    watch: (told) => {
      watching.add(told);
      window.addEventListener('storage', told);
      return () => {
        watching.delete(told);
        window.removeEventListener('storage', told);
      };
    },
    tell: () => {
      for (const told of watching) told();
    },
  };
}

export interface KeptText extends Pick<Watchers, 'watch'> {
  readonly now: () => string | null;
  /** @returns whether the device keeps it; else it lives as long as the page */
  readonly keep: (text: string) => boolean;
}

export function keptText(key: string): KeptText {
  const { watch, tell } = storageWatchers();
  /** What the device did not take. */
  let unkept: string | null = null;
  return {
    watch,
    now: () => {
      try {
        return unkept ?? localStorage.getItem(key);
      } catch {
        return unkept;
      }
    },
    keep: (text) => {
      unkept = null;
      try {
        localStorage.setItem(key, text);
      } catch {
        unkept = text;
      }
      tell();
      return unkept === null;
    },
  };
}
