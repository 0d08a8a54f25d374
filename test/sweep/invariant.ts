/** What must hold of every valid build, whatever its values; and how it is told when it does not. */
import type { Build } from '../../src/neck/build.ts';
import type { Predictor } from '../../src/mechanics/predict.ts';
import type { Prediction } from '../../src/mechanics/prediction-types.ts';

/** One build of the sweep, with what is computed of it once for all invariants. */
export interface Subject {
  /** The seed that makes this build again. */
  readonly seed: number;
  readonly build: Build;
  readonly prediction: Prediction;
  /** The predictor that made it, with its caches, as the page's worker keeps one. */
  readonly predictor: Predictor;
}

export interface Invariant {
  readonly name: string;
  /** Checked for one build in this many: dear ones for fewer. */
  readonly every: number;
  /** @throws {Error} that says what does not hold */
  readonly check: (subject: Subject) => void | Promise<void>;
}

/** @throws {Error} with the message unless the condition holds */
export function hold(condition: boolean, message: () => string): void {
  if (!condition) throw new Error(message());
}

/** Every number in plain data with the path that leads to it. */
function* numbersIn(value: unknown, path: string): Generator<readonly [path: string, value: number]> {
  if (typeof value === 'number') yield [path, value];
  else if (ArrayBuffer.isView(value)) {
    const numbers = value as unknown as ArrayLike<number>;
    for (let i = 0; i < numbers.length; i += 1) yield [`${path}[${i}]`, numbers[i]];
  } else if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) yield* numbersIn(entry, `${path}[${index}]`);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, entry] of Object.entries(value)) yield* numbersIn(entry, path === '' ? key : `${path}.${key}`);
  }
}

/**
 * @param except paths of numbers that may be without end
 * @throws {Error} naming the first number in plain data that is not finite
 */
export function holdFinite(value: unknown, what: string, except?: RegExp): void {
  for (const [path, number] of numbersIn(value, ''))
    if (!except?.test(path)) hold(Number.isFinite(number), () => `${what}: ${path} is ${number}`);
}

/** Words that a number which is none, or a value that is missing, leaves in a text. */
const BROKEN = /NaN|Infinity|undefined|\[object/;

/** @throws {Error} naming the text */
export function holdText(text: string, what: string): void {
  hold(!BROKEN.test(text), () => `${what} reads “${text.slice(0, 200)}”`);
}

/** Size of the largest value. */
export function largest(values: ArrayLike<number>): number {
  let most = 0;
  for (let i = 0; i < values.length; i += 1) most = Math.max(most, Math.abs(values[i]));
  return most;
}
