/**
 * What makes a measurement the same one: an id that stays with it, and a hash of what it says.
 *
 * The id is drawn when an entry is made. Entries of releases that had none get one from their content, so that the same old
 * entry has the same id wherever it is read. Ids are consonants only: a spreadsheet takes none of them for a number, a date
 * or a word to mend.
 *
 * The hash is SHA-256 (FIPS 180-4) over the content, shortened to 128 bits. Numbers count to a millionth: a nanometre, far
 * below any gauge and far above what a spreadsheet's 15 digits lose. A value that is the default is left out, so that a
 * column that a later release adds changes no hash.
 */
import { digest, digestOf } from '../../neck/digest.ts';
import { isEarlierGrip } from '../../neck/file.ts';
import type { GripLaw } from './law.ts';
import { LOG_NUMBERS, LOG_TEXTS, UNSAID, type EntryContent, type LogEntry } from './entry.ts';

const LETTERS = 'bcdfghjklmnpqrstvwxz';
const ID_LENGTH = 14;
const ID = new RegExp(`^[${LETTERS}]{${ID_LENGTH}}$`);
/** Bytes below this share the letters evenly. */
const EVEN = 256 - (256 % LETTERS.length);

export function isId(value: unknown): value is string {
  return typeof value === 'string' && ID.test(value);
}

/** As many of the letters as the bytes give, at most `length`. */
function lettersOf(bytes: Iterable<number>, length: number): string {
  let id = '';
  for (const byte of bytes) {
    if (id.length < length && byte < EVEN) id += LETTERS[byte % LETTERS.length];
  }
  return id;
}

const idOf = (bytes: Iterable<number>): string => lettersOf(bytes, ID_LENGTH);

/** The first letters of the hash of a text, in the alphabet of ids. @param length up to 14 */
export function lettersOfText(text: string, length: number): string {
  for (let round = 0; ; round += 1) {
    const letters = lettersOf(digest(`letters ${round} ${text}`), length);
    if (letters.length === length) return letters;
  }
}

/** An id that nobody has drawn before: 60 bits of chance. */
export function newId(): string {
  for (;;) {
    const id = idOf(crypto.getRandomValues(new Uint8Array(2 * ID_LENGTH)));
    if (id.length === ID_LENGTH) return id;
  }
}

const FORMAT = 'backbow measurement 1';
const DIGITS = 6;

/** The content as one text, the same for the same content whatever the order of its keys. */
function canonical(entry: EntryContent): string {
  const said: Record<string, string | number> = {};
  for (const { id } of LOG_TEXTS) {
    if (id === 'id') continue;
    const value = entry[id];
    if (value !== (UNSAID as Partial<EntryContent>)[id]) said[id] = value;
  }
  for (const { id } of LOG_NUMBERS) {
    const value = entry[id];
    // Minus zero is zero.
    if (value !== null) said[id] = Number(value.toFixed(DIGITS)) + 0;
  }
  return JSON.stringify([FORMAT, said]);
}

/** Hash of a text: 32 hexadecimal digits. */
export const hashOfText = (text: string): string => digestOf(text).slice(0, 32);

const hashes = new WeakMap<object, string>();

/** Hash of what an entry says, its id left out: 32 hexadecimal digits. */
export function contentHash(entry: EntryContent): string {
  let hash = hashes.get(entry);
  if (hash === undefined) {
    hash = hashOfText(canonical(entry));
    hashes.set(entry, hash);
  }
  return hash;
}

/** The entry with the id that its content gives. */
export function withContentId(entry: EntryContent): LogEntry {
  const text = canonical(entry);
  for (let round = 0; ; round += 1) {
    const id = idOf(digest(`id ${round} ${text}`));
    if (id.length === ID_LENGTH) return { ...entry, id };
  }
}

/**
 * Hash of a set of measurements, whatever their order: of their ids, of what they say, and of the law of the grip that their
 * bite factor is told in. References of file version 1 name none: they were of the earlier law.
 */
export function hashOfSet(entries: readonly LogEntry[], law: GripLaw): string {
  const lines = entries.map((entry) => `${entry.id} ${contentHash(entry)}`).toSorted();
  const ofLaw = isEarlierGrip(law) ? [] : [`law ${law.studShape} ${law.studSoftnessMm}`];
  return hashOfText(['backbow measurements 1', ...lines, ...ofLaw].join('\n'));
}
