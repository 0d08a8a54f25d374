/** The choices of a page are solved one after the other, and a worker that breaks down is told about. */
import { expect, test, vi } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import type { Build } from '../../../src/neck/build.ts';
import { solveChoices, type ChoicesWorker, type Solved } from '../../../src/state/share/solve-choices.ts';

const builds = PRESETS.slice(0, 2).map(({ build }) => build);

function worker(change: Partial<ChoicesWorker> = {}) {
  const end = vi.fn();
  let crashed: () => void = () => undefined;
  const made = {
    predict: (build: Build) => Promise.resolve({ of: build.name } as never),
    estimate: (build: Build) => Promise.resolve({ bandOf: build.name } as never),
    onCrash: (heard: () => void) => {
      crashed = heard;
    },
    end,
    ...change,
  } satisfies ChoicesWorker;
  return { made, end, crash: () => crashed() };
}

function listen() {
  const told: [number, Solved][] = [];
  const failed = vi.fn();
  return {
    told,
    failed,
    listener: { solved: (index: number, solved: Solved) => void told.push([index, solved]), failed },
  };
}

test('all predictions come before the first band, and the worker is ended', async () => {
  const { made, end } = worker();
  const { told, failed, listener } = listen();
  solveChoices(builds, listener, () => made);
  await vi.waitFor(() => expect(end).toHaveBeenCalledTimes(1));
  expect(told.map(([index, { uncertainty }]) => [index, uncertainty !== null])).toEqual([
    [0, false],
    [1, false],
    [0, true],
    [1, true],
  ]);
  expect(told[3][1]).toEqual({ prediction: { of: builds[1].name }, uncertainty: { bandOf: builds[1].name } });
  expect(failed).not.toHaveBeenCalled();
});

test('a worker that refuses or breaks down is told about once', async () => {
  const refusing = worker({ predict: () => Promise.reject(new Error('no')) });
  const first = listen();
  solveChoices(builds, first.listener, () => refusing.made);
  await vi.waitFor(() => expect(first.failed).toHaveBeenCalledTimes(1));

  const silent = worker({ predict: () => new Promise(() => undefined) });
  const second = listen();
  solveChoices(builds, second.listener, () => silent.made);
  silent.crash();
  silent.crash();
  expect(second.failed).toHaveBeenCalledTimes(1);
  expect(silent.end).toHaveBeenCalledTimes(1);
});

test('nothing is told after it was stopped', async () => {
  const { made, end } = worker();
  const { told, failed, listener } = listen();
  solveChoices(builds, listener, () => made)();
  await new Promise((resolve) => setTimeout(resolve, 10));
  expect([told, failed.mock.calls.length, end.mock.calls.length]).toEqual([[], 0, 1]);
});
