import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { SECURITY_HEADERS } from '../../src/app/packaging/headers.mjs';
import { certificateFor } from './certificate.mjs';
import { fileForAddress, serveFolder } from './server.mjs';

const host = '127.0.0.1';
let folder = '';
let server: Awaited<ReturnType<typeof serveFolder>>;

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: Buffer;
}

/** Asks the server for an address exactly as written: a browser's `fetch` would tidy it first. */
function ask(path: string, headers: Record<string, string> = {}, method = 'GET'): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request({ host, port: server.port, path, method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(parts) }),
      );
    })
      .on('error', reject)
      .end();
  });
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
  mkdirSync(join(folder, 'page/assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  writeFileSync(join(folder, 'page/index.html'), '<title>page</title>');
  writeFileSync(join(folder, 'page/assets/app-1a2b.js'), 'export {};'.repeat(100));
  writeFileSync(join(folder, 'page/assets/picture.png'), Buffer.from([1, 2, 3]));
  writeFileSync(join(folder, 'page/service-worker.js'), '//');
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'page/leads-out.txt'));
  symlinkSync(folder, join(folder, 'page/up'), 'junction');
  symlinkSync(join(folder, 'page/index.html'), join(folder, 'page/stays-in.html'));
  server = await serveFolder(join(folder, 'page'), { port: 0, host });
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

test('the page is served at the root, to be asked for again each time', async () => {
  const answer = await ask('/');
  expect(answer.status).toBe(200);
  expect(answer.body.toString()).toBe('<title>page</title>');
  expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
  expect(answer.headers['cache-control']).toBe('no-cache');
  const again = await ask('/?query#part', { 'If-None-Match': String(answer.headers['etag']) });
  expect(again.status).toBe(304);
  expect(again.body).toHaveLength(0);
});

test('hashed files are kept, and text is compressed where the browser can read it', async () => {
  const plain = await ask('/assets/app-1a2b.js');
  expect(plain.headers['cache-control']).toContain('immutable');
  const packed = await ask('/assets/app-1a2b.js', { 'Accept-Encoding': 'gzip, br' });
  expect(packed.headers['content-encoding']).toBe('gzip');
  expect(packed.body.length).toBeLessThan(plain.body.length);
  expect(gunzipSync(packed.body)).toEqual(plain.body);
  const picture = await ask('/assets/picture.png', { 'Accept-Encoding': 'gzip' });
  expect(picture.headers['content-encoding']).toBeUndefined();
  expect([...picture.body]).toEqual([1, 2, 3]);
});

test('HEAD sends no body and nothing is accepted', async () => {
  const head = await ask('/', {}, 'HEAD');
  expect([head.status, head.body.length, head.headers['content-length']]).toEqual([200, 0, '19']);
  expect((await ask('/', {}, 'POST')).status).toBe(405);
});

test('the service worker and the page are asked for again each time', async () => {
  for (const path of ['/', '/index.html', '/service-worker.js'])
    expect((await ask(path)).headers['cache-control']).toBe('no-cache');
});

test.each([
  ['the page', '/', 'GET', 200, 'no-cache'],
  ['a hashed file', '/assets/app-1a2b.js', 'GET', 200, 'public, max-age=31536000, immutable'],
  ['what is not there', '/assets/missing', 'GET', 404, 'no-cache'],
  ['what is not accepted', '/', 'POST', 405, undefined],
] as const)('%s comes with every header of the policy', async (_what, path, method, status, caching) => {
  const answer = await ask(path, {}, method);
  expect(answer.status).toBe(status);
  for (const [name, value] of Object.entries(SECURITY_HEADERS)) expect(answer.headers[name.toLowerCase()]).toBe(value);
  expect(answer.headers['cache-control']).toBe(caching);
});

test('the opener policy, which browsers refuse from a plain address in the network, is not sent there', async () => {
  for (const host of ['localhost:80', '127.0.0.1:4173', '[::1]:4173'])
    expect((await ask('/', { Host: host })).headers['cross-origin-opener-policy']).toBe('same-origin');
  for (const host of ['192.168.1.20:4173', 'bench.local', '[fd00::2]:4173']) {
    const { headers } = await ask('/', { Host: host });
    expect(headers['cross-origin-opener-policy']).toBeUndefined();
    expect(headers['content-security-policy']).toBe(SECURITY_HEADERS['Content-Security-Policy']);
  }
});

