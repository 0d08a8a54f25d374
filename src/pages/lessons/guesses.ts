/** What the learner guesses and what steps have remembered, while one lesson runs. */
import { create } from 'zustand';
import type { GuessEntry } from '../../state/lessons/progress-entry.ts';
import { extremeOf } from './line-curve.ts';
import { measure, type Bench, type Measure } from './quantities.ts';
import type { Step } from './types.ts';

/** Heights of the guessed line at a quarter, a half and three quarters of the straightedge, mm; plus is a hollow. */
export type LineGuess = readonly [number, number, number];

export type Guess =
  | { readonly kind: 'line'; readonly mm: LineGuess }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'which'; readonly id: string };

interface Guesses {
  /** By the id of the step. */
  readonly guesses: Readonly<Record<string, Guess>>;
  readonly remembered: Readonly<Record<string, Measure>>;
}

export const useGuesses = create<Guesses>(() => ({ guesses: {}, remembered: {} }));

export function guess(step: string, made: Guess): void {
  useGuesses.setState(({ guesses }) => ({ guesses: { ...guesses, [step]: made } }));
}

export function remember(measures: Readonly<Record<string, Measure>>): void {
  useGuesses.setState(({ remembered }) => ({ remembered: { ...remembered, ...measures } }));
}

/**
 * A guess as the device remembers it, beside what is computed; null without one, and where there is no distance to tell: one of
 * several is right or it is not.
 */
export function guessEntry(lesson: string, { id: step, ask }: Step, bench: Bench): GuessEntry | null {
  const made = useGuesses.getState().guesses[step];
  const at = new Date().toISOString();
  if (ask?.kind === 'value' && made?.kind === 'value') {
    const truth = measure(ask.of, bench).value;
    return { kind: 'guess', lesson, step, at, guess: made.value, truth, scale: ask.max - ask.min };
  }
  if (ask?.kind === 'line' && made?.kind === 'line') {
    const { at: moment, method } = ask;
    const truth = measure({ q: 'relief', at: moment, ...(method ? { method } : {}) }, bench).value;
    return { kind: 'guess', lesson, step, at, guess: extremeOf(made.mm), truth, scale: 2 * ask.rangeMm };
  }
  return null;
}

export function forgetGuesses(): void {
  useGuesses.setState({ guesses: {}, remembered: {} });
}
