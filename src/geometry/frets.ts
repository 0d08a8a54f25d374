/** The frets: crown and tang of each, two closed solids that meet at the underside of the crown. */
import type { Build } from '../neck/build.ts';
import { madeEnds, type FretEnd } from '../fretwork/ends.ts';
import { writeCrown } from './crown.ts';
import { createMeshWriter, type Mesh } from './mesh.ts';
import { writeTang } from './tang.ts';

/**
 * How a fret is drawn: `seated` is filed at its ends and its tang, hidden in the slot, has no studs; `loose` is as it was
 * prepared: oversize, square, with its studs.
 */
export type FretState = 'seated' | 'loose' | 'cut';

/** What each state shows; `cut` is a seated fret in a cut-open view: filed, with studs. */
const STATES: Record<FretState, { filed: boolean; studs: boolean }> = {
  seated: { filed: true, studs: false },
  loose: { filed: false, studs: true },
  cut: { filed: true, studs: true },
};

export function crownMesh(build: Build, end: FretEnd, state: FretState): Mesh {
  const writer = createMeshWriter();
  writer.anchor(end.xMm);
  writeCrown(writer, build, end, STATES[state].filed);
  return writer.finish();
}

export function tangMesh(build: Build, end: FretEnd, state: FretState): Mesh {
  const writer = createMeshWriter();
  writer.anchor(end.xMm);
  writeTang(writer, build, end, STATES[state].studs);
  return writer.finish();
}

/** All frets in one mesh; `fretOf` says which fret a vertex belongs to. @param frets numbers to draw, default all */
export function fretsMesh(build: Build, state: FretState, frets?: readonly number[]): Mesh {
  const writer = createMeshWriter();
  for (const end of madeEnds(build)) {
    if (frets && end.fret > 0 && !frets.includes(end.fret)) continue;
    writer.anchor(end.xMm);
    writer.fret(end.fret);
    writeCrown(writer, build, end, STATES[state].filed);
    writeTang(writer, build, end, STATES[state].studs);
  }
  return writer.finish();
}
