/** The jobs of this device. */
import { deviceRecord, type RecordStorage } from '../device/database.ts';
import { KeptList } from '../device/kept-list.ts';
import type { JobChange } from './job-changes.ts';
import type { BenchJob } from './job-document.ts';
import { changedJob, changedJobs, JOBS_FORM, type JobRecord } from './job-record.ts';

export const deviceJobStorage = (): RecordStorage => deviceRecord('backbow-jobs', 'jobs');

export class JobStore extends KeptList<JobRecord, BenchJob> {
  constructor(storage: RecordStorage = deviceJobStorage()) {
    super(storage, JOBS_FORM);
  }

  /** Takes jobs out and puts others in. */
  readonly put = (out: readonly BenchJob[], into: readonly BenchJob[]): Promise<void> =>
    this.change((before) => changedJobs(before, out, into));

  /** Enters something in a job as it is stored now, so that two windows lose nothing of each other's. */
  readonly enter = (id: string, change: JobChange): Promise<void> =>
    this.change((before) => changedJob(before, id, change));
}

/** Of this page. */
export const jobStore = new JobStore();
