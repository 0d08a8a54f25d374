/** SHA-256 (FIPS 180-4) of a text in UTF-8. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** 32 bytes. */
export const digest = (text: string): Uint8Array => sha256(utf8ToBytes(text));

/** 64 hexadecimal digits. */
export const digestOf = (text: string): string => bytesToHex(digest(text));
