/** Errors as data: what is wrong, with which value, and what would be right. */
import { say } from '../speech/language.ts';
import type { ParameterId } from './parameters.ts';
import type { Unit } from './units.ts';

export type ProblemCode =
  | 'not-json'
  | 'not-a-project'
  | 'newer-version'
  | 'missing'
  | 'unknown'
  | 'wrong-type'
  | 'out-of-range'
  | 'not-an-option'
  | 'impossible';

export interface Problem {
  readonly code: ProblemCode;
  /** Parameter id, or the path of a list entry such as "strings.2.diameterMm". */
  readonly parameter: ParameterId | (string & {});
  readonly label: string;
  readonly value: unknown;
  readonly min?: number;
  readonly max?: number;
  readonly unit?: Unit;
  /** One plain sentence naming the parameter, the value, its range and its unit. */
  readonly message: string;
}

/** A value as it was given, short enough for a sentence. */
export function describeValue(value: unknown): string {
  if (value === undefined) return say`nothing`;
  if (typeof value === 'number') return String(value);
  const text = JSON.stringify(value) ?? typeof value;
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}
