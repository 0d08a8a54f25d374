/** From `npm start` to a neck that can be used, with a browser that has never seen the page. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Browser } from 'playwright-core';
import { openPage } from '../../browser/open-page.ts';
import { root } from '../../tools/project.mjs';
import type { BenchRow } from '../measure.ts';
import { timed } from './rows.ts';

/** When the page showed what, ms since it was asked for. */
interface Milestones {
  words?: number;
  picture?: number;
  usable?: number;
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  await once(server, 'close');
  if (address === null || typeof address === 'string') throw new Error('The system gives no port.');
  return address.port;
}

/** A server as `npm start` starts it. */
export async function startServer(): Promise<{ address: string; startMs: number; end: () => Promise<void> }> {
  const begun = performance.now();
  const server = spawn(process.execPath, [join(root, 'test', 'tools', 'start.mjs')], {
    cwd: root,
    env: { ...process.env, PORT: String(await freePort()), HOST: '127.0.0.1' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const end = async (): Promise<void> => {
    if (server.exitCode !== null) return;
    server.kill('SIGTERM');
    await once(server, 'exit');
  };
  let built = false;
  for await (const line of createInterface({ input: server.stdout })) {
    if (line.startsWith('Building')) built = true;
    const address = /http:\S+/.exec(line)?.[0];
    if (address === undefined) continue;
    // The source was changed meanwhile, so that this was no plain start: once more.
    if (built) {
      await end();
      return startServer();
    }
    return { address, startMs: performance.now() - begun, end };
  }
  throw new Error('The server ended before it told its address; see above.');
}

/** Opens the page of a fresh server in a fresh context. */
async function firstVisit(browser: Browser, address: string): Promise<Required<Milestones>> {
  const app = await openPage(browser, address, {
    viewport: { width: 1440, height: 900 },
    firstVisit: true,
    offline: true,
    smooth: true,
    prepare: async (page) => {
      await page.addInitScript(() => {
        const milestones: Milestones = {};
        (window as { milestones?: Milestones }).milestones = milestones;
        const look = (): void => {
          const { frames = 0, predictionVersion = 0 } = window.backbow ?? {};
          if (frames > 0) milestones.picture ??= performance.now();
          // Usable: it is drawn, its bow is computed, and there is a slider to change it with.
          if (frames > 0 && predictionVersion > 0 && document.querySelector('[data-parameter] input[type="range"]'))
            milestones.usable ??= performance.now();
          milestones.words ??= performance.getEntriesByName('first-contentful-paint')[0]?.startTime;
          if (!milestones.usable || !milestones.words) requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
      });
    },
  });
  try {
    const milestones = await app.page.waitForFunction(() => {
      const said = (window as { milestones?: Milestones }).milestones;
      return said?.words && said.picture && said.usable ? (said as Required<Milestones>) : undefined;
    });
    return (await milestones.jsonValue()) as Required<Milestones>;
  } finally {
    await app.close();
  }
}

export async function coldStartRows(browser: Browser, runs: number): Promise<BenchRow[]> {
  const starts: number[] = [];
  const visits: Required<Milestones>[] = [];
  for (let run = 0; run < runs; run += 1) {
    const { address, startMs, end } = await startServer();
    try {
      starts.push(startMs);
      visits.push(await firstVisit(browser, address));
    } finally {
      await end();
    }
  }
  const since = (key: keyof Milestones): number[] => visits.map((visit) => visit[key]);
  return [
    timed('npm start until the address is said, already built', starts),
    timed('first visit: first words on the page', since('words')),
    timed('first visit: first picture of the neck', since('picture')),
    timed('first visit: neck that can be used', since('usable')),
  ];
}
