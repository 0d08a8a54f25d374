/** The swing as it is drawn: what the chart says of a note, and a motion between its own lowest lines. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { roomChart, type Playing } from '../../src/playing/room.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { swingLine } from '../../src/playing/swing-line.ts';
import { idealDepth, idealHeight } from '../../src/playing/swing.ts';
import { expectNear, expectNothing } from '../expect-near.ts';
import { arcLine, MEDIUM } from './necks.ts';

const BUILD = { ...defaultBuild(), bassHigherMm: 0.4, fallAwayMm: 0 };

test('lies over every fret by the room that the chart finds, in every direction', () => {
  const neck = setUp(BUILD, arcLine(BUILD, 0.15));
  for (const direction of ['away', 'towards', 'along'] as const) {
    const playing: Playing = { ...MEDIUM, direction };
    const chart = roomChart(neck, playing);
    for (const string of [0, 3, 5])
      for (const note of [0, 1, 9, 20]) {
        const line = swingLine(BUILD, neck, playing, string, note);
        const over = (depth: Float64Array) =>
          neck.strings[string].scale.fretXMm.slice(note).map((x) => {
            const i = line.xMm.findIndex((place) => Math.abs(place - x) < 1e-9);
            return line.gapMm[i] - depth[i];
          });
        const room = chart[string][note];
        const ideal = over(line.idealMm);
        expectNothing(Math.min(...ideal) - room.leastMm, 1, 1e-9, 'the same clearance');
        expect(note + 1 + ideal.indexOf(Math.min(...ideal))).toBe(room.atFret);
        expectNothing(Math.min(...over(line.boundMm)) - room.boundMm, 1, 1e-9, 'the same bound');
      }
  }
});

test('starts at the fret that is stopped, with no room and no swing there', () => {
  const line = swingLine(BUILD, setUp(BUILD, arcLine(BUILD, 0.2)), MEDIUM, 2, 7);
  for (const value of [line.gapMm[0], line.idealMm[0], line.share[0]])
    expectNothing(value, 1, 1e-9, 'it lies on the fret');
});

test('begins as the triangle of the pluck, comes back to it, and is turned end for end half way', () => {
  const p = 0.3;
  for (const u of [0.1, 0.4, 0.7, 0.95]) {
    const pluck = u < 1 - p ? u / (1 - p) : (1 - u) / p;
    expectNear(idealHeight(u, p, 'away', 0), pluck, 1e-9, 'the pluck');
    expectNear(idealHeight(u, p, 'away', 1), pluck, 1e-9, 'a period later');
    expectNear(idealHeight(u, p, 'away', 0.5), -idealDepth(u, p, 'away'), 1e-9, 'its lowest line');
    expectNear(idealHeight(u, p, 'towards', 0), -pluck, 1e-9, 'pushed the other way');
  }
});

test('never leaves its lowest line downwards, and reaches it, seed 46', () => {
  const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
  fc.assert(
    fc.property(share, share, fc.double({ min: 0, max: 3, noNaN: true }), (u, p, periods) => {
      for (const direction of ['away', 'towards', 'along'] as const)
        expect(idealHeight(u, p, direction, periods)).toBeGreaterThanOrEqual(-idealDepth(u, p, direction) - 1e-9);
    }),
    { seed: 46, numRuns: 300 },
  );
});
