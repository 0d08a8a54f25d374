/**
 * Everything that the program keeps on a device, part by part. What keeps something new adds a row, and it goes into the
 * backup and comes back; test/state/backup/places.test.ts refuses a place that no row has.
 */
import { deviceLogStorage, type LogStorage } from '../bench-log/log-storage.ts';
import { createJournal, type TextStorage } from '../journal/journal.ts';
import type { BackbowStore } from '../store.ts';
import { deviceStripStorage, type StripStorage } from '../strips/strip-storage.ts';
import { stripStore, type StripStore } from '../strips/strip-store.ts';
import { benchPart } from './bench-part.ts';
import { deviceRecords, type LibraryRecords } from './library-records.ts';
import { acceptedPart, entriesPart } from './log-parts.ts';
import { matchesPart } from './matches-part.ts';
import { necksPart } from './necks-part.ts';
import type { Part } from './part.ts';
import { settingsPart } from './settings-part.ts';
import { stripsPart } from './strips-part.ts';

export interface Device {
  readonly store: BackbowStore;
  readonly library: LibraryRecords;
  readonly log: LogStorage;
  readonly strips: { readonly storage: StripStorage; readonly store: Pick<StripStore, 'now' | 'read'> };
  readonly texts: () => TextStorage;
}

export const thisDevice = (store: BackbowStore): Device => ({
  store,
  library: deviceRecords(),
  log: deviceLogStorage(),
  strips: { storage: deviceStripStorage(), store: stripStore },
  texts: () => localStorage,
});

/** In the order in which they are put in: measurements first, since nothing else can make them again. */
export function createParts({ store, library, log, strips, texts }: Device): readonly Part[] {
  return [
    entriesPart(log, store),
    acceptedPart(log, store),
    stripsPart(strips.storage, strips.store),
    matchesPart(texts),
    necksPart(library),
    benchPart(createJournal(texts), texts, store),
    settingsPart(texts, store),
  ];
}
