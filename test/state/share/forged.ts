/** Links written by somebody who knows the format: the sum is right, the contents are whatever they like. */
import { deflateSync } from 'fflate';
import { toBase64Url } from '../../../src/state/share/base64url.ts';
import { crc32 } from '../../../src/state/share/crc32.ts';
import { DICTIONARY } from '../../../src/state/share/v1/codec.ts';

export function forgedBytes(json: Uint8Array): string {
  const packed = deflateSync(json, { dictionary: DICTIONARY });
  const bytes = new Uint8Array(4 + packed.length);
  new DataView(bytes.buffer).setUint32(0, crc32(packed));
  bytes.set(packed, 4);
  return `1.${toBase64Url(bytes)}`;
}

export function forged(json: unknown): string {
  return forgedBytes(new TextEncoder().encode(typeof json === 'string' ? json : JSON.stringify(json)));
}
