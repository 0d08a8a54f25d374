/**
 * A small server of static files, for `npm start` and for the browser tests. No dependencies.
 */
import { createReadStream } from 'node:fs';
import { readFile, realpath, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { createServer as createDoor } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import {
  ASK_AGAIN,
  HASHED_FOLDER,
  KEEP_FOR_EVER,
  ONLY_WHERE_SECURE,
  SECURITY_HEADERS,
} from '../../src/app/packaging/headers.mjs';
import { isLoopback } from './network-addresses.mjs';

const compress = promisify(gzip);

/** @type {Record<string, string>} */
const MEDIA_TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.glb': 'model/gltf-binary',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** Kinds of file that shrink when compressed. */
const COMPRESSIBLE = /^(text\/|application\/(json|manifest\+json|wasm)|image\/svg)/;

/** @param {string} folder @param {string} file */
const isWithin = (folder, file) => file.startsWith(folder.endsWith(sep) ? folder : folder + sep);

/**
 * The file that an address means, inside the folder and nowhere else.
 * @param {string} folder
 * @param {string} address path part of the request, with its query
 * @returns {string | undefined} nothing when the address is malformed or leaves the folder
 */
export function fileForAddress(folder, address) {
  let path;
  try {
    path = decodeURIComponent(address.split(/[?#]/, 1)[0] ?? '');
  } catch {
    return undefined;
  }
  if (path.includes('\0')) return undefined;
  const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  return isWithin(folder, file) ? file : undefined;
}

/**
 * The file that is sent for an address. A link in the folder that leads out of it is not followed.
 * @param {string} folder
 * @param {string} address
 * @returns {Promise<{ file: string, stats: import('node:fs').Stats } | undefined>}
 */
async function findFile(folder, address) {
  const named = fileForAddress(folder, address);
  if (!named) return undefined;
  try {
    const [top, file] = await Promise.all([realpath(folder), realpath(named)]);
    if (!isWithin(top, file)) return undefined;
    const stats = await stat(file);
    return stats.isFile() ? { file, stats } : undefined;
  } catch {
    return undefined;
  }
}

const NOT_FOUND = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>Not found · Backbow</title>
<h1>There is nothing at this address</h1>
<p><a href="/">Open Backbow</a></p>
<p lang="de">Unter dieser Adresse gibt es nichts. <a href="/">Backbow öffnen</a></p>
</html>
`;

/**
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
function notFound(request, response) {
  const isForPeople = /\btext\/html\b/.test(request.headers.accept ?? '');
  const body = isForPeople ? NOT_FOUND : 'Not found\n';
  response.writeHead(404, {
    'Content-Type': `text/${isForPeople ? 'html' : 'plain'}; charset=utf-8`,
    'Content-Length': Buffer.byteLength(body),
    'Cache-Control': ASK_AGAIN,
  });
  response.end(request.method === 'HEAD' ? undefined : body);
}

/**
 * Whether a browser counts the address that it asked as a secure one: by TLS, or this machine (W3C Secure Contexts, 3.1).
 * @param {import('node:http').IncomingMessage} request
 */
function isSecure(request) {
  const host = (request.headers.host ?? '').replace(/:\d+$/, '').replace(/^\[(.*)\]$/, '$1');
  return 'encrypted' in request.socket || isLoopback(host);
}

/**
 * What answers requests with the files of a folder.
 * @param {string} folder
 * @returns {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => Promise<void>}
 */
function answerFrom(folder) {
  /** @type {Map<string, { tag: string, body: Buffer }>} compressed files by path */
  const compressed = new Map();
  const hashed = join(folder, HASHED_FOLDER) + sep;

  return async (request, response) => {
    const secure = isSecure(request);
    for (const [name, value] of Object.entries(SECURITY_HEADERS))
      if (secure || name !== ONLY_WHERE_SECURE) response.setHeader(name, value);
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const address = request.url ?? '/';
    const found = await findFile(folder, address);
    if (!found) return notFound(request, response);
    const { file, stats } = found;
    const mediaType = MEDIA_TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream';
    const tag = `"${stats.size.toString(36)}-${Math.round(stats.mtimeMs).toString(36)}"`;
    response.setHeader('Content-Type', mediaType);
    response.setHeader('ETag', tag);
    response.setHeader('Vary', 'Accept-Encoding');
    response.setHeader(
      'Cache-Control',
      fileForAddress(folder, address)?.startsWith(hashed) ? KEEP_FOR_EVER : ASK_AGAIN,
    );
    if (request.headers['if-none-match'] === tag) {
      response.writeHead(304).end();
      return;
    }
    if (COMPRESSIBLE.test(mediaType) && /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''))) {
      let entry = compressed.get(file);
      if (entry?.tag !== tag) {
        entry = { tag, body: await compress(await readFile(file)) };
        compressed.set(file, entry);
      }
      response.writeHead(200, { 'Content-Encoding': 'gzip', 'Content-Length': entry.body.length });
      response.end(request.method === 'HEAD' ? undefined : entry.body);
      return;
    }
    response.writeHead(200, { 'Content-Length': stats.size });
    if (request.method === 'HEAD') response.end();
    else
      createReadStream(file)
        .on('error', () => response.destroy())
        .pipe(response);
  };
}

/** First byte of a TLS connection: a handshake record (RFC 8446, 5.1). */
const HANDSHAKE = 22;

/**
 * A server that speaks TLS, and sends whoever comes without it to the same address with it: an address that is typed
 * without "https://" would otherwise find a closed door.
 * @param {{ key: string, cert: string }} tls
 * @param {import('node:http').RequestListener} answer
 */
function secureServer(tls, answer) {
  const secure = createSecureServer({ ...tls, handshakeTimeout: 20_000 }, answer);
  const plain = createServer((request, response) => {
    const host = request.headers.host ?? '';
    if (/^[\w.:[\]-]+$/.test(host))
      response.writeHead(308, { Location: `https://${host}${request.url ?? '/'}`, 'Cache-Control': 'no-store' }).end();
    else response.writeHead(400).end();
  });
  /** @type {Set<import('node:net').Socket>} */
  const open = new Set();
  const door = createDoor({ allowHalfOpen: true }, (socket) => {
    const destroy = () => socket.destroy();
    open.add(socket);
    socket.on('close', () => open.delete(socket));
    socket.on('error', destroy);
    // Nothing was said yet: who hangs up or stays silent is let go.
    socket.once('end', destroy);
    socket.setTimeout(20_000, destroy);
    socket.once('data', (first) => {
      socket.pause();
      socket.off('end', destroy);
      socket.off('timeout', destroy);
      socket.setTimeout(0);
      socket.unshift(first);
      (first[0] === HANDSHAKE ? secure : plain).emit('connection', socket);
      process.nextTick(() => socket.resume());
    });
  });
  const closeAll = () => {
    for (const socket of open) socket.destroy();
  };
  return { door, closeAll };
}

/** @param {string} host an address of the network @returns {string} as it stands in the address of a page */
export function hostInAddress(host) {
  if (['127.0.0.1', '0.0.0.0', '::', '::1'].includes(host)) return 'localhost';
  return host.includes(':') ? `[${host}]` : host;
}

/**
 * Serves a folder.
 * @param {string} folder
 * @param {{ port: number, host: string, tls?: { key: string, cert: string } | undefined }} place port 0 takes any free
 *   one; with a key and its certificate (PEM) it serves TLS
 * @returns {Promise<{ port: number, address: string, close: () => Promise<void> }>}
 * @throws the system's error, such as EADDRINUSE, when the port cannot be used
 */
export function serveFolder(folder, { port, host, tls }) {
  const answerFile = answerFrom(folder);
  /** @type {import('node:http').RequestListener} */
  const answer = (request, response) => {
    answerFile(request, response).catch(() => {
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  };
  /** @type {import('node:net').Server} */
  let server;
  /** @type {() => void} */
  let closeAll;
  if (tls) ({ door: server, closeAll } = secureServer(tls, answer));
  else {
    const plain = createServer(answer);
    server = plain;
    closeAll = () => plain.closeAllConnections();
  }

  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      const place = server.address();
      const takenPort = typeof place === 'object' && place ? place.port : port;
      resolve({
        port: takenPort,
        address: `${tls ? 'https' : 'http'}://${hostInAddress(host)}:${takenPort}/`,
        close: () =>
          new Promise((done) => {
            server.close(() => done());
            closeAll();
          }),
      });
    });
  });
}
