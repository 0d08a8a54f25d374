/** The backup comes back whole, loses nothing that is here, and takes nothing that is not sound. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fileWork,
  makeBackup,
  readBackup,
  type Backup,
  type SoundBackup,
} from '../../../src/state/backup/backup-file.ts';
import { isBackupDue } from '../../../src/state/backup/last-backup.ts';
import { foresee, restore } from '../../../src/state/backup/restore.ts';
import { digestOf } from '../../../src/neck/digest.ts';
import { contentHash } from '../../../src/mechanics/bench-log/identity.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { MOST_DELETED, type LibraryEntry } from '../../../src/state/library/types.ts';
import { entry } from '../bench-log/entries.ts';
import { textStorage } from '../library/memory.ts';
import { PRESETS } from '../../tools/presets.ts';
import { benchRecord, kit, neck, putTexts, refusingTexts, textsOf, type Kit } from './device.ts';

const GRIP = {
  biteFactor: 1.21,
  studShape: 1,
  documents: [{ kind: 'strip', id: 'bcdfghjklmnpqr', hash: 'cd34' }],
  hash: 'ab12cd34',
  neck: '',
  measured: 1,
  biteLow: 0.9,
  biteHigh: 1.6,
};
const BITE = { factor: 1.2, measurements: ['bcdfghjklmnpqr'], hash: 'ab12', necks: 3, logSpread: 0.1 };

/** A device with something in every part. */
function furnished(): Kit {
  const device = kit();
  for (const each of [neck('a', 'Ash'), neck('b', 'Birch', { deletedAt: 5_000, revision: 4, picture: null })]) {
    device.library.records.set(each.id, each);
  }
  device.log.stored = {
    version: 2,
    entries: [entry('One'), entry('Two')],
    adopted: [BITE],
    grips: [GRIP],
    earlier: [1.3],
  };
  putTexts(device.texts, {
    'backbow.neck.p.1': benchRecord(['Cut', 'Cut and bound'], { isClosed: false }),
    'backbow.neck.p.2': benchRecord(['Left'], { left: { at: 9, for: 'Cut' } }),
    'backbow.workshop': 'The mill \ud800',
    'backbow.welcomed': '1',
    'backbow.minutes': '{"strip":300}',
  });
  device.store.getState().setUnitSystem('inch');
  device.store.getState().setLanguage('de');
  return device;
}

async function made(device: Kit): Promise<Backup> {
  const backup = await makeBackup(device.parts, 1_700_000_000_000, fileWork);
  if ('code' in backup) throw new Error(JSON.stringify(backup));
  return backup;
}

const fileOf = async (device: Kit) => (await made(device)).file.text();
const read = (text: BlobPart, device: Kit) => readBackup(new Blob([text]), device.parts, fileWork);

async function sound(text: string, device: Kit): Promise<SoundBackup> {
  const backup = await read(text, device);
  if (!backup.ok) throw new Error(JSON.stringify(backup.trouble));
  return backup;
}

const restoreText = async (device: Kit, text: string) => restore(await sound(text, device));

/** Everything that a device holds, in one text. */
const held = ({ library, log, texts }: Kit) =>
  JSON.stringify([[...library.records].toSorted(([a], [b]) => (a < b ? -1 : 1)), log.stored, textsOf(texts)]);

const entriesOf = ({ log }: Kit) => (log.stored as { entries?: LogEntry[] } | undefined)?.entries ?? [];

const partsIn = (text: string) => (JSON.parse(text) as { parts: Record<string, unknown> }).parts;

/** Signs a changed file anew, as somebody would who writes one by hand. */
function forged(text: string, change: (parts: Record<string, unknown>) => void): string {
  const data = JSON.parse(text) as { madeAt: string; checksum: string; parts: Record<string, unknown> };
  change(data.parts);
  data.checksum = digestOf(JSON.stringify([data.madeAt, data.parts]));
  return JSON.stringify(data);
}

