/** The way through the lessons, in a backup: what is new comes in beside what is here. */
import type { TextStorage } from '../journal/journal.ts';
import { progressEntryOf, progressId } from '../lessons/progress-entry.ts';
import {
  changedProgress,
  MOST_PROGRESS,
  PROGRESS_FORM,
  PROGRESS_KEY,
  textOfProgress,
} from '../lessons/progress-store.ts';
import type { Part } from './part.ts';
import { textPart } from './text-part.ts';

export const lessonsPart = (texts: () => TextStorage): Part =>
  textPart(
    {
      id: 'lessons',
      most: MOST_PROGRESS,
      form: PROGRESS_FORM,
      read: progressEntryOf,
      idOf: progressId,
      // What was done once stays as it was at first.
      hash: progressId,
      changed: changedProgress,
    },
    { texts, key: PROGRESS_KEY, textOf: textOfProgress },
  );
