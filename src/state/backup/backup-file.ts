/**
 * The backup: JSON of our own,
 *
 *   { "format": "backbow backup", "version": 1, "madeAt": …, "checksum": …, "parts": { "necks": [ … ], "log": [ … ], … } }
 *
 * The checksum is SHA-256 over `madeAt` and `parts`, as JSON without spaces, so that a file whose lines an editor broke
 * otherwise is still whole, and one that lost or changed anything is not. A part that is missing is empty. A part that is
 * not known is of a newer release: leaving it out would lose it, so the file is refused.
 */
import { digestOf } from '../../neck/digest.ts';
import { isObject, type Fault, type Part, type PartId, type PartTrouble, type SoundPart } from './part.ts';

const BACKUP_FORMAT = 'backbow backup';
const BACKUP_VERSION = 1;
export const BACKUP_EXTENSION = '.backbow-backup.json';
/** Room for thousands of necks with their pictures; a text has to be held in one piece. */
export const MOST_BACKUP_BYTES = 200_000_000;
/** Levels of brackets; a backup has about ten. */
const MOST_LEVELS = 60;

/** What of one part went into a file. */
export interface SavedCount {
  readonly id: PartId;
  readonly count: number;
  readonly leftOut: number;
  readonly trouble: PartTrouble | null;
}

export interface Backup {
  readonly text: string;
  readonly counts: readonly SavedCount[];
}

const checksumOf = (madeAt: unknown, parts: unknown): string => digestOf(JSON.stringify([madeAt, parts]));

/** @param now ms since 1970 */
export async function makeBackup(parts: readonly Part[], now: number): Promise<Backup> {
  const values: Record<string, unknown> = {};
  const counts: SavedCount[] = [];
  for (const part of parts) {
    const { value, ...count } = await part.save();
    values[part.id] = value;
    counts.push({ id: part.id, ...count });
  }
  const madeAt = new Date(now).toISOString();
  const checksum = checksumOf(madeAt, values);
  const data = { format: BACKUP_FORMAT, version: BACKUP_VERSION, madeAt, checksum, parts: values };
  return { text: `${JSON.stringify(data)}\n`, counts };
}

export type BackupTrouble =
  | { readonly code: 'not-json' | 'not-a-backup' | 'newer' | 'damaged' | 'too-deep' }
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

export function readBackup(text: string, parts: readonly Part[]): ReadBackup {
  const refuse = (trouble: BackupTrouble): ReadBackup => ({ ok: false, trouble });
  if (isTooDeep(text)) return refuse({ code: 'too-deep' });
  const data = parsed(text);
  if (data === undefined) return refuse({ code: 'not-json' });
  if (!isObject(data) || data['format'] !== BACKUP_FORMAT) return refuse({ code: 'not-a-backup' });
  const { version, madeAt, checksum, parts: values } = data;
  if (typeof version === 'number' && version > BACKUP_VERSION) return refuse({ code: 'newer' });
  if (version !== BACKUP_VERSION || !isObject(values)) return refuse({ code: 'not-a-backup' });
  if (checksum !== checksumOf(madeAt, values)) return refuse({ code: 'damaged' });
  const time = typeof madeAt === 'string' ? Date.parse(madeAt) : Number.NaN;
  if (!Number.isFinite(time)) return refuse({ code: 'damaged' });
  if (Object.keys(values).some((id) => !parts.some((part) => part.id === id))) return refuse({ code: 'newer' });
  const sound: (SoundPart & { readonly id: PartId })[] = [];
  for (const part of parts) {
    const checked = part.check(Object.hasOwn(values, part.id) ? values[part.id] : undefined);
    if (!checked.ok) return refuse({ code: 'refused', fault: checked.fault });
    sound.push({ ...checked, id: part.id });
  }
  return { ok: true, madeAt: time, parts: sound };
}
