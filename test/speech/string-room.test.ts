/** Where a string buzzes, in both languages and units. */
import { expect, test } from 'vitest';
import type { NoteRoom } from '../../src/playing/room.ts';
import { inBothLanguages } from './house.ts';

const { english, german } = await inBothLanguages(() => import('../../src/speech/playing/string-room.ts'));

const ROOM: NoteRoom = { leastMm: 0.034, atFret: 6, boundMm: 0.01, buzzForceN: 1.34 };
const STRINGS = [{ pitch: 64 }, { pitch: 59 }];
const plain = (text: string) => text.replaceAll(/[\u2068\u2069]/g, '').replaceAll('\u00a0', ' ');

test('a note that is clear says by how much, and over which fret', () => {
  const name = english.stringName(STRINGS, 1);
  expect(plain(english.noteText(name, 5, ROOM, 'metric'))).toBe('String 2 (B3), fret 5: clears fret 6 by 0.03 mm.');
  expect(plain(english.noteText(name, 0, ROOM, 'inch'))).toBe('String 2 (B3), open: clears fret 6 by 0.001 in.');
  expect(plain(german.noteText(german.stringName(STRINGS, 1), 5, ROOM, 'metric'))).toMatch(
    /^Saite 2 \(.+\), Bund 5: geht 0,03 mm über Bund 6 frei\.$/,
  );
});

test('one that buzzes says on which fret and how much is missing, without a minus sign', () => {
  const room = { ...ROOM, leastMm: -0.117, boundMm: -0.3 };
  expect(plain(english.noteText('1', 4, room, 'metric'))).toBe('String 1, fret 4: buzzes on fret 6, 0.12 mm too low.');
  expect(plain(german.noteText('1', 4, room, 'metric'))).toBe('Saite 1, Bund 4: schnarrt an Bund 6, 0,12 mm zu tief.');
});

test('one that may buzz says both', () => {
  const room = { ...ROOM, boundMm: -0.09 };
  expect(plain(english.noteText('1', 4, room, 'metric'))).toBe(
    'String 1, fret 4: clears fret 6 by 0.03 mm, but a stiff string may swing up to 0.09 mm too low.',
  );
});

test('what rounds to nothing is called neither too low nor clear by nothing', () => {
  for (const leastMm of [-0.004, -0.0001]) {
    const room = { ...ROOM, leastMm, boundMm: -0.2 };
    expect(plain(english.noteText('1', 4, room, 'metric'))).toBe('String 1, fret 4: just touches fret 6.');
    expect(plain(german.noteText('1', 4, room, 'metric'))).toBe('Saite 1, Bund 4: streift gerade Bund 6.');
  }
  // In inches a thousandth is the least that is printed.
  expect(plain(english.noteText('1', 4, { ...ROOM, leastMm: -0.011, boundMm: -1 }, 'inch'))).toMatch(/just touches/);
  expect(plain(english.noteText('1', 4, { ...ROOM, leastMm: 0.004, boundMm: 0.001 }, 'metric'))).toBe(
    'String 1, fret 4: just clears fret 6.',
  );
  expect(plain(english.noteText('1', 4, { ...ROOM, boundMm: -0.003 }, 'metric'))).toBe(
    'String 1, fret 4: clears fret 6 by 0.03 mm, but a stiff string may just touch it.',
  );
  expect(plain(english.noteText('1', 4, { ...ROOM, leastMm: 0.003, boundMm: -0.2 }, 'metric'))).toBe(
    'String 1, fret 4: just clears fret 6, but a stiff string may swing up to 0.20 mm too low.',
  );
  for (const leastMm of [-0.004, 0.004, 0.03])
    for (const boundMm of [-0.2, -0.004, 0.001])
      for (const house of [english, german])
        for (const system of ['metric', 'inch'] as const)
          expect(plain(house.noteText('1', 4, { ...ROOM, leastMm, boundMm }, system))).not.toMatch(
            /0[.,]00 mm|0[.,]000 in/,
          );
});

test('the pluck at which it starts is said where there is one', () => {
  expect(plain(english.buzzForceText(ROOM, 'metric'))).toBe('It starts to buzz at 1.3 N.');
  expect(plain(german.buzzForceText(ROOM, 'metric'))).toBe('Ab 1,3 N beginnt sie zu schnarren.');
  expect(english.buzzForceText({ buzzForceN: Infinity }, 'metric')).toBe('');
});

