/** What is said of a wood, a glue or a metal beside its numbers is a required column of its row, with its source. */
import { describe, expect, test } from 'vitest';
import { GLUES, type Glue } from '../../src/neck/glues.ts';
import { METALS, type Metal } from '../../src/neck/metals.ts';
import { FACT_SOURCES, type Sourced } from '../../src/neck/sources.ts';
import { CONSTRUCTIONS, type Construction } from '../../src/neck/strings.ts';
import { WOODS, type Wood } from '../../src/neck/woods.ts';

const wood = (id: string) => WOODS.find((row) => row.id === id)!;

describe('a row without its facts', () => {
  test('does not compile', () => {
    const { dust: _dust, ...noDust } = WOODS[0];
    const { trade: _trade, ...noTrade } = WOODS[0];
    const { isOily: _oily, ...noOil } = WOODS[0];
    const { isHard: _hard, ...noHardness } = GLUES[0];
    const { isWatery: _watery, ...noWater } = GLUES[0];
    const { isSensitising: _sensitising, ...noSensitising } = GLUES[0];
    const { nickel: _nickel, ...noNickel } = METALS[0];
    const { nickel: _plating, ...noPlating } = CONSTRUCTIONS[0];
    const rows: readonly [readonly Wood[], readonly Glue[], readonly Metal[], readonly Construction[]] = [
      [
        // @ts-expect-error dust is missing
        noDust,
        // @ts-expect-error trade is missing
        noTrade,
        // @ts-expect-error oil is missing
        noOil,
      ],
      [
        // @ts-expect-error whether it is hard is missing
        noHardness,
        // @ts-expect-error whether it carries water is missing
        noWater,
        // @ts-expect-error whether it sensitises is missing
        noSensitising,
      ],
      // @ts-expect-error nickel is missing
      [noNickel],
      // @ts-expect-error nickel is missing
      [noPlating],
    ];
    // @ts-expect-error a fact without a source
    const bare: Sourced<boolean> = { is: true };
    expect([rows.flat().length, bare.is]).toEqual([8, true]);
  });
});

test('every fact names a source that is known', () => {
  const facts = [
    ...WOODS.flatMap(({ dust, trade, isOily }) => [dust, trade, isOily]),
    ...GLUES.flatMap(({ isHard, isWatery, isSensitising }) => [isHard, isWatery, isSensitising]),
    ...METALS.map(({ nickel }) => nickel),
    ...CONSTRUCTIONS.map(({ nickel }) => nickel),
  ];
  expect(facts.filter(({ source }) => !Object.hasOwn(FACT_SOURCES, source))).toEqual([]);
  for (const { text, mark } of Object.values(FACT_SOURCES)) expect(text === '').toBe(mark === 'practice');
});

// Chart of wood toxicity (1990) after Woods & Calnan, Toxic Woods, Br. J. Dermatology 95 (1976); rows marked "S".
test.each(['yellow-birch', 'white-oak', 'ebony-african', 'goncalo-alves', 'mahogany', 'african-padauk'])(
  'dust of %s sensitises',
  (id) => {
    expect(wood(id).dust).toEqual({ is: 'sensitising', source: 'toxicity-chart' });
  },
);
// The same chart: rows marked "I" or "N" only.
test.each(['black-locust', 'purpleheart'])('dust of %s irritates', (id) => {
  expect(wood(id).dust.is).toBe('irritating');
});

// CITES Appendices I–III, from memory: Dalbergia since 2017, Swietenia macrophylla 2003, Cedrela 2020, Khaya and African
// Pterocarpus 2023, Handroanthus and Tabebuia 2024.
test.each(['indian-rosewood', 'mahogany', 'spanish-cedar', 'african-mahogany', 'african-padauk', 'ipe'])(
  '%s is listed under CITES',
  (id) => {
    expect(wood(id).trade.is).toBe('listed');
  },
);
test.each([
  ['bubinga', 'some-species'],
  ['ebony-african', 'some-species'],
  ['macawood', 'some-species'],
  ['ovangkol', 'look-alike'],
  ['brazilian-rosewood', 'banned'],
  ['sugar-maple', 'free'],
  ['sapele', 'free'],
  ['wenge', 'free'],
])('%s is %s in trade', (id, trade) => {
  expect(wood(id).trade.is).toBe(trade);
});

test('nickel is bound in stainless steel and in no other metal of the table', () => {
  expect(METALS.filter(({ nickel }) => nickel.is === 'bound').map(({ id }) => id)).toEqual(['stainless']);
});
