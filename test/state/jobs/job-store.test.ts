/** Jobs at the bench: kept whole on a device, changed by several windows, taken back entry by entry, in a backup and back. */
import { beforeAll, describe, expect, test } from 'vitest';
import { contentProblems } from '../../../src/mechanics/bench-log/entry-problems.ts';
import { seatingQuarters } from '../../../src/fretwork/plan/seating-order.ts';
import { slotAndTang } from '../../../src/neck/build.ts';
import {
  atPlace,
  finished,
  lastEntry,
  takenBack,
  withoutReading,
  withReading,
  withRestChange,
} from '../../../src/state/jobs/job-changes.ts';
import { jobOf, neckNow, neckOf, type BenchJob } from '../../../src/state/jobs/job-document.ts';
import { JobStore } from '../../../src/state/jobs/job-store.ts';
import { logEntryOf } from '../../../src/state/jobs/log-entry.ts';
import { kit, logMemory } from '../backup/device.ts';
import { aJob, aReading } from './a-job.ts';

let job: BenchJob;
beforeAll(async () => {
  job = await aJob();
});

const stored = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('the document', () => {
  test('comes back from storage as it was, its neck and its predictions with it', () => {
    expect(jobOf(stored(job))).toEqual(job);
    expect(neckOf(job)).toMatchObject({ name: 'Walnut seven', fretCount: 22 });
    const { quarters, fretted, settled } = job.predicted;
    // The last quarter is all of them.
    expect(quarters[3]).toMatchObject({ statedMm: fretted.statedMm });
    for (const state of [...quarters, fretted, settled]) {
      expect(state.p05).toBeLessThan(state.p95);
      expect(state.p50).toBeGreaterThanOrEqual(state.p05);
    }
  });

  test.each([
    ['a newer format', { version: 2 }],
    ['no neck', { neck: {} }],
    [
      'a reading after a fret that is not there',
      { now: { readings: [aReading(23, -0.1)], changes: [], finishedAt: null, logged: null } },
    ],
    [
      'a reading without an instrument',
      { now: { readings: [{ ...aReading(6, -0.1), instrument: 'eye' }], changes: [], finishedAt: null, logged: null } },
    ],
    ['something unknown', { photographs: [] }],
  ])('is refused with %s', (_name, change) => {
    expect(jobOf({ ...job, ...change })).toBeNull();
  });
});

describe('entries', () => {
  test('are taken back one by one, each said for what it was; turning a leaf is none', () => {
    const [first, second] = [aReading(6, -0.12), aReading(11, -0.25)];
    const steps = [
      withReading(first),
      withReading(second),
      withRestChange(11, { code: 'glue' }, 5),
      withoutReading(first),
      finished(6),
    ];
    const states = steps.reduce<BenchJob[]>((all, step) => [...all, step(all.at(-1)!)], [job]);
    expect(states.map(lastEntry)).toEqual(['none', 'reading', 'reading', 'change', 'removed-reading', 'finished']);
    expect(states[4].now.readings).toEqual([second]);
    for (let at = states.length - 1; at > 0; at -= 1) {
      expect(takenBack(states[at])).toEqual(states[at - 1]);
    }
    expect(takenBack(job)).toBe(job);
    const leafed = atPlace('saw')(states[1]);
    expect(leafed).toMatchObject({ place: 'saw', past: states[1].past });
    expect(jobOf(stored(states[5]))).toEqual(states[5]);
  });

  test('what was changed for the rest is in the neck from there on, and not before', () => {
    const build = neckOf(job);
    const [first, second, ...later] = seatingQuarters(build);
    const seated = first.length;
    const wider = withRestChange(seated, { code: 'kerf', kerfMm: 0.64 }, 5)(job);
    const now = neckNow(wider);
    for (const fret of first) expect(slotAndTang(now, fret).kerfMm).toBe(build.kerfMm);
    for (const fret of [second, ...later].flat()) expect(slotAndTang(now, fret).kerfMm).toBe(0.64);
    // Decided anew at the same fret: the earlier word gives way.
    const again = withRestChange(seated, { code: 'kerf', kerfMm: 0.67 }, 6)(wider);
    expect(again.now.changes).toHaveLength(1);
    expect(slotAndTang(neckNow(again), second[0]).kerfMm).toBe(0.67);
  });
});

