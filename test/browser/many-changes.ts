/** Many changes of a build in the page, by its own sliders, each waited for. */
import type { Page } from 'playwright-core';
import { GROUPS, type Parameter } from '../../src/neck/parameter-kinds.ts';
import { PARAMETERS, type ParameterId } from '../../src/neck/parameters.ts';

/** A slider that goes to and fro between the value it has and another one. */
export interface ToAndFro {
  id: ParameterId;
  /** The other value, in the parameter's own unit. */
  to: number;
}

/**
 * One parameter of each kind of shape: outline, back, board, crown, slot, end, binding, and the number of frets. Each other
 * value is valid for the first preset with any of the rest.
 */
export const SHAPING: readonly ToAndFro[] = [
  { id: 'widthNutMm', to: 44 },
  { id: 'thicknessFret12Mm', to: 23.5 },
  { id: 'boardThicknessMm', to: 6.3 },
  { id: 'crownHeightMm', to: 1.3 },
  { id: 'kerfMm', to: 0.6 },
  { id: 'endBevelDegrees', to: 40 },
  { id: 'bindingLineCount', to: 2 },
  { id: 'fretCount', to: 24 },
];

/** Opens every group of the controls, so that all sliders are there. */
export async function openGroups(page: Page): Promise<void> {
  await page.locator('.groups details').first().waitFor();
  await page.evaluate(() => {
    for (const summary of document.querySelectorAll<HTMLElement>('.groups details:not([open]) > summary'))
      summary.click();
  });
  await page.waitForFunction(() => !document.querySelector('.groups details:not([open])'));
}

/** Opens the one group that a parameter is in. */
export async function openGroupOf(page: Page, id: ParameterId): Promise<void> {
  const group = (PARAMETERS as readonly Parameter[]).find((parameter) => parameter.id === id)?.group;
  const details = page.locator('.groups details').nth(GROUPS.findIndex((one) => one === group));
  await details.waitFor();
  if ((await details.getAttribute('open')) === null) await details.locator('> summary').click();
  await sliderOf(page, id).waitFor();
}

/** The slider of a parameter. */
export function sliderOf(page: Page, id: ParameterId) {
  return page.locator(`[data-parameter="${id}"] input[type="range"]`);
}

/**
 * Changes one slider after the other, round and round, and waits each time until the prediction and the picture of the new
 * build are shown. The build is the first one again after every `2 × sliders` changes.
 *
 * @param sliders - each on its first value; the groups must be open
 * @param count - changes in all
 * @returns for each slider, the rebuild times of the picture after its changes, ms
 * @throws Error when a slider is missing, or a change shows no prediction
 */
export async function changeMany(page: Page, sliders: readonly ToAndFro[], count: number): Promise<number[][]> {
  return page.evaluate(
    async ([list, times]) => {
      const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
      const nextFrame = () => new Promise(requestAnimationFrame);
      const find = (id: string): HTMLInputElement => {
        const slider = document.querySelector<HTMLInputElement>(`[data-parameter="${id}"] input[type="range"]`);
        if (!slider) throw new Error(`There is no slider of ${id}.`);
        return slider;
      };
      const first = list.map(({ id }) => find(id).value);
      const rebuilds: number[][] = list.map(() => []);
      for (let change = 0; change < times; change += 1) {
        const which = change % list.length;
        const { id, to } = list[which];
        const there = Math.floor(change / list.length) % 2 === 0;
        const page = window.backbow!;
        const { frames, predictionVersion } = page;
        const slider = find(id);
        const before = slider.value;
        setValue.call(slider, there ? String(to) : first[which]);
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        const patience = performance.now() + 30_000;
        while (page.predictionVersion === predictionVersion || page.frames === frames) {
          if (performance.now() > patience) throw new Error(`Nothing came of ${id} from ${before} to ${slider.value}.`);
          await nextFrame();
        }
        rebuilds[which].push(page.stats()!.rebuildMs);
      }
      return rebuilds;
    },
    [sliders, count] as const,
  );
}
