/** Making a backup of this device, and what is said of it. */
import { BACKUP_WORDS } from '../../../speech/en/pages/backup.ts';
import { megabytes } from '../../../speech/quantity.ts';
import { spokenLocale } from '../../../speech/language.ts';
import {
  BACKUP_EXTENSION,
  makeBackup,
  readBackup,
  type BackupTrouble,
  type SavedCount,
  type SoundBackup,
  type TooLarge,
} from '../../../state/backup/backup-file.ts';
import { fileWorkAside } from '../../../state/backup/file-work-aside.ts';
import { noteBackup } from '../../../state/backup/last-backup.ts';
import { createParts, thisDevice } from '../../../state/backup/parts.ts';
import { changes, type PartId, type Tally } from '../../../state/backup/part.ts';
import type { PartOutcome } from '../../../state/backup/restore.ts';
import { store } from '../../../state/store.ts';
import { offerDownload } from '../../../kit/files.ts';

/** What is told, and whether it is good news. */
export interface Report {
  readonly ok: boolean;
  readonly title: string;
  readonly lines: readonly string[];
}

const parts = createParts(thisDevice(store));

const listed = (texts: readonly string[]): string => new Intl.ListFormat(spokenLocale()).format(texts);

/** The order in which people think of them. */
const SHOWN: readonly PartId[] = ['necks', 'bench', 'log', 'accepted', 'settings'];
const inOrder = <Item extends { readonly id: PartId }>(items: readonly Item[]): readonly Item[] =>
  items.toSorted((a, b) => SHOWN.indexOf(a.id) - SHOWN.indexOf(b.id));

function savedText(counts: readonly SavedCount[]): Report {
  const held = inOrder(counts).filter(({ count }) => count > 0);
  const failed = inOrder(counts).filter(({ trouble, leftOut }) => trouble !== null || leftOut > 0);
  return {
    ok: failed.length === 0,
    title:
      held.length === 0
        ? BACKUP_WORDS.madeEmpty
        : BACKUP_WORDS.made(listed(held.map(({ id, count }) => BACKUP_WORDS.counts[id](count)))),
    lines: failed.map(({ id, trouble, leftOut }) =>
      trouble === null
        ? BACKUP_WORDS.leftOut(BACKUP_WORDS.parts[id], leftOut)
        : BACKUP_WORDS.notSaved(BACKUP_WORDS.parts[id], BACKUP_WORDS.troubles[trouble]),
    ),
  };
}

const tooLargeText = ({ bytes, mostBytes }: TooLarge): string =>
  BACKUP_WORDS.tooLarge(megabytes(bytes), megabytes(mostBytes));

export async function backUp(): Promise<Report> {
  const now = Date.now();
  const made = await makeBackup(parts, now, fileWorkAside);
  if ('code' in made) {
    return { ok: false, title: BACKUP_WORDS.notMade, lines: [tooLargeText(made), BACKUP_WORDS.makeSmaller] };
  }
  const { file, counts } = made;
  const day = new Date(now - new Date(now).getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
  if (counts.some(({ count }) => count > 0)) {
    offerDownload(`${BACKUP_WORDS.fileName}-${day}${BACKUP_EXTENSION}`, file);
    if (counts.every(({ trouble }) => trouble === null)) {
      noteBackup({ at: now, entries: counts.find(({ id }) => id === 'log')?.count ?? 0 });
    }
  }
  return savedText(counts);
}

function troubleText(trouble: BackupTrouble): string {
  if (trouble.code === 'too-large') return tooLargeText(trouble);
  if (trouble.code !== 'refused') return BACKUP_WORDS.fileTroubles[trouble.code];
  const { part, place, code } = trouble.fault;
  return BACKUP_WORDS.faults[code](BACKUP_WORDS.parts[part], place);
}

/** @returns the backup, or why it is refused */
export async function readBackupFile(file: File): Promise<SoundBackup | Report> {
  const read = await readBackup(file, parts, fileWorkAside);
  if (read.ok) return read;
  return { ok: false, title: BACKUP_WORDS.refused(file.name), lines: [troubleText(read.trouble)] };
}

/** "3 to add, 2 here already". */
function tallyText({ fresh, known, beside, stays, back, noPlace }: Tally): string {
  const said = { fresh, back, beside, known, stays, noPlace };
  return Object.entries(said)
    .filter(([, count]) => count > 0)
    .map(([how, count]) => BACKUP_WORDS[how as keyof typeof said](count))
    .join(', ');
}

/** One line for each part that the file has something of. */
export function foreseenLines(outcomes: readonly PartOutcome[]): { readonly part: string; readonly says: string }[] {
  return inOrder(outcomes).map((outcome) => ({
    part: BACKUP_WORDS.parts[outcome.id],
    says: outcome.ok ? tallyText(outcome.tally) : BACKUP_WORDS.cannot(BACKUP_WORDS.troubles[outcome.trouble]),
  }));
}

export const bringsAnything = (outcomes: readonly PartOutcome[]): boolean =>
  outcomes.some((outcome) => outcome.ok && changes(outcome.tally));

export function restoredReport(outcomes: readonly PartOutcome[]): Report {
  const ok = outcomes.every((outcome) => outcome.ok);
  const lines = inOrder(outcomes).map((outcome) => {
    const part = BACKUP_WORDS.parts[outcome.id];
    if (!outcome.ok) return BACKUP_WORDS.failedPart(part, BACKUP_WORDS.troubles[outcome.trouble]);
    const { fresh, beside, back } = outcome.tally;
    const count = fresh + beside + back;
    return count === 0 ? BACKUP_WORDS.restoredNone(part) : BACKUP_WORDS.restoredPart(part, count);
  });
  return {
    ok,
    title: ok ? BACKUP_WORDS.restored : BACKUP_WORDS.restoredPartly,
    lines: ok ? lines : [...lines, BACKUP_WORDS.again],
  };
}

export const undoneReport = (stuck: readonly PartId[]): Report => ({
  ok: stuck.length === 0,
  title:
    stuck.length === 0
      ? BACKUP_WORDS.undone
      : BACKUP_WORDS.undoneNot(listed(stuck.map((id) => BACKUP_WORDS.parts[id]))),
  lines: [],
});

export const failedReport = (): Report => ({ ok: false, title: BACKUP_WORDS.failed, lines: [] });
