/** Bytes as text that an address takes unchanged: base64 with the URL-safe alphabet and no padding (RFC 4648, section 5). */

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map(Array.from(ALPHABET, (character, value) => [character, value]));

export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const left = bytes.length - at;
    const group = (bytes[at] << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    for (let digit = 0; digit <= Math.min(left, 3); digit += 1) text += ALPHABET[(group >> (18 - 6 * digit)) & 63];
  }
  return text;
}

/** @returns null for text that no bytes are written as: a strange character, an impossible length, stray bits at the end */
export function fromBase64Url(text: string): Uint8Array | null {
  const spare = text.length % 4;
  if (spare === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let group = 0;
  let bits = 0;
  let at = 0;
  for (const character of text) {
    const value = VALUES.get(character);
    if (value === undefined) return null;
    group = (group << 6) | value;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at] = (group >> bits) & 255;
    at += 1;
    group &= (1 << bits) - 1;
  }
  return group === 0 ? bytes : null;
}
