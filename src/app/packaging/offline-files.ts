/**
 * Builds the service worker, and tells it which files make this version of the page. The list is taken from the finished
 * folder, so it holds what was built and what lay in public/, and each file carries its hash: the browser refuses to keep
 * a file that is not exactly the one of this version.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build, type Plugin } from 'vite';
import type { KeptFile } from '../../state/offline/kept-file.ts';

const WORKER = 'service-worker.js';
const SOURCE = 'src/state/offline/service-worker.ts';
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

/**
 * Writes the service worker for the page in a folder, as one plain script.
 * @param root the project's folder
 */
export async function writeServiceWorker(folder: string, root: string): Promise<void> {
  const built = await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    define: { __KEPT_FILES__: JSON.stringify(listKeptFiles(folder)) },
    build: {
      target: 'es2023',
      write: false,
      rollupOptions: { input: join(root, SOURCE), output: { format: 'iife', entryFileNames: WORKER } },
    },
  });
  const outputs = Array.isArray(built) ? built.flatMap(({ output }) => output) : 'output' in built ? built.output : [];
  const [worker] = outputs;
  if (outputs.length !== 1 || worker?.type !== 'chunk') throw new Error('the service worker is not one script');
  writeFileSync(join(folder, WORKER), worker.code);
}

/** Adds the service worker to the finished page. */
export function offlineFiles(): Plugin {
  let root = '';
  return {
    name: 'backbow-offline-files',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    configResolved: (config) => {
      root = config.root;
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler: ({ dir }) => (dir ? writeServiceWorker(dir, root) : undefined),
    },
  };
}
