/** Jobs of the bench in a backup. */
import { hashOfText } from '../../mechanics/bench-log/identity.ts';
import type { RecordStorage } from '../device/database.ts';
import { jobOf } from '../jobs/job-document.ts';
import { changedJobs, JOBS_FORM, MOST_JOBS } from '../jobs/job-record.ts';
import type { JobStore } from '../jobs/job-store.ts';
import { listPart } from './list-part.ts';
import type { Part } from './part.ts';

export const jobsPart = (storage: RecordStorage, store: Pick<JobStore, 'now' | 'read'>): Part =>
  listPart(
    {
      id: 'jobs',
      places: ['backbow-jobs'],
      most: MOST_JOBS,
      form: JOBS_FORM,
      read: jobOf,
      idOf: ({ id }) => id,
      hash: (job) => hashOfText(JSON.stringify(job)),
      changed: changedJobs,
    },
    storage,
    store,
  );
