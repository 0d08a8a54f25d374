/**
 * `npm start`: installs what is missing, builds when the source is newer, serves the page and prints its address.
 *
 * PORT chooses the port; without it the first free one from 4700 on is taken. HOST chooses the address to listen on;
 * without it the page can be reached from this machine only. TLS=1 serves https, with a certificate of this machine's own.
 */
import { join } from 'node:path';
import { certificateFor } from './certificate.mjs';
import { addressesFor, isLoopback } from './network-addresses.mjs';
import { ensureBuilt, ensureInstalled, requireNode, root } from './project.mjs';
import { hostInAddress, serveFolder } from './server.mjs';

const FIRST_PORT = 4700;
const LAST_PORT = 4799;
const CERTIFICATE_FOLDER = join(root, '.tls');

/**
 * @param {string} message
 * @returns {never}
 */
function refuse(message) {
  console.error(message);
  process.exit(1);
}

/**
 * @param {string | undefined} text
 * @returns {number | undefined} nothing when no port was asked for
 */
function readPort(text) {
  if (text === undefined || text.trim() === '') return undefined;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  return refuse(`PORT is “${text}”; it must be a whole number from 0 to 65535.`);
}

/** @param {string | undefined} text */
function readTls(text) {
  if (text === undefined || ['', '0'].includes(text.trim())) return false;
  return text.trim() === '1' || refuse(`TLS is “${text}”; it must be 1 for https or 0 for http.`);
}

/** @param {unknown} error */
const messageOf = (error) => (error instanceof Error ? error.message : String(error));

/**
 * @param {unknown} error
 * @returns {string}
 */
function codeOf(error) {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}

/**
 * @param {number | undefined} wantedPort
 * @param {string} host
 * @param {import('./certificate.mjs').Certificate | undefined} tls
 */
async function serve(wantedPort, host, tls) {
  const ports =
    wantedPort === undefined
      ? Array.from({ length: LAST_PORT - FIRST_PORT + 1 }, (_, index) => FIRST_PORT + index)
      : [wantedPort];
  for (const port of ports) {
    try {
      return await serveFolder(join(root, 'dist'), { port, host, tls });
    } catch (error) {
      const code = codeOf(error);
      if (code === 'EADDRINUSE' && wantedPort === undefined) continue;
      if (code === 'EADDRINUSE')
        return refuse(`Port ${port} is taken by another program. Choose another: PORT=5000 npm start`);
      if (code === 'EACCES') return refuse(`Port ${port} is not allowed for this user. Choose one above 1023.`);
      if (['EADDRNOTAVAIL', 'ENOTFOUND', 'EAI_AGAIN', 'EINVAL'].includes(code))
        return refuse(`HOST is “${host}”, which is no address of this machine.`);
      return refuse(`The page cannot be served on port ${port}: ${messageOf(error)}`);
    }
  }
  return refuse(`Ports ${FIRST_PORT} to ${LAST_PORT} are all taken. Choose another: PORT=5000 npm start`);
}

/** @param {string} host */
async function ownCertificate(host) {
  const names = ['localhost', '127.0.0.1', '::1', ...addressesFor(host)];
  try {
    return await certificateFor(CERTIFICATE_FOLDER, [...new Set(names)]);
  } catch (error) {
    return refuse(`The certificate cannot be kept in ${CERTIFICATE_FOLDER}: ${messageOf(error)}`);
  }
}

/**
 * What to say about other devices.
 * @param {string} host
 * @param {number} port
 * @param {boolean} isSecure
 */
function forOtherDevices(host, port, isSecure) {
  if (isLoopback(host)) return [];
  const scheme = isSecure ? 'https' : 'http';
  const addresses = addressesFor(host).map((address) => `  ${scheme}://${hostInAddress(address)}:${port}/`);
  if (addresses.length === 0) return ['This machine is in no network: other devices cannot reach the page.'];
  return [
    'On a phone or another device in the same network, type:',
    ...addresses,
    'Caution: everybody in this network can open the page. They get the program only: what you enter stays in your browser.',
    ...(isSecure
      ? []
      : [
          'Over http a browser gives the page no microphone, no camera, no screen that stays on and no use without a network. With https: TLS=1 HOST=0.0.0.0 npm start',
        ]),
  ];
}

/** @param {import('./certificate.mjs').Certificate} certificate */
const aboutCertificate = ({ fingerprint, isNew }) => [
  `The certificate is this machine’s own${isNew ? ', made just now' : ''}. No authority vouches for it, so the browser warns that the connection is not private and asks whether to go on. Before you do, compare the certificate’s SHA-256 fingerprint:`,
  `  ${fingerprint}`,
  'Where it differs, do not go on: somebody is in between. The page works without a network only on devices where the certificate has been installed as trusted.',
];

requireNode();
const wantedPort = readPort(process.env['PORT']);
const isSecure = readTls(process.env['TLS']);
const host = process.env['HOST']?.trim() || '127.0.0.1';
if (!(await ensureInstalled()) || !(await ensureBuilt())) process.exit(1);
const certificate = isSecure ? await ownCertificate(host) : undefined;
const server = await serve(wantedPort, host, certificate);
console.log(
  [
    `Backbow is at ${server.address}  (Ctrl+C stops it)`,
    ...forOtherDevices(host, server.port, isSecure),
    ...(certificate ? aboutCertificate(certificate) : []),
  ].join('\n'),
);

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM']))
  process.once(signal, () => {
    void server.close().then(() => process.exit(0));
  });
