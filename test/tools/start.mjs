/**
 * `npm start`: installs what is missing, builds when the source is newer, serves the page and prints its address.
 *
 * PORT chooses the port; without it the first free one from 4700 on is taken. HOST chooses the address to listen on;
 * without it the page can be reached from this machine only.
 */
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, requireNode, root } from './project.mjs';
import { serveFolder } from './server.mjs';

const FIRST_PORT = 4700;
const LAST_PORT = 4799;

/**
 * @param {string | undefined} text
 * @returns {number | undefined} nothing when no port was asked for
 */
function readPort(text) {
  if (text === undefined || text.trim() === '') return undefined;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  console.error(`PORT is “${text}”; it must be a whole number from 0 to 65535.`);
  process.exit(1);
}

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
 */
async function serve(wantedPort, host) {
  const ports =
    wantedPort === undefined
      ? Array.from({ length: LAST_PORT - FIRST_PORT + 1 }, (_, index) => FIRST_PORT + index)
      : [wantedPort];
  for (const port of ports) {
    try {
      return await serveFolder(join(root, 'dist'), { port, host });
    } catch (error) {
      const code = codeOf(error);
      if (code === 'EADDRINUSE' && wantedPort === undefined) continue;
      if (code === 'EADDRINUSE')
        console.error(`Port ${port} is taken by another program. Choose another: PORT=5000 npm start`);
      else if (code === 'EACCES') console.error(`Port ${port} is not allowed for this user. Choose one above 1023.`);
      else if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND')
        console.error(`HOST is “${host}”, which is no address of this machine.`);
      else
        console.error(
          `The page cannot be served on port ${port}: ${error instanceof Error ? error.message : String(error)}`,
        );
      process.exit(1);
    }
  }
  console.error(`Ports ${FIRST_PORT} to ${LAST_PORT} are all taken. Choose another: PORT=5000 npm start`);
  process.exit(1);
}

requireNode();
const wantedPort = readPort(process.env['PORT']);
if (!(await ensureInstalled()) || !(await ensureBuilt())) process.exit(1);
const server = await serve(wantedPort, process.env['HOST'] || '127.0.0.1');
console.log(`Backbow is at ${server.address}  (Ctrl+C stops it)`);

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM']))
  process.once(signal, () => {
    void server.close().then(() => process.exit(0));
  });
