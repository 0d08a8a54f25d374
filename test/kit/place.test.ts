/** Where passing messages stand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlap, placeFor, type Box } from '../../src/kit/notices/place.ts';

const ROOM: Box = { left: 12, top: 12, width: 366, height: 820 };
const SIZE = { width: 340, height: 80 };

describe('the place of the messages', () => {
  test('is the lower left corner when nothing is in use', () => {
    expect(placeFor(SIZE, ROOM, [])).toEqual({ left: 12, top: 752, ...SIZE });
  });

  test('moves up over a control in use at the bottom', () => {
    const control: Box = { left: 0, top: 700, width: 390, height: 100 };
    const place = placeFor(SIZE, ROOM, [control]);
    expect(overlap(place, control)).toBe(0);
    expect(place.top + place.height).toBeLessThanOrEqual(700);
    expect(place.top + place.height).toBeGreaterThan(690);
  });

  test('moves aside where that keeps it lower', () => {
    const wide: Box = { left: 12, top: 12, width: 1400, height: 876 };
    const left: Box = { left: 0, top: 0, width: 600, height: 900 };
    expect(placeFor(SIZE, wide, [left])).toEqual({ left: 1072, top: 808, ...SIZE });
  });

  test('covers least where everything is in use', () => {
    const all: Box = { left: 0, top: 0, width: 390, height: 844 };
    const twice: Box = { left: 0, top: 400, width: 390, height: 444 };
    const place = placeFor(SIZE, ROOM, [all, twice]);
    expect(overlap(place, twice)).toBe(0);
  });

  test('covers nothing wherever there is a free band across that is high enough, and stays in the room (seed 20261128)', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, fc.array(share, { maxLength: 6 }), (free, others) => {
        // A band as high as the message and a step of the search; everything else may be in use.
        const band = 12 + free * (ROOM.height - SIZE.height - 8);
        const boxes = others.map((at): Box => {
          const top = at * 800;
          return { left: 0, top, width: 390, height: 40 };
        });
        const clear = boxes.filter(({ top, height }) => top + height <= band || top >= band + SIZE.height + 8);
        const place = placeFor(SIZE, ROOM, clear);
        expect(clear.every((box) => overlap(place, box) === 0)).toBe(true);
        expect(place.top).toBeGreaterThanOrEqual(ROOM.top);
        expect(place.top + place.height).toBeLessThanOrEqual(ROOM.top + ROOM.height);
      }),
      { seed: 20_261_128, numRuns: 300 },
    );
  });
});
