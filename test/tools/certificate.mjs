/**
 * A certificate of this machine's own, for `TLS=1 npm start`. The key never leaves the folder that it is made in, which
 * only the user may read; the certificate names the addresses of this machine and nothing else, and cannot vouch for
 * others. It is kept, so that a browser asks once and not each time, until it runs out or an address is new.
 *
 * Sources: RFC 5280 (extensions), RFC 6125 (names). 397 days: from memory, the longest that the Baseline Requirements of
 * the CA/Browser Forum allowed a public server; nothing limits a certificate of one's own.
 */
import { X509Certificate, createPrivateKey } from 'node:crypto';
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { join } from 'node:path';

const VALID_DAYS = 397;
/** A certificate that runs out sooner than this is made anew, days. */
const LEAST_LEFT_DAYS = 7;
const DAY_MS = 86_400_000;

/** @typedef {{ key: string, cert: string, fingerprint: string, isNew: boolean }} Certificate PEM, PEM, SHA-256 of the certificate */

/** @param {X509Certificate} certificate @param {string} name */
const covers = (certificate, name) =>
  (isIP(name) ? certificate.checkIP(name) : certificate.checkHost(name)) !== undefined;

/**
 * @param {string} folder
 * @param {readonly string[]} names
 * @param {Date} now
 * @returns {Certificate | undefined} nothing when there is none, or none that serves
 */
function readKept(folder, names, now) {
  try {
    const cert = readFileSync(join(folder, 'certificate.pem'), 'utf8');
    const key = readFileSync(join(folder, 'key.pem'), 'utf8');
    const read = new X509Certificate(cert);
    const leftDays = (Date.parse(read.validTo) - now.getTime()) / DAY_MS;
    const hasBegun = Date.parse(read.validFrom) <= now.getTime();
    if (leftDays < LEAST_LEFT_DAYS || !hasBegun || !names.every((name) => covers(read, name))) return undefined;
    if (!read.checkPrivateKey(createPrivateKey(key))) return undefined;
    return { key, cert, fingerprint: read.fingerprint256, isNew: false };
  } catch {
    return undefined;
  }
}

/**
 * @param {readonly string[]} names
 * @param {Date} now
 * @returns {Promise<Certificate>}
 */
async function make(names, now) {
  const { generate } = await import('selfsigned');
  const made = await generate([{ name: 'commonName', value: 'Backbow on this machine' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    // From yesterday on: the clock of a phone may be behind.
    notBeforeDate: new Date(now.getTime() - DAY_MS),
    notAfterDate: new Date(now.getTime() + (VALID_DAYS - 1) * DAY_MS),
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      {
        name: 'subjectAltName',
        altNames: names.map((name) => (isIP(name) ? { type: 7, ip: name } : { type: 2, value: name })),
      },
    ],
  });
  const fingerprint = new X509Certificate(made.cert).fingerprint256;
  return { key: made.private, cert: made.cert, fingerprint, isNew: true };
}

/**
 * The certificate for some names of this machine; made when there is none yet that serves.
 * @param {string} folder where it is kept, made when it is missing
 * @param {readonly string[]} names host names and addresses
 * @param {Date} [now]
 * @returns {Promise<Certificate>}
 * @throws the system's error when the folder cannot be written
 */
export async function certificateFor(folder, names, now = new Date()) {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
  const certificate = readKept(folder, names, now) ?? (await make(names, now));
  const keyFile = join(folder, 'key.pem');
  if (certificate.isNew) {
    writeFileSync(keyFile, certificate.key, { mode: 0o600 });
    writeFileSync(join(folder, 'certificate.pem'), certificate.cert);
  }
  chmodSync(keyFile, 0o600);
  return certificate;
}
