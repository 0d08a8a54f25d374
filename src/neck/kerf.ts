/**
 * The kerf of a way of seating, and the seat of every fret.
 *
 *   press fit, press and glue   the kerf as the build has it
 *   glue fit                    max(kerf, width over the studs): the slot is sawn, or opened, until the whole tang slides in
 *                               by hand. Where the slots are wider already they stay as they are.
 *
 * Whoever shows, draws or reckons with a kerf takes it from here; `Build.kerfMm` itself is the kerf for pressing, and in a
 * refret the kerf that the old slots have.
 *
 * Source: mechanics/MODEL.md, "Glue fit: the kerf equals the tang".
 */
import { slotAndTang, type Build, type FretRegion } from './build.ts';

type Slot = Pick<FretRegion, 'kerfMm' | 'studWidthMm'>;

/** Kerf of one slot, or of all slots that are not of a region, as a way of seating works with it, mm. */
export function workingKerfMm({ kerfMm, studWidthMm }: Slot, method: Build['method']): number {
  return method === 'glue' ? Math.max(kerfMm, studWidthMm) : kerfMm;
}

/** Slot and tang at one fret. */
export type Seat = Pick<FretRegion, 'kerfMm' | 'tangWidthMm' | 'studWidthMm'>;

/** Slot and tang at fret n as they are worked: the kerf for the build's way of seating, regions counted. */
export function seatAt(build: Build, fret: number): Seat {
  const slot = slotAndTang(build, fret);
  const { tangWidthMm, studWidthMm } = slot;
  return { kerfMm: workingKerfMm(slot, build.method), tangWidthMm, studWidthMm };
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

/** A value of the build as the job is done with it: of the kerf that of the way of seating, of all others the build's. */
export function workingValue<Id extends keyof Build>(build: Build, id: Id): Build[Id] {
  return id === 'kerfMm' ? (workingKerfMm(build, build.method) as Build[Id]) : build[id];
}

/**
 * What the build must hold so that its way of seating works with this kerf.
 * @param before the build as it was before the slider was taken: back at the studs, a glue fit leaves the kerf for pressing
 *   as it was then
 */
export function kerfChange(build: Build, kerfMm: number, before = build): Pick<Build, 'kerfMm'> {
  const isAtStuds = build.method === 'glue' && kerfMm === build.studWidthMm;
  return { kerfMm: isAtStuds && before.kerfMm < kerfMm ? before.kerfMm : kerfMm };
}
