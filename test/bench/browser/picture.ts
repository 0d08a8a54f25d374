/** What the picture costs the graphics processor, how long its shapes take to rebuild, and whether it leaks. */
import { gpuObjects } from '../../browser/gpu-objects.ts';
import { changeMany, openGroups, SHAPING } from '../../browser/many-changes.ts';
import type { App } from '../../browser/open-page.ts';
import { counted, type BenchRow } from '../measure.ts';
import { timed } from './rows.ts';
import { parameterName } from '../../../src/speech/names.ts';

/** Before these, everything that is made once has been made. */
const WARM_UP = 6 * SHAPING.length;

/**
 * @param app - a page opened with `countGpuObjects`
 * @param changes - about how many: a multiple of two changes of every slider, so that the build ends as it began
 */
export async function pictureRows(app: App, changes: number): Promise<BenchRow[]> {
  const stats = async () => (await app.page.evaluate(() => window.backbow!.stats()))!;
  const { triangles, drawCalls } = await stats();
  await openGroups(app.page);
  await changeMany(app.page, SHAPING, WARM_UP);
  await app.settle();
  const [before, gpuBefore] = [await stats(), await gpuObjects(app.page)];
  const round = 2 * SHAPING.length;
  const count = Math.ceil(changes / round) * round;
  const rebuilds = await changeMany(app.page, SHAPING, count);
  await app.settle();
  const [after, gpuAfter] = [await stats(), await gpuObjects(app.page)];
  const left = (what: string, kept: number): BenchRow =>
    counted(`${what} left behind by ${count} changes`, kept, '', 0);
  return [
    counted('triangles drawn for the whole neck', triangles, '', 80_000),
    counted('draw calls for it', drawCalls, '', 40),
    ...SHAPING.map(({ id }, index) => {
      const label = parameterName(id);
      return timed(`picture rebuilt in the page after ${label.toLowerCase()}`, rebuilds[index] ?? []);
    }),
    left('geometries', after.geometries - before.geometries),
    left('textures', after.textures - before.textures),
    left('shader programs', after.programs - before.programs),
    left('buffers on the graphics processor', gpuAfter.buffers - gpuBefore.buffers),
    left('textures on the graphics processor', gpuAfter.textures - gpuBefore.textures),
    left('vertex arrays on the graphics processor', gpuAfter.vertexArrays - gpuBefore.vertexArrays),
  ];
}
