/** The log as a CSV file, out and in. */
import type { UnitSystem } from '../../neck/units.ts';
import { readLog, writeLog } from '../../mechanics/bench-log/csv.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { BYTE_ORDER_MARK } from '../../neck/csv.ts';
import { sameEntry } from '../../state/bench-log/log-record.ts';
import { offerDownload, pickFile } from '../../kit/files.ts';
import { inReadersUnits } from '../../speech/log-messages.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

/** Problems that are listed; of more than these the number is told. */
const MOST_LISTED = 12;

export function saveLog(entries: readonly LogEntry[], system: UnitSystem): void {
  offerDownload(LOG_WORDS.fileName, BYTE_ORDER_MARK + writeLog(entries, system), 'text/csv;charset=utf-8');
}

export type BroughtIn =
  | { readonly ok: true; readonly fresh: readonly LogEntry[] }
  | { readonly ok: false; readonly file: string; readonly lines: readonly string[] };

/** Entries of a text that are not in the log yet, or why the file is refused. */
export function freshEntries(text: string, file: string, known: readonly LogEntry[], system: UnitSystem): BroughtIn {
  const read = readLog(text);
  if (!read.ok) {
    const lines = read.problems.slice(0, MOST_LISTED).map(({ message }) => inReadersUnits(message, system));
    const more = read.problems.length - lines.length;
    return { ok: false, file, lines: more > 0 ? [...lines, LOG_WORDS.moreProblems(more)] : lines };
  }
  const fresh = read.entries.filter(
    (entry, at) =>
      !known.some((other) => sameEntry(other, entry)) &&
      read.entries.findIndex((other) => sameEntry(other, entry)) === at,
  );
  return { ok: true, fresh };
}

/** Asks for a file. @returns null when the person thinks better of it */
export async function bringIn(known: readonly LogEntry[], system: UnitSystem): Promise<BroughtIn | null> {
  const file = await pickFile('.csv,text/csv');
  if (!file) return null;
  try {
    return freshEntries(await file.text(), file.name, known, system);
  } catch {
    return { ok: false, file: file.name, lines: [LOG_WORDS.unreadableFile] };
  }
}
