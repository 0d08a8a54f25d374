/** The way through the lessons, in a backup: what is new comes in beside what is here. */
import { troubleOf } from '../device/trouble.ts';
import type { TextStorage } from '../journal/journal.ts';
import { progressEntryOf, progressId, type ProgressEntry } from '../lessons/progress-entry.ts';
import {
  MOST_PROGRESS,
  PROGRESS_KEY,
  progressRecordOf,
  readableProgress,
  withoutProgress,
  withProgress,
  writeProgress,
  type ProgressRecord,
} from '../lessons/progress-store.ts';
import { checkedList, EMPTY_TALLY, NewerRecord, type Part, type Tally } from './part.ts';

function compared(record: ProgressRecord, coming: readonly ProgressEntry[]) {
  const here = new Set(readableProgress(record).map(progressId));
  const fresh = coming.filter((one) => !here.has(progressId(one)));
  const tally: Tally = { ...EMPTY_TALLY, fresh: fresh.length, known: coming.length - fresh.length };
  return { fresh, tally };
}

export function lessonsPart(texts: () => TextStorage): Part {
  function now(): ProgressRecord {
    const record = progressRecordOf(texts().getItem(PROGRESS_KEY));
    if (!record) throw new NewerRecord();
    return record;
  }

  async function add(coming: readonly ProgressEntry[]) {
    const record = now();
    const { fresh, tally } = compared(record, coming);
    if (fresh.length > 0) writeProgress(texts(), withProgress(record, fresh));
    const takeBack = async () => {
      if (fresh.length > 0) writeProgress(texts(), withoutProgress(now(), new Set(fresh.map(progressId))));
    };
    return { tally, takeBack };
  }

  return {
    id: 'lessons',
    places: [PROGRESS_KEY],
    save: async () => {
      try {
        const record = now();
        const value = readableProgress(record);
        return { value, count: value.length, leftOut: record.entries.length - value.length, trouble: null };
      } catch (error) {
        return { value: [], count: 0, leftOut: 0, trouble: error instanceof NewerRecord ? 'newer' : troubleOf(error) };
      }
    },
    check: (value) =>
      checkedList<ProgressEntry>(value, {
        part: 'lessons',
        most: MOST_PROGRESS,
        read: progressEntryOf,
        idOf: progressId,
        foresee: async (items) => compared(now(), items).tally,
        add,
      }),
  };
}
