/**
 * The prediction without a screen, run as its users run it: once in every test run, and in all cases in the long draw;
 * otherwise what it says is asked of the function that the process asks.
 */
import { STANDARD_LAW } from '../../src/mechanics/bench-log/law.ts';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { runPredict } from '../../src/app/cli/run.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { writeProject } from '../../src/neck/file.ts';
import { PRESETS } from '../tools/presets.ts';
import { writeLog } from '../../src/mechanics/bench-log/csv.ts';
import { bitePosterior } from '../../src/mechanics/bench-log/posterior.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { REPORT_SHAPE } from '../../src/verdict/report-shape.ts';
import { referenceTo } from '../../src/mechanics/bench-log/reference.ts';
import { ENTRY } from '../mechanics/bench-log/entries.ts';
import { NO_EVIDENCE } from '../../src/mechanics/neck-readings/evidence.ts';
import { gripReferenceTo } from '../../src/mechanics/neck-readings/grip-reference.ts';
import { hear } from '../../src/mechanics/neck-readings/heard.ts';
import { writeStrips } from '../../src/mechanics/try-strip/document-file.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { filedValue } from '../../src/neck/quantities.ts';
import { heardOptions } from '../../src/state/strips/neck-bands.ts';
import { STRIP } from '../mechanics/try-strip/strips.ts';
import { IS_LONG } from '../draw.ts';
import { expectNear } from '../expect-near.ts';

/** Read over its ends, a little harder than stated. */
const STRIP_READ = { ...STRIP, readings: STRIP.readings.slice(0, 1) };

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'predict-'));
afterAll(() => rmSync(folder, { recursive: true }));