describe('there and back', () => {
  test('a wiped device has everything again, to the letter', async () => {
    const from = furnished();
    const text = await fileOf(from);
    const to = kit();
    const { outcomes } = await restoreText(to, text);
    expect(outcomes.map(({ id, ok }) => [id, ok])).toEqual([
      ['log', true],
      ['accepted', true],
      ['necks', true],
      ['bench', true],
      ['settings', true],
    ]);
    expect([...to.library.records]).toEqual([...from.library.records]);
    expect(to.log.stored).toEqual(from.log.stored);
    expect(to.store.getState()).toMatchObject({ unitSystem: 'inch', language: 'de', appearance: 'system' });
    const texts = textsOf(to.texts);
    expect(texts['backbow.workshop']).toBe('The mill \ud800');
    expect(texts['backbow.welcomed']).toBe('1');
    expect(texts['backbow.minutes']).toBe('{"strip":300}');
    // What was on a bench there lies beside it here.
    expect(JSON.parse(texts['backbow.neck.p.1'])).toEqual(benchRecord(['Cut', 'Cut and bound']));
    expect(JSON.parse(texts['backbow.neck.p.2'])).toEqual(benchRecord(['Left'], { left: { at: 9, for: 'Cut' } }));
    // And its own backup is the same, but for the bench.
    expect(partsIn(await fileOf(to))['necks']).toEqual(partsIn(text)['necks']);
  });

  test('from before the minutes of measurements were kept it brings all the rest, and leaves those that are here', async () => {
    const text = forged(await fileOf(furnished()), (parts) => {
      delete (parts['settings'] as Record<string, unknown>)['minutes'];
    });
    const to = kit();
    putTexts(to.texts, { 'backbow.minutes': '{"kerf":4}' });
    await restoreText(to, text);
    const texts = textsOf(to.texts);
    expect(texts['backbow.workshop']).toBe('The mill \ud800');
    expect(texts['backbow.minutes']).toBe('{"kerf":4}');
  });

  test('on the device that it came from there is nothing to do', async () => {
    const device = furnished();
    const text = await fileOf(device);
    const before = held(device);
    const foreseen = await foresee(await sound(text, device));
    for (const outcome of foreseen)
      expect(outcome).toMatchObject({ ok: true, tally: { fresh: 0, beside: 0, back: 0 } });
    await restoreText(device, text);
    expect(held(device)).toBe(before);
  });

  test('a file that an editor has broken into lines is still whole', async () => {
    const device = furnished();
    const text = JSON.stringify(JSON.parse(await fileOf(device)), null, 4);
    expect((await read(text, kit())).ok).toBe(true);
  });

  test('what is foreseen is what happens, and it happens once', async () => {
    const text = await fileOf(furnished());
    const to = kit();
    to.library.records.set('a', neck('a', 'Ash', { project: neck('a', 'Other').project }));
    const foreseen = await foresee(await sound(text, to));
    const { outcomes } = await restoreText(to, text);
    expect(outcomes).toEqual(foreseen);
    const once = held(to);
    await restoreText(to, text);
    expect(held(to)).toBe(once);
  });
});

