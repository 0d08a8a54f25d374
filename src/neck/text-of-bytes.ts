/**
 * Text from the bytes of a file: UTF-8 or UTF-16, with or without a byte order mark. Nothing is guessed beyond that, and no
 * byte is replaced. Sources: RFC 3629 (UTF-8), RFC 2781 (UTF-16), The Unicode Standard 2.6 and 23.8 (byte order marks).
 */

export type TextOfBytes =
  | { readonly ok: true; readonly text: string }
  /** UTF-32, or bytes that are not of the encoding that the file begins in. */
  | { readonly ok: false; readonly code: 'utf-32' | 'not-utf-8' | 'not-utf-16' };

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'utf-32';

function encodingOf(bytes: Uint8Array): Encoding {
  const [a, b, c, d] = bytes;
  if ((a === 0xff && b === 0xfe && c === 0 && d === 0) || (a === 0 && b === 0 && c === 0xfe && d === 0xff))
    return 'utf-32';
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  // Without a mark: files of ours begin with a character of ASCII, which has a zero beside it in UTF-16.
  if (a === 0 && b === 0) return 'utf-32';
  if (a !== undefined && a !== 0 && b === 0) return c === 0 && d === 0 ? 'utf-32' : 'utf-16le';
  if (a === 0 && b !== undefined && b !== 0) return 'utf-16be';
  return 'utf-8';
}

/** Pairs of bytes the other way round; an odd one at the end stays, and is refused as it should be. */
function swapped(bytes: Uint8Array): Uint8Array {
  const out = bytes.slice();
  for (let at = 0; at + 1 < out.length; at += 2) [out[at], out[at + 1]] = [out[at + 1], out[at]];
  return out;
}

/** @returns the text without its byte order mark */
export function textOfBytes(bytes: Uint8Array): TextOfBytes {
  const encoding = encodingOf(bytes);
  if (encoding === 'utf-32') return { ok: false, code: 'utf-32' };
  try {
    if (encoding === 'utf-8') return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
    const little = encoding === 'utf-16le' ? bytes : swapped(bytes);
    return { ok: true, text: new TextDecoder('utf-16le', { fatal: true }).decode(little) };
  } catch {
    return { ok: false, code: encoding === 'utf-8' ? 'not-utf-8' : 'not-utf-16' };
  }
}