function write(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

function predict(...args: string[]) {
  const { status, stdout, stderr } = spawnSync('npm', ['run', '--silent', 'predict', '--', ...args], {
    cwd: ROOT,
    env: { ...process.env, LC_ALL: 'C' },
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

async function ask(...args: string[]): Promise<ReturnType<typeof predict>> {
  if (IS_LONG) return predict(...args);
  const { output, messages, exitCode } = await runPredict(args);
  return { status: exitCode, stdout: output, stderr: messages.map((line) => `${line}\n`).join('') };
}

describe('npm run --silent predict', () => {
  it('prints the prediction of a project file as JSON and nothing else', () => {
    const { build } = PRESETS[1];
    const { status, stdout, stderr } = predict(write('neck.backbow.json', writeProject(build)));
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const report = REPORT_SHAPE.parse(JSON.parse(stdout));
    expect(report.build).toBe(build.name);
    expect(report.checks.length).toBeGreaterThan(0);
    const { methods } = createPredictor().predict(build);
    for (const method of ['press', 'glue', 'both'] as const) {
      // Printed to a tenth of a micrometre.
      expect(Math.abs(report.methods[method].strungReliefMm.value - methods[method].strung.extremeMm)).toBeLessThan(
        1e-4,
      );
      expect(report.methods[method].wedgeForceN).toHaveLength(build.fretCount);
    }
    expectNear(
      report.methods.press.frettedReliefMm.value,
      methods.press.fretted.extremeMm,
      1e-3,
      'printed to a tenth of a micrometre',
    );
  });

  it.each([
    [
      'a file that is not there',
      () => join(folder, 'nowhere.json'),
      /nowhere\.json cannot be read: there is no such file/,
    ],
    [
      'a folder',
      () => (mkdirSync(join(folder, 'neck'), { recursive: true }), join(folder, 'neck')),
      /cannot be read: it is a folder/,
    ],
    ['text that is no JSON', () => write('text.json', 'a neck'), /not a project file: it is not JSON/],
    [
      'values out of range',
      () => write('range.json', writeProject({ ...defaultBuild(), kerfMm: 3 })),
      /Kerf \(kerfMm\) is 3 mm; it takes 0\.3 to 1\.2 mm/,
    ],
    [
      'an impossible build',
      () => write('impossible.json', writeProject({ ...defaultBuild(), slotDepthMm: 5.9 })),
      /Slot depth is 5\.9 mm; here it can be at most/,
    ],
  ])('%s: a message on standard error, exit code 2, no stack', async (_what, path, words) => {
    const { status, stdout, stderr } = await ask(path());
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(words);
    expect(stderr).not.toMatch(/\n\s+at |node:internal|Error:/);
  });

  it('with try strips the bands are those that they leave of the neck that refers to them', async () => {
    const { build } = PRESETS[0];
    const evidence = { ...NO_EVIDENCE, strips: [{ strip: STRIP_READ, ownBoard: true }] };
    const heard = hear(build, evidence, undefined);
    const reference = gripReferenceTo(build, evidence, heard);
    const measured = { ...build, ...heard.taken, gripReference: reference };
    const strips = write('strips.json', writeStrips([STRIP_READ]));
    const path = write('by-strip.json', writeProject(measured));
    const [plain, known] = [await ask(path), await ask('--strips', strips, path)].map(({ stdout }) =>
      REPORT_SHAPE.parse(JSON.parse(stdout)),
    );
    const band = (report: typeof plain) => report.methods.press.frettedReliefMm;
    expect(band(known).p95! - band(known).p05!).toBeLessThan(0.6 * (band(plain).p95! - band(plain).p05!));
    expect([plain.bands!.bite, known.bands!.bite, known.bands!.measurements]).toEqual(['unmeasured', 'measured', 1]);
    expect(known.stamp).not.toBe(plain.stamp);
    // What the page gives: the worker's way to the same band.
    const onPage = await heardOptions(createEstimator(createPredictor()), measured, evidence, () => false);
    const bands = await createEstimator(createPredictor()).estimate(measured, onPage!);
    expect(band(known).p05).toBe(filedValue(bands!.methods.press.fretted.p05, 'mm'));

    const refused = async (name: string, other: Build, file = strips) => {
      const { status, stdout, stderr } = await ask(write(name, writeProject(other)), '--strips', file);
      expect([status, stdout]).toEqual([2, '']);
      return stderr;
    };
    expect(await refused('none.json', build)).toContain('refers to no try strips');
    expect(await refused('by-hand.json', { ...measured, biteFactor: 3 })).toContain('are not those that');
    const edited = write('edited.json', writeStrips([{ ...STRIP_READ, slotDepthMm: 2.9 }]));
    expect(await refused('by-strip-2.json', measured, edited)).toContain('have changed');
    const others = write('others.json', writeStrips([{ ...STRIP_READ, id: 'zxwvtsrqpnmlkj' }]));
    expect(await refused('by-strip-3.json', measured, others)).toContain('not in');
  }, 60_000);

  it('with a bench log the bands are those that its measured necks leave', async () => {
    const build = PRESETS[0].build;
    const entries = [0, 1, 2, 3].map((index) => ({
      ...ENTRY,
      id: `bcdfghjklmnpq${'rstv'[index]}`,
      neck: `No. ${index}`,
      measuredFrettedMm: -0.24 - index / 100,
    }));
    const log = write('log.csv', writeLog(entries));
    const posterior = bitePosterior(entries);
    const reference = referenceTo(entries, posterior, STANDARD_LAW);
    const measured = { ...build, biteFactor: reference.factor, biteReference: reference };
    const path = write('measured.json', writeProject(measured));
    const [plain, known] = [await ask(path), await ask('--log', log, path)].map(({ stdout }) =>
      REPORT_SHAPE.parse(JSON.parse(stdout)),
    );
    const width = (report: typeof plain) => {
      const { p05, p95 } = report.methods.press.settledReliefMm;
      return p95! - p05!;
    };
    expect(width(known)).toBeLessThan(0.85 * width(plain));
    expect([plain.bands!.benchLog, known.bands!.benchLog?.necks]).toEqual([undefined, 4]);
    const refused = async (name: string, other: Build, file = log) => {
      const { status, stdout, stderr } = await ask(write(name, writeProject(other)), '--log', file);
      expect([status, stdout]).toEqual([2, '']);
      return stderr;
    };
    // Another bite factor is not changed behind anybody's back.
    const other = await refused('other.json', { ...measured, biteFactor: 1 });
    expect(other).toContain(`biteFactor is 1 in the build; ${log} gives ${measured.biteFactor}.`);
    // The same factor without the reference, and with one to entries that are not there or say something else.
    expect(await refused('equal.json', { ...build, biteFactor: reference.factor })).toContain(
      'refers to no measurements',
    );
    const elsewhere = write('elsewhere.csv', writeLog([{ ...ENTRY, id: 'zxwvtsrqpnmlkj' }]));
    expect(await refused('elsewhere.json', measured, elsewhere)).toContain('measurements that are not in');
    const edited = write(
      'edited.csv',
      writeLog(entries.map((entry, at) => (at ? entry : { ...entry, gaugeErrorMm: 0.03 }))),
    );
    expect(await refused('edited.json', measured, edited)).toContain('have changed');
    // More entries beside them change nothing.
    const more = write('more.csv', writeLog([...entries, { ...ENTRY, id: 'zxwvtsrqpnmlkj' }], 'inch'));
    expect(await ask(path, '--log', more)).toMatchObject({ status: 0, stdout: (await ask('--log', log, path)).stdout });
  }, 60_000);

  it.each([
    ['a log that is none', 'date,neck\n2026-01-01,No. 1\n', /Row 1: the column “method” is missing/],
    [
      'a log of glued necks only',
      writeLog([{ ...ENTRY, method: 'glue', predictedFrettedMm: 0, predictedStrungFretsMm: 0 }]),
      /says nothing of the bite/,
    ],
  ])('%s is refused with its reason', async (_what, text, words) => {
    const path = write('neck.json', writeProject(defaultBuild()));
    const { status, stdout, stderr } = await ask(path, '--log', write('bad.csv', text));
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(words);
  });
});
