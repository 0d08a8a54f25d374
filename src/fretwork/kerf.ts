/**
 * The kerf that a way of seating works with.
 *
 *   press fit, press and glue   the kerf as the build has it
 *   glue fit                    max(kerf, width over the studs): the slot is sawn so that the whole tang slides in by hand
 *
 * Source: mechanics/MODEL.md, "Glue fit: the kerf equals the tang".
 */
import type { Build } from '../build/build.ts';

export function workingKerfMm(build: Pick<Build, 'method' | 'kerfMm' | 'studWidthMm'>): number {
  return build.method === 'glue' ? Math.max(build.kerfMm, build.studWidthMm) : build.kerfMm;
}
