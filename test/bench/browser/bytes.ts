/** What comes over the wire on a first visit, counted between browser and server. */
import { createServer, request } from 'node:http';
import { once } from 'node:events';
import { setTimeout as pause } from 'node:timers/promises';
import type { Browser } from 'playwright-core';
import { openPage } from '../../browser/open-page.ts';
import { counted, type BenchRow } from '../measure.ts';
import { startServer } from './cold-start.ts';

interface Answer {
  path: string;
  type: string;
  /** Body as sent, compressed. */
  bytes: number;
}

/** Passes every request on to a server and notes what was answered. */
async function counting(address: string): Promise<{ address: string; answers: Answer[]; end: () => void }> {
  const answers: Answer[] = [];
  const between = createServer((asked, answer) => {
    const { method, url = '/', headers } = asked;
    const passed = request(new URL(url, address), { method, headers }, (given) => {
      const entry: Answer = { path: url, type: String(given.headers['content-type']), bytes: 0 };
      answers.push(entry);
      given.on('data', (piece: Buffer) => (entry.bytes += piece.length));
      answer.writeHead(given.statusCode ?? 500, given.headers);
      given.pipe(answer);
    });
    passed.on('error', () => answer.destroy());
    passed.end();
  }).listen(0, '127.0.0.1');
  await once(between, 'listening');
  const place = between.address();
  if (place === null || typeof place === 'string') throw new Error('The system gives no port.');
  return {
    address: `http://localhost:${place.port}/`,
    answers,
    end: () => {
      between.close();
      between.closeAllConnections();
    },
  };
}

const kilobytes = (answers: readonly Answer[]): number => answers.reduce((sum, { bytes }) => sum + bytes, 0) / 1000;

/** Waits until nothing has come for a while. */
async function quiet(answers: readonly Answer[]): Promise<void> {
  const now = (): string => `${answers.length} ${kilobytes(answers)}`;
  for (let before = '', current = now(); before !== current; current = now()) {
    before = current;
    await pause(3000);
  }
}

export async function byteRows(browser: Browser): Promise<BenchRow[]> {
  const server = await startServer();
  const between = await counting(server.address);
  try {
    const visit = async (keeping: boolean): Promise<Answer[]> => {
      const from = between.answers.length;
      const app = await openPage(browser, between.address, {
        firstVisit: true,
        offline: keeping,
      });
      await app.page.locator('[data-parameter] input[type="range"]').first().waitFor();
      await quiet(between.answers);
      await app.close();
      return between.answers.slice(from);
    };
    const shown = await visit(false);
    const whole = await visit(true);
    const scripts = shown.filter(({ type }) => type.startsWith('text/javascript'));
    // The solver runs beside the page, and the controls come beside the picture: neither holds up the first picture.
    const first = scripts.filter(({ path }) => !/\/(controls|solver\.worker)-/.test(path));
    return [
      counted('script for the page and the picture, three included, compressed', kilobytes(first), 'kB', 400),
      counted(
        'script of the controls and of the solver, which come beside it',
        kilobytes(scripts) - kilobytes(first),
        'kB',
      ),
      counted('all that comes until the page rests, compressed', kilobytes(shown), 'kB'),
      counted('requests for it', shown.length, ''),
      counted('whole first visit, with all that is kept for working offline', kilobytes(whole), 'kB'),
    ];
  } finally {
    between.end();
    await server.end();
  }
}
