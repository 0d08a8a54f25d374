/** What `predict` is given may be damaged, hostile or not a file at all: it answers with a plain line, never with a trace. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it, test } from 'vitest';
import { readArguments } from '../../src/app/cli/arguments.ts';
import { readTextFile } from '../../src/app/cli/read-file.ts';
import { runPredict } from '../../src/app/cli/run.ts';
import { asLine } from '../../src/app/cli/said.ts';
import { MOST_PROJECT_BYTES, writeProject } from '../../src/neck/file.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { textOfBytes } from '../../src/neck/text-of-bytes.ts';
import { hold } from '../sweep/invariant.ts';
import { damaged, hostileText, spoilt } from '../faults/hostile.ts';
import { draw } from '../draw.ts';

const folder = mkdtempSync(join(tmpdir(), 'predict-'));
afterAll(() => rmSync(folder, { recursive: true }));

const FILES = PRESETS.map(({ build }) => writeProject(build));

function write(name: string, bytes: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

describe('arguments', () => {
  const predict = (project: string, log?: string, strips?: string) => ({
    ok: true,
    asked: { kind: 'predict', project, log, strips },
  });
  const refused = (code: string, more = {}) => ({ ok: false, trouble: { code, ...more } });

  test.each([
    [['a.json'], predict('a.json')],
    [['a.json', '--log', 'b.csv'], predict('a.json', 'b.csv')],
    [['--log=b.csv', 'a.json'], predict('a.json', 'b.csv')],
    [['--log', 'b.csv', '--', '--a.json'], predict('--a.json', 'b.csv')],
    [['-', '--log', 'b.csv'], predict('-', 'b.csv')],
    [['a.json', '--log', '-'], predict('a.json', '-')],
    [['a.json', '--strips', 's.json', '--log=b.csv'], predict('a.json', 'b.csv', 's.json')],
    [['a.json', '--strips'], refused('no-value', { option: '--strips' })],
    [['-', '--strips', '-'], refused('both-from-input')],
    [['--help', 'a.json', 'b.json'], { ok: true, asked: { kind: 'help' } }],
    [['-h'], { ok: true, asked: { kind: 'help' } }],
    [['--schema'], { ok: true, asked: { kind: 'schema' } }],
    [[], refused('no-file')],
    [[''], refused('no-file')],
    [['--'], refused('no-file')],
    [['--log', 'b.csv'], refused('no-file')],
    [['a.json', 'b.json'], refused('two-files', { files: ['a.json', 'b.json'] })],
    [['a.json', '--log'], refused('no-value', { option: '--log' })],
    [['a.json', '--log='], refused('no-value', { option: '--log' })],
    [['a.json', '--log', '--help'], refused('no-value', { option: '--log' })],
    [['a.json', '--log', 'b', '--log', 'c'], refused('twice', { option: '--log' })],
    [['a.json', '--lgo', 'b.csv'], refused('unknown-option', { option: '--lgo' })],
    [['-l', 'b.csv'], refused('unknown-option', { option: '-l' })],
    [['--help=yes'], refused('takes-no-value', { option: '--help' })],
    [['-', '--log', '-'], refused('both-from-input')],
  ])('%j', (given, read) => {
    expect(readArguments(given)).toEqual(read);
  });

  test('of any kind are taken or refused with a line (seed 41)', async () => {
    const word = fc.oneof(
      fc.constantFrom('--log', '--', '-', '--help', '--schema', '--log=', '-x', '=', ''),
      fc.string(),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(word, { maxLength: 5 }), async (given) => {
        fc.pre(!given.includes('-') && !given.includes('--log=-'));
        const { exitCode, messages, output } = await runPredict(given);
        hold(exitCode === 0 || exitCode === 2, () => messages.join('\n'));
        hold((exitCode === 0) === (messages.length === 0) && (exitCode === 0) === (output !== ''), () => output);
      }),
      { seed: 41, numRuns: draw(500) },
    );
  });
});

describe('the text of a file', () => {
  const text = '{ "name": "Hütte 木 🪵" }';
  const little = Buffer.from(text, 'utf16le');
  const big = Buffer.from(little).swap16();

  // Byte order marks: The Unicode Standard, 23.8, table 23-6.
  test.each([
    ['UTF-8', Buffer.from(text)],
    ['UTF-8 with a mark', Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), Buffer.from(text)])],
    ['UTF-16, little end first', Buffer.concat([Buffer.from([0xff, 0xfe]), little])],
    ['UTF-16, big end first', Buffer.concat([Buffer.from([0xfe, 0xff]), big])],
    ['UTF-16 without a mark, little end first', little],
    ['UTF-16 without a mark, big end first', big],
  ])('is read in %s', (_name, bytes) => {
    expect(textOfBytes(bytes)).toEqual({ ok: true, text });
  });

  test.each([
    ['Windows-1252', Buffer.from('H\u00fctte', 'latin1'), 'not-utf-8'],
    ['an overlong form (RFC 3629, 3)', Buffer.from([0x2f, 0xc0, 0xaf]), 'not-utf-8'],
    ['a surrogate in UTF-8 (RFC 3629, 3)', Buffer.from([0x61, 0xed, 0xa0, 0x80]), 'not-utf-8'],
    ['half a character of UTF-16', Buffer.concat([Buffer.from([0xff, 0xfe]), little.subarray(0, 5)]), 'not-utf-16'],
    ['a lone surrogate in UTF-16', Buffer.from([0xff, 0xfe, 0x00, 0xd8, 0x41, 0x00]), 'not-utf-16'],
    ['UTF-32 with a mark', Buffer.from([0xff, 0xfe, 0, 0, 0x7b, 0, 0, 0]), 'utf-32'],
    ['UTF-32 without one', Buffer.from([0x7b, 0, 0, 0, 0x7d, 0, 0, 0]), 'utf-32'],
  ] as const)('is refused in %s', (_name, bytes, code) => {
    expect(textOfBytes(bytes)).toEqual({ ok: false, code });
  });

  test('is the text that was written, in every encoding (seed 16)', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (rest) => {
        const said = `{${rest}`;
        const encoded = Buffer.from(said, 'utf16le');
        for (const bytes of [Buffer.from(said), encoded, Buffer.from(encoded).swap16()]) {
          // A zero character after the bracket looks like UTF-16, and is in no file of ours.
          if (rest.startsWith('\0')) continue;
          expect(textOfBytes(bytes)).toEqual({ ok: true, text: said });
        }
      }),
      { seed: 16, numRuns: draw(500) },
    );
  });

  test.each([
    ['that is not there', join(folder, 'nowhere'), { code: 'missing' }],
    ['in a file as if that were a folder', join(write('a-file', 'x'), 'x'), { code: 'missing' }],
    ['that is a folder', folder, { code: 'folder' }],
    ['with a zero in its name', 'a\0b', { code: 'system', system: 'ERR_INVALID_ARG_VALUE' }],
    ['with a name that is too long', 'x'.repeat(5000), { code: 'system', system: 'ENAMETOOLONG' }],
    ['that is empty', write('empty', ''), { code: 'empty' }],
  ])('%s has its reason', (_what, path, trouble) => {
    expect(readTextFile(path, 100)).toEqual({ ok: false, trouble });
  });

  test('at the limit is read, above it refused; a device without end is not read to its end', () => {
    expect(readTextFile(write('most', 'x'.repeat(100)), 100)).toMatchObject({ ok: true });
    expect(readTextFile(write('more', 'x'.repeat(101)), 100)).toMatchObject({ trouble: { code: 'too-large' } });
  });

  test.skipIf(process.platform === 'win32')('of a device without end is too large', () => {
    expect(readTextFile('/dev/zero', 100)).toMatchObject({ trouble: { code: 'too-large' } });
  });
});

describe('files that are damaged or hostile', () => {
  async function holdRefused(path: string): Promise<void> {
    const { output, messages, exitCode } = await runPredict([path]);
    hold(exitCode === 2, () => `exit code ${exitCode}: ${messages.join('\n')}`);
    hold(output === '' && messages.length > 0, () => 'nothing was said');
    for (const line of messages) {
      // oxlint-disable-next-line no-control-regex -- a terminal must not be moved by what a file holds
      hold(!/[\u0000-\u001f\u007f-\u009f]/.test(line) && line.length <= 2001, () => JSON.stringify(line));
      hold(!/\bat .+:\d+:\d+|node:internal|undefined|\[object/.test(line), () => line);
    }
  }

  const text = fc.oneof(
    hostileText,
    fc.constantFrom(...FILES).chain(damaged),
    fc
      .constantFrom(...FILES.map((file) => JSON.parse(file) as unknown))
      .chain(spoilt)
      .map((data) => JSON.stringify(data) ?? ''),
  );

  it('are refused with lines that a terminal only shows (seed 4)', async () => {
    let refused = 0;
    await fc.assert(
      fc.asyncProperty(text, async (input) => {
        const { readProject } = await import('../../src/neck/file.ts');
        // What damage left valid is a build, and its prediction takes its time.
        if (readProject(input).ok) return;
        refused += 1;
        await holdRefused(write('hostile.json', input));
      }),
      { seed: 4, numRuns: draw(1000) },
    );
    expect(refused).toBeGreaterThan(draw(300));
  });

  it('are refused as bytes of any kind (seed 5)', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), (bytes) => holdRefused(write('bytes.json', bytes))),
      { seed: 5, numRuns: draw(500) },
    );
    expect(await runPredict([write('big.json', 'x'.repeat(MOST_PROJECT_BYTES + 1))])).toMatchObject({ exitCode: 2 });
  });

  it('cannot move the cursor of a terminal or drown the message', () => {
    expect(asLine('name \u001b[2J\u009b31m\r\n\u0007')).toBe('name \\u001b[2J\\u009b31m\\u000d \\u0007');
    expect(asLine('x'.repeat(5000))).toHaveLength(2001);
    expect(asLine(`${'x'.repeat(1999)}🪵`)).toBe(`${'x'.repeat(1999)}…`);
  });
});

test('the same neck in UTF-8 and in UTF-16 gives the same prediction', async () => {
  const utf16 = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(FILES[0], 'utf16le')]);
  const [one, other] = await Promise.all([
    runPredict([write('utf8.json', `\u{feff}${FILES[0]}`)]),
    runPredict([write('utf16.json', utf16)]),
  ]);
  expect(one.exitCode).toBe(0);
  expect(one.output).toBe(other.output);
});
