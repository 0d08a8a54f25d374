/**
 * Which pages of the program are open. Secure pages have locks, which tell for certain; others ask each other, and a page
 * that sleeps does not answer. Nothing depends on the answer but what is offered: no page ever writes another one's record.
 */
const PREFIX = 'backbow.page.';
const CHANNEL = 'backbow-pages';
/** Asking takes a moment, and never longer than this. */
const PATIENCE_MS = 250;

export interface OpenPages {
  readonly ids: ReadonlySet<string>;
  /** Is a page that is not among them closed for certain? */
  readonly isCertain: boolean;
}

/** An id that no other page has. Plain pages have no `crypto.randomUUID`. */
export function freshPageId(): string {
  const bytes = new Uint8Array(9);
  if (typeof crypto === 'undefined') bytes.forEach((_, at) => (bytes[at] = Math.floor(Math.random() * 256)));
  else crypto.getRandomValues(bytes);
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Shows a page as open for as long as it lives. */
export function showPage(id: string): void {
  // Held until the page is gone.
  locks()
    ?.request(PREFIX + id, () => new Promise<void>(() => undefined))
    .catch(() => undefined);
  const heard = channel();
  heard?.addEventListener('message', ({ data }) => {
    if (data === 'who') heard.postMessage(id);
  });
}

/** The pages that are open, this one included where there are locks. */
export async function openPages(): Promise<OpenPages> {
  const held = locks()
    ?.query()
    .then(
      (state): OpenPages => ({
        ids: new Set(
          (state.held ?? []).flatMap(({ name }) => (name?.startsWith(PREFIX) ? [name.slice(PREFIX.length)] : [])),
        ),
        isCertain: true,
      }),
      () => null,
    );
  const late = new Promise<null>((resolve) => setTimeout(() => resolve(null), PATIENCE_MS));
  return (held && (await Promise.race([held, late]))) ?? asked();
}

/** Asks all pages and waits a moment for those that answer. */
async function asked(): Promise<OpenPages> {
  const ids = new Set<string>();
  const heard = channel();
  heard?.addEventListener('message', ({ data }) => {
    if (typeof data === 'string' && data !== 'who') ids.add(data);
  });
  heard?.postMessage('who');
  if (heard) await new Promise((resolve) => setTimeout(resolve, PATIENCE_MS));
  heard?.close();
  return { ids, isCertain: false };
}

function locks(): LockManager | undefined {
  return (navigator as { readonly locks?: LockManager }).locks;
}

function channel(): BroadcastChannel | null {
  try {
    return new BroadcastChannel(CHANNEL);
  } catch {
    // An old browser, or a page that may not talk to others.
    return null;
  }
}
