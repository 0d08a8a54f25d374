/** Keeping a version of the page: whole or not at all, never another version's files, never somebody else's. */
import { beforeEach, describe, expect, test } from 'vitest';
import { createKeeper, versionOf, type Surroundings } from '../../../src/state/offline/keeper.ts';
import type { KeptFile } from '../../../src/state/offline/kept-file.ts';

const SCOPE = 'https://workshop.example/tools/';

/** What a browser offers, with caches in memory and a server that a test can change. */
class Browser {
  readonly server = new Map<string, string>();
  readonly stores = new Map<string, Map<string, Response>>();
  readonly asked: Request[] = [];

  readonly surroundings: Surroundings = {
    scope: SCOPE,
    fetch: async (request) => {
      this.asked.push(request);
      const body = this.server.get(request.url);
      if (request.integrity && body !== undefined && request.integrity !== integrityOf(body))
        throw new TypeError('integrity');
      return body === undefined ? new Response('', { status: 404 }) : new Response(body);
    },
    caches: {
      keys: async () => [...this.stores.keys()],
      has: async (name: string) => this.stores.has(name),
      delete: async (name: string) => this.stores.delete(name),
      open: async (name: string) => {
        const store = this.stores.get(name) ?? new Map<string, Response>();
        this.stores.set(name, store);
        return {
          match: async (address: string) => store.get(address)?.clone(),
          put: async (address: string, response: Response) => void store.set(address, response),
        };
      },
    } as unknown as CacheStorage,
  };

  /** Puts files on the server and makes the keeper of that version. */
  publish(files: Readonly<Record<string, string>>) {
    for (const [address, body] of Object.entries(files)) this.server.set(new URL(address, SCOPE).href, body);
    const list: KeptFile[] = Object.entries(files).map(([address, body]) => ({
      address,
      integrity: integrityOf(body),
    }));
    return createKeeper(list, this.surroundings);
  }
}

/** Stands for the hash: what is compared is only whether it is the same. Fetch takes base64. */
function integrityOf(body: string): string {
  return `sha256-${Buffer.from(body.padEnd(32, ' ').slice(0, 32)).toString('base64')}`;
}

/** A request as the page makes it when it is opened; Node has no such mode. */
function opening(address: string): Request {
  return Object.defineProperty(new Request(address), 'mode', { value: 'navigate' });
}

let browser: Browser;
beforeEach(() => {
  browser = new Browser();
});

describe('keeping', () => {
  test('a version answers what it has kept, and asks the server for the rest', async () => {
    const keeper = browser.publish({ './': 'page', 'assets/a-1.js': 'code' });
    await keeper.keep();
    browser.server.clear();
    browser.server.set(`${SCOPE}notes.txt`, 'on the server');
    const text = async (request: Request) => (await keeper.answer(request)).text();
    expect(await text(opening(SCOPE))).toBe('page');
    expect(await text(opening(`${SCOPE}index.html?from=mail`))).toBe('page');
    expect(await text(new Request(`${SCOPE}assets/a-1.js`))).toBe('code');
    expect(await text(new Request(`${SCOPE}notes.txt`))).toBe('on the server');
  });

  test('a missing file leaves nothing behind', async () => {
    const keeper = browser.publish({ './': 'page', 'assets/a-1.js': 'code' });
    browser.server.delete(`${SCOPE}assets/a-1.js`);
    await expect(keeper.keep()).rejects.toThrow('assets/a-1.js could not be fetched: 404');
    expect([...browser.stores.keys()]).toEqual([]);
  });

  test('a file of another version leaves nothing behind', async () => {
    const keeper = browser.publish({ './': 'page' });
    browser.server.set(SCOPE, 'another page');
    await expect(keeper.keep()).rejects.toThrow('integrity');
    expect([...browser.stores.keys()]).toEqual([]);
  });

  test('a second attempt that fails does not harm what is in use', async () => {
    const keeper = browser.publish({ './': 'page' });
    await keeper.keep();
    const [name = ''] = browser.stores.keys();
    browser.stores.get(name)?.delete(SCOPE);
    browser.server.clear();
    await expect(keeper.keep()).rejects.toThrow('404');
    expect([...browser.stores.keys()]).toEqual([name]);
  });

  test('lasting files are taken over from the version before, all others fetched anew', async () => {
    await browser.publish({ './': 'page', 'assets/a-1.js': 'code', 'manifest.webmanifest': '{}' }).keep();
    browser.asked.length = 0;
    await browser.publish({ './': 'newer page', 'assets/a-1.js': 'code', 'manifest.webmanifest': '{}' }).keep();
    expect(browser.asked.map(({ url }) => url)).toEqual([SCOPE, `${SCOPE}manifest.webmanifest`]);
    expect(browser.asked.map(({ cache }) => cache)).toEqual(['no-cache', 'no-cache']);
  });
});

describe('versions', () => {
  test('the version before stays for windows that still show it; older ones go', async () => {
    const keepers = ['one', 'two', 'three'].map((page) => browser.publish({ './': page, [`assets/${page}.js`]: page }));
    for (const [index, keeper] of keepers.entries()) {
      browser.server.set(SCOPE, ['one', 'two', 'three'][index]);
      await keeper.keep();
      await keeper.forgetOld();
      expect(browser.stores.size).toBe(Math.min(2, index + 1));
    }
    browser.server.clear();
    const last = keepers[2];
    expect(await (await last.answer(opening(SCOPE))).text()).toBe('three');
    expect(await (await last.answer(new Request(`${SCOPE}assets/two.js`))).text()).toBe('two');
    expect((await last.answer(new Request(`${SCOPE}assets/one.js`))).status).toBe(404);
  });

  test('other caches of the same server are left alone', async () => {
    browser.stores.set('somebody else', new Map());
    browser.stores.set('backbow https://workshop.example/ abc', new Map());
    const keeper = browser.publish({ './': 'page' });
    await keeper.keep();
    await keeper.forgetOld();
    expect(browser.stores.size).toBe(3);
  });

  test('have names that differ when any file does', () => {
    const file = { address: './', integrity: 'sha256-a' };
    expect(versionOf([file])).toBe(versionOf([{ ...file }]));
    expect(versionOf([file])).not.toBe(versionOf([{ ...file, integrity: 'sha256-b' }]));
    expect(versionOf([file])).not.toBe(versionOf([file, { ...file, address: 'a' }]));
  });
});

describe('requests', () => {
  test('are answered when they ask for something in the folder of the page', () => {
    const keeper = browser.publish({});
    expect(keeper.covers(new Request(`${SCOPE}assets/a.js`))).toBe(true);
    expect(keeper.covers(new Request('https://workshop.example/toolshed'))).toBe(false);
    expect(keeper.covers(new Request('https://elsewhere.example/tools/'))).toBe(false);
    expect(keeper.covers(new Request(SCOPE, { method: 'POST' }))).toBe(false);
    expect(keeper.covers(new Request(SCOPE, { headers: { range: 'bytes=0-1' } }))).toBe(false);
  });

  test('a kept answer that came from another address can stand for the page', async () => {
    const keeper = browser.publish({ './': 'page' });
    const plain = browser.surroundings.fetch;
    const redirecting: Surroundings = {
      ...browser.surroundings,
      fetch: async (request) => Object.defineProperty(await plain(request), 'redirected', { value: true }),
    };
    await createKeeper([{ address: './', integrity: integrityOf('page') }], redirecting).keep();
    const answer = await keeper.answer(opening(SCOPE));
    expect(answer.redirected).toBe(false);
    expect(await answer.text()).toBe('page');
  });
});
