/**
 * `npm start` as a user meets it, on a pretended project that is installed and built already.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { root } from './project.mjs';
import { serveFolder } from './server.mjs';

let folder = '';
const children: ChildProcess[] = [];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
  cpSync(join(root, 'test/tools'), join(folder, 'test/tools'), { recursive: true });
  mkdirSync(join(folder, 'node_modules'));
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  for (const path of ['package-lock.json', 'node_modules/.package-lock.json'])
    writeFileSync(join(folder, path), '{ "packages": {} }');
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
      if (said.includes('http://')) resolve();
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
