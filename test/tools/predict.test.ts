/**
 * `npm run --silent predict` as a user meets it. What the numbers are is the mechanics' own tests' business. A process is
 * started for each way that it ends and for what only a process does; what it says in all the other cases is asked of the
 * function that the process asks, in a process of its own only in the long draw.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runPredict } from '../../src/app/cli/run.ts';
import { defaultBuild } from '../../src/neck/build.ts';
import { writeProject } from '../../src/neck/file.ts';
import { IS_LONG } from '../draw.ts';
import { root } from './project.mjs';

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'backbow-'));
  mkdirSync(join(folder, 'a folder'));
  writeFileSync(join(folder, 'neck.json'), writeProject(defaultBuild()));
  writeFileSync(join(folder, 'wide.json'), writeProject({ ...defaultBuild(), kerfMm: 3, fretCount: 50 }));
  writeFileSync(join(folder, 'broken.json'), '{ "format": ');
  writeFileSync(join(folder, 'other.json'), '{ "format": "something else" }');
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

interface Told {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function predict(...files: string[]): Told {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'test/tools/predict.mjs'), ...files], {
    cwd: root,
    env: { ...process.env, INIT_CWD: folder, LC_ALL: 'C' },
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

/** As `predict`, of files in the folder. */
async function ask(...given: string[]): Promise<Told> {
  if (IS_LONG) return predict(...given);
  const { output, messages, exitCode } = await runPredict(
    given.map((word) => (word.startsWith('--') ? word : join(folder, word))),
  );
  return {
    code: exitCode,
    out: output,
    err: messages.map((line) => `${line.replaceAll(join(folder, '/'), '')}\n`).join(''),
  };
}

test('a project file in the folder from which npm was called gives JSON and nothing else', () => {
  const { code, out, err } = predict('neck.json');
  expect([code, err]).toEqual([0, '']);
  expect(JSON.parse(out)).toMatchObject({ format: 'backbow prediction', version: 2 });
});

test('every wrong value is named with its range, on standard error, with exit code 2', () => {
  const { code, out, err } = predict('wide.json');
  expect([code, out]).toEqual([2, '']);
  expect(err).toMatch(/^Kerf .*\b3\b.*\b0\.3 to 1\.2 mm/m);
  expect(err).toMatch(/^Frets .*\b50\b.*\b12 to 36\b/m);
});

test.each([
  ['a file that is not there', ['nowhere.json'], 'nowhere.json'],
  ['a folder', ['a folder'], 'a folder'],
  ['a file that is no JSON', ['broken.json'], 'not JSON'],
  ['JSON of something else', ['other.json'], 'not a project file'],
])('%s gives a message without a stack trace and exit code 2', async (_kind, files, message) => {
  const { code, out, err } = await ask(...files);
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(message);
  expect(err).not.toMatch(/\n\s+at /);
  expect(err.trim().split('\n')).toHaveLength(1);
});

test.each([
  ['no file', [], /^No build was named\./],
  ['two files', ['neck.json', 'wide.json'], /^More than one build was named: neck\.json, wide\.json\./],
  ['an option that is not there', ['neck.json', '--colour'], /^--colour is not an option/],
  ['--log without a file', ['neck.json', '--log'], /^--log needs a file after it\./],
])('%s is named, with how it is used', async (_kind, files, message) => {
  const { code, out, err } = await ask(...files);
  expect([code, out]).toEqual([2, '']);
  expect(err).toMatch(message);
  expect(err.trim().split('\n').slice(1)).toEqual([
    expect.stringMatching(/^Usage: /),
    expect.stringMatching(/--help$/),
  ]);
});

test('--help goes to standard output and names every option and every exit code', async () => {
  const { code, out, err } = await ask('--help');
  expect([code, err]).toEqual([0, '']);
  for (const word of ['--log', '--schema', '--help', 'Exit codes: 0', '; 1 ', '; 2 ']) expect(out).toContain(word);
});

test('the language is that of the system', () => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'test/tools/predict.mjs'), 'wide.json'], {
    cwd: root,
    env: { ...process.env, INIT_CWD: folder, LC_ALL: 'de_DE.UTF-8' },
    encoding: 'utf8',
  });
  expect(status).toBe(2);
  expect(stderr).toMatch(/^„Schlitzbreite“ \(kerfMm\) ist 3 mm; möglich ist 0,3 bis 1,2 mm\.$/m);
});

test('a pipe that reads slowly gets all of it, and one that hangs up brings no stack trace', () => {
  const bad = writeProject({
    ...defaultBuild(),
    strings: Array.from({ length: 12 }, () => ({ diameterMm: 99 })) as never,
  });
  writeFileSync(join(folder, 'bad.json'), bad);
  const shell = (line: string) =>
    spawnSync('sh', ['-c', line], {
      cwd: root,
      env: { ...process.env, INIT_CWD: folder, LC_ALL: 'C' },
      encoding: 'utf8',
    });
  const run = `'${process.execPath}' test/tools/predict.mjs`;
  const whole = predict('bad.json').err;
  expect(whole.length).toBeGreaterThan(1000);
  expect(shell(`${run} bad.json 2>&1 >/dev/null | (sleep 1; cat)`).stdout).toBe(whole);
  const cut = shell(`${run} neck.json | head -c 20`);
  expect([cut.stdout, cut.stderr]).toEqual(['{\n  "format": "backb', '']);
});