describe('what is here', () => {
  test('stays, and what differs comes in beside it', async () => {
    const text = await fileOf(furnished());
    const to = kit();
    const mine = neck('a', 'Ash, as it is now', { revision: 7 });
    to.library.records.set('a', mine);
    const corrected = { ...entry('One'), measuredFrettedMm: -0.3 };
    to.log.stored = { version: 2, entries: [corrected], adopted: [], earlier: [] };
    const open = benchRecord(['Cut', 'Cut otherwise'], { isClosed: false });
    putTexts(to.texts, { 'backbow.neck.p.1': open, 'backbow.workshop': 'Mine' });
    to.store.getState().setLanguage('en');
    const { outcomes } = await restoreText(to, text);
    expect(to.library.records.get('a')).toEqual(mine);
    expect([...to.library.records.values()].map((each) => (each as LibraryEntry).name).toSorted()).toEqual([
      'Ash',
      'Ash, as it is now',
      'Birch',
    ]);
    // A corrected measurement is not joined by its own mistake.
    expect(entriesOf(to).map(contentHash)).toEqual([corrected, entry('Two')].map(contentHash));
    expect(JSON.parse(to.texts.getItem('backbow.neck.p.1')!)).toEqual(open);
    expect(to.texts.getItem('backbow.workshop')).toBe('Mine');
    expect(to.store.getState()).toMatchObject({ unitSystem: 'inch', language: 'en' });
    const tallies = Object.fromEntries(outcomes.map((outcome) => [outcome.id, outcome.ok && outcome.tally]));
    expect(tallies).toMatchObject({
      necks: { fresh: 1, beside: 1 },
      log: { fresh: 1, stays: 1 },
      bench: { fresh: 1, beside: 1 },
      settings: { stays: 2, fresh: 3 },
    });
  });

  test('a measurement that is here under another id does not count twice', async () => {
    const text = await fileOf(furnished());
    const to = kit();
    to.log.stored = { version: 2, entries: [{ ...entry('One'), id: 'bcdfghjklmnpqr' }], adopted: [], earlier: [] };
    await restoreText(to, text);
    expect(entriesOf(to).map(({ neck: name }) => name)).toEqual(['One', 'Two']);
  });

  test('a neck that was deleted here comes back; one that was deleted there is not deleted here', async () => {
    const from = furnished();
    const text = await fileOf(from);
    const to = kit();
    to.library.records.set('a', neck('a', 'Ash', { deletedAt: 9_000 }));
    to.library.records.set('b', neck('b', 'Birch'));
    await restoreText(to, text);
    expect(to.library.records.get('a')).toMatchObject({ deletedAt: null });
    expect(to.library.records.get('b')).toMatchObject({ deletedAt: null });
  });

  test('deleted necks here keep their places', async () => {
    const text = await fileOf(furnished());
    const to = kit();
    for (let at = 0; at < MOST_DELETED; at += 1)
      to.library.records.set(`d${at}`, neck(`d${at}`, 'Gone', { deletedAt: 1 }));
    const { outcomes } = await restoreText(to, text);
    expect(outcomes.find(({ id }) => id === 'necks')).toMatchObject({ tally: { fresh: 1, noPlace: 1 } });
    expect(to.library.records.size).toBe(MOST_DELETED + 1);
  });

  test('law: nothing that is here is ever lost or changed, and everything of the file is here afterwards', async () => {
    const necks = fc.uniqueArray(
      fc.record({
        id: fc.constantFrom('a', 'b', 'c', 'd'),
        name: fc.constantFrom('Ash', 'Birch', 'Cherry'),
        deletedAt: fc.constantFrom(null, 10, 20),
      }),
      { selector: ({ id }) => id },
    );
    const records = fc.dictionary(
      fc.constantFrom('p.1', 'p.2', 'p.3'),
      fc.array(fc.constantFrom('One', 'Two', 'Three'), { minLength: 1, maxLength: 3 }),
    );
    const log = fc.uniqueArray(fc.constantFrom('N1', 'N2', 'N3', 'N4'));
    const device = fc.record({ necks, records, log });
    const made = (of: {
      necks: { id: string; name: string; deletedAt: number | null }[];
      records: object;
      log: string[];
    }) => {
      const each = kit();
      for (const { id, name, deletedAt } of of.necks) each.library.records.set(id, neck(id, name, { deletedAt }));
      for (const [id, names] of Object.entries(of.records)) {
        putTexts(each.texts, { [`backbow.neck.${id}`]: benchRecord(names as string[]) });
      }
      each.log.stored = { version: 2, entries: of.log.map((name) => entry(name)), adopted: [], earlier: [] };
      return each;
    };
    const standingsIn = (each: Kit) =>
      Object.entries(textsOf(each.texts))
        .filter(([key]) => key.startsWith('backbow.neck.'))
        .flatMap(([, text]) => (JSON.parse(text) as { standings: { project: unknown }[] }).standings)
        .map(({ project }) => JSON.stringify(project));
    const projectsIn = (each: Kit) =>
      [...each.library.records.values()].map((value) => (value as LibraryEntry).project);
    await fc.assert(
      fc.asyncProperty(device, device, async (here, there) => {
        const to = made(here);
        const before = { necks: new Map(to.library.records), texts: textsOf(to.texts), log: entriesOf(to) };
        const from = made(there);
        const { takeBack } = await restoreText(to, await fileOf(from));
        for (const [id, was] of before.necks) {
          const { deletedAt: _deleted, revision: _revision, ...content } = was as LibraryEntry;
          expect(to.library.records.get(id)).toMatchObject(content);
        }
        expect(textsOf(to.texts)).toMatchObject(before.texts);
        expect(entriesOf(to)).toEqual(expect.arrayContaining([...before.log]));
        expect(projectsIn(to)).toEqual(expect.arrayContaining(projectsIn(from)));
        expect(standingsIn(to)).toEqual(expect.arrayContaining(standingsIn(from)));
        expect(entriesOf(to)).toEqual(expect.arrayContaining(entriesOf(from)));
        // Taken back, it is as it was, but for the count of changes of necks that came back.
        expect(await takeBack()).toEqual([]);
        const plain = (records: Map<string, unknown>) =>
          new Map([...records].map(([id, value]) => [id, { ...(value as LibraryEntry), revision: 0 }]));
        expect(plain(to.library.records)).toEqual(plain(before.necks));
        expect(entriesOf(to)).toEqual(before.log);
        expect(textsOf(to.texts)).toMatchObject(before.texts);
        expect(Object.keys(textsOf(to.texts)).filter((key) => key.startsWith('backbow.neck.'))).toEqual(
          Object.keys(before.texts),
        );
      }),
      { numRuns: 150 },
    );
  });
});

