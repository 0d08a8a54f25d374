/** What must hold of the room under swinging strings, on every neck: geometry, symmetry, and which way everything moves it. */
import type { Build } from '../../src/neck/build.ts';
import { roomChart, type Playing, type RoomChart } from '../../src/playing/room.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { STRENGTHS, playedLine, playingOf } from '../../src/verdict/string-room.ts';
import { hold, holdFinite, type Invariant, type Subject } from './invariant.ts';

const ROUNDING_MM = 1e-9;

/** Holds for the room of every note of two charts. */
function holdBeside(a: RoomChart, b: RoomChart, holds: (a: number, b: number) => boolean, what: string): void {
  a.forEach((notes, string) =>
    notes.forEach((room, note) => {
      const other = b[string][note].leastMm;
      hold(
        holds(room.leastMm, other),
        () => `${what}, string ${string + 1}, note ${note}: ${room.leastMm} and ${other}`,
      );
    }),
  );
}

function chartOf(subject: Subject, change: Partial<Build>, playing: Partial<Playing>, fallMm = 0): RoomChart {
  const build = { ...subject.build, ...change };
  const line = playedLine(subject);
  const fall = { fromFret: Math.floor(build.fretCount / 2), atLastFretMm: fallMm };
  const usual = playingOf(build, { strength: 'medium', direction: 'along' });
  return roomChart(setUp(build, line, fall), { ...usual, ...playing });
}

const atMost = (a: number, b: number) => a <= b + ROUNDING_MM;

export const PLAYING: readonly Invariant[] = [
  {
    name: 'without a pluck the room is geometry alone, and every pluck takes of it, a harder one more',
    every: 5,
    check: (subject) => {
      const rest = chartOf(subject, {}, { forceN: 0 });
      for (const notes of rest)
        for (const { leastMm, boundMm } of notes) hold(leastMm === boundMm, () => `${leastMm} and ${boundMm}`);
      for (const direction of ['along', 'away', 'towards'] as const) {
        const [soft, medium, hard] = STRENGTHS.map((strength) =>
          chartOf(subject, {}, playingOf(subject.build, { strength, direction })),
        );
        holdBeside(soft, rest, atMost, 'soft beside none');
        holdBeside(medium, soft, atMost, 'medium beside soft');
        holdBeside(hard, medium, atMost, 'hard beside medium');
        for (const notes of hard)
          for (const { leastMm, boundMm } of notes) hold(boundMm <= leastMm, () => `${boundMm} > ${leastMm}`);
        holdFinite(
          hard.map((notes) => notes.map(({ leastMm }) => leastMm)),
          'room',
        );
      }
    },
  },
  {
    name: 'more action, and deeper fall-away, take room of no note',
    every: 5,
    check: (subject) => {
      const { stringHeightFret12Mm } = subject.build;
      const now = chartOf(subject, {}, {});
      holdBeside(now, chartOf(subject, { stringHeightFret12Mm: stringHeightFret12Mm + 0.2 }, {}), atMost, 'action');
      holdBeside(now, chartOf(subject, {}, {}, 0.2), atMost, 'fall-away');
    },
  },
  {
    name: 'plucked at the middle a string swings as far to either side',
    every: 10,
    check: (subject) => {
      const pluckMm = subject.build.scaleLengthMm;
      const [away, towards] = (['away', 'towards'] as const).map((direction) =>
        chartOf(subject, {}, { pluckMm, direction }),
      );
      holdBeside(away, towards, (a, b) => Math.abs(a - b) < ROUNDING_MM, 'away and towards');
    },
  },
  {
    name: 'alike strings have the same room on the bass side as on the treble side, and exchange it with the side that is higher',
    every: 10,
    check: (subject) => {
      const strings = subject.build.strings.map(() => subject.build.strings[0]);
      const mirrored = (chart: RoomChart): RoomChart => chart.toReversed();
      const level = chartOf(subject, { strings, bassHigherMm: 0 }, {});
      const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
      holdBeside(level, mirrored(level), same, 'level');
      const [bass, treble] = [0.4, -0.4].map((bassHigherMm) => chartOf(subject, { strings, bassHigherMm }, {}));
      holdBeside(bass, mirrored(treble), same, 'one side higher');
    },
  },
];
