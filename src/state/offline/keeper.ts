/**
 * Keeps the files of one version of the page in the browser, and answers the page's requests from them.
 *
 * A version is kept whole or not at all. A new version waits beside the one in use until the person says so. The files of
 * the version before stay until the next one comes, because another window may still be showing it.
 */
import type { KeptFile } from './kept-file.ts';

/** What the keeper needs of its surroundings; the service worker has all of it. */
export interface Surroundings {
  readonly caches: CacheStorage;
  readonly fetch: (request: Request) => Promise<Response>;
  /** Address of the folder of the page, with its slash. */
  readonly scope: string;
}

export interface Keeper {
  /** Fetches every file of this version. @throws when one is missing or is not the one of this version */
  readonly keep: () => Promise<void>;
  /** Forgets versions older than the one before this. */
  readonly forgetOld: () => Promise<void>;
  /** Is this request one that the page's own files answer? */
  readonly covers: (request: Request) => boolean;
  /** The kept file, or what the server says when it is not among them. */
  readonly answer: (request: Request) => Promise<Response>;
}

/** Versions kept: this one and the one before. */
const VERSIONS_KEPT = 2;
const IGNORING = { ignoreSearch: true, ignoreVary: true } as const;

/** A short name for a set of files: equal sets have equal names. FNV-1a, 32 bits. */
export function versionOf(files: readonly KeptFile[]): string {
  let hash = 0x811c9dc5;
  for (const character of JSON.stringify(files)) hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193);
  return (hash >>> 0).toString(36);
}

export function createKeeper(files: readonly KeptFile[], { caches, fetch, scope }: Surroundings): Keeper {
  const prefix = `backbow ${scope} `;
  const cacheName = prefix + versionOf(files);
  const addressOf = (file: KeptFile) => new URL(file.address, scope).href;

  /** Names of our caches, oldest first: the browser lists them in the order of their making. */
  const ownCaches = async () => (await caches.keys()).filter((name) => name.startsWith(prefix));

  async function fetched(file: KeptFile): Promise<Response> {
    // Files in assets/ carry their hash in their name; everything else may have changed on the server.
    const isLasting = file.address.startsWith('assets/');
    const before = isLasting ? await inAnyVersion(addressOf(file)) : undefined;
    if (before) return before;
    const cache = isLasting ? 'default' : 'no-cache';
    const response = await fetch(new Request(addressOf(file), { cache, integrity: file.integrity }));
    if (!response.ok) throw new Error(`${file.address} could not be fetched: ${response.status}`);
    if (!response.redirected) return response;
    // A page may not be answered with something that came from another address; its content may.
    const { status, statusText, headers } = response;
    return new Response(await response.blob(), { status, statusText, headers });
  }

  async function inAnyVersion(address: string): Promise<Response | undefined> {
    for (const name of (await ownCaches()).toReversed()) {
      const found = await (await caches.open(name)).match(address, IGNORING);
      if (found) return found;
    }
    return undefined;
  }

  return {
    async keep() {
      const isNew = !(await caches.has(cacheName));
      const cache = await caches.open(cacheName);
      try {
        await Promise.all(
          files.map(async (file) => {
            if (await cache.match(addressOf(file), IGNORING)) return;
            await cache.put(addressOf(file), await fetched(file));
          }),
        );
      } catch (error) {
        if (isNew) await caches.delete(cacheName);
        throw error;
      }
    },
    async forgetOld() {
      const names = (await ownCaches()).filter((name) => name !== cacheName);
      await Promise.all(
        names.slice(0, Math.max(0, names.length - VERSIONS_KEPT + 1)).map((name) => caches.delete(name)),
      );
    },
    covers(request) {
      return request.method === 'GET' && request.url.startsWith(scope) && !request.headers.has('range');
    },
    async answer(request) {
      const address = request.url.replace(/[?#].*$/s, '');
      const wanted = request.mode === 'navigate' && address === `${scope}index.html` ? scope : address;
      const cache = await caches.open(cacheName);
      const kept = (await cache.match(wanted, IGNORING)) ?? (await inAnyVersion(wanted));
      return kept ?? fetch(request);
    },
  };
}
