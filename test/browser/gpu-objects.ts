/** Counts what a page holds on the graphics processor, from the calls it makes. */
import type { Page } from 'playwright-core';

/** Objects made and not yet deleted. */
export interface GpuObjects {
  buffers: number;
  textures: number;
  vertexArrays: number;
  programs: number;
}

interface Counting {
  gpuObjects?: GpuObjects;
}

/** To be called before the page opens: from then on every making and deleting counts. */
export async function countGpuObjects(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const counts = { buffers: 0, textures: 0, vertexArrays: 0, programs: 0 };
    (window as Counting).gpuObjects = counts;
    const context = WebGL2RenderingContext.prototype as unknown as Record<string, (...given: unknown[]) => unknown>;
    const kinds = { buffers: 'Buffer', textures: 'Texture', vertexArrays: 'VertexArray', programs: 'Program' } as const;
    for (const kind of Object.keys(kinds) as (keyof typeof kinds)[]) {
      const live = new WeakSet<object>();
      const make = context[`create${kinds[kind]}`];
      const remove = context[`delete${kinds[kind]}`];
      if (!make || !remove) throw new Error(`WebGL 2 has no ${kinds[kind]}.`);
      context[`create${kinds[kind]}`] = function (...given) {
        const made = make.apply(this, given) as object | null;
        if (made) {
          live.add(made);
          counts[kind] += 1;
        }
        return made;
      };
      context[`delete${kinds[kind]}`] = function (...given) {
        // Deleting nothing, or the same thing twice, is allowed and does nothing.
        if (live.delete(given[0] as object)) counts[kind] -= 1;
        return remove.apply(this, given);
      };
    }
  });
}

/** @throws Error when nobody counts in this page */
export async function gpuObjects(page: Page): Promise<GpuObjects> {
  const counts = await page.evaluate(() => (window as Counting).gpuObjects);
  if (!counts) throw new Error('Nothing counts here: call countGpuObjects before the page opens.');
  return counts;
}
