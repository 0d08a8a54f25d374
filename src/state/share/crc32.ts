/**
 * CRC-32 of bytes: reflected polynomial 0xEDB88320, start and end inverted, as in ISO 3309, zip and PNG.
 * Check value: "123456789" → 0xCBF43926 (the catalogue of parametrised CRC algorithms, from memory).
 */
const TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ TABLE[(crc ^ byte) & 255];
  return ~crc >>> 0;
}
