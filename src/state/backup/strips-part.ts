/** Try strips in a backup. */
import { checkStrip } from '../../mechanics/try-strip/document-problems.ts';
import { stripHash } from '../../mechanics/try-strip/document-file.ts';
import type { RecordStorage } from '../device/database.ts';
import { changedStrips, MOST_STRIPS, readableStrips, stripRecordOf } from '../strips/strip-record.ts';
import type { StripStore } from '../strips/strip-store.ts';
import { listPart } from './list-part.ts';
import type { Part } from './part.ts';

export const stripsPart = (storage: RecordStorage, store: Pick<StripStore, 'now' | 'read'>): Part =>
  listPart(
    {
      id: 'strips',
      places: ['backbow-try-strips'],
      most: MOST_STRIPS,
      form: { recordOf: stripRecordOf, readable: readableStrips },
      read: (each) => {
        const checked = checkStrip(each);
        return checked.ok ? checked.strip : null;
      },
      idOf: ({ id }) => id,
      hash: stripHash,
      changed: changedStrips,
    },
    storage,
    store,
  );
