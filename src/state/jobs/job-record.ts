/** Jobs as they are stored: one record. What cannot be read in it stays as it is. */
import { idOf } from '../device/id-of.ts';
import type { ListForm } from '../device/kept-list.ts';
import type { JobChange } from './job-changes.ts';
import { jobOf, type BenchJob } from './job-document.ts';

const VERSION = 1;
/** Of them a device keeps no more: a workshop's work of many years. */
export const MOST_JOBS = 500;

export interface JobRecord {
  readonly version: typeof VERSION;
  readonly jobs: readonly unknown[];
}

function recordOf(stored: unknown): JobRecord | null {
  if (stored === undefined) return JOBS_FORM.empty;
  if (typeof stored !== 'object' || stored === null) return null;
  const { version, jobs } = stored as Partial<Record<string, unknown>>;
  return version === VERSION && Array.isArray(jobs) ? { version, jobs: jobs as readonly unknown[] } : null;
}

/** The newest first. */
export const JOBS_FORM: ListForm<JobRecord, BenchJob> = {
  empty: { version: VERSION, jobs: [] },
  recordOf,
  readable: ({ jobs }) =>
    jobs
      .map((job) => jobOf(job))
      .filter((job) => job !== null)
      .toSorted((a, b) => b.startedAt - a.startedAt),
  count: ({ jobs }) => jobs.length,
};

/** Takes jobs out and puts others in, each found by its id, so that another window may have changed the list meanwhile. */
export function changedJobs(record: JobRecord, out: readonly BenchJob[], into: readonly BenchJob[]): JobRecord {
  const gone = new Set<unknown>(out.map(({ id }) => id));
  const left = record.jobs.filter((job) => !gone.has(idOf(job)));
  const there = new Set(left.map(idOf));
  return { ...record, jobs: [...left, ...into.filter(({ id }) => !there.has(id))] };
}

/** Changes one job as it is stored now; one that is gone or cannot be read stays as it is. */
export function changedJob(record: JobRecord, id: string, change: JobChange): JobRecord {
  const jobs = record.jobs.map((stored) => {
    const job = idOf(stored) === id ? jobOf(stored) : null;
    return job ? change(job) : stored;
  });
  return { ...record, jobs };
}
