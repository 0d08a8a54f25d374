/** The text of a file that somebody named, or why it cannot be read. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { textOfBytes, type TextOfBytes } from '../../neck/text-of-bytes.ts';

export type FileTrouble =
  | { readonly code: Extract<TextOfBytes, { ok: false }>['code'] | 'missing' | 'folder' | 'forbidden' | 'empty' }
  | { readonly code: 'too-large'; readonly mostBytes: number }
  /** Whatever else the system says, by its own code. */
  | { readonly code: 'system'; readonly system: string };

export type ReadFile =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly trouble: FileTrouble };

const SYSTEM: Readonly<Record<string, 'missing' | 'folder' | 'forbidden'>> = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EISDIR: 'folder',
  EACCES: 'forbidden',
  EPERM: 'forbidden',
};

const CHUNK_BYTES = 65_536;

function readChunk(file: number, into: Uint8Array): number {
  for (;;) {
    try {
      return readSync(file, into, 0, into.length, null);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      // Standard input on Windows ends so; a pipe that has nothing yet says to come again.
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
    }
  }
}

/** Reads no more than it must to know that a file is too large: a device has no end. */
function readBytes(path: string, mostBytes: number): Uint8Array | undefined {
  const file = path === '-' ? 0 : openSync(path, 'r');
  try {
    if (fstatSync(file).isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
    const chunks: Uint8Array[] = [];
    let length = 0;
    for (;;) {
      const chunk = new Uint8Array(CHUNK_BYTES);
      const read = readChunk(file, chunk);
      if (read === 0) return Buffer.concat(chunks);
      length += read;
      if (length > mostBytes) return undefined;
      chunks.push(chunk.subarray(0, read));
    }
  } finally {
    if (file !== 0) closeSync(file);
  }
}

/** @param path `-` for standard input */
export function readTextFile(path: string, mostBytes: number): ReadFile {
  let bytes: Uint8Array | undefined;
  try {
    bytes = readBytes(path, mostBytes);
  } catch (error) {
    const system = (error as NodeJS.ErrnoException).code ?? 'unknown';
    const code = SYSTEM[system];
    return { ok: false, trouble: code ? { code } : { code: 'system', system } };
  }
  if (!bytes) return { ok: false, trouble: { code: 'too-large', mostBytes } };
  if (bytes.length === 0) return { ok: false, trouble: { code: 'empty' } };
  const read = textOfBytes(bytes);
  return read.ok ? read : { ok: false, trouble: { code: read.code } };
}
