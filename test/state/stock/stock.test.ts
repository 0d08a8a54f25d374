/** Blades and wires: kept, changed in their place, offered for the frets to come, in a backup and back. */
import { describe, expect, test } from 'vitest';
import { newId } from '../../../src/mechanics/bench-log/identity.ts';
import { stockForRest, stockItemOf, type Blade, type Wire } from '../../../src/state/stock/stock-item.ts';
import { changedStock, readableStock, STOCK_KEY, stockRecordOf } from '../../../src/state/stock/stock-store.ts';
import { kit } from '../backup/device.ts';

const blade = (kerfMm: number, change: Partial<Blade> = {}): Blade => ({
  kind: 'blade',
  id: newId(),
  name: 'pull saw',
  kerfMm,
  spreadMm: null,
  ...change,
});
const wire = (change: Partial<Wire> = {}): Wire => ({
  kind: 'wire',
  id: newId(),
  name: 'medium, nickel silver',
  tangWidthMm: 0.52,
  studWidthMm: 0.78,
  studAreaMm2: null,
  studPitchMm: null,
  ...change,
});

describe('an item', () => {
  test.each([
    ['a blade that saws no slot', { ...blade(0.1) }],
    ['a wire whose studs are narrower than its tang', wire({ tangWidthMm: 0.8, studWidthMm: 0.7 })],
    ['neither blade nor wire', { ...blade(0.6), kind: 'file' }],
    ['an id of another kind', blade(0.6, { id: '1' })],
  ])('is refused: %s', (_name, item) => {
    expect(stockItemOf(item)).toBeNull();
  });

  test('is offered for the rest', () => {
    expect(stockForRest([blade(0.6), wire(), blade(0.64)])).toEqual({
      bladesMm: [0.6, 0.64],
      wires: [{ tangWidthMm: 0.52, studWidthMm: 0.78 }],
    });
  });
});

describe('the record', () => {
  test('a changed item keeps its place, and what cannot be read stays', () => {
    const [one, other] = [blade(0.6), wire()];
    const record = { items: [one, { id: 'x' }, other] };
    const changed = { ...one, kerfMm: 0.61 };
    expect(changedStock(record, [one], [changed]).items).toEqual([changed, { id: 'x' }, other]);
    expect(changedStock(record, [other], []).items).toEqual([one, { id: 'x' }]);
    expect(readableStock(record)).toEqual([one, other]);
  });

  test('one of a newer release is left alone', () => {
    expect(stockRecordOf(JSON.stringify({ version: 2, items: [] }))).toBeNull();
    expect(stockRecordOf('{')).toBeNull();
    expect(stockRecordOf(null)).toEqual({ items: [] });
  });
});

test('stock goes into a backup and comes back; what differs here stays', async () => {
  const from = kit();
  const [one, other] = [blade(0.6), wire()];
  from.texts.setItem(STOCK_KEY, JSON.stringify({ version: 1, items: [one, other] }));
  const partOf = ({ parts }: Pick<typeof from, 'parts'>) => parts.find(({ id }) => id === 'stock')!;
  const saved = await partOf(from).save();
  const to = kit();
  const own = { ...other, name: 'from the drawer' };
  to.texts.setItem(STOCK_KEY, JSON.stringify({ version: 1, items: [own] }));
  const checked = partOf(to).check(JSON.parse(JSON.stringify(saved.value)));
  if (!checked.ok) throw new Error(checked.fault.code);
  expect(await checked.foresee()).toMatchObject({ fresh: 1, stays: 1 });
  const { takeBack } = await checked.add();
  expect(JSON.parse(to.texts.getItem(STOCK_KEY)!)).toEqual({ version: 1, items: [own, one] });
  await takeBack();
  expect(JSON.parse(to.texts.getItem(STOCK_KEY)!)).toEqual({ version: 1, items: [own] });
});
