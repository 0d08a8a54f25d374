/**
 * Everything that the program keeps on a device, part by part. What keeps something new adds a row, and it goes into the
 * backup and comes back; test/state/backup/places.test.ts refuses a place that no row has.
 */
import { deviceLogStorage, type LogStorage } from '../bench-log/log-storage.ts';
import type { RecordStorage } from '../device/database.ts';
import { deviceJobStorage, jobStore, type JobStore } from '../jobs/job-store.ts';
import { createJournal, type TextStorage } from '../journal/journal.ts';
import type { BackbowStore } from '../store.ts';
import { deviceStripStorage } from '../strips/strip-storage.ts';
import { stripStore, type StripStore } from '../strips/strip-store.ts';
import { benchPart } from './bench-part.ts';
import { deviceRecords, type LibraryRecords } from './library-records.ts';
import { jobsPart } from './jobs-part.ts';
import { lessonsPart } from './lessons-part.ts';
import { acceptedPart, entriesPart } from './log-parts.ts';
import { matchesPart } from './matches-part.ts';
import { necksPart } from './necks-part.ts';
import type { Part } from './part.ts';
import { settingsPart } from './settings-part.ts';
import { stockPart } from './stock-part.ts';
import { stripsPart } from './strips-part.ts';

export interface Device {
  readonly store: BackbowStore;
  readonly library: LibraryRecords;
  readonly log: LogStorage;
  readonly strips: { readonly storage: RecordStorage; readonly store: Pick<StripStore, 'now' | 'read'> };
  readonly jobs: { readonly storage: RecordStorage; readonly store: Pick<JobStore, 'now' | 'read'> };
  readonly texts: () => TextStorage;
}

export const thisDevice = (store: BackbowStore): Device => ({
  store,
  library: deviceRecords(),
  log: deviceLogStorage(),
  strips: { storage: deviceStripStorage(), store: stripStore },
  jobs: { storage: deviceJobStorage(), store: jobStore },
  texts: () => localStorage,
});

/** In the order in which they are put in: measurements first, since nothing else can make them again. */
export function createParts({ store, library, log, strips, jobs, texts }: Device): readonly Part[] {
  return [
    entriesPart(log, store),
    acceptedPart(log, store),
    stripsPart(strips.storage, strips.store),
    jobsPart(jobs.storage, jobs.store),
    stockPart(texts),
    matchesPart(texts),
    lessonsPart(texts),
    necksPart(library),
    benchPart(createJournal(texts), texts, store),
    settingsPart(texts, store),
  ];
}
