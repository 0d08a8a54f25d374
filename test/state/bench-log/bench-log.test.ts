/** The bench log keeps what it is given, loses nothing to another window, and lives on in memory where storage is refused. */
import { describe, expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { defaultBuild } from '../../../src/neck/build.ts';
import {
  adoptedFor,
  biteFactorOf,
  biteLogSpreadOf,
  MOST_ADOPTED,
  withAdopted,
} from '../../../src/state/bench-log/adopted.ts';
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
    await log().adoptBite({ biteFactor: 1.2, logSpread: 0.1, necks: 2 });
    await log().readBenchLog();
    expect(necks(log())).toEqual(['A', 'B']);
    expect(log().adoptedBites).toHaveLength(1);
    expect(log().logTrouble).toBe('refused');
  });

  test('does not write over the record of a newer release', async () => {
    const newer = { version: 2, pages: [] };
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

describe('a bite factor that was taken over', () => {
  const build = { ...defaultBuild(), biteFactor: 1.18 };

  test('brings the spread of the log, any other factor the one of an unmeasured bite', async () => {
    const log = windowOf(memory());
    await log().adoptBite({ biteFactor: 1.18, logSpread: 0.12, necks: 3 });
    expect(biteLogSpreadOf(log().adoptedBites, build)).toBe(0.12);
    expect(biteLogSpreadOf(log().adoptedBites, { biteFactor: 1.2 })).toBeUndefined();
    await log().adoptBite({ biteFactor: 1.18, logSpread: 0.1, necks: 4 });
    expect(adoptedFor(log().adoptedBites, build)?.necks).toBe(4);
  });

  test('is said and kept to a hundredth; the oldest of many is forgotten', () => {
    expect(biteFactorOf({ median: 1.17643 })).toBe(1.18);
    let adopted = withAdopted([], { biteFactor: 0.5, logSpread: 0.1, necks: 1 });
    for (let i = 0; i < MOST_ADOPTED; i += 1) {
      adopted = withAdopted(adopted, { biteFactor: 1 + i / 100, logSpread: 0.1, necks: 1 });
    }
    expect(adopted).toHaveLength(MOST_ADOPTED);
    expect(adoptedFor(adopted, { biteFactor: 0.5 })).toBeUndefined();
  });
});
