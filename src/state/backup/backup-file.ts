/**
 * The backup: JSON of our own,
 *
 *   { "format": "backbow backup", "version": 1, "madeAt": …, "checksum": …, "parts": { "necks": [ … ], "log": [ … ], … } }
 *
 * The checksum is SHA-256 over `madeAt` and `parts`, as JSON without spaces, so that a file whose lines an editor broke
 * otherwise is still whole, and one that lost or changed anything is not. A part that is missing is empty. A part that is
 * not known is of a newer release: leaving it out would lose it, so the file is refused.
 */
import { textOfBytes } from '../../neck/text-of-bytes.ts';
import { digestOf } from '../../neck/digest.ts';
import { isObject, type Fault, type Part, type PartId, type PartTrouble, type SoundPart } from './part.ts';

const BACKUP_FORMAT = 'backbow backup';
const BACKUP_VERSION = 1;
export const BACKUP_EXTENSION = '.backbow-backup.json';
/** Room for thousands of necks with their pictures; a text has to be held in one piece. */
const MOST_BACKUP_BYTES = 200_000_000;
/** Levels of brackets; a backup has about ten. */
const MOST_LEVELS = 60;

/** What the parts hold, each under its id. */
type Values = Readonly<Record<string, unknown>>;

export interface TooLarge {
  readonly code: 'too-large';
  readonly bytes: number;
  readonly mostBytes: number;
}

/** A file that is whole; whether what it holds is sound only the parts can say. */
type Opened =
  | { readonly ok: true; readonly madeAt: number; readonly values: Values }
  | {
      readonly ok: false;
      readonly trouble: {
        readonly code: 'unreadable' | 'not-json' | 'not-a-backup' | 'newer' | 'damaged' | 'too-deep';
      };
    };

/** What takes seconds for a large backup and needs nothing of the page: done here, or by a worker. */
export interface FileWork {
  /** @param now ms since 1970 */
  readonly write: (values: Values, now: number) => Promise<Blob>;
  readonly open: (file: Blob) => Promise<Opened>;
}

const checksumOf = (madeAt: unknown, parts: unknown): string => digestOf(JSON.stringify([madeAt, parts]));

/** Are its brackets nested deeper than any backup's? Asked before it is parsed: what is nested too deep can end the page. */
function isTooDeep(text: string): boolean {
  let levels = 0;
  let isInText = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (isInText && character === '\\') at += 1;
    else if (character === '"') isInText = !isInText;
    else if (isInText) continue;
    else if (character === '[' || character === '{') levels += 1;
    else if (character === ']' || character === '}') levels -= 1;
    if (levels > MOST_LEVELS) return true;
  }
  return false;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function opened(text: string): Opened {
  const refuse = (code: (Opened & { ok: false })['trouble']['code']): Opened => ({ ok: false, trouble: { code } });
  if (isTooDeep(text)) return refuse('too-deep');
  const data = parsed(text);
  if (data === undefined) return refuse('not-json');
  if (!isObject(data) || data['format'] !== BACKUP_FORMAT) return refuse('not-a-backup');
  const { version, madeAt, checksum, parts: values } = data;
  if (typeof version === 'number' && version > BACKUP_VERSION) return refuse('newer');
  if (version !== BACKUP_VERSION || !isObject(values)) return refuse('not-a-backup');
  if (checksum !== checksumOf(madeAt, values)) return refuse('damaged');
  const time = typeof madeAt === 'string' ? Date.parse(madeAt) : Number.NaN;
  return Number.isFinite(time) ? { ok: true, madeAt: time, values } : refuse('damaged');
}

async function bytesOf(file: Blob): Promise<Uint8Array | null> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    return null;
  }
}

export const fileWork: FileWork = {
  write: async (values, now) => {
    const madeAt = new Date(now).toISOString();
    const checksum = checksumOf(madeAt, values);
    const data = { format: BACKUP_FORMAT, version: BACKUP_VERSION, madeAt, checksum, parts: values };
    return new Blob([`${JSON.stringify(data)}\n`], { type: 'application/json' });
  },
  open: async (file) => {
    const bytes = await bytesOf(file);
    if (bytes === null) return { ok: false, trouble: { code: 'unreadable' } };
    const read = textOfBytes(bytes);
    return read.ok ? opened(read.text) : { ok: false, trouble: { code: 'not-json' } };
  },
};

/** What of one part went into a file. */
export interface SavedCount {
  readonly id: PartId;
  readonly count: number;
  readonly leftOut: number;
  readonly trouble: PartTrouble | null;
}

export interface Backup {
  readonly file: Blob;
  readonly counts: readonly SavedCount[];
}

const tooLarge = ({ size }: Blob): TooLarge | null =>
  size > MOST_BACKUP_BYTES ? { code: 'too-large', bytes: size, mostBytes: MOST_BACKUP_BYTES } : null;

/**
 * @param now ms since 1970
 * @returns a backup that can be read again, or why there can be none
 */
export async function makeBackup(parts: readonly Part[], now: number, { write }: FileWork): Promise<Backup | TooLarge> {
  const values: Record<string, unknown> = {};
  const counts: SavedCount[] = [];
  for (const part of parts) {
    const { value, ...count } = await part.save();
    values[part.id] = value;
    counts.push({ id: part.id, ...count });
  }
  const file = await write(values, now);
  return tooLarge(file) ?? { file, counts };
}

export type BackupTrouble =
  | (Opened & { ok: false })['trouble']
  | TooLarge
  /** It is whole, and something in it is not what it should be. */
  | ({ readonly code: 'refused' } & { readonly fault: Fault });

/** A backup that was found sound; nothing has been changed yet. */
export interface SoundBackup {
  readonly ok: true;
  /** ms since 1970. */
  readonly madeAt: number;
  readonly parts: readonly (SoundPart & { readonly id: PartId })[];
}

export type ReadBackup = SoundBackup | { readonly ok: false; readonly trouble: BackupTrouble };

export async function readBackup(file: Blob, parts: readonly Part[], { open }: FileWork): Promise<ReadBackup> {
  const refuse = (trouble: BackupTrouble): ReadBackup => ({ ok: false, trouble });
  const size = tooLarge(file);
  if (size) return refuse(size);
  const read = await open(file);
  if (!read.ok) return read;
  const { madeAt, values } = read;
  if (Object.keys(values).some((id) => !parts.some((part) => part.id === id))) return refuse({ code: 'newer' });
  const sound: (SoundPart & { readonly id: PartId })[] = [];
  for (const part of parts) {
    const checked = part.check(Object.hasOwn(values, part.id) ? values[part.id] : undefined);
    if (!checked.ok) return refuse({ code: 'refused', fault: checked.fault });
    sound.push({ ...checked, id: part.id });
  }
  return { ok: true, madeAt, parts: sound };
}
