/**
 * Tells the service worker which files make this version of the page. The list is taken from the finished folder, so it
 * holds what was built and what lay in public/, and each file carries its hash: the browser refuses to keep a file that
 * is not exactly the one of this version.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';
import type { KeptFile } from '../../state/offline/kept-file.ts';

const WORKER = 'service-worker.js';
/** What stands in the worker's source where the list goes. */
const PLACE = '__KEPT_FILES__';
/** Pictures for the README are not part of the page. */
const LEFT_OUT = /^picture-[\w-]+\.png$/;

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}

/** Every file of the page in a folder, by its address from the page, with its hash; sorted by address. */
export function listKeptFiles(folder: string): KeptFile[] {
  return filesUnder(folder)
    .map((path) => ({ path, address: relative(folder, path).split(sep).join('/') }))
    .filter(({ address }) => address !== WORKER && !LEFT_OUT.test(address))
    .map(({ path, address }) => ({
      // The page itself is asked for by the name of its folder: some servers send "index.html" elsewhere.
      address: address === 'index.html' ? './' : address,
      integrity: `sha256-${createHash('sha256').update(readFileSync(path)).digest('base64')}`,
    }))
    .sort((a, b) => (a.address < b.address ? -1 : 1));
}

/** Builds the service worker and writes the list into it. */
export function offlineFiles(): Plugin {
  return {
    name: 'backbow-offline-files',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    buildStart() {
      this.emitFile({ type: 'chunk', id: 'src/state/offline/service-worker.ts', fileName: WORKER });
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler({ dir }, bundle) {
        const worker = bundle[WORKER];
        if (!dir || worker?.type !== 'chunk') return this.error('the service worker was not built');
        if (worker.imports.length > 0 || worker.exports.length > 0)
          return this.error(`${WORKER} must stand alone; it imports ${worker.imports.join(', ')}`);
        const path = join(dir, WORKER);
        const parts = readFileSync(path, 'utf8').split(PLACE);
        if (parts.length !== 2) return this.error(`${WORKER} has ${parts.length - 1} places for the list of files`);
        writeFileSync(path, parts.join(JSON.stringify(listKeptFiles(dir))));
      },
    },
  };
}
