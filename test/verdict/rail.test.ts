import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { fretsInAt, momentAt, PHASES, railStops, stopIndex, type RailPosition } from '../../src/verdict/rail.ts';

const build = defaultBuild();

describe('the stops', () => {
  test('go through the phases in order, with one stop for each fret', () => {
    const stops = railStops(build);
    const order = stops.map((stop) => PHASES.indexOf(stop.phase));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(stops.filter((stop) => stop.phase === 'frets')).toHaveLength(build.fretCount);
  });

  test('have days ascending, with the day at which this neck is called settled', () => {
    const days = railStops({ ...build, settleDays: 45 }).flatMap((stop) => (stop.phase === 'weeks' ? [stop.days] : []));
    expect(days).toContain(45);
    expect(days).toEqual([...new Set(days)].sort((a, b) => a - b));
  });

  test('have all frets at once where the board comes to the neck with them', () => {
    const fretted: Build = { ...build, workOrder: 'board-first' };
    const stops = railStops(fretted);
    expect(stops.filter(({ phase }) => phase === 'frets')).toEqual([{ phase: 'frets', fretsIn: 'all' }]);
    // A moment that was chosen before the order of work was.
    expect(stops[stopIndex(stops, { phase: 'frets', fretsIn: 5 })]).toEqual({ phase: 'frets', fretsIn: 'all' });
    expect(momentAt(fretted, { phase: 'frets', fretsIn: 5 }, 0)).toEqual({ strung: false, days: 0, rodPercent: 0 });
  });

  test('end before the rod where there is none', () => {
    expect(railStops(build).at(-1)!.phase).toBe('rod');
    expect(railStops({ ...build, rodKind: 'none' }).at(-1)!.phase).toBe('weeks');
  });
});

test('every stop finds itself again', () => {
  const stops = railStops(build);
  stops.forEach((stop, index) => expect(stopIndex(stops, stop)).toBe(index));
});

test('a position finds the nearest stop when the build has changed under it', () => {
  const stops = railStops({ ...build, fretCount: 19, rodKind: 'none' });
  expect(stops[stopIndex(stops, { phase: 'frets', fretsIn: 21 })]).toEqual({ phase: 'frets', fretsIn: 'all' });
  expect(stops[stopIndex(stops, { phase: 'rod' })].phase).toBe('weeks');
  expect(stops[stopIndex(stops, { phase: 'weeks', days: 60 })]).toEqual({ phase: 'weeks', days: 90 });
});

describe('the moment to compute', () => {
  const at = (position: RailPosition, change: Partial<Build> = {}) => momentAt({ ...build, ...change }, position, 30);

  test('on a bare board has no frets and no strings', () => {
    expect(at({ phase: 'bare' })).toEqual({ fretsIn: [], strung: false, days: 0, rodPercent: 0 });
  });

  test('with some frets has them in the order of the build', () => {
    expect(at({ phase: 'frets', fretsIn: 3 }, { seatingOrder: 'nut-first' }).fretsIn).toEqual([1, 2, 3]);
    expect(at({ phase: 'frets', fretsIn: 3 }, { seatingOrder: 'body-first' }).fretsIn).toEqual([22, 21, 20]);
    expect(at({ phase: 'frets', fretsIn: 3 }, { seatingOrder: 'spread' }).fretsIn).toEqual([1, 5, 9]);
  });

  test('with all frets says no more than that', () => {
    expect(at({ phase: 'frets', fretsIn: 'all' })).toEqual({ strung: false, days: 0, rodPercent: 0 });
    expect(fretsInAt(build, { phase: 'frets', fretsIn: 99 })).toBe(build.fretCount);
  });

  test('with the rod set is on the day the neck has settled', () => {
    const change = { settleDays: 60 } as const;
    expect(at({ phase: 'rod' }, change)).toEqual({ strung: true, days: 60, rodPercent: 30 });
    expect(at({ phase: 'weeks', days: 7 }, change)).toEqual({ strung: true, days: 7, rodPercent: 0 });
  });
});
