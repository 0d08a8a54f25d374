/**
 * A small server of static files, for `npm start` and for the browser tests. No dependencies.
 */
import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';

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
  return file.startsWith(folder.endsWith(sep) ? folder : folder + sep) ? file : undefined;
}

/**
 * Serves a folder.
 * @param {string} folder
 * @param {{ port: number, host: string }} place port 0 takes any free one
 * @returns {Promise<{ port: number, address: string, close: () => Promise<void> }>}
 * @throws the system's error, such as EADDRINUSE, when the port cannot be used
 */
export function serveFolder(folder, { port, host }) {
  /** @type {Map<string, { tag: string, body: Buffer }>} compressed files by path */
  const compressed = new Map();

  /** @type {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => Promise<void>} */
  async function answer(request, response) {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const file = fileForAddress(folder, request.url ?? '/');
    const stats = file ? await stat(file).catch(() => undefined) : undefined;
    if (!file || !stats?.isFile()) {
      response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found\n');
      return;
    }
    const mediaType = MEDIA_TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream';
    const tag = `"${stats.size.toString(36)}-${Math.round(stats.mtimeMs).toString(36)}"`;
    response.setHeader('Content-Type', mediaType);
    response.setHeader('X-Content-Type-Options', 'nosniff');
    response.setHeader('ETag', tag);
    response.setHeader('Vary', 'Accept-Encoding');
    // Names in assets/ carry a hash of their content; everything else has to be asked for again.
    response.setHeader(
      'Cache-Control',
      file.startsWith(join(folder, 'assets') + sep) ? 'public, max-age=31536000, immutable' : 'no-cache',
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
  }

  const server = createServer((request, response) => {
    answer(request, response).catch(() => {
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });

  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      const place = server.address();
      const takenPort = typeof place === 'object' && place ? place.port : port;
      resolve({
        port: takenPort,
        address: `http://${host === '127.0.0.1' || host === '0.0.0.0' ? 'localhost' : host}:${takenPort}/`,
        close: () =>
          new Promise((done) => {
            server.close(() => done());
            server.closeAllConnections();
          }),
      });
    });
  });
}