describe('a device that fails', () => {
  test('a full one says what went in and what did not; restoring again adds the rest', async () => {
    const text = await fileOf(furnished());
    const to = kit();
    to.library.fail = { writing: 'QuotaExceededError' };
    const { outcomes } = await restoreText(to, text);
    expect(outcomes.find(({ id }) => id === 'necks')).toEqual({ id: 'necks', ok: false, trouble: 'full' });
    expect(outcomes.filter(({ ok }) => ok).map(({ id }) => id)).toEqual(['log', 'accepted', 'bench', 'settings']);
    expect(to.library.records.size).toBe(0);
    to.library.fail = {};
    await restoreText(to, text);
    expect(to.library.records.size).toBe(2);
    expect(entriesOf(to)).toHaveLength(2);
  });

  test('of the journal all goes in or nothing', async () => {
    const text = await fileOf(furnished());
    // Room for the first of the two, the latest.
    const first = JSON.stringify(benchRecord(['Cut', 'Cut and bound'])).length;
    const to = kit(textStorage(first + 300));
    const { outcomes } = await restoreText(to, text);
    expect(outcomes.find(({ id }) => id === 'bench')).toMatchObject({ ok: false, trouble: 'full' });
    expect(Object.keys(textsOf(to.texts)).filter((key) => key.startsWith('backbow.neck.'))).toEqual([]);
  });

  test('a page that dies in any step of writing loses nothing, and restoring again completes it', async () => {
    const text = await fileOf(furnished());
    const whole = kit();
    await restoreText(whole, text);
    for (let steps = 0; steps < 12; steps += 1) {
      const texts = textStorage();
      let left = steps;
      const step = (): void => {
        left -= 1;
        if (left < 0) throw new Error('the page is gone');
      };
      const dying: Storage = {
        key: (at) => texts.key(at),
        getItem: (key) => texts.getItem(key),
        clear: () => texts.clear(),
        get length() {
          return texts.length;
        },
        setItem: (key, value) => {
          step();
          texts.setItem(key, value);
        },
        // A page that is gone tidies nothing up.
        removeItem: () => step(),
      };
      const first = kit(dying);
      const change = first.library.changeAll.bind(first.library);
      first.library.changeAll = async (make) => {
        step();
        await change(make);
      };
      await restoreText(first, text);
      const next = kit(texts);
      for (const [id, value] of first.library.records) next.library.records.set(id, value);
      next.log.stored = first.log.stored;
      await restoreText(next, text);
      expect(held(next), `dead after ${steps} writings`).toBe(held(whole));
    }
  });

  test('a log of a newer release is left alone', async () => {
    const text = await fileOf(furnished());
    const to = kit();
    to.log.stored = { version: 3, entries: [] };
    const { outcomes } = await restoreText(to, text);
    expect(outcomes.slice(0, 2)).toEqual([
      { id: 'log', ok: false, trouble: 'newer' },
      { id: 'accepted', ok: false, trouble: 'newer' },
    ]);
    expect(to.log.stored).toEqual({ version: 3, entries: [] });
  });

  test('what cannot be read is told when the backup is made', async () => {
    const device = furnished();
    device.library.records.set('strange', { from: 'elsewhere' });
    device.texts.setItem('backbow.neck.p.9', '{"version":99}');
    const { counts } = await made(device);
    expect(counts.find(({ id }) => id === 'necks')).toMatchObject({ count: 2, leftOut: 1 });
    expect(counts.find(({ id }) => id === 'bench')).toMatchObject({ count: 2, leftOut: 1 });
    device.library.fail = { reading: 'SecurityError' };
    const failed = await made(device);
    expect(failed.counts.find(({ id }) => id === 'necks')).toMatchObject({ count: 0, trouble: 'refused' });
  });

  test('a neck on the bench for which there was no room goes into the file, and one that is kept goes in once', async () => {
    const device = kit();
    device.store.getState().replaceBuild({ ...PRESETS[1].build, name: 'Cut' }, 'opened');
    expect((await made(device)).counts.find(({ id }) => id === 'bench')).toMatchObject({ count: 1 });
    putTexts(device.texts, { 'backbow.neck.p.1': benchRecord(['Cut', 'Cut and bound']) });
    expect((await made(device)).counts.find(({ id }) => id === 'bench')).toMatchObject({ count: 1 });
    device.store.getState().change({ kerfMm: 0.7 }, 'changed');
    expect((await made(device)).counts.find(({ id }) => id === 'bench')).toMatchObject({ count: 2 });
  });

  test('where the browser keeps nothing the neck on the bench goes into the file, and comes in once elsewhere', async () => {
    const device = kit(refusingTexts());
    device.library.fail = { reading: 'SecurityError' };
    const empty = await made(device);
    expect(empty.counts.find(({ id }) => id === 'bench')).toMatchObject({ count: 0, trouble: 'refused' });
    device.store.getState().replaceBuild({ ...PRESETS[0].build, name: 'Nowhere kept' }, 'opened');
    const { counts, file } = await made(device);
    // Nothing can be put in there, and that is foreseen.
    const foreseen = await foresee(await sound(await fileOf(furnished()), device));
    expect(foreseen.filter(({ id }) => id === 'settings' || id === 'bench')).toEqual([
      { id: 'bench', ok: false, trouble: 'refused' },
      { id: 'settings', ok: false, trouble: 'refused' },
    ]);
    expect(counts.find(({ id }) => id === 'bench')).toMatchObject({ count: 1, trouble: null });
    expect(counts.find(({ id }) => id === 'necks')).toMatchObject({ count: 0, trouble: 'refused' });
    const to = kit();
    await restoreText(to, await file.text());
    await restoreText(to, await fileOf(device));
    const kept = Object.values(textsOf(to.texts)).filter((text) => text.includes('Nowhere kept'));
    expect(kept).toHaveLength(1);
  });
});

