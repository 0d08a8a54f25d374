/** Copies of the built page on servers of their own, which a test may change, shut and open again. */
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeServiceWorker } from '../../src/app/packaging/offline-files.ts';
import { root } from '../tools/project.mjs';
import { serveFolder } from '../tools/server.mjs';

export interface OwnServer {
  /** Address of the server's root. */
  readonly address: string;
  /** The copy of the page. */
  readonly folder: string;
  readonly shut: () => Promise<void>;
  /** Makes another version of the page: what is changed in its files reaches the browser by the service worker. */
  readonly publish: (change: (folder: string) => void) => Promise<void>;
  readonly end: () => Promise<void>;
}

/**
 * @param inFolder - the folder below the server's root that holds the page; '' for the root itself
 */
export async function ownServer(inFolder = ''): Promise<OwnServer> {
  const top = mkdtempSync(join(tmpdir(), 'backbow-'));
  const folder = join(top, inFolder);
  cpSync(join(root, 'dist'), folder, { recursive: true });
  const server = await serveFolder(top, { port: 0, host: '127.0.0.1' });
  let isOpen = true;
  const shut = async () => {
    if (isOpen) await server.close();
    isOpen = false;
  };
  return {
    address: server.address,
    folder,
    shut,
    async publish(change) {
      change(folder);
      await writeServiceWorker(folder, root);
    },
    async end() {
      await shut();
      rmSync(top, { recursive: true });
    },
  };
}
