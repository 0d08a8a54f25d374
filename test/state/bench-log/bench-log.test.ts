/** The bench log keeps what it is given, loses nothing to another window, and lives on in memory where storage is refused. */
import { STANDARD_LAW } from '../../../src/mechanics/bench-log/law.ts';
import { describe, expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { UNSAID } from '../../../src/mechanics/bench-log/entry.ts';
import { referenceTo } from '../../../src/mechanics/bench-log/reference.ts';
import { MOST_ADOPTED, withAdopted } from '../../../src/state/bench-log/adopted.ts';
import { createBenchLogSlice, type BenchLogSlice } from '../../../src/state/bench-log/bench-log-slice.ts';
import type { LogStorage } from '../../../src/state/bench-log/log-storage.ts';
import type { BackbowState } from '../../../src/state/store.ts';
import { entry } from './entries.ts';

function memory(first?: unknown): LogStorage & { stored: unknown } {
  const kept = { stored: first };
  return {
    get stored() {
      return kept.stored;
    },
    read: async () => structuredClone(kept.stored),
    change: async (change) => {
      kept.stored = structuredClone(change(structuredClone(kept.stored)));
    },
  };
}

const REFUSED: LogStorage = {
  read: () => Promise.reject(new Error('SecurityError')),
  change: () => Promise.reject(new Error('SecurityError')),
};

function windowOf(storage: LogStorage): () => BenchLogSlice {
  // The slice uses nothing of the rest of the state.
  const store = createStore<BackbowState>()((...api) => createBenchLogSlice(storage)(...api) as BackbowState);
  return store.getState;
}

const necks = (log: BenchLogSlice) => log.benchLog?.map(({ neck }) => neck);

describe('a log that is kept', () => {
  test('is there again in the next window, in the order of the dates', async () => {
    const storage = memory();
    const first = windowOf(storage);
    expect(first().benchLog).toBeNull();
    await first().changeBenchLog([], [entry('B', { date: '2026-04-01' }), entry('A')]);
    expect(necks(first())).toEqual(['A', 'B']);
    const second = windowOf(storage);
    await second().readBenchLog();
    expect(second().benchLog).toEqual(first().benchLog);
    expect(second().logTrouble).toBeNull();
  });

  test('changes, deletes and brings back single entries; one that is there is not put in twice', async () => {
    const log = windowOf(memory());
    await log().changeBenchLog([], [entry('A'), entry('B')]);
    await log().changeBenchLog([], [entry('A')]);
    expect(necks(log())).toEqual(['A', 'B']);
    await log().changeBenchLog([entry('A')], [entry('A', { gaugeErrorMm: 0.05 })]);
    expect(
      log()
        .benchLog!.map(({ gaugeErrorMm }) => gaugeErrorMm)
        .toSorted((a, b) => a - b),
    ).toEqual([0.02, 0.05]);
    await log().changeBenchLog([entry('B')], []);
    expect(necks(log())).toEqual(['A']);
    await log().changeBenchLog([], [entry('B')]);
    expect(necks(log())).toHaveLength(2);
  });

  test('loses nothing to another window', async () => {
    const storage = memory();
    const [one, other] = [windowOf(storage), windowOf(storage)];
    await one().readBenchLog();
    await other().readBenchLog();
    await one().changeBenchLog([], [entry('A')]);
    await other().changeBenchLog([], [entry('B')]);
    expect(necks(other())?.toSorted()).toEqual(['A', 'B']);
    await one().readBenchLog();
    expect(necks(one())?.toSorted()).toEqual(['A', 'B']);
  });

  test('leaves entries that it cannot read where they are, and tells how many', async () => {
    const storage = memory({ version: 1, entries: [{ neck: 'from elsewhere' }, entry('A')], adopted: ['x'] });
    const log = windowOf(storage);
    await log().changeBenchLog([], [entry('B')]);
    expect(necks(log())).toEqual(['A', 'B']);
    expect(log().unreadableEntries).toBe(1);
    expect((storage.stored as { entries: unknown[] }).entries[0]).toEqual({ neck: 'from elsewhere' });
  });
});

describe('a log that cannot be kept', () => {
  test('lives as long as the page where storage is refused', async () => {
    const log = windowOf(REFUSED);
    await log().changeBenchLog([], [entry('A')]);
    await log().changeBenchLog([], [entry('B')]);
    await log().adoptBite({ factor: 1.2, measurements: [], hash: '0'.repeat(32), logSpread: 0.1, necks: 2 });
    await log().readBenchLog();
    expect(necks(log())).toEqual(['A', 'B']);
    expect(log().adoptedBites).toHaveLength(1);
    expect(log().logTrouble).toBe('refused');
  });

  test('does not write over the record of a newer release', async () => {
    const newer = { version: 3, pages: [] };
    const storage = memory(newer);
    const log = windowOf(storage);
    await log().changeBenchLog([], [entry('A')]);
    expect(log().logTrouble).toBe('newer');
    expect(necks(log())).toEqual(['A']);
    expect(storage.stored).toEqual(newer);
  });

  test('says when the room ran out', async () => {
    const full: LogStorage = {
      read: async () => undefined,
      change: () => Promise.reject(new DOMException('full', 'QuotaExceededError')),
    };
    const log = windowOf(full);
    await log().changeBenchLog([], [entry('A')]);
    expect([log().logTrouble, necks(log())]).toEqual(['full', ['A']]);
  });
});

describe('measurements that were accepted', () => {
  const posterior = { median: 1.18, p05: 0.9, p95: 1.5, logSpread: 0.12, necks: 2, doubts: [] };

  test('are kept with the log', async () => {
    const storage = memory();
    const log = windowOf(storage);
    const entries = [entry('A'), entry('B')];
    await log().changeBenchLog([], entries);
    await log().adoptBite(referenceTo(entries, posterior, STANDARD_LAW));
    const other = windowOf(storage);
    await other().readBenchLog();
    expect(other().adoptedBites).toEqual([referenceTo(entries, posterior, STANDARD_LAW)]);
  });

  test('of the same set stand there once, the latest first; the oldest of many are forgotten', () => {
    const of = (neck: string) => referenceTo([entry(neck)], posterior, STANDARD_LAW);
    const first = of('first');
    let adopted = withAdopted(withAdopted([], first), { ...first, logSpread: 0.1 });
    expect(adopted).toEqual([{ ...first, logSpread: 0.1 }]);
    for (let i = 0; i < MOST_ADOPTED; i += 1) adopted = withAdopted(adopted, of(`N ${i}`));
    expect(adopted).toHaveLength(MOST_ADOPTED);
    expect(adopted.some(({ hash }) => hash === first.hash)).toBe(false);
  });
});

describe('a record of the first version', () => {
  const { id: _a, workshop: _b, ...bare } = entry('A');
  const old = () => {
    // As the first version wrote it: what an entry says of its circumstances did not exist.
    const content = Object.fromEntries(Object.entries(bare).filter(([key]) => !(key in UNSAID)));
    return { version: 1, entries: [content], adopted: [{ biteFactor: 1.18, logSpread: 0.12, necks: 3 }] };
  };

  test('opens with the same entries, which get the same ids on every device', async () => {
    const [one, other] = [windowOf(memory(old())), windowOf(memory(old()))];
    await one().readBenchLog();
    await other().readBenchLog();
    expect(one().benchLog).toEqual([entry('A')]);
    expect(other().benchLog).toEqual(one().benchLog);
    expect(one().unreadableEntries).toBe(0);
  });

  test('narrows nothing by the factors that it took over, and remembers which they were, also after a change', async () => {
    const storage = memory(old());
    const log = windowOf(storage);
    await log().changeBenchLog([], [entry('B')]);
    const again = windowOf(storage);
    await again().readBenchLog();
    expect([again().adoptedBites, again().earlierBites, necks(again())]).toEqual([[], [1.18], ['A', 'B']]);
    expect(storage.stored).toMatchObject({ version: 2, earlier: [1.18] });
  });
});

test('an entry that another window has changed meanwhile is found by its id', async () => {
  const storage = memory();
  const [one, other] = [windowOf(storage), windowOf(storage)];
  await one().changeBenchLog([], [entry('A')]);
  await other().readBenchLog();
  await one().changeBenchLog([entry('A')], [entry('A', { gaugeErrorMm: 0.05 })]);
  await other().changeBenchLog([entry('A')], []);
  expect(other().benchLog).toEqual([]);
});
