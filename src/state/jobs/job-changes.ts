/** What is entered in a job: each entry is one step back. */
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { MOST_STEPS_BACK, type AcceptedChange, type BenchJob, type JobReading, type Work } from './job-document.ts';

export type JobChange = (job: BenchJob) => BenchJob;

function entered(job: BenchJob, change: Partial<Work>): BenchJob {
  return { ...job, now: { ...job.now, ...change }, past: [...job.past, job.now].slice(-MOST_STEPS_BACK) };
}

/** Of two after the same fret the later one counts; the earlier one stays in sight. */
export const withReading =
  (reading: JobReading): JobChange =>
  (job) =>
    entered(job, { readings: [...job.now.readings, reading] });

const isSame = (one: JobReading, other: JobReading) => one.at === other.at && one.seated === other.seated;

export const withoutReading =
  (reading: JobReading): JobChange =>
  (job) =>
    entered(job, { readings: job.now.readings.filter((each) => !isSame(each, reading)) });

/** Nothing is entered by it: it is as it was read, and counts. */
export const assured =
  (reading: JobReading): JobChange =>
  (job) => ({
    ...job,
    now: {
      ...job.now,
      readings: job.now.readings.map((each) => (isSame(each, reading) ? { ...each, isSure: true } : each)),
    },
  });

/** Another way for the frets to come; what was decided for them at the same fret before gives way. */
export const withRestChange =
  (seated: number, rest: AcceptedChange, at: number): JobChange =>
  (job) =>
    entered(job, {
      changes: [...job.now.changes.filter((change) => change.seated < seated), { seated, rest, at }],
    });

export const finished =
  (at: number): JobChange =>
  (job) =>
    entered(job, { finishedAt: at });

/** Its readings are in the log now, under this id. */
export const logged =
  (id: LogEntry['id']): JobChange =>
  (job) =>
    entered(job, { logged: id });

/** Turning a leaf is nothing to take back. */
export const atPlace =
  (place: string): JobChange =>
  (job) => ({ ...job, place });

/** Takes the last entry back. */
export const takenBack: JobChange = (job) => {
  const before = job.past.at(-1);
  return before ? { ...job, now: before, past: job.past.slice(0, -1) } : job;
};

/** What the last entry was, so that it can be said what is taken back. */
export type LastEntry = 'none' | 'reading' | 'removed-reading' | 'change' | 'finished' | 'logged';

export function lastEntry({ now, past }: Pick<BenchJob, 'now' | 'past'>): LastEntry {
  const before = past.at(-1);
  if (!before) return 'none';
  if (now.logged !== before.logged) return 'logged';
  if (now.finishedAt !== before.finishedAt) return 'finished';
  if (now.readings.length > before.readings.length) return 'reading';
  return now.readings.length < before.readings.length ? 'removed-reading' : 'change';
}
