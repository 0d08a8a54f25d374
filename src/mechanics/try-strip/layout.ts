/**
 * Where the slots of a strip are: the first and the last at the same distance from its ends, the others evenly between
 * them. A group has the stretch from half a pitch before its first slot to half a pitch behind its last, within the strip.
 */
import type { StripContent, StripSpan } from './document.ts';

type Layout = Pick<StripContent, 'endMm'> & {
  readonly offcut: Pick<StripContent['offcut'], 'lengthMm'>;
  readonly groups: readonly Pick<StripContent['groups'][number], 'frets'>[];
};

export function fretsOf({ groups }: Pick<Layout, 'groups'>): number {
  return groups.reduce((sum, { frets }) => sum + frets, 0);
}

/** From slot to slot, mm; with one slot from end to end. */
export function slotPitchMm(strip: Layout): number {
  const frets = fretsOf(strip);
  const { lengthMm } = strip.offcut;
  return frets > 1 ? (lengthMm - 2 * strip.endMm) / (frets - 1) : lengthMm;
}

/** The distance of the outer slots from the ends at which all frets have an equal share of the strip, mm. */
export function evenEndMm(lengthMm: number, frets: number): number {
  return lengthMm / (2 * frets);
}

/** Middles of the slots from one end, mm. A single slot is in the middle. */
export function slotXMm(strip: Layout): number[] {
  const frets = fretsOf(strip);
  if (frets === 1) return [strip.offcut.lengthMm / 2];
  const pitch = slotPitchMm(strip);
  return Array.from({ length: frets }, (_, slot) => strip.endMm + slot * pitch);
}

/** Group of each slot. */
export function groupOfSlot({ groups }: Pick<Layout, 'groups'>): number[] {
  return groups.flatMap(({ frets }, group) => Array<number>(frets).fill(group));
}

/** The ends of what a straightedge bridges, mm from one end of the strip. @throws {RangeError} for a group that it has not */
export function spanOf(strip: Layout, over: StripSpan): readonly [fromMm: number, toMm: number] {
  const { lengthMm } = strip.offcut;
  if (over === 'ends') return [0, lengthMm];
  if (!(over in strip.groups))
    throw new RangeError(`group ${over} of the strip; it must be between 0 and ${strip.groups.length - 1}`);
  const at = slotXMm(strip);
  const first = strip.groups.slice(0, over).reduce((sum, { frets }) => sum + frets, 0);
  const last = first + strip.groups[over].frets - 1;
  const half = slotPitchMm(strip) / 2;
  return [Math.max(0, at[first] - half), Math.min(lengthMm, at[last] + half)];
}
