/** The room over the frets: geometry at rest, what moves it, and the way back from what a player wants. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { fallAwayMm, fretPositionMm, stringPlacesMm } from '../../src/neck/neck-shape.ts';
import { actionChangeMm, bestRelief, leastClearanceMm, type Lines } from '../../src/playing/aim.ts';
import { stringHeights } from '../../src/playing/heights.ts';
import { eachPlace, leastRoom, pluckOfNoteMm, roomChart } from '../../src/playing/room.ts';
import { actionMm, afterwards, setUp } from '../../src/playing/set-up.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';
import { arcLine, AT_REST, FLAT_BOARD, MEDIUM, straightLine } from './necks.ts';

const BUILD = defaultBuild();
const anyNeck = fc.record({
  relief: fc.double({ min: -0.3, max: 0.6, noNaN: true }),
  action: fc.double({ min: 0.8, max: 3.5, noNaN: true }),
  nut: fc.double({ min: 1.3, max: 2.5, noNaN: true }),
  force: fc.double({ min: 0, max: 3, noNaN: true }),
  pluck: fc.double({ min: 40, max: 250, noNaN: true }),
  direction: fc.constantFrom('away', 'towards', 'along'),
});

function withHeights(action: number, nut: number, build: Build = BUILD): Build {
  return { ...build, stringHeightFret12Mm: action + build.crownHeightMm, stringHeightNutMm: nut };
}

describe('a set-up', () => {
  test('has the action at fret 12 that was set, on every board and line', () => {
    for (const build of [FLAT_BOARD, BUILD, { ...BUILD, boardShape: 'cone' as const, radiusLastFretMm: 406 }])
      for (const relief of [-0.2, 0, 0.3]) {
        const neck = setUp(build, arcLine(build, relief));
        for (const string of neck.strings)
          expectNear(actionMm(string, 12), build.stringHeightFret12Mm - build.crownHeightMm, 1e-9, 'as it was set');
      }
  });

  test('has an action of its own on the bass and on the treble side, and evenly between', () => {
    const build = { ...BUILD, bassHigherMm: 0.5 };
    const neck = setUp(build, arcLine(build, 0.2));
    const actions = neck.strings.map((string) => actionMm(string, 12));
    const mean = build.stringHeightFret12Mm - build.crownHeightMm;
    expectNear(actions.at(-1)! - actions[0], 0.5, 1e-9, 'as it was set');
    expectNear((actions.at(-1)! + actions[0]) / 2, mean, 1e-9, 'the outer strings lie as far from the middle');
    const places = stringPlacesMm(build, fretPositionMm(build.scaleLengthMm, 12));
    const across = places.at(-1)! - places[0];
    actions.forEach((action, i) =>
      expectNear(action, mean + (0.5 * places[i]) / across, 1e-9, 'in proportion to the place'),
    );
    const one = setUp({ ...build, strings: [build.strings[0]] }, arcLine(build, 0.2));
    expectNear(actionMm(one.strings[0], 12), mean, 1e-9, 'one string is in the middle');
  });

  test('may have strings of different scales: each has the room and the heights that it has by itself', () => {
    const longer = { ...BUILD, scaleLengthMm: BUILD.scaleLengthMm + 38 };
    const [short, long] = [BUILD, longer].map((build) => setUp(build, arcLine(build, 0.15)).strings);
    const mixed = [short[0], long[1], short[2], long[3]];
    const alone = mixed.map((string) => roomChart({ strings: [string] }, MEDIUM)[0]);
    expect(roomChart({ strings: mixed }, MEDIUM)).toEqual(alone);
    expect(alone[1]).not.toEqual(roomChart({ strings: [short[1]] }, MEDIUM)[0]);
    const heights = (strings: typeof mixed) => stringHeights({ strings }, BUILD.bodyJointFret);
    expect(heights(mixed)).toEqual(mixed.flatMap((string) => heights([string])));
    const ratio = (longer.scaleLengthMm / BUILD.scaleLengthMm) ** 2;
    expectNear(long[1].tensionN / short[1].tensionN, ratio, 1e-12, 'Mersenne’s law of strings, from memory');
  });

  test('with a higher bass gives the lowest string more room and the highest less', () => {
    const room = (bassHigherMm: number) => {
      const build = { ...BUILD, bassHigherMm };
      const chart = roomChart(setUp(build, arcLine(build, 0.1)), MEDIUM);
      return [chart[0][5].leastMm, chart.at(-1)![5].leastMm];
    };
    expect(room(0.4)[0]).toBeLessThan(room(0)[0]);
    expect(room(0.4)[1]).toBeGreaterThan(room(0)[1]);
  });

  test('lets a string that opens towards the saddle ride over a cylinder as over a hump', () => {
    const neck = setUp(BUILD, straightLine(BUILD));
    const outer = neck.strings.at(-1)!;
    const [a, b, c] = [1, 12, BUILD.fretCount] as const;
    const x = (fret: number) => fretPositionMm(BUILD.scaleLengthMm, fret);
    const top = (fret: number) => outer.topMm[fret - 1];
    const chord = top(a) + ((top(c) - top(a)) * (x(b) - x(a))) / (x(c) - x(a));
    expect(top(b) - chord).toBeGreaterThan(0.005);
    // On a flat board there is none.
    const flat = setUp(FLAT_BOARD, straightLine(FLAT_BOARD)).strings.at(-1)!;
    expectNothing(Math.max(...flat.topMm) - Math.min(...flat.topMm), BUILD.crownHeightMm, ROUNDING, 'one height');
  });

  test('gives more action where the neck goes hollow after it was set up, and less where it arches', () => {
    const straight = straightLine(BUILD);
    const twelfth = (relief: number) => {
      const neck = afterwards(BUILD, straight, arcLine(BUILD, relief));
      return actionMm(neck.strings[0], 12);
    };
    expectNear(twelfth(0), BUILD.stringHeightFret12Mm - BUILD.crownHeightMm, 1e-9, 'nothing has moved');
    expect(twelfth(0.3)).toBeGreaterThan(twelfth(0.1));
    expect(twelfth(-0.1)).toBeLessThan(twelfth(0));
  });

  test('falls away in a straight line beyond the chosen fret', () => {
    const x = [100, 200, 300, 400];
    expect(fallAwayMm(x, { fromFret: 2, atLastFretMm: 0.4 })).toEqual([0, 0, 0.2, 0.4]);
    expect(fallAwayMm(x, { fromFret: 4, atLastFretMm: 0.4 })).toEqual([0, 0, 0, 0]);
    expect(fallAwayMm(x, { fromFret: 0, atLastFretMm: 0 })).toEqual([0, 0, 0, 0]);
  });
});

describe('the room', () => {
  test('of a string at rest over a straight neck is geometry alone', () => {
    const build = withHeights(1.8, 1.7, FLAT_BOARD);
    const neck = setUp(build, straightLine(build));
    const scale = build.scaleLengthMm;
    // Fretted at n, the string rises to the saddle: action·2 − (nut − crown) above the fret tops there.
    const saddle = 2 * 1.8 - (build.stringHeightNutMm - build.crownHeightMm);
    eachPlace(neck, AT_REST, ({ note, fret, gapMm }) => {
      if (note === 0) return;
      const [from, at] = [fretPositionMm(scale, note), fretPositionMm(scale, fret)];
      expectNear(gapMm, (saddle * (at - from)) / (scale - from), 1e-9, 'similar triangles');
    });
    const chart = roomChart(neck, AT_REST);
    for (const room of chart[0]) expect(room.boundMm).toBe(room.leastMm);
    for (const [index, room] of chart[0].slice(1).entries()) expect(room.atFret).toBe(index + 2);
  });

  test('is that of the next fret but one where a fret stands proud', () => {
    const neck = setUp(FLAT_BOARD, straightLine(FLAT_BOARD));
    for (const string of neck.strings) string.topMm[6] = string.topMm[6] + 0.5;
    for (const notes of roomChart(neck, MEDIUM)) {
      expect(notes[5].leastMm).toBeLessThan(0);
      expect(notes[4].atFret).toBe(7);
      expect(notes[5].atFret).toBe(7);
    }
  });

  test('is the less the harder it is played, and more with more action, seed 42', () => {
    fc.assert(
      fc.property(anyNeck, ({ relief, action, nut, force, pluck, direction }) => {
        const build = withHeights(action, nut);
        const line = arcLine(build, relief);
        const playing = { forceN: force, pluckMm: pluck, direction };
        const chart = roomChart(setUp(build, line), playing);
        const harder = roomChart(setUp(build, line), { ...playing, forceN: force + 0.3 });
        const higher = roomChart(setUp(withHeights(action + 0.1, nut), line), playing);
        chart.forEach((notes, string) =>
          notes.forEach((room, note) => {
            expect(room.leastMm).toBeGreaterThanOrEqual(harder[string][note].leastMm);
            expect(higher[string][note].leastMm).toBeGreaterThan(room.leastMm);
            expect(room.boundMm).toBeLessThanOrEqual(room.leastMm);
            expect(room.atFret).toBeGreaterThan(note);
          }),
        );
      }),
      { seed: 42, numRuns: 60 },
    );
  });

  test('is nothing at the force at which it just buzzes, seed 43', () => {
    fc.assert(
      fc.property(anyNeck, ({ relief, action, nut, pluck, direction }) => {
        const build = withHeights(action, nut);
        const neck = setUp(build, arcLine(build, relief));
        const rooms = roomChart(neck, { forceN: 1, pluckMm: pluck, direction });
        const { buzzForceN } = rooms[0][3];
        fc.pre(buzzForceN > 0);
        const at = roomChart(neck, { forceN: buzzForceN, pluckMm: pluck, direction })[0][3];
        expectNothing(at.leastMm, action, 1e-9, 'clearance is linear in the force');
      }),
      { seed: 43, numRuns: 60 },
    );
  });

  test('keeps the hand where it is, but not beyond the middle of what speaks', () => {
    expect(pluckOfNoteMm(130, 600)).toBe(130);
    expect(pluckOfNoteMm(130, 160)).toBe(80);
  });

  test('of a chart without strings is refused', () => {
    expect(() => leastRoom([])).toThrow('at least one of each');
  });
});

describe('the way back', () => {
  test('the lowest action leaves no room and no more is needed, seed 44', () => {
    fc.assert(
      fc.property(anyNeck, ({ relief, action, nut, force, pluck, direction }) => {
        const build = withHeights(action, nut);
        const line = arcLine(build, relief);
        const playing = { forceN: force, pluckMm: pluck, direction };
        for (const kept of [0, 0.05]) {
          const change = actionChangeMm(setUp(build, line), playing, kept);
          const neck = setUp(withHeights(action + change, nut), line);
          expectNothing(leastClearanceMm(neck, playing) - kept, action, 1e-9, 'clearance is linear in the action');
        }
      }),
      { seed: 44, numRuns: 60 },
    );
  });

  const lines = (build: Build): Lines => ({
    stationXMm: arcLine(build, 0).stationXMm,
    baseMm: arcLine(build, 0).reliefMm,
    turnMm: arcLine(build, 1).reliefMm,
    least: -0.3,
    most: 0.8,
  });

  test('no other relief leaves more room, seed 45', () => {
    fc.assert(
      fc.property(
        anyNeck,
        fc.double({ min: -0.3, max: 0.8, noNaN: true }),
        ({ action, nut, force, pluck, direction }, other) => {
          const build = withHeights(action, nut);
          const playing = { forceN: force, pluckMm: pluck, direction };
          const best = bestRelief(build, lines(build), playing);
          expectNothing(
            leastClearanceMm(setUp(build, arcLine(build, best.amount)), playing) - best.leastMm,
            action,
            1e-9,
            'the same sum of lines',
          );
          expect(leastClearanceMm(setUp(build, arcLine(build, other)), playing)).toBeLessThan(best.leastMm + 1e-6);
        },
      ),
      { seed: 45, numRuns: 40 },
    );
  });

  test('hard playing asks for more relief than soft, and fall-away is never in the way', () => {
    const build = withHeights(1.6, 1.6);
    const soft = bestRelief(build, lines(build), { ...MEDIUM, forceN: 0.3 });
    const hard = bestRelief(build, lines(build), { ...MEDIUM, forceN: 2 });
    expect(hard.amount).toBeGreaterThan(soft.amount);
    const falling = bestRelief(build, lines(build), MEDIUM, { fromFret: 14, atLastFretMm: 0.3 });
    expect(falling.leastMm).toBeGreaterThanOrEqual(bestRelief(build, lines(build), MEDIUM).leastMm - 1e-6);
    expect(falling.fallMm).toBeGreaterThanOrEqual(0);
    expect(falling.fallMm).toBeLessThanOrEqual(0.3);
  });
});
