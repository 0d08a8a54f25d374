/** The try strips of this device. */
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import type { RecordStorage } from '../device/database.ts';
import { KeptList, type ListForm } from '../device/kept-list.ts';
import { changedStrips, NO_STRIPS, readableStrips, stripRecordOf, type StripRecord } from './strip-record.ts';
import { deviceStripStorage } from './strip-storage.ts';

const FORM: ListForm<StripRecord, TryStrip> = {
  empty: NO_STRIPS,
  recordOf: stripRecordOf,
  readable: readableStrips,
  count: ({ strips }) => strips.length,
};

export class StripStore extends KeptList<StripRecord, TryStrip> {
  constructor(storage: RecordStorage = deviceStripStorage()) {
    super(storage, FORM);
  }

  /** Takes strips out and puts others in; they must be free of problems. */
  readonly put = (out: readonly TryStrip[], into: readonly TryStrip[]): Promise<void> =>
    this.change((before) => changedStrips(before, out, into));
}

/** Of this page. */
export const stripStore = new StripStore();
