/** The line of a strip whose frets press with given forces. */
import type { StripWedges } from '../../../src/mechanics/strip/strip.ts';

/** Height of the underside under a force in every slot, mm, over the stations, up to a straight line. */
export function stripLine(
  { stationXMm, wedgeMm }: Omit<StripWedges, 'openingMm'>,
  forceN: ArrayLike<number>,
): Float64Array {
  const stations = stationXMm.length;
  const line = new Float64Array(stations);
  for (let slot = 0; slot < forceN.length; slot += 1)
    for (let i = 0; i < stations; i += 1) line[i] += forceN[slot] * wedgeMm[slot * stations + i];
  return line;
}
