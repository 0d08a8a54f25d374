/** A job from device to device: as a file, and what becomes of it beside what the other device has. */
import { beforeAll, describe, expect, test } from 'vitest';
import { newId } from '../../../src/mechanics/bench-log/identity.ts';
import { assured, atPlace, finished, takenBack, withReading } from '../../../src/state/jobs/job-changes.ts';
import { jobOf, type BenchJob } from '../../../src/state/jobs/job-document.ts';
import { readJobFile, writeJobFile } from '../../../src/state/jobs/job-file.ts';
import { JobStore } from '../../../src/state/jobs/job-store.ts';
import { received } from '../../../src/state/jobs/receive-job.ts';
import { logMemory } from '../backup/device.ts';
import { aJob, aReading } from './a-job.ts';

let begun: BenchJob;
let read: BenchJob;
beforeAll(async () => {
  begun = await aJob();
  read = withReading(aReading(6, -0.12))(begun);
});

describe('the file', () => {
  test('holds the whole job, the steps back too', () => {
    const job = finished(5_000_000)(atPlace('read-2')(read));
    expect(readJobFile(writeJobFile(job))).toEqual({ ok: true, job });
  });

  test.each([
    ['another file', () => '{"format":"backbow project"}', 'not-a-job'],
    ['a picture', () => '\u0089PNG', 'not-a-job'],
    ['a list', () => '[]', 'not-a-job'],
    ['a file cut short', () => writeJobFile(read).slice(0, -40), 'damaged'],
    ['a reading that is none', () => writeJobFile(read).replace('"measuredMm":-0.12', '"measuredMm":-120'), 'damaged'],
    ['a newer file', () => writeJobFile(read).replace('"version":1', '"version":2'), 'newer'],
    ['a newer job', () => writeJobFile({ ...read, version: 2 as 1 }), 'newer'],
  ])('is refused when it is %s', (_name, text, trouble) => {
    expect(readJobFile(text())).toEqual({ ok: false, trouble });
  });
});

describe('on arrival', () => {
  test('a job that is not here comes in', () => {
    expect(received(read, undefined)).toEqual({ arrival: 'new', out: [], into: [read] });
  });

  test('the same one changes nothing; which page was open is nothing that was entered', () => {
    expect(received(read, read)).toEqual({ arrival: 'same', out: [], into: [] });
    expect(received(atPlace('done')(read), read).arrival).toBe('same');
  });

  test('one that goes on from what is here takes its place, after steps back too', () => {
    expect(received(read, begun)).toEqual({ arrival: 'further', out: [begun], into: [read] });
    const more = withReading(aReading(11, -0.2))(assured(aReading(6, -0.12))(read));
    expect(received(more, read).arrival).toBe('further');
    expect(received(more, begun).arrival).toBe('further');
  });

  test('one that is behind changes nothing', () => {
    expect(received(begun, read)).toEqual({ arrival: 'behind', out: [], into: [] });
    expect(received(takenBack(read), read).arrival).toBe('behind');
  });

  test('where both went on, both are kept', async () => {
    const other = withReading(aReading(6, -0.3))(begun);
    const id = newId();
    const { arrival, out, into } = received(other, read, id);
    expect([arrival, out, into]).toEqual(['apart', [], [{ ...other, id }]]);
    expect(jobOf(into[0])).toEqual(into[0]);
    const jobs = new JobStore(logMemory());
    await jobs.put([], [read]);
    await jobs.put(out, into);
    expect(
      jobs
        .now()
        .items?.map(({ now }) => now.readings[0].measuredMm)
        .toSorted(),
    ).toEqual([-0.12, -0.3]);
  });
});
