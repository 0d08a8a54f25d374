import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