test.each([
  [0, 0, 'All 132 notes are clear.'],
  [0, 7, 'No note is sure to buzz; 7 of 132 may.'],
  [1, 0, '1 of 132 notes buzzes.'],
  [3, 0, '3 of 132 notes buzz.'],
  [3, 9, '3 of 132 notes buzz, 9 more may.'],
])('%d notes that buzz and %d that may: %s', (buzzing, mayBuzz, said) => {
  expect(plain(english.roomSummary({ notes: 132, buzzing, mayBuzz }))).toBe(said);
});

const AIM = { actionMm: 1.9, lowestActionMm: 1.787, fall: null };
const BAND = { lowMm: 0.25, highMm: 0.25, fromN: 0.71, toN: 1.41 };
const BETTER = {
  status: 'better',
  reliefMm: 0.25,
  roomMm: 0.043,
  costMm: 0.012,
  band: BAND,
  change: {},
  raised: [],
} as const;

test('the way back says action and relief with their units', () => {
  expect(plain(english.aimText({ ...AIM, relief: BETTER }, 'metric'))).toBe(
    'Lowest action for this neck: 1.79 mm at fret 12, now 1.90 mm. Most room: with 0.25 mm relief, 0.04 mm at the worst note. 0.05 mm more relief takes 0.01 mm of it.',
  );
  expect(plain(english.aimText({ ...AIM, relief: { ...BETTER, costMm: 0.002 } }, 'metric'))).not.toContain('takes');
  expect(plain(german.aimText({ ...AIM, relief: { ...BETTER, costMm: null } }, 'metric'))).toBe(
    'Niedrigste Saitenlage für diesen Hals: 1,79 mm am 12. Bund, jetzt 1,90 mm. Am meisten Freiraum: mit 0,25 mm Halskrümmung, 0,04 mm am engsten Ton.',
  );
  expect(plain(english.aimText({ ...AIM, relief: { ...BETTER, roomMm: -0.61, costMm: null } }, 'metric'))).toMatch(
    /with 0\.25 mm relief, but the worst note is still 0\.61 mm too low\.$/,
  );
});

test('a best relief with which the worst note just touches is not called too low', () => {
  for (const roomMm of [-0.003, 0.003]) {
    const best = { ...BETTER, roomMm, costMm: null };
    expect(plain(english.aimText({ ...AIM, relief: best }, 'metric'))).toMatch(
      /Most room: with 0\.25 mm relief; the worst note then just touches\.$/,
    );
    const fall = { fallAwayMm: 0.1, fromFret: 16, roomMm, change: {}, raised: [] };
    expect(plain(english.fallText(fall, 'metric'))).toMatch(/the worst note just touches\.$/);
    expect(plain(german.fallText(fall, 'metric'))).not.toContain('zu tief');
  }
});

test('what 0.05 mm more costs is said also where the best relief still buzzes', () => {
  const best = { ...BETTER, roomMm: -0.61 };
  expect(plain(english.aimText({ ...AIM, relief: best }, 'metric'))).toMatch(
    /still 0\.61 mm too low\. 0\.05 mm more relief costs another 0\.01 mm\.$/,
  );
  expect(plain(german.aimText({ ...AIM, relief: best }, 'metric'))).toMatch(
    /0,05 mm mehr Halskrümmung kosten noch einmal 0,01 mm\.$/,
  );
});

test('without a rod nothing is said of relief, and where it is best already that is said', () => {
  expect(plain(english.aimText({ ...AIM, relief: { status: 'no-rod' } }, 'inch'))).toBe(
    'Lowest action for this neck: 0.070 in at fret 12, now 0.075 in.',
  );
  expect(plain(english.aimText({ ...AIM, relief: { status: 'as-is' } }, 'metric'))).toMatch(
    /now 1\.90 mm\. No other relief leaves more room\.$/,
  );
});

test('the relief has its band where that is more than the number itself, and the fall-away says where it starts', () => {
  const band = { ...BAND, lowMm: 0.18, highMm: 0.31 };
  expect(plain(english.aimText({ ...AIM, relief: { ...BETTER, band } }, 'metric'))).toContain(
    'For a pluck of 0.7 N to 1.4 N it lies between 0.18 mm relief and 0.31 mm relief. 0.05 mm more',
  );
  const fall = { fallAwayMm: 0.15, fromFret: 16, roomMm: 0.04, change: {}, raised: [] };
  expect(plain(english.fallText(fall, 'metric'))).toBe(
    'With the last frets falling away after fret 16, 0.15 mm at the last: 0.04 mm of room at the worst note.',
  );
  expect(plain(german.fallText({ ...fall, roomMm: -0.2 }, 'metric'))).toMatch(
    /liegt der engste Ton noch 0,20 mm zu tief/,
  );
});
