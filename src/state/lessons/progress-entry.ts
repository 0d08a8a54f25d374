/**
 * What a device remembers of somebody's way through the lessons: which were gone through, what was achieved, and what was guessed
 * beside what is computed. There are no marks in it.
 */
import * as z from 'zod/mini';
import { median } from '../../mechanics/median.ts';

/** Longest id of a lesson or a step. */
export const MOST_LESSON_ID = 80;

const id = z.string().check(z.minLength(1), z.maxLength(MOST_LESSON_ID));
const shared = {
  lesson: id,
  /** ISO 8601. */
  at: z.string().check(z.regex(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/)),
} as const;

const entry = z.discriminatedUnion('kind', [
  /** Gone through to its end. */
  z.strictObject({ kind: z.literal('ended'), ...shared }),
  /** What a step sets as a task, by one's own hand. */
  z.strictObject({ kind: z.literal('achieved'), step: id, ...shared }),
  /** A number or the extreme of a line, in the unit of the question; `scale` is the length of the scale it was chosen on. */
  z.strictObject({
    kind: z.literal('guess'),
    step: id,
    ...shared,
    guess: z.number(),
    truth: z.number(),
    scale: z.number().check(z.positive()),
  }),
]);

export type ProgressEntry = z.infer<typeof entry>;
export type GuessEntry = Extract<ProgressEntry, { kind: 'guess' }>;

/** @returns null for what is no entry */
export function progressEntryOf(value: unknown): ProgressEntry | null {
  const parsed = entry.safeParse(value);
  return parsed.success ? parsed.data : null;
}

/** The same for the same thing: a lesson is ended once, a task achieved once, and a guess made at one time. */
export function progressId(one: ProgressEntry): string {
  switch (one.kind) {
    case 'ended':
      return `ended ${one.lesson}`;
    case 'achieved':
      return `achieved ${one.lesson} ${one.step}`;
    case 'guess':
      return `guess ${one.lesson} ${one.step} ${one.at}`;
  }
}

/** How far from what is computed, as a share of the scale. */
export const distanceOf = ({ guess, truth, scale }: GuessEntry): number => Math.abs(guess - truth) / scale;

export interface Improvement {
  /** How many guesses each of both holds. */
  readonly count: number;
  /** Middle distance of the first guesses, and of the last, as shares of the scale. */
  readonly firstShare: number;
  readonly lastShare: number;
}

/** Fewer would say nothing. */
const LEAST_GUESSES = 6;
const MOST_EACH = 10;

/** The first guesses beside the last ones, without overlap; null while there are too few. */
export function improvementOf(entries: readonly ProgressEntry[]): Improvement | null {
  const guesses = entries.filter((one) => one.kind === 'guess').toSorted((a, b) => a.at.localeCompare(b.at));
  if (guesses.length < LEAST_GUESSES) return null;
  const count = Math.min(MOST_EACH, Math.floor(guesses.length / 2));
  return {
    count,
    firstShare: median(guesses.slice(0, count).map(distanceOf)),
    lastShare: median(guesses.slice(-count).map(distanceOf)),
  };
}
