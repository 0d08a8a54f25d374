/** Which window this is, and which others are open. */

const KEY = 'backbow.window';
const LOCK_PREFIX = 'backbow.window.';
/** Asking the browser takes a moment, and never longer than this. */
const PATIENCE_MS = 250;

function freshId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(9)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export interface ThisWindow {
  readonly id: string;
  /** Was this window here before? A reload, or a tab that the browser brought back. */
  readonly isKnown: boolean;
}

/** The id of this window; it survives a reload where the browser lets it. */
export function thisWindow(storage: () => Pick<Storage, 'getItem' | 'setItem'> = () => sessionStorage): ThisWindow {
  try {
    const known = storage().getItem(KEY);
    if (known !== null && /^[0-9a-f]{18}$/.test(known)) return { id: known, isKnown: true };
    const id = freshId();
    storage().setItem(KEY, id);
    return { id, isKnown: false };
  } catch {
    return { id: freshId(), isKnown: false };
  }
}

/** Takes another id: a duplicated tab starts with that of the one it was made from. */
export function renewWindow(storage: () => Pick<Storage, 'setItem'> = () => sessionStorage): string {
  const id = freshId();
  try {
    storage().setItem(KEY, id);
  } catch {
    // Nothing is kept: the id holds until the page is closed.
  }
  return id;
}

/** Marks a window as open until it is closed. @returns false when another window has that id already */
export async function holdWindow(id: string): Promise<boolean> {
  const locks = locksOfBrowser();
  if (!locks) return true;
  return new Promise((resolve) => {
    locks
      .request(LOCK_PREFIX + id, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        // Held for as long as the page lives.
        return lock === null ? undefined : new Promise<void>(() => undefined);
      })
      .catch(() => resolve(true));
  });
}

/** Ids of the windows that are open; empty where the browser cannot tell. */
export async function openWindows(): Promise<ReadonlySet<string>> {
  const locks = locksOfBrowser();
  if (!locks) return new Set();
  const asked = locks.query().then(
    ({ held = [] }) =>
      new Set(held.flatMap(({ name }) => (name?.startsWith(LOCK_PREFIX) ? [name.slice(LOCK_PREFIX.length)] : []))),
    () => new Set<string>(),
  );
  const late = new Promise<ReadonlySet<string>>((resolve) => setTimeout(() => resolve(new Set()), PATIENCE_MS));
  return Promise.race([asked, late]);
}

/** Only secure pages have locks. */
function locksOfBrowser(): LockManager | undefined {
  return (navigator as { readonly locks?: LockManager }).locks;
}
