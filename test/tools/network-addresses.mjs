/** Addresses under which this machine can be reached. */
import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';

/**
 * Whether a server that listens there can be reached from this machine only.
 * @param {string} host
 */
export const isLoopback = (host) => host === 'localhost' || host === '::1' || host.startsWith('127.');

/**
 * Addresses that another device in the same network can open, when the server listens at `host`. Addresses of one link
 * alone (fe80, 169.254) are left out: they cannot be typed into a browser.
 * @param {string} host
 * @param {ReturnType<typeof networkInterfaces>} [interfaces]
 * @returns {string[]} IPv4 first
 */
export function addressesFor(host, interfaces = networkInterfaces()) {
  if (isLoopback(host)) return [];
  if (host !== '0.0.0.0' && host !== '::') return [host];
  return Object.values(interfaces)
    .flatMap((entries) => entries ?? [])
    .filter(({ internal, address }) => !internal && isIP(address) > 0)
    .filter(({ family, address }) =>
      family === 'IPv4' ? !address.startsWith('169.254.') : !/^fe[89ab]/i.test(address),
    )
    .filter(({ family }) => host === '::' || family === 'IPv4')
    .sort((one, other) => one.family.localeCompare(other.family))
    .map(({ address }) => address);
}