describe('a file that is not sound', () => {
  test('any changed, lost or doubled character is found out, or changes nothing of what it says', async () => {
    const text = (await fileOf(furnished())).trimEnd();
    const to = kit();
    const truth = JSON.stringify(partsIn(text));
    await fc.assert(
      fc.asyncProperty(fc.nat(text.length - 1), fc.constantFrom('', '0', '"', '}', 'x'), async (at, by) => {
        const damaged = text.slice(0, at) + by + text.slice(at + 1);
        expect((await read(damaged, to)).ok ? JSON.stringify(partsIn(damaged)) : truth).toBe(truth);
      }),
      { numRuns: 400 },
    );
  });

  test('that is larger than a backup may be is not even opened, and the sizes are named', async () => {
    const file = { size: 200_000_001, arrayBuffer: () => expect.fail('it was opened') } as unknown as Blob;
    expect(await readBackup(file, kit().parts, fileWork)).toEqual({
      ok: false,
      trouble: { code: 'too-large', bytes: 200_000_001, mostBytes: 200_000_000 },
    });
  });

  test('that would be larger is not made: nobody could restore it', async () => {
    const write = async () => ({ size: 200_000_001 }) as Blob;
    const refused = await makeBackup(furnished().parts, 0, { ...fileWork, write });
    expect(refused).toEqual({ code: 'too-large', bytes: 200_000_001, mostBytes: 200_000_000 });
  });

  test('that goes away while it is read says so', async () => {
    const file = { size: 5, arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')) };
    expect(await readBackup(file as unknown as Blob, kit().parts, fileWork)).toEqual({
      ok: false,
      trouble: { code: 'unreadable' },
    });
  });

  test('an editor’s UTF-16 and byte order marks change nothing of what it says', async () => {
    const text = await fileOf(furnished());
    expect((await read(`\ufeff${text}`, kit())).ok).toBe(true);
    expect((await read(Buffer.from(`\ufeff${text}`, 'utf16le'), kit())).ok).toBe(true);
  });

  const rows: [string, (text: string) => string, object][] = [
    ['cut short', (text) => text.slice(0, 500), { code: 'not-json' }],
    ['empty', () => '', { code: 'not-json' }],
    ['null', () => 'null', { code: 'not-a-backup' }],
    ['a list', () => '[1]', { code: 'not-a-backup' }],
    ['a project', () => '{"format":"backbow project","version":1}', { code: 'not-a-backup' }],
    ['of a newer version', (text) => text.replace('"version":1', '"version":2'), { code: 'newer' }],
    ['of a version that is none', (text) => text.replace('"version":1', '"version":"1"'), { code: 'not-a-backup' }],
    ['without a checksum', (text) => text.replace('checksum', 'chequesum'), { code: 'damaged' }],
    ['made at no time', (text) => text.replace(/"madeAt":"[^"]*"/, '"madeAt":"1e9"'), { code: 'damaged' }],
    ['nested deep', () => `{"format":"backbow backup","a":${'['.repeat(1e6)}`, { code: 'too-deep' }],
    ['with a part nobody knows', (text) => forged(text, (parts) => void (parts['photos'] = [])), { code: 'newer' }],
  ];
  test.each(rows)('%s', async (_what, change, trouble) => {
    const text = change(await fileOf(furnished()));
    expect(await read(text, kit())).toEqual({ ok: false, trouble });
  });

  type Rows = Record<string, unknown>[];
  const wrong: [string, (parts: Record<string, unknown>) => void, object][] = [
    ['necks that are no list', (parts) => void (parts['necks'] = {}), { part: 'necks', place: 0, code: 'wrong-kind' }],
    ['a neck that is none', (parts) => (parts['necks'] as unknown[]).push(7), { part: 'necks', place: 3 }],
    ['a neck of a wrong name', (parts) => void ((parts['necks'] as Rows)[1]['name'] = 5), { part: 'necks', place: 2 }],
    [
      'a time no clock shows',
      (parts) => void ((parts['necks'] as Rows)[0]['changedAt'] = 9e15),
      { part: 'necks', place: 1 },
    ],
    [
      'a picture from elsewhere',
      (parts) => void ((parts['necks'] as Rows)[0]['picture'] = 'https://example.org/a.png'),
      { part: 'necks', place: 1 },
    ],
    [
      'a picture that holds more',
      (parts) => void ((parts['necks'] as Rows)[0]['picture'] = 'data:image/svg+xml,<svg/>'),
      { part: 'necks', place: 1 },
    ],
    ['a huge project', (parts) => void ((parts['necks'] as Rows)[0]['project'] = 'x'.repeat(2e6)), { part: 'necks' }],
    [
      'two of one id',
      (parts) => (parts['necks'] as Rows).push({ ...(parts['necks'] as Rows)[0] }),
      { part: 'necks', place: 3, code: 'same-id' },
    ],
    [
      'too many',
      (parts) => void (parts['necks'] = Array.from({ length: 5001 }, () => 0)),
      { part: 'necks', place: 0, code: 'too-many' },
    ],
    ['a record without standings', (parts) => void ((parts['bench'] as Rows)[0]['standings'] = []), { part: 'bench' }],
    [
      'an entry out of range',
      (parts) => void ((parts['log'] as Rows)[1]['measuredFrettedMm'] = 50),
      { part: 'log', place: 2 },
    ],
    [
      'a factor below nothing',
      (parts) => void ((parts['accepted'] as { earlier: number[] }).earlier = [-1]),
      { part: 'accepted' },
    ],
    [
      'a language nobody speaks',
      (parts) => void ((parts['settings'] as Rows[0])['language'] = 'xx'),
      { part: 'settings' },
    ],
    ['settings that are none', (parts) => void (parts['settings'] = []), { part: 'settings', place: 0 }],
  ];
  test.each(wrong)('%s: it is said where, and nothing changes', async (_what, change, fault) => {
    const text = forged(await fileOf(furnished()), change);
    const to = kit();
    const before = held(to);
    expect(await read(text, to)).toMatchObject({ ok: false, trouble: { code: 'refused', fault } });
    expect(held(to)).toBe(before);
  });

  test('a part that is missing is empty', async () => {
    const text = forged(await fileOf(furnished()), (parts) => void delete parts['accepted']);
    const to = kit();
    expect((await restoreText(to, text)).outcomes.map(({ id }) => id)).toEqual(['log', 'necks', 'bench', 'settings']);
  });
});

describe('a word about making one', () => {
  const DAY = 24 * 3600_000;
  const necks = (count: number, changedAt = 100 * DAY) =>
    Array.from({ length: count }, () => ({ changedAt, deletedAt: null }));

  test('comes when there is much in no backup, and not before', () => {
    expect(isBackupDue(null, necks(4), 0, 200 * DAY)).toBe(false);
    expect(isBackupDue(null, necks(3), 2, 200 * DAY)).toBe(true);
    const last = { at: 90 * DAY, entries: 3 };
    expect(isBackupDue(last, necks(9), 3, 100 * DAY)).toBe(false);
    expect(isBackupDue(last, necks(9), 3, 121 * DAY)).toBe(true);
    expect(isBackupDue(last, necks(9, 80 * DAY), 3, 121 * DAY)).toBe(false);
    expect(isBackupDue(last, necks(2), 6, 121 * DAY)).toBe(true);
    // Deleted necks are no loss, and a clock that was set back is no reason.
    expect(
      isBackupDue(
        last,
        necks(9).map((each) => ({ ...each, deletedAt: 1 })),
        3,
        121 * DAY,
      ),
    ).toBe(false);
    expect(isBackupDue(last, necks(9), 3, 1 * DAY)).toBe(false);
  });
});
