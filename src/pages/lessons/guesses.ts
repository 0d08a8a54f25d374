/** What the learner guesses and what steps have remembered, while one lesson runs. */
import { create } from 'zustand';
import type { Measure } from './quantities.ts';

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

export function forgetGuesses(): void {
  useGuesses.setState({ guesses: {}, remembered: {} });
}
