/**
 * The built page in Chromium: scripting per event from a trace, the first visit from a cold start, bytes over the wire, what
 * the picture costs, and that changes leave nothing behind.
 *
 * Scripting is given as time on the processor, which does not depend on what else the machine does, and by the clock
 * besides. `BENCH_QUICK=1` takes few runs of each, to try the bench itself.
 */
import { findChromium } from '../tools/chromium.mjs';
import { ensureBuilt } from '../tools/project.mjs';
import { countGpuObjects } from '../browser/gpu-objects.ts';
import { launch, openPage, type App, type OpenOptions } from '../browser/open-page.ts';
import { byteRows } from './browser/bytes.ts';
import { coldStartRows, startServer } from './browser/cold-start.ts';
import { pictureRows } from './browser/picture.ts';
import { railRows, slowedRows, sliderRows } from './browser/scripting.ts';
import type { BenchRow } from './measure.ts';

export default async function bench(): Promise<BenchRow[]> {
  if (!findChromium()) {
    console.error('There is no Chromium here, so nothing is measured in the page.');
    return [];
  }
  if (!(await ensureBuilt())) throw new Error('The page could not be built; see above.');
  const quick = process.env['BENCH_QUICK'] !== undefined;
  const events = quick ? 20 : 200;
  const { browser, renderer } = await launch();
  console.error(`drawn by ${renderer}`);
  try {
    const rows = await coldStartRows(browser, quick ? 1 : 7);
    rows.push(...(await byteRows(browser)));
    const server = await startServer();
    const visit = async (options: OpenOptions, measure: (app: App) => Promise<BenchRow[]>): Promise<void> => {
      const app = await openPage(browser, server.address, {
        viewport: { width: 1440, height: 900 },
        smooth: true,
        ...options,
      });
      rows.push(...(await measure(app)));
      if (app.troubles.length > 0) throw new Error(app.troubles.join('; '));
      await app.close();
    };
    try {
      await visit({}, (app) => sliderRows(browser, app, 'kerf', 'kerfMm', events));
      await visit({}, (app) => sliderRows(browser, app, 'thickness', 'thicknessFret12Mm', events));
      await visit({}, (app) => slowedRows(browser, app, 'kerf', 'kerfMm', events));
      await visit({}, (app) => railRows(browser, app, events));
      await visit({ prepare: countGpuObjects }, (app) => pictureRows(app, quick ? 32 : 1000));
    } finally {
      await server.end();
    }
    return rows;
  } finally {
    await browser.close();
  }
}
