import { X509Certificate } from 'node:crypto';
import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { certificateFor } from './certificate.mjs';
import { addressesFor, isLoopback } from './network-addresses.mjs';

let top = '';
let folder = '';
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'backbow-'));
  folder = join(top, 'tls');
});
afterEach(() => {
  rmSync(top, { recursive: true });
});

const NAMES = ['localhost', '127.0.0.1', '::1', '192.0.2.7'];
const DAY_MS = 86_400_000;

describe('the certificate of this machine', () => {
  test('names its addresses, vouches for nobody else, and does not last for ever', async () => {
    const now = new Date('2030-06-01T12:00:00Z');
    const { cert, key } = await certificateFor(folder, NAMES, now);
    const read = new X509Certificate(cert);
    expect(read.ca).toBe(false);
    expect(read.checkHost('localhost')).toBe('localhost');
    for (const address of NAMES.slice(1)) expect(read.checkIP(address)).toBe(address);
    expect(read.checkIP('192.0.2.8')).toBeUndefined();
    expect(read.checkHost('example.org')).toBeUndefined();
    // extKeyUsage: TLS server authentication and nothing else (RFC 5280, 4.2.1.12).
    expect(read.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    expect(Date.parse(read.validFrom)).toBe(now.getTime() - DAY_MS);
    expect(Date.parse(read.validTo) - Date.parse(read.validFrom)).toBe(397 * DAY_MS);
    expect(read.publicKey.asymmetricKeyDetails?.namedCurve).toBe('prime256v1');
    expect(key).toContain('PRIVATE KEY');
  });

  test('is kept while it serves', async () => {
    const first = await certificateFor(folder, NAMES);
    const again = await certificateFor(folder, NAMES.slice(0, 2));
    expect([first.isNew, again.isNew]).toEqual([true, false]);
    expect(again.fingerprint).toBe(first.fingerprint);
  });

  test.each([
    ['an address is new', () => certificateFor(folder, [...NAMES, '192.0.2.8'])],
    ['it runs out soon', () => certificateFor(folder, NAMES, new Date(Date.now() + 391 * DAY_MS))],
    ['the clock says that it has not begun', () => certificateFor(folder, NAMES, new Date(Date.now() - 3 * DAY_MS))],
    [
      'the key is not its own',
      async () => {
        const { key } = await certificateFor(join(top, 'other'), NAMES);
        writeFileSync(join(folder, 'key.pem'), key);
        return certificateFor(folder, NAMES);
      },
    ],
    [
      'the file is damaged',
      () => {
        writeFileSync(join(folder, 'certificate.pem'), readFileSync(join(folder, 'certificate.pem')).subarray(0, 200));
        return certificateFor(folder, NAMES);
      },
    ],
  ])('is made anew when %s', async (_why, ask) => {
    const first = await certificateFor(folder, NAMES);
    const second = await ask();
    expect(second.isNew).toBe(true);
    expect(second.fingerprint).not.toBe(first.fingerprint);
  });

  test.skipIf(process.platform === 'win32')(
    'has a key that only the user may read, whatever it was before',
    async () => {
      await certificateFor(folder, NAMES);
      chmodSync(folder, 0o755);
      chmodSync(join(folder, 'key.pem'), 0o644);
      await certificateFor(folder, NAMES);
      expect(statSync(folder).mode & 0o777).toBe(0o700);
      expect(statSync(join(folder, 'key.pem')).mode & 0o777).toBe(0o600);
    },
  );
});

describe('the addresses of this machine', () => {
  const entry = (address: string, internal = false) => ({
    address,
    internal,
    netmask: '',
    mac: '',
    cidr: null,
    ...(address.includes(':') ? { family: 'IPv6' as const, scopeid: 0 } : { family: 'IPv4' as const }),
  });
  const interfaces = {
    lo: [entry('127.0.0.1', true), entry('::1', true)],
    wlan: [entry('fe80::1'), entry('2001:db8::5'), entry('192.0.2.7')],
    // Addresses of one link alone: RFC 3927 and RFC 4291, 2.5.6.
    usb: [entry('169.254.3.4')],
  };

  test.each([
    ['0.0.0.0', ['192.0.2.7']],
    ['::', ['192.0.2.7', '2001:db8::5']],
    ['127.0.0.1', []],
    ['localhost', []],
    ['192.0.2.7', ['192.0.2.7']],
  ])('HOST=%s can be reached at %j', (host, addresses) => {
    expect(addressesFor(host, interfaces)).toEqual(addresses);
  });

  test('a loopback address is one by RFC 1122, 3.2.1.3 (127/8) and RFC 4291, 2.5.3 (::1)', () => {
    expect(['127.0.0.1', '127.1.2.3', '::1', 'localhost'].filter((host) => !isLoopback(host))).toEqual([]);
    expect(['0.0.0.0', '::', '192.0.2.7', '12.7.0.1'].filter(isLoopback)).toEqual([]);
  });
});
