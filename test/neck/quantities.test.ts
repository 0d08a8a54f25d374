/** One key for each quantity, with a unit that its name does not deny and a heading that exists. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { COMPUTED_KEYS, quantityOf, type QuantityKey } from '../../src/neck/quantities.ts';
import { QUANTITY_MEANINGS } from '../../src/verdict/quantity-meanings.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';

/** How a unit is written at the end of a key. Longest first, so that mm³ is not taken for mm. */
const ENDINGS = [
  ['Mm3', 'mm³'],
  ['Mm2', 'mm²'],
  ['Mm', 'mm'],
  ['GPa', 'GPa'],
  ['MPa', 'MPa'],
  ['Nm', 'N·m'],
  ['Percent', '%'],
  ['Degrees', '°'],
  ['Days', 'day'],
  ['Hours', 'h'],
  ['Min', 'min'],
  ['N', 'N'],
] as const;

test('every key says its unit, and no other', () => {
  for (const key of COMPUTED_KEYS) {
    const ending = ENDINGS.find(([end]) => key.endsWith(end));
    expect([key, ending?.[1] ?? '']).toEqual([key, quantityOf(key).unit]);
  }
});

test('no key is both given and computed', () => {
  const given = new Set<string>(PARAMETERS.map(({ id }) => id));
  expect(COMPUTED_KEYS.filter((key) => given.has(key))).toEqual([]);
  expect(COMPUTED_KEYS.length).toBeGreaterThan(60);
});

test('what names a heading of the note on the model names one that is there', () => {
  const note = readFileSync('src/mechanics/MODEL.md', 'utf8');
  const named = COMPUTED_KEYS.flatMap((key) => QUANTITY_MEANINGS[key].model ?? []);
  expect(named.length).toBeGreaterThan(20);
  for (const heading of named) expect(note).toContain(`\n## ${heading}\n`);
});

test('numbers of a build are quantities under their own id; what is no number is none', () => {
  expect(quantityOf('kerfMm')).toMatchObject({ unit: 'mm', digits: 3 });
  expect(quantityOf('studBiteMm')).toMatchObject({ unit: 'mm', digits: 3 });
  expect(() => quantityOf('boardWood' as QuantityKey)).toThrow('"boardWood" is no quantity');
  expect(() => quantityOf('kerf' as QuantityKey)).toThrow(RangeError);
});
