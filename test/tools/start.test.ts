/**
 * `npm start` as a user meets it, on a pretended project that is installed and built already.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import type { TLSSocket } from 'node:tls';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { root } from './project.mjs';
import { serveFolder } from './server.mjs';

let folder = '';
const children: ChildProcess[] = [];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
  cpSync(join(root, 'test/tools'), join(folder, 'test/tools'), { recursive: true });
  cpSync(join(root, 'src/app/packaging'), join(folder, 'src/app/packaging'), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  writeFileSync(join(folder, 'package-lock.json'), '{ "packages": {} }');
  writeFileSync(join(folder, 'dist/index.html'), 'the page');
});

afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** Starts the command and waits for its first line, or its end. */
async function start(env: Record<string, string>): Promise<{ child: ChildProcess; said: string; code: number | null }> {
  const child = spawn(process.execPath, [join(folder, 'test/tools/start.mjs')], { env: { ...process.env, ...env } });
  children.push(child);
  let said = '';
  await new Promise<void>((resolve) => {
    const listen = (part: Buffer): void => {
      said += part.toString();
      if (/https?:\/\/\S+ {2}.*\n$/s.test(said)) resolve();
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.on('close', () => resolve());
  });
  return { child, said, code: child.exitCode };
}

test('it serves the page, prints the address and ends quietly when it is stopped', async () => {
  const { child, said } = await start({ PORT: '0' });
  const address = /http:\/\/localhost:\d+\//.exec(said)?.[0] ?? '';
  expect(said).toBe(`Backbow is at ${address}  (Ctrl+C stops it)\n`);
  expect(await (await fetch(address)).text()).toBe('the page');
  const ended = new Promise((resolve) => child.on('exit', resolve));
  child.kill('SIGINT');
  expect(await ended).toBe(0);
});

test('a taken port is named', async () => {
  const other = await serveFolder(folder, { port: 0, host: '127.0.0.1' });
  const { said, code } = await start({ PORT: String(other.port) });
  await other.close();
  expect(said).toBe(`Port ${other.port} is taken by another program. Choose another: PORT=5000 npm start\n`);
  expect(code).toBe(1);
});

test.each(['eighty', '-1', '65536', '80.5'])('PORT=%s is refused with its range', async (port) => {
  const { said, code } = await start({ PORT: port });
  expect(said).toBe(`PORT is “${port}”; it must be a whole number from 0 to 65535.\n`);
  expect(code).toBe(1);
});

test('without PORT two of them find two ports', async () => {
  const one = await start({ PORT: '' });
  const two = await start({ PORT: '' });
  expect(one.said).toMatch(/localhost:47\d\d\//);
  expect(two.said).toMatch(/localhost:47\d\d\//);
  expect(two.said).not.toBe(one.said);
});

const ownAddresses = Object.values(networkInterfaces())
  .flatMap((entries) => entries ?? [])
  .filter(({ internal, family, address }) => !internal && family === 'IPv4' && !address.startsWith('169.254.'))
  .map(({ address }) => address);

test('HOST=0.0.0.0 prints every address that another device can type, and a caution', async () => {
  const { said } = await start({ PORT: '0', HOST: '0.0.0.0' });
  const port = /localhost:(\d+)/.exec(said)?.[1] ?? '';
  for (const address of ownAddresses) expect(said).toContain(`\n  http://${address}:${port}/\n`);
  expect(said).toMatch(ownAddresses.length > 0 ? /Caution: everybody in this network/ : /in no network/);
  expect(said).not.toContain('http://0.0.0.0');
});

/** Opens an address over TLS without an authority, as a browser does once its warning has been answered. */
function openSecurely(address: string): Promise<{ body: string; fingerprint: string }> {
  return new Promise((resolve, reject) => {
    request(address, { rejectUnauthorized: false }, (response) => {
      const { fingerprint256 } = (response.socket as TLSSocket).getPeerCertificate();
      let body = '';
      response.on('data', (part: Buffer) => (body += part.toString()));
      response.on('end', () => resolve({ body, fingerprint: fingerprint256 }));
    })
      .on('error', reject)
      .end();
  });
}

test('TLS=1 serves https with a certificate whose fingerprint it prints and which it keeps', async () => {
  const first = await start({ PORT: '0', TLS: '1' });
  const address = /https:\/\/localhost:\d+\//.exec(first.said)?.[0] ?? '';
  const { body, fingerprint } = await openSecurely(address);
  expect(body).toBe('the page');
  expect(first.said).toContain(`\n  ${fingerprint}\n`);
  expect(first.said).toContain('made just now');
  expect(first.said).toContain('asks whether to go on');
  const again = await start({ PORT: '0', TLS: '1' });
  expect(again.said).toContain(fingerprint);
  expect(again.said).not.toContain('made just now');
});

test.each(['yes', '2', 'true '])('TLS=%s is refused', async (tls) => {
  const { said, code } = await start({ TLS: tls });
  expect(said).toBe(`TLS is “${tls}”; it must be 1 for https or 0 for http.\n`);
  expect(code).toBe(1);
});

test.each(['192.0.2.1', 'no such host'])('HOST=%s, which is not this machine, is refused', async (host) => {
  const { said, code } = await start({ PORT: '0', HOST: host });
  expect(said).toBe(`HOST is “${host}”, which is no address of this machine.\n`);
  expect(code).toBe(1);
});