describe('the store', () => {
  test('two windows enter readings in the same job, and neither is lost', async () => {
    const device = logMemory();
    const [one, other] = [new JobStore(device), new JobStore(device)];
    await one.put([], [job]);
    await other.read();
    await one.enter(job.id, withReading(aReading(6, -0.12)));
    await other.enter(job.id, withReading(aReading(11, -0.25)));
    await one.read();
    expect(one.now().items![0].now.readings.map(({ seated }) => seated)).toEqual([6, 11]);
  });

  test('leaves what it cannot read where it is, and says when the device keeps nothing', async () => {
    const device = logMemory({ version: 1, jobs: [{ id: 'x' }, stored(job)] });
    const store = new JobStore(device);
    await store.read();
    expect(store.now()).toMatchObject({ unreadable: 1, trouble: null });
    await store.enter(job.id, withReading(aReading(6, -0.12)));
    expect(device.stored).toMatchObject({ jobs: [{ id: 'x' }, { now: { readings: [{ seated: 6 }] } }] });
    device.fail = 'QuotaExceededError';
    await store.enter(job.id, withReading(aReading(11, -0.25)));
    expect(store.now().trouble).toBe('full');
    // It goes on in the page.
    await store.enter(job.id, withReading(aReading(17, -0.35)));
    expect(store.now().items![0].now.readings).toHaveLength(3);
  });
});

describe('for the bench log', () => {
  const name = (gauge: string) => gauge;
  /** Frets after each quarter of 22, spread: 6, 5, 6 and 5 of them. */
  const QUARTERS = [6, 11, 17, 22] as const;
  const read = (seated: readonly number[]) => seated.reduce((so, at) => withReading(aReading(at, -at / 100))(so), job);

  test('quarters and the whole are an entry with what was predicted at hand-over', () => {
    const ends = seatingQuarters(neckOf(job)).map((_, at, all) => all.slice(0, at + 1).flat().length);
    expect(ends).toEqual(QUARTERS);
    const entry = logEntryOf(read(QUARTERS), name)!;
    expect(contentProblems({ ...entry, date: '2026-11-29' })).toEqual([]);
    expect(entry).toMatchObject({
      neck: 'Walnut seven',
      measuredQuarter1Mm: -0.06,
      measuredQuarter3Mm: -0.17,
      measuredFrettedMm: -0.22,
      predictedQuarter1Mm: job.predicted.quarters[0].statedMm,
      predictedFrettedMm: job.predicted.fretted.statedMm,
      measuredStrungMm: null,
      instrument: 'feelers',
    });
  });

  test('what was read after a change, between two quarters or on a try stays with the job', () => {
    const changed = withRestChange(6, { code: 'glue' }, 5)(read([6, 9, 11, 22]));
    const entry = logEntryOf(changed, name)!;
    expect(contentProblems({ ...entry, date: '2026-11-29' })).toEqual([]);
    expect(entry).toMatchObject({ measuredQuarter1Mm: -0.06, measuredQuarter2Mm: null, measuredFrettedMm: null });
    expect(logEntryOf(read([9]), name)).toBeNull();
    expect(logEntryOf({ ...read(QUARTERS), isTry: true }, name)).toBeNull();
  });
});

test('jobs go into a backup and come back; one that says something else here stays', async () => {
  const from = kit();
  from.jobs.stored = { version: 1, jobs: [stored(job)] };
  const partOf = ({ parts }: Pick<typeof from, 'parts'>) => parts.find(({ id }) => id === 'jobs')!;
  const saved = await partOf(from).save();
  expect(saved).toMatchObject({ count: 1, leftOut: 0, trouble: null });
  const to = kit();
  const checked = partOf(to).check(stored(saved.value));
  if (!checked.ok) throw new Error(checked.fault.code);
  expect(await checked.foresee()).toMatchObject({ fresh: 1, stays: 0 });
  await checked.add();
  expect(to.jobs.stored).toEqual({ version: 1, jobs: [job] });
  to.jobs.stored = { version: 1, jobs: [withReading(aReading(6, -0.12))(job)] };
  expect(await checked.foresee()).toMatchObject({ fresh: 0, stays: 1 });
});
