/** A question and its answer for a component: asked anew when its key changes and rests, given up when it goes away. */
import { proxy, type ProxyMarked } from 'comlink';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Failure } from '../../speech/failures.ts';
import { createAnswerer, type Answerer, type AnsweringWorker } from './answerer.ts';

export interface Asked<Value> {
  /** The last answer; while working it is that of an earlier question. */
  readonly value: Value | null;
  /** Key of the question that `value` answers. */
  readonly key: string | null;
  readonly status: 'idle' | 'working' | 'done' | 'given-up' | 'failed';
  readonly failure: Failure | null;
  /** While working: the share that is done, 0 to 1; null as long as nothing has been told of it. */
  readonly progress: number | null;
  readonly giveUp: () => void;
  readonly askAgain: () => void;
}

/** Asks the worker; what it tells of its progress goes to `told`, which can be handed to it. */
export type Question<Value> = (
  api: AnsweringWorker['api'],
  told: ((share: number) => void) & ProxyMarked,
) => Promise<Value | null>;

/** How one asking ended. */
interface Ended {
  readonly ticket: string;
  readonly status: 'done' | 'given-up' | 'failed';
  readonly failure: Failure | null;
}

const REST_MS = 250;

/**
 * @param key what the question depends on, as text; null = there is nothing to ask
 */
export function useAnswer<Value>(key: string | null, question: Question<Value>): Asked<Value> {
  const [answer, setAnswer] = useState<{ readonly key: string; readonly value: Value } | null>(null);
  const [ended, setEnded] = useState<Ended | null>(null);
  const [told, setTold] = useState<{ readonly ticket: string; readonly share: number } | null>(null);
  const [again, setAgain] = useState(0);
  const answerer = useRef<Answerer | null>(null);
  const latest = useRef(question);
  const drop = useRef<() => void>(() => undefined);
  const ticket = `${again} ${key}`;
  useEffect(() => {
    latest.current = question;
  });
  useEffect(
    () => () => {
      answerer.current?.giveUp();
      answerer.current = null;
    },
    [],
  );

  useEffect(() => {
    if (key === null) return undefined;
    let over = false;
    const rest = setTimeout(() => {
      answerer.current ??= createAnswerer();
      const heard = proxy((share: number) => {
        if (!over) setTold({ ticket, share });
      });
      void answerer.current
        .ask((api) => latest.current(api, heard))
        .then((answered) => {
          if (over) return;
          if (answered.kind === 'answer') setAnswer({ key, value: answered.value });
          setEnded({
            ticket,
            status: answered.kind === 'answer' ? 'done' : answered.kind === 'failed' ? 'failed' : 'given-up',
            failure: answered.kind === 'failed' ? answered.failure : null,
          });
        });
    }, REST_MS);
    const stop = () => {
      over = true;
      clearTimeout(rest);
    };
    // It may be given up before it has been asked.
    drop.current = () => {
      stop();
      answerer.current?.giveUp();
      setEnded({ ticket, status: 'given-up', failure: null });
    };
    return stop;
  }, [key, ticket]);

  const current = ended?.ticket === ticket ? ended : null;
  const isFailed = current?.status === 'failed';
  return {
    value: isFailed || key === null ? null : (answer?.value ?? null),
    key: answer?.key ?? null,
    status: key === null ? 'idle' : (current?.status ?? 'working'),
    failure: current?.failure ?? null,
    progress: current === null && told?.ticket === ticket ? told.share : null,
    giveUp: useCallback(() => drop.current(), []),
    askAgain: useCallback(() => setAgain((count) => count + 1), []),
  };
}
