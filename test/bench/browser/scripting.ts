/** Scripting of the page's thread while a slider is dragged and while the way through the job is stepped along. */
import { setTimeout as pause } from 'node:timers/promises';
import type { Browser, Locator } from 'playwright-core';
import type { ParameterId } from '../../../src/neck/parameters.ts';
import { openGroupOf, sliderOf } from '../../browser/many-changes.ts';
import type { App } from '../../browser/open-page.ts';
import type { BenchRow } from '../measure.ts';
import { percentile, timed } from './rows.ts';
import { scriptingPerEvent, type Scripting, type TraceEvent } from './trace.ts';

/** Aims of the house for one event. */
const AIM_MS = 8;
const AIM_95_MS = 16;

/** From one event to the next, ms: time enough for all that an event sets going to be over before the next one. */
const PAUSE_MS = 120;
/** Events before those that count, so that the page's scripts have been compiled as well as they will be. */
const WARM_UP = 60;

/** Does something while the browser notes what each of its threads runs. */
async function traced(browser: Browser, app: App, action: () => Promise<void>): Promise<TraceEvent[]> {
  await browser.startTracing(app.page, { categories: ['-*', 'devtools.timeline'] });
  await action();
  const trace = await browser.stopTracing();
  return (JSON.parse(trace.toString('utf8')) as { traceEvents: TraceEvent[] }).traceEvents;
}

/** Drags a slider to and fro about the value it has, by one pixel at a time, which is as fine as a pointer gets. */
async function drag(app: App, slider: Locator, middle: number, events: number): Promise<void> {
  const box = await slider.boundingBox();
  if (!box) throw new Error('The slider to be dragged is not in the window.');
  const y = box.y + box.height / 2;
  const x = box.x + box.width * middle;
  const reach = Math.floor(box.width / 10);
  await app.page.mouse.move(x, y);
  await app.page.mouse.down();
  for (let event = 0; event < events; event += 1) {
    // A zigzag: up to the reach, back, and so on.
    const along = event % (2 * reach);
    await app.page.mouse.move(x + (along < reach ? along : 2 * reach - along) - reach / 2, y);
    await pause(PAUSE_MS);
  }
  await app.page.mouse.up();
}

function rowsOf(what: string, events: readonly Scripting[]): BenchRow[] {
  const onProcessor = events.map(({ processorMs }) => processorMs);
  return [
    timed(what, onProcessor, AIM_MS),
    percentile(what, onProcessor, 95, AIM_95_MS),
    timed(
      `${what}, by the clock`,
      events.map(({ elapsedMs }) => elapsedMs),
    ),
  ];
}

/** A slider that can be dragged, and where its thumb is, as a share of its length. */
async function readySlider(app: App, id: ParameterId): Promise<{ locator: Locator; middle: number }> {
  await openGroupOf(app.page, id);
  const locator = sliderOf(app.page, id);
  await locator.scrollIntoViewIfNeeded();
  const middle = await locator.evaluate((input) => {
    const { valueAsNumber, min, max } = input as HTMLInputElement;
    return (valueAsNumber - Number(min)) / (Number(max) - Number(min));
  });
  return { locator, middle };
}

/** Scripting for each event of a slider that is dragged. */
export async function sliderRows(
  browser: Browser,
  app: App,
  name: string,
  id: ParameterId,
  events: number,
): Promise<BenchRow[]> {
  const { locator, middle } = await readySlider(app, id);
  await drag(app, locator, middle, WARM_UP);
  await app.settle();
  const trace = await traced(browser, app, () => drag(app, locator, middle, events));
  return rowsOf(`scripting per event of the ${name} slider`, scriptingPerEvent(trace, 'pointermove'));
}

/** Aims for one step of a slider while the processor is as slow as that of a phone: by how many times, and ms. */
const SLOWED = [
  { times: 4, aimMs: 30 },
  { times: 6, aimMs: 50 },
] as const;

/** What one step of a slider costs the page's thread where the processor is slowed; the chart and the bands may follow. */
export async function slowedRows(
  browser: Browser,
  app: App,
  name: string,
  id: ParameterId,
  events: number,
): Promise<BenchRow[]> {
  const slider = await readySlider(app, id);
  const session = await app.context.newCDPSession(app.page);
  const rows: BenchRow[] = [];
  for (const { times, aimMs } of SLOWED) {
    await session.send('Emulation.setCPUThrottlingRate', { rate: times });
    await drag(app, slider.locator, slider.middle, events);
    const trace = await traced(browser, app, () => drag(app, slider.locator, slider.middle, events));
    const steps = scriptingPerEvent(trace, 'pointermove').map(({ processorMs }) => processorMs);
    rows.push(timed(`page’s thread per step of the ${name} slider, processor slowed ${times} times`, steps, aimMs));
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return rows;
}

/** Scripting for each step along the job with the arrow keys, and the part of it that draws the frame. */
export async function railRows(browser: Browser, app: App, events: number): Promise<BenchRow[]> {
  await app.page.getByRole('slider', { name: 'Moment in the job' }).focus();
  const step = async (count: number): Promise<void> => {
    for (let event = 0; event < count; event += 1) {
      // Through the frets, which are the longest part of the way, and back.
      const along = event % 40;
      await app.page.keyboard.press(along === 0 ? 'Home' : along <= 20 ? 'ArrowRight' : 'ArrowLeft');
      await pause(PAUSE_MS);
    }
  };
  await step(WARM_UP);
  await app.settle();
  const steps = scriptingPerEvent(await traced(browser, app, () => step(events)), 'keydown');
  return [
    ...rowsOf('scripting per step of the rail', steps),
    timed(
      'one frame of a step: lines to arrays, drawing, what is written over it',
      steps.map(({ frameMs }) => frameMs),
    ),
  ];
}
