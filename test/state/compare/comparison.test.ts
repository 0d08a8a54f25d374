/** Compared necks: which one is on the bench, and what choosing, copying and undo do to them. */
import type { Failure } from '../../../src/speech/failures.ts';
import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../tools/presets.ts';
import {
  columnOf,
  comparedNecks,
  ON_BENCH,
  wayColumn,
  type Column,
} from '../../../src/state/compare/comparison-slice.ts';
import { seatedAs, waysOf } from '../../../src/verdict/ways.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { createNeckLine } from '../../../src/state/compare/neck-line.ts';
import { solveNecks, type NecksWorker, type SolvedNeck } from '../../../src/state/compare/solve-necks.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { momentOf } from '../../../src/verdict/rail.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore, type BackbowStore } from '../../../src/state/store.ts';

let store: BackbowStore;
const state = () => store.getState();
const [one, two, three] = PRESETS.slice(0, 3).map(({ build }) => build) as [Build, Build, Build];
const compared = () => comparedNecks(state().columns, state().build);
const builds = () => compared().necks.map(({ build }) => build);
const names = () => builds().map(({ name }) => name);
const bench = () => compared().bench;

beforeEach(() => {
  store = createBackbowStore(STANDARD_PREFERENCES);
  state().replaceBuild(one, 'Start');
  state().setColumns([ON_BENCH, columnOf(two), columnOf(three)]);
});

describe('columns that follow the bench', () => {
  const ways = () => state().setColumns(METHODS.map(wayColumn));

  test('are the neck on the bench in each way of seating, whatever is done to it (seed 141)', () => {
    ways();
    const change = fc.oneof(
      fc.record({ kerfMm: fc.double({ min: 0.5, max: 0.75, noNaN: true }) }),
      fc.record({ method: fc.constantFrom(...METHODS) }),
      fc.record({ boardThicknessMm: fc.double({ min: 5, max: 8, noNaN: true }) }),
    );
    const step = fc.oneof(
      change.map((changed) => () => void state().change(changed, 'Change')),
      fc.constantFrom(...PRESETS).map(
        ({ build }) =>
          () =>
            void state().replaceBuild(build, 'Another neck'),
      ),
      fc.constantFrom(0, 1, 2).map((place) => () => {
        if (compared().necks.some((neck) => neck.place === place)) state().chooseColumn(place, 'Choose');
      }),
      fc.constant(() => state().undo()),
      fc.constant(() => state().redo()),
    );
    let moved = 0;
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), (steps) => {
        for (const take of steps) {
          const before = state().build;
          take();
          if (state().build !== before) moved += 1;
          const { build } = state();
          expect(builds()).toEqual(waysOf(build).builds);
          expect(compared().necks[bench()!].build).toBe(build);
        }
      }),
      { numRuns: 200, seed: 141 },
    );
    expect(moved).toBeGreaterThan(300);
  });

  test('one that is kept stays, says since when, and can follow again', () => {
    ways();
    const started = Date.now();
    const glued = seatedAs(one, 'glue')!;
    state().keepColumn(1, true);
    state().change({ kerfMm: 0.6 }, 'Kerf');
    expect(builds()).toEqual([seatedAs(state().build, 'press'), glued, seatedAs(state().build, 'both')]);
    const { column } = compared().necks[1];
    if (column.follows !== 'nothing') throw new Error('it is kept');
    expect(column.since).toBeGreaterThanOrEqual(started);
    expect(column.since).toBeLessThanOrEqual(Date.now());
    state().keepColumn(1, false);
    expect(builds()).toEqual(waysOf(state().build).builds);
  });
});

describe('the neck on the bench', () => {
  test('is known among the others, and follows what is changed and undone', () => {
    expect(bench()).toBe(0);
    state().change({ kerfMm: 0.6 }, 'Kerf');
    expect(builds()[0].kerfMm).toBe(0.6);
    state().undo();
    expect(builds()).toEqual([one, two, three]);
  });

  test('may be none of them; then nothing follows it', () => {
    state().setColumns([columnOf(two), columnOf(three)]);
    expect(bench()).toBeNull();
    state().change({ kerfMm: 0.6 }, 'Kerf');
    expect(builds()).toEqual([two, three]);
  });

  test('is one that came from elsewhere as long as the two are the same, and no longer', () => {
    state().setColumns([columnOf(two), columnOf(one)]);
    expect(bench()).toBe(1);
    state().change({ kerfMm: 0.6 }, 'Kerf');
    expect([builds(), bench()]).toEqual([[two, one], null]);
  });
});

describe('choosing', () => {
  test('is one step, and undo gives the bench back with all necks in their places', () => {
    const steps = state().history.past.length;
    expect(state().chooseColumn(1, 'Choose').ok).toBe(true);
    expect(state().build).toEqual(two);
    expect(state().history.past.length).toBe(steps + 1);
    expect([names(), bench()]).toEqual([[one.name, two.name, three.name], 1]);
    state().undo();
    expect(state().build).toEqual(one);
    expect([names(), bench()]).toEqual([[one.name, two.name, three.name], 0]);
    state().redo();
    expect([names(), bench()]).toEqual([[one.name, two.name, three.name], 1]);
    state().undo();
    state().change({ kerfMm: 0.6 }, 'Kerf');
    expect(builds()).toEqual([{ ...one, kerfMm: 0.6 }, two, three]);
  });

  test('another neck keeps the ways of the one before beside it', () => {
    state().setColumns([wayColumn('press'), wayColumn('glue'), columnOf(two)]);
    const before = builds();
    state().chooseColumn(2, 'Choose');
    expect([builds(), bench()]).toEqual([before, 2]);
    state().change({ kerfMm: 0.6 }, 'Kerf');
    expect(builds()).toEqual([before[0], before[1], { ...two, kerfMm: 0.6 }]);
  });

  test('another way leaves the neck as it was beside it', () => {
    state().setColumns([ON_BENCH, wayColumn('glue')]);
    state().chooseColumn(1, 'Choose');
    expect(builds()).toEqual([seatedAs(one, 'press'), seatedAs(one, 'glue')]);
    expect(bench()).toBe(1);
  });
});

