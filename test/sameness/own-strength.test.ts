/** A maker's own strength is one number on the chart, on the sheet, in the CSV file and on the customer's page. */
import { expect, test } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { defaultBuild } from '../../src/neck/build.ts';
import { planTables } from '../../src/fretwork/plan/tables.ts';
import { tableCsv } from '../../src/fretwork/plan/csv.ts';
import { choiceFacts } from '../../src/verdict/choice-facts.ts';
import { USUAL_DIRECTION } from '../../src/verdict/set-up-figures.ts';
import { sheetPlan } from '../../src/verdict/sheet-plan.ts';
import { readStamp, stampDifferences, stampHere } from '../../src/verdict/stamp.ts';
import { stringAim } from '../../src/verdict/string-aim.ts';
import { handOf, stringRoom } from '../../src/verdict/string-room.ts';
import {
  acceptedAs,
  MATCHES_KEY,
  matchRecordOf,
  withMatch,
  textOfMatches,
  type MatchRecord,
} from '../../src/state/matches/match-store.ts';
import { strengthIn } from '../../src/state/matches/kept-strength.ts';
import { inBothLanguages } from '../speech/house.ts';
import { textStorage } from '../state/library/memory.ts';
import { matchOf } from '../playing/matches.ts';
import { solutionOf } from '../verdict/solution.ts';

const houses = await inBothLanguages(async () => ({
  ...(await import('../../src/speech/quantity-text.ts')),
  ...(await import('../../src/speech/tables.ts')),
  ...(await import('../../src/speech/playing/matches.ts')),
  ...(await import('../../src/speech/playing/string-room.ts')),
  ...(await import('../../src/pages/papers/sections/tables.tsx')),
  ...(await import('../../src/pages/customer/sentences.ts')),
}));

const TWO = withMatch(withMatch(matchRecordOf(null)!, matchOf({ id: 'one' })), matchOf({ id: 'two', actionMm: 1.62 }));
const NOTHING = { benchLog: [], adoptedBites: [], earlierBites: [] };

/** As the device keeps it. */
function kept(record: MatchRecord) {
  const texts = textStorage();
  texts.setItem(MATCHES_KEY, textOfMatches(record));
  return strengthIn(texts.getItem(MATCHES_KEY));
}

test('speaks nowhere until it is accepted, and is in the stamp from then on', () => {
  expect(kept(TWO)).toBeNull();
  expect(sheetPlan(solutionOf(defaultBuild()), null, kept(TWO)).plan.playing).toHaveLength(3);
  const own = kept(acceptedAs(TWO, true))!;
  expect(own.matches).toBe(2);
  const [before, after] = [null, own].map((of) => readStamp(stampHere(NOTHING, defaultBuild(), of))!);
  expect(stampDifferences(before, after)).toEqual(['measurements']);
});

test.each(PRESETS)('$id: one text on every surface, in both languages and units', ({ build }) => {
  const own = kept(acceptedAs(TWO, true))!;
  const reckoned = solutionOf(build);
  const hand = handOf(own, USUAL_DIRECTION);
  const [aim, room] = [stringAim(reckoned, hand), stringRoom(reckoned, hand)];
  const sheet = sheetPlan(reckoned, null, own);
  const facts = choiceFacts(build, reckoned.prediction, null, own);
  const table = planTables(sheet.plan).find(({ id }) => id === 'playing')!;
  const row = table.rows.length - 1;
  const [header, ...rows] = tableCsv(table)
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(','));
  const filed = Object.fromEntries(header.map((key, i) => [key, rows[row][i]]));
  expect(filed['strength']).toBe('own');
  expect(Number(filed['notesBuzzing'])).toBe(room.buzzing);
  for (const house of [houses.english, houses.german])
    for (const system of ['metric', 'inch'] as const) {
      const shown = house.shownTable(table, system).rows[row];
      const cell = (key: (typeof table.columns)[number]) => shown[table.columns.indexOf(key)];
      expect(cell('stringRoomMm')).toBe(house.numberOf('stringRoomMm', room.least.leastMm, system));
      expect(cell('lowestActionMm')).toBe(house.numberOf('lowestActionMm', Number(filed['lowestActionMm']), system));
      expect(house.aimText(aim, system)).toContain(
        house.textOf('lowestActionMm', Number(filed['lowestActionMm']), system),
      );
      const onChart = house.ownStrengthText(own, system);
      expect(house.playedText(sheet, system)).toContain(onChart);
      const { strings } = house.choiceSentences(facts, system);
      for (const force of [own.forceN, own.p05N, own.p95N]) {
        const text = house.textOf('ownForceN', force, system);
        expect(onChart).toContain(text);
        expect(strings).toContain(text);
      }
    }
});

test('the customer reads what a pluck of that strength does, and where the band leaves it open', () => {
  const build = defaultBuild();
  const { prediction } = solutionOf(build);
  const own = { forceN: 1.3, p05N: 1.1, p95N: 1.6, matches: 3 };
  const facts = choiceFacts(build, prediction, null, own);
  const said = (buzzing: number, buzzingAtMost: number) =>
    houses.english.choiceSentences({ ...facts, own: { own, buzzing, buzzingAtMost } }, 'metric').strings;
  expect(said(0, 0)).toMatch(/90 % sure of 1\.10.N to 1\.60.N\. Played like that, every note stays clean\.$/);
  expect(said(0, 2)).toMatch(/at the harder end some may buzz\.$/);
  expect(said(1, 5)).toMatch(/some notes may buzz\.$/);
  expect(houses.english.choiceSentences({ ...facts, own: null }, 'metric').strings).toMatch(/show the workshop\.$/);
  const harder = stringRoom({ build, prediction }, { ...handOf(own, USUAL_DIRECTION), ownForceN: own.p95N });
  expect(facts.own!.buzzingAtMost).toBe(harder.buzzing);
});
