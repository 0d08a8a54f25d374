/**
 * The kerf that a way of seating works with.
 *
 *   press fit, press and glue   the kerf as the build has it
 *   glue fit                    max(kerf, width over the studs): the slot is sawn so that the whole tang slides in by hand
 *
 * Source: mechanics/MODEL.md, "Glue fit: the kerf equals the tang".
 */
import { slotAndTang, type Build, type FretRegion } from '../neck/build.ts';

/** Slot and tang at one fret. */
export type Seat = Pick<FretRegion, 'kerfMm' | 'tangWidthMm' | 'studWidthMm'>;

/** Kerf for a slot and tang that are not of a region: see `seatAt` for a fret. */
export function workingKerfMm(build: Pick<Build, 'method' | 'kerfMm' | 'studWidthMm'>): number {
  return build.method === 'glue' ? Math.max(build.kerfMm, build.studWidthMm) : build.kerfMm;
}

/** Slot and tang at fret n as they are worked: the kerf for the build's way of seating, regions counted. */
export function seatAt(build: Build, fret: number): Seat {
  const { kerfMm, tangWidthMm, studWidthMm } = slotAndTang(build, fret);
  return { kerfMm: workingKerfMm({ method: build.method, kerfMm, studWidthMm }), tangWidthMm, studWidthMm };
}

export interface SeatGroup {
  readonly seat: Seat;
  readonly frets: readonly number[];
}

/** Frets that share one slot and tang, in order of their first fret. */
export function seatGroups(build: Build): SeatGroup[] {
  const groups = new Map<string, { seat: Seat; frets: number[] }>();
  for (let fret = 1; fret <= build.fretCount; fret += 1) {
    const seat = seatAt(build, fret);
    const key = `${seat.kerfMm}/${seat.tangWidthMm}/${seat.studWidthMm}`;
    const group = groups.get(key);
    if (group) group.frets.push(fret);
    else groups.set(key, { seat, frets: [fret] });
  }
  return [...groups.values()];
}
