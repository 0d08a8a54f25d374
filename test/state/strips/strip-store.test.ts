/** Try strips on a device: kept, changed, left alone where a newer release wrote them, in a backup and back. */
import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { newId } from '../../../src/mechanics/bench-log/identity.ts';
import type { TryStrip } from '../../../src/mechanics/try-strip/document.ts';
import { documentOf, firstDraft, type StripDraft } from '../../../src/pages/strips/plan-of.ts';
import { StripStore } from '../../../src/state/strips/strip-store.ts';
import { kit, logMemory } from '../backup/device.ts';

const DRAFT: StripDraft = { ...firstDraft(defaultBuild()), lengthMm: 300, widthMm: 60, thicknessMm: 6 };

function strip(id = newId(), draft: StripDraft = DRAFT): TryStrip {
  const checked = documentOf(draft, defaultBuild(), id, '2026-11-29');
  if (!checked?.ok) throw new Error(JSON.stringify(checked));
  return checked.strip;
}

const READING = { days: 0, bow: 'hump', sizeMm: 1.6, over: 'ends', instrument: 'feelers', ownErrorMm: null } as const;

describe('a plan', () => {
  test('is no strip until its numbers are there, and says what cannot be', () => {
    expect(documentOf({ ...DRAFT, lengthMm: null }, defaultBuild(), newId(), '2026-11-29')).toBeUndefined();
    const crowded = documentOf(
      { ...DRAFT, lengthMm: 80, groups: [{ blade: '', kerfMm: 1.1, frets: 12 }] },
      defaultBuild(),
      newId(),
      '2026-11-29',
    );
    expect(crowded).toMatchObject({ ok: false, problems: [{ code: 'impossible', because: 'wood-between-slots' }] });
  });
});

describe('the store', () => {
  test('keeps strips on the device, and another window finds them', async () => {
    const device = logMemory();
    const store = new StripStore(device);
    const [one, other] = [strip(), strip()];
    await store.put([], [one, other]);
    const changed = { ...one, readings: [READING] };
    await store.put([one], [changed]);
    const second = new StripStore(device);
    await second.read();
    expect(second.now()).toMatchObject({ unreadable: 0, trouble: null });
    expect(new Set(second.now().items)).toEqual(new Set([changed, other]));
  });

  test('leaves what it cannot read where it is, and a newer record alone', async () => {
    const damaged = logMemory({ version: 1, strips: [{ id: 'x' }, strip()] });
    const store = new StripStore(damaged);
    await store.read();
    expect(store.now()).toMatchObject({ unreadable: 1, trouble: null });
    await store.put(store.now().items!, []);
    expect(damaged.stored).toEqual({ version: 1, strips: [{ id: 'x' }] });

    const newer = { version: 2, strips: [] };
    const device = logMemory(newer);
    const page = new StripStore(device);
    const own = strip();
    await page.put([], [own]);
    expect(page.now()).toMatchObject({ trouble: 'newer', items: [own] });
    expect(device.stored).toEqual(newer);
  });

  test('says when the device does not keep them, and keeps them for the page', async () => {
    const device = logMemory();
    device.fail = 'QuotaExceededError';
    const store = new StripStore(device);
    const own = strip();
    await store.put([], [own]);
    expect(store.now()).toMatchObject({ trouble: 'full', items: [own] });
  });
});

test('strips go into a backup and come back; one that says something else here stays', async () => {
  const from = kit();
  const [one, other] = [strip(), strip()];
  from.strips.stored = { version: 1, strips: [one, other] };
  const partOf = ({ parts }: Pick<typeof from, 'parts'>) => parts.find(({ id }) => id === 'strips')!;
  const saved = await partOf(from).save();
  expect(saved).toMatchObject({ count: 2, leftOut: 0, trouble: null });

  const to = kit();
  const own = { ...other, readings: [READING] };
  to.strips.stored = { version: 1, strips: [own] };
  const checked = partOf(to).check(JSON.parse(JSON.stringify(saved.value)));
  if (!checked.ok) throw new Error(checked.fault.code);
  expect(await checked.foresee()).toMatchObject({ fresh: 1, stays: 1, known: 0 });
  const { takeBack } = await checked.add();
  expect(to.strips.stored).toEqual({ version: 1, strips: [own, one] });
  await takeBack();
  expect(to.strips.stored).toEqual({ version: 1, strips: [own] });
  expect(partOf(to).check([{ id: 'x' }])).toMatchObject({ ok: false, fault: { code: 'wrong-kind', place: 1 } });
});
