/** Base64url and CRC-32 against other implementations. */
import { crc32 as nodeCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromBase64Url, toBase64Url } from '../../../src/state/share/base64url.ts';
import { crc32 } from '../../../src/state/share/crc32.ts';

const bytes = fc.uint8Array({ maxLength: 300 });

test('base64url agrees with Node and comes back (seed 61)', () => {
  fc.assert(
    fc.property(bytes, (some) => {
      const text = toBase64Url(some);
      expect(text).toBe(Buffer.from(some).toString('base64url'));
      expect(fromBase64Url(text)).toEqual(some);
    }),
    { numRuns: 500, seed: 61 },
  );
});

test.each(['A', 'AB', 'AAB', 'A+AA', 'AAAA=', 'é'])('%s is not how bytes are written', (text) => {
  // "AB" and "AAB" would leave bits over: two texts for the same bytes.
  expect(fromBase64Url(text)).toBeNull();
});

test('CRC-32 has the catalogue’s check value and agrees with zlib (seed 62)', () => {
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  fc.assert(
    fc.property(bytes, (some) => {
      expect(crc32(some)).toBe(nodeCrc32(some));
    }),
    { numRuns: 300, seed: 62 },
  );
});
