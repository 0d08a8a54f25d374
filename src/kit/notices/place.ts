/** Where passing messages stand, so that they cover nothing that is being worked on. */

/** px of the window. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Places are tried this far apart, px: finer than any gap that a message fits into by chance. */
const STEP_PX = 4;

/** Area that two boxes share, px². */
export function overlap(one: Box, other: Box): number {
  const across = Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left);
  const along = Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top);
  return across > 0 && along > 0 ? across * along : 0;
}

/**
 * The lowest place in the room that covers nothing of what is to stay in sight, first at its left edge, then at its right,
 * then in its middle; where there is none, the one that covers least.
 *
 * @param size - of what is placed, px; no larger than the room
 * @param room - where it may stand
 * @param clear - what is to stay in sight
 */
export function placeFor(size: Pick<Box, 'width' | 'height'>, room: Box, clear: readonly Box[]): Box {
  const spare = Math.max(0, room.width - size.width);
  const lowest = room.top + Math.max(0, room.height - size.height);
  let best: Box | undefined;
  let least = Infinity;
  for (const left of [room.left, room.left + spare, room.left + spare / 2]) {
    for (let top = lowest; top >= room.top; top -= STEP_PX) {
      const place = { left, top, ...size };
      const covered = clear.reduce((sum, box) => sum + overlap(place, box), 0);
      if (covered < least) [best, least] = [place, covered];
      if (covered === 0) return place;
    }
  }
  return best ?? { left: room.left, top: room.top, ...size };
}
