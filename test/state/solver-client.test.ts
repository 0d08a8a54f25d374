import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import type { Prediction } from '../../src/mechanics/prediction-types.ts';
import type { StressField } from '../../src/mechanics/elements/stress.ts';
import type { Uncertainty } from '../../src/mechanics/uncertainty/types.ts';
import { createSolver, type SolverListener, type SolverWorker } from '../../src/state/solver-client.ts';

const PATIENCE_MS = 1000;
const REST_MS = 100;
const named = (name: string): Build => ({ ...defaultBuild(), name });
const prediction = { stringPullN: 1 } as Prediction;
const noStress: StressField = {
  fret: 0,
  cornersMm: new Float64Array(0),
  alongMPa: new Float64Array(0),
  acrossMPa: new Float64Array(0),
};
const uncertainty = { seed: 1 } as Uncertainty;

/** A worker whose answers the test gives. */
class FakeWorker implements SolverWorker {
  readonly asked: string[] = [];
  ended = false;
  private answers: { resolve: (p: Prediction) => void; reject: (e: Error) => void }[] = [];
  private estimates: { resolve: (u: Uncertainty | null) => void; reject: (e: Error) => void }[] = [];
  private crashed: () => void = () => undefined;

  predict(build: Build): Promise<Prediction> {
    this.asked.push(build.name);
    return new Promise((resolve, reject) => {
      this.answers.push({ resolve, reject });
    });
  }

  estimate(build: Build): Promise<Uncertainty | null> {
    this.asked.push(`bands of ${build.name}`);
    return new Promise((resolve, reject) => {
      this.estimates.push({ resolve, reject });
    });
  }

  stress(_build: Build, fret: number): Promise<StressField> {
    return Promise.resolve({ ...noStress, fret });
  }

  async answerEstimate(answer: Uncertainty | null = uncertainty): Promise<void> {
    this.estimates.shift()!.resolve(answer);
    await vi.advanceTimersByTimeAsync(0);
  }

  onCrash(crashed: () => void): void {
    this.crashed = crashed;
  }

  end(): void {
    this.ended = true;
  }

  async answer(): Promise<void> {
    this.answers.shift()!.resolve(prediction);
    await vi.advanceTimersByTimeAsync(0);
  }

  async fail(message: string): Promise<void> {
    this.answers.shift()!.reject(new Error(message));
    await vi.advanceTimersByTimeAsync(0);
  }

  crash(): void {
    this.crashed();
  }
}

let workers: FakeWorker[];
let told: string[];
const listener: SolverListener = {
  working: () => undefined,
  solved: (build) => told.push(`solved ${build.name}`),
  estimated: (build) => told.push(`bands of ${build.name}`),
  restarted: () => told.push('restarted'),
  failed: (failure) => told.push(`failed: ${failure.code === 'unforeseen' ? failure.message : failure.code}`),
};

function solver(telling: SolverListener = listener) {
  return createSolver(
    () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return {
        predict: (build) => worker.predict(build),
        estimate: (build) => worker.estimate(build),
        stress: (build, fret) => worker.stress(build, fret),
        onCrash: (crashed) => worker.onCrash(crashed),
        end: () => worker.end(),
      };
    },
    telling,
    { patienceMs: PATIENCE_MS, restMs: REST_MS },
  );
}

beforeEach(() => {
  vi.useFakeTimers();
  workers = [];
  told = [];
});
afterEach(() => {
  vi.useRealTimers();
});

test('the latest value wins: of those that came meanwhile only the newest is computed', async () => {
  const { request } = solver();
  for (const name of ['a', 'b', 'c', 'd']) request(named(name));
  expect(workers[0].asked).toEqual(['a']);
  await workers[0].answer();
  await workers[0].answer();
  expect(workers[0].asked).toEqual(['a', 'd']);
  expect(told).toEqual(['solved a', 'solved d']);
});

