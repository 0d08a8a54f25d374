/** Compared necks: which one is on the bench, and what choosing, copying and undo do to them. */
import type { Failure } from '../../../src/speech/failures.ts';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../tools/presets.ts';
import { createComparison, type PageComparison } from '../../../src/state/compare/comparison.ts';
import { createNeckLine } from '../../../src/state/compare/neck-line.ts';
import { solveNecks, type NecksWorker, type SolvedNeck } from '../../../src/state/compare/solve-necks.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { momentAt } from '../../../src/state/rail.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore, type BackbowStore } from '../../../src/state/store.ts';

let store: BackbowStore;
let comparison: PageComparison;
const [one, two, three] = PRESETS.slice(0, 3).map(({ build }) => build) as [Build, Build, Build];
const names = () => comparison.state.getState().builds.map(({ name }) => name);
const bench = () => comparison.state.getState().bench;

beforeEach(() => {
  store = createBackbowStore(STANDARD_PREFERENCES);
  store.getState().replaceBuild(one, 'Start');
  comparison = createComparison(store);
  comparison.compare([one, two, three]);
});

describe('the neck on the bench', () => {
  test('is known among the others, and follows what is changed and undone', () => {
    expect(bench()).toBe(0);
    store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    expect(comparison.state.getState().builds[0]!.kerfMm).toBe(0.6);
    store.getState().undo();
    expect(comparison.state.getState().builds).toEqual([one, two, three]);
  });

  test('may be none of them; then nothing follows it', () => {
    comparison.compare([two, three]);
    expect(bench()).toBeNull();
    store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    expect(comparison.state.getState().builds).toEqual([two, three]);
  });
});

describe('choosing', () => {
  test('is one step, and undo gives the bench back with all necks in their places', () => {
    const steps = store.getState().history.past.length;
    expect(comparison.choose(1, 'Choose').ok).toBe(true);
    expect(store.getState().build).toEqual(two);
    expect(store.getState().history.past.length).toBe(steps + 1);
    expect([names(), bench()]).toEqual([[one.name, two.name, three.name], 1]);
    store.getState().undo();
    expect(store.getState().build).toEqual(one);
    expect([names(), bench()]).toEqual([[one.name, two.name, three.name], 0]);
    store.getState().redo();
    expect(bench()).toBe(1);
  });
});

describe('copying', () => {
  test('gives the bench those settings and no others, as one step', () => {
    const wanted: Build = { ...one, name: 'Other', kerfMm: 0.61, chamferMm: 0.3 };
    comparison.put(1, wanted);
    const steps = store.getState().history.past.length;
    expect(comparison.copy(1, ['kerfMm', 'chamferMm'], 'Copy').ok).toBe(true);
    expect(store.getState().build).toEqual({ ...one, kerfMm: 0.61, chamferMm: 0.3 });
    expect(store.getState().history.past.length).toBe(steps + 1);
    expect(comparison.state.getState().builds[0]).toEqual(store.getState().build);
    store.getState().undo();
    expect(comparison.state.getState().builds).toEqual([one, wanted, three]);
  });

  test('what cannot be built is refused whole, with its reason', () => {
    // A slot that is deeper than the bench's board.
    comparison.put(1, { ...one, boardThicknessMm: 9, slotDepthMm: 8 });
    const before = store.getState().build;
    const outcome = comparison.copy(1, ['slotDepthMm'], 'Copy');
    expect(outcome.ok).toBe(false);
    expect(outcome.ok ? [] : outcome.problems.map(({ parameter }) => parameter)).toContain('slotDepthMm');
    expect(store.getState().build).toBe(before);
  });
});

describe('places', () => {
  test('are swapped, filled and emptied; the bench goes along', () => {
    comparison.swap(0, 2);
    expect([names(), bench()]).toEqual([[three.name, two.name, one.name], 2]);
    comparison.remove(1);
    expect([names(), bench()]).toEqual([[three.name, one.name], 1]);
    comparison.put(2, two);
    expect(names()).toEqual([three.name, one.name, two.name]);
  });

  test('that are not there, one neck, and four necks are refused', () => {
    expect(() => comparison.compare([one])).toThrow(RangeError);
    expect(() => comparison.compare([one, two, three, one])).toThrow(RangeError);
    expect(() => comparison.put(3, one)).toThrow(RangeError);
    expect(() => comparison.swap(0, 3)).toThrow(RangeError);
    comparison.remove(2);
    expect(() => comparison.remove(1)).toThrow(RangeError);
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
    const expected = lineAt(prediction, two.method, momentAt(two, rail));
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
    estimate: (build, spread) => Promise.resolve({ of: build.name, spread } as never),
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
        (build) => (build === two ? 0.2 : undefined),
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
      () => undefined,
      listener,
      () => broken,
    );
    await new Promise((resolve) => setTimeout(resolve));
    expect(reasons).toEqual([{ code: 'unforeseen', message: 'no such wood' }]);
    const given = worker();
    solveNecks(
      [one],
      () => undefined,
      listener,
      () => given,
    )();
    await new Promise((resolve) => setTimeout(resolve));
    expect(reasons).toEqual([{ code: 'unforeseen', message: 'no such wood' }]);
    expect(given.ended).toBe(1);
  });
});