describe('copying', () => {
  test('gives the bench those settings and no others, as one step', () => {
    const wanted: Build = { ...one, name: 'Other', kerfMm: 0.61, chamferMm: 0.3 };
    state().putColumn(1, columnOf(wanted));
    const steps = state().history.past.length;
    expect(state().copyFromColumn(1, ['kerfMm', 'chamferMm'], 'Copy').ok).toBe(true);
    expect(state().build).toEqual({ ...one, kerfMm: 0.61, chamferMm: 0.3 });
    expect(state().history.past.length).toBe(steps + 1);
    expect(builds()[0]).toEqual(state().build);
    state().undo();
    expect(builds()).toEqual([one, wanted, three]);
  });

  test('what cannot be built is refused whole, with its reason', () => {
    // A slot that is deeper than the bench's board.
    state().putColumn(1, columnOf({ ...one, boardThicknessMm: 9, slotDepthMm: 8 }));
    const before = state().build;
    const outcome = state().copyFromColumn(1, ['slotDepthMm'], 'Copy');
    expect(outcome.ok).toBe(false);
    expect(outcome.ok ? [] : outcome.problems.map(({ parameter }) => parameter)).toContain('slotDepthMm');
    expect(state().build).toBe(before);
  });
});

describe('places', () => {
  test('are swapped, filled and emptied; the bench goes along', () => {
    state().swapColumns(0, 2);
    expect([names(), bench()]).toEqual([[three.name, two.name, one.name], 2]);
    state().removeColumn(1);
    expect([names(), bench()]).toEqual([[three.name, one.name], 1]);
    state().putColumn(2, columnOf(two));
    expect(names()).toEqual([three.name, one.name, two.name]);
  });

  test('that are not there, one neck, and four necks are refused', () => {
    const { setColumns, putColumn, swapColumns, removeColumn } = state();
    const [first, second, third] = state().columns as [Column, Column, Column];
    expect(() => setColumns([first])).toThrow(RangeError);
    expect(() => setColumns([first, second, third, first])).toThrow(RangeError);
    expect(() => putColumn(3, first)).toThrow(RangeError);
    expect(() => swapColumns(0, 3)).toThrow(RangeError);
    removeColumn(2);
    expect(() => removeColumn(1)).toThrow(RangeError);
    expect(names()).toEqual([one.name, two.name]);
  });
});

test('a compared neck’s line is the library’s at the moment on the rail, as much enlarged as the bench’s', () => {
  const prediction = createPredictor().predict(two);
  const source = createNeckLine(store, two, prediction);
  let told = 0;
  const stop = source.subscribe(() => (told += 1));
  for (const rail of [{ phase: 'strung' }, { phase: 'frets', fretsIn: 5 }, { phase: 'rod' }] as const) {
    store.getState().setRail(rail);
    const expected = lineAt(prediction, two.method, momentOf({ build: two, prediction }, rail));
    expect(Array.from(source.read().reliefMm)).toEqual([...expected.reliefMm]);
  }
  store.getState().setBowFactor(80);
  expect(source.read().factor).toBe(80);
  expect(told).toBe(4);
  stop();
});

describe('solving', () => {
  const worker = (over: Partial<NecksWorker> = {}): NecksWorker & { ended: number } => ({
    ended: 0,
    predict: (build) => Promise.resolve({ of: build.name } as never),
    estimate: (build, { biteLogSpread }) => Promise.resolve({ of: build.name, spread: biteLogSpread } as never),
    onCrash: () => undefined,
    end() {
      this.ended += 1;
    },
    ...over,
  });

  test('gives every prediction before the first band, and ends its worker', async () => {
    const fake = worker();
    const came: string[] = [];
    await new Promise<void>((resolve) => {
      solveNecks(
        [one, two],
        (build) => (build === two ? { biteLogSpread: 0.2 } : {}),
        {
          solved: (build, { uncertainty }: SolvedNeck) => {
            came.push(
              `${build.name} ${uncertainty ? 'band' : 'line'} ${(uncertainty as { spread?: number } | null)?.spread ?? ''}`.trim(),
            );
            if (came.length === 4) resolve();
          },
          failed: ({ code }) => came.push(code),
        },
        () => fake,
      );
    });
    await Promise.resolve();
    expect(came).toEqual([`${one.name} line`, `${two.name} line`, `${one.name} band`, `${two.name} band 0.2`]);
    expect(fake.ended).toBe(1);
  });

  test('tells why it failed, and says nothing once given up', async () => {
    const reasons: unknown[] = [];
    const listener = { solved: () => reasons.push('solved'), failed: (failure: Failure) => reasons.push(failure) };
    const broken = worker({ predict: () => Promise.reject(new Error('no such wood')) });
    solveNecks(
      [one],
      () => ({}),
      listener,
      () => broken,
    );
    await new Promise((resolve) => setTimeout(resolve));
    expect(reasons).toEqual([{ code: 'unforeseen', message: 'no such wood' }]);
    const given = worker();
    solveNecks(
      [one],
      () => ({}),
      listener,
      () => given,
    )();
    await new Promise((resolve) => setTimeout(resolve));
    expect(reasons).toEqual([{ code: 'unforeseen', message: 'no such wood' }]);
    expect(given.ended).toBe(1);
  });
});