describe('a worker that is lost', () => {
  test('by crashing is replaced, and the newest build is computed', async () => {
    const { request } = solver();
    request(named('a'));
    request(named('b'));
    workers[0].crash();
    expect(workers[0].ended).toBe(true);
    expect(workers[1].asked).toEqual(['b']);
    await workers[1].answer();
    expect(told).toEqual(['restarted', 'solved b']);
  });

  test('by falling silent is replaced, and its late answer counts for nothing', async () => {
    const { request } = solver();
    request(named('a'));
    await vi.advanceTimersByTimeAsync(PATIENCE_MS + 1);
    expect(workers).toHaveLength(2);
    await workers[0].answer();
    await workers[1].answer();
    expect(told).toEqual(['restarted', 'solved a']);
  });

  test('while idle is replaced when it is needed', async () => {
    const { request } = solver();
    request(named('a'));
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    await workers[0].answerEstimate();
    workers[0].crash();
    expect(workers).toHaveLength(1);
    request(named('b'));
    expect(workers[1].asked).toEqual(['b']);
  });

  test('again and again ends the trying, until the next request', () => {
    const { request } = solver();
    request(named('a'));
    for (let loss = 0; loss < 4; loss += 1) workers.at(-1)!.crash();
    expect(told).toEqual(['restarted', 'restarted', 'restarted', 'failed: stopped-repeatedly']);
    expect(workers).toHaveLength(4);
    request(named('b'));
    expect(workers.at(-1)!.asked).toEqual(['b']);
  });
});

describe('the bands', () => {
  test('are asked for once the page has come to rest', async () => {
    const { request } = solver();
    request(named('a'));
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS / 2);
    request(named('b'));
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS * 0.9);
    expect(workers[0].asked).toEqual(['a', 'b']);
    await vi.advanceTimersByTimeAsync(REST_MS * 0.2);
    expect(workers[0].asked).toEqual(['a', 'b', 'bands of b']);
    await workers[0].answerEstimate();
    expect(told).toEqual(['solved a', 'solved b', 'bands of b']);
  });

  test('do not hold up a newer build, and count for nothing once it has come', async () => {
    const { request } = solver();
    request(named('a'));
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    request(named('b'));
    expect(workers[0].asked).toEqual(['a', 'bands of a', 'b']);
    await workers[0].answerEstimate(null);
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    await workers[0].answerEstimate();
    expect(told).toEqual(['solved a', 'solved b', 'bands of b']);
  });

  test('of the same build asked for again are the newer ones, however late the others come', async () => {
    const build = named('one');
    const bands: Uncertainty[] = [];
    const { request } = solver({ ...listener, estimated: (_build, found) => bands.push(found) });
    request(build);
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    // What was measured is read meanwhile: the same build is asked for with it.
    request(build);
    await workers[0].answer();
    await workers[0].answerEstimate({ seed: 1 } as Uncertainty);
    await vi.advanceTimersByTimeAsync(REST_MS);
    await workers[0].answerEstimate({ seed: 2 } as Uncertainty);
    expect(bands).toEqual([{ seed: 2 }]);
  });

  test('are computed again when the worker is lost over them', async () => {
    const { request } = solver();
    request(named('a'));
    await workers[0].answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    await vi.advanceTimersByTimeAsync(PATIENCE_MS + 1);
    await workers[1].answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    await workers[1].answerEstimate();
    expect(told).toEqual(['solved a', 'restarted', 'solved a', 'bands of a']);
  });
});

test('an error is told, without another worker', async () => {
  const { request } = solver();
  request(named('a'));
  await workers[0].fail('kerf too wide');
  expect(told).toEqual(['failed: kerf too wide']);
  expect(workers).toHaveLength(1);
});

test('an error of a build that has been superseded is not told', async () => {
  const { request } = solver();
  request(named('a'));
  request(named('b'));
  await workers[0].fail('kerf too wide');
  await workers[0].answer();
  expect(told).toEqual(['solved b']);
});

test('after the end nothing more comes', async () => {
  const { request, end } = solver();
  request(named('a'));
  end();
  await workers[0].answer();
  await vi.advanceTimersByTimeAsync(PATIENCE_MS * 2);
  request(named('b'));
  expect(workers).toHaveLength(1);
  expect(workers[0].ended).toBe(true);
  expect(told).toEqual([]);
});