test('a link within the folder is followed, one that leads out of it is not', async () => {
  expect((await ask('/stays-in.html')).body.toString()).toBe('<title>page</title>');
  for (const path of ['/leads-out.txt', '/up/secret.txt', '/up/page/index.html/../../secret.txt'])
    expect((await ask(path)).status).toBe(404);
});

test('a person who mistyped gets a page with the way back', async () => {
  const answer = await ask('/frets', { Accept: 'text/html,*/*' });
  expect(answer.status).toBe(404);
  expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
  expect(answer.body.toString()).toContain('<a href="/">Open Backbow</a>');
  expect((await ask('/frets', { Accept: 'text/html' }, 'HEAD')).body).toHaveLength(0);
});

const STEP = fc.constantFrom(
  '..',
  '.',
  '%2e%2e',
  '%2E.',
  '..%2f',
  '..%5c',
  '\\',
  '%00',
  '%',
  'up',
  'assets',
  'secret.txt',
  'leads-out.txt',
  'page',
  'index.html',
  'C:',
  '~',
  '%ff',
  '*',
);

test('no address reaches a file outside the folder (seed 12)', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(STEP, { maxLength: 8 }),
      fc.constantFrom('/', '//', '%2f', '/./'),
      async (steps, joint) => {
        const answer = await ask(`/${steps.join(joint)}`);
        expect([200, 404]).toContain(answer.status);
        expect(answer.body.toString()).not.toContain('secret');
      },
    ),
    { seed: 12, numRuns: 400 },
  );
});

/** What the server sends to whoever writes this to its port. */
function write(port: number, text: string): Promise<string> {
  return new Promise((resolve) => {
    let said = '';
    const socket = connect(port, host, () => socket.end(text));
    socket.on('data', (part: Buffer) => (said += part.toString('latin1')));
    socket.on('error', () => resolve(said));
    socket.on('close', () => resolve(said));
  });
}

test('over TLS, whoever comes without it is sent to the same address with it', async () => {
  const { key, cert } = await certificateFor(join(folder, 'tls'), ['localhost', host]);
  const secure = await serveFolder(join(folder, 'page'), { port: 0, host, tls: { key, cert } });
  try {
    expect(secure.address).toBe(`https://localhost:${secure.port}/`);
    const lines = (asked: string) => `GET /assets/x?y HTTP/1.1\r\nHost: ${asked}\r\nConnection: close\r\n\r\n`;
    const sent = await write(secure.port, lines(`phone.local:${secure.port}`));
    expect(sent).toMatch(/^HTTP\/1\.1 308 /);
    expect(sent).toContain(`\r\nLocation: https://phone.local:${secure.port}/assets/x?y\r\n`);
    expect(await write(secure.port, lines('a"b<c>'))).toMatch(/^HTTP\/1\.1 400 /);
    // Neither noise nor a broken handshake brings it down.
    await write(secure.port, '\u0016\u0003\u0001\u0000\u0005hello');
    await write(secure.port, '\r\n\r\n\r\n');
    await write(secure.port, '');
    expect(await write(secure.port, lines('localhost'))).toMatch(/^HTTP\/1\.1 308 /);
  } finally {
    await secure.close();
  }
});

test.each([
  '/missing.html',
  '/assets',
  '/assets/',
  '/../secret.txt',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/assets/../../secret.txt',
  '/%00',
  '/%',
])('%s is not found', async (path) => {
  const answer = await ask(path);
  expect(answer.status).toBe(404);
  expect(answer.body.toString()).toBe('Not found\n');
});

test('a folder whose name only begins the same is outside', () => {
  expect(fileForAddress('/a/page', '/../page-two/x')).toBeUndefined();
  expect(fileForAddress('/a/page', '/x')).toBe(join('/a/page', 'x'));
});

test('a taken port is an error', async () => {
  await expect(serveFolder(folder, { port: server.port, host })).rejects.toMatchObject({ code: 'EADDRINUSE' });
});
