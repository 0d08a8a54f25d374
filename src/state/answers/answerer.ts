/**
 * Questions that take seconds, asked beside the build in hand: a worker of their own answers them, so that sliders never
 * wait. The latest question wins; giving up ends the worker, and the next question starts another.
 */
import { failureOf, type Failure } from '../../speech/failures.ts';
import type { Remote } from 'comlink';
import { startSolverWorker } from '../running-worker.ts';
import type { SolverApi } from '../solver.worker.ts';

export type Answered<Value> =
  | { readonly kind: 'answer'; readonly value: Value }
  /** A later question came, or it was given up. */
  | { readonly kind: 'dropped' }
  | { readonly kind: 'failed'; readonly failure: Failure };

/** A worker that answers, however it was started. */
export interface AnsweringWorker {
  readonly api: Pick<
    Remote<SolverApi>,
    | 'bringIn'
    | 'fretting'
    | 'frettingQuestion'
    | 'estimate'
    | 'measure'
    | 'leastChange'
    | 'moves'
    | 'posterior'
    | 'reseat'
    | 'stripAhead'
    | 'neckBands'
    | 'stripQuestions'
    | 'tangs'
    | 'wanted'
  >;
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

export interface Answerer {
  ask<Value>(question: (api: AnsweringWorker['api']) => Promise<Value | null>): Promise<Answered<Value>>;
  /** Drops the question that is being worked on. */
  giveUp(): void;
}

export function createAnswerer(start: () => AnsweringWorker = () => startSolverWorker('answers')): Answerer {
  let worker: AnsweringWorker | undefined;
  let drop: ((why: Answered<never>) => void) | undefined;

  function end(why: Answered<never>): void {
    worker?.end();
    worker = undefined;
    drop?.(why);
    drop = undefined;
  }

  function running(): AnsweringWorker {
    if (worker) return worker;
    const fresh = start();
    worker = fresh;
    fresh.onCrash(() => {
      if (worker === fresh) end({ kind: 'failed', failure: { code: 'broke-off' } });
    });
    return fresh;
  }

  return {
    ask: (question) => {
      drop?.({ kind: 'dropped' });
      const current = running();
      return new Promise((resolve) => {
        const mine = (why: Answered<never>) => resolve(why);
        drop = mine;
        const settle = (answered: Parameters<typeof resolve>[0]) => {
          if (drop === mine) drop = undefined;
          resolve(answered);
        };
        question(current.api).then(
          (value) => settle(value === null ? { kind: 'dropped' } : { kind: 'answer', value }),
          (error: unknown) => settle({ kind: 'failed', failure: failureOf(error) }),
        );
      });
    },
    giveUp: () => end({ kind: 'dropped' }),
  };
}
