/** Is what a step sets as a task achieved, and by what it allows alone? */
import type { Build } from '../../neck/build.ts';
import type { CheckCode } from '../../fretwork/checks/check-types.ts';
import { changeOf } from '../../state/build-change.ts';
import { checksOf } from '../../verdict/checks.ts';
import { measure, type Bench, type Measure } from './quantities.ts';
import type { Goal, Quantity, Wanted } from './types.ts';

/** One thing that has to hold, as it is now. */
export interface Held {
  readonly id: string;
  readonly isMet: boolean;
  /** Null where it is about checks. */
  readonly now: Measure | null;
  readonly least: Measure | null;
  readonly most: Measure | null;
  /** Checks that speak up and should not. */
  readonly found: readonly CheckCode[];
}

export interface GoalNow {
  readonly wanted: readonly Held[];
  /** What else was changed than the task allows. */
  readonly others: readonly (keyof Build)[];
  readonly isAchieved: boolean;
}

/** What names a neck and moves no number of it. */
const BESIDE: ReadonlySet<keyof Build> = new Set<keyof Build>(['name', 'notes']);

function limitOf(limit: number | Quantity | undefined, now: Measure, bench: Bench): Measure | null {
  if (limit === undefined) return null;
  return typeof limit === 'number' ? { ...now, value: limit } : measure(limit, bench);
}

function heldOf(wanted: Wanted, bench: Bench, codes: ReadonlySet<CheckCode>): Held {
  if ('without' in wanted) {
    const found = wanted.without.filter((code) => codes.has(code));
    return { id: wanted.id, isMet: found.length === 0, now: null, least: null, most: null, found };
  }
  const now = measure(wanted.of, bench);
  const [least, most] = [limitOf(wanted.atLeast, now, bench), limitOf(wanted.atMost, now, bench)];
  // What is printed as the limit has reached it.
  const slack = 0.5 * 10 ** -now.digits;
  const isMet = now.value >= (least?.value ?? -Infinity) - slack && now.value <= (most?.value ?? Infinity) + slack;
  return { id: wanted.id, isMet, now, least, most, found: [] };
}

/** What differs from the neck that the lesson placed, other than what the task allows. */
export function changedBeside(goal: Goal, build: Build, placed: Build): (keyof Build)[] {
  const allowed = new Set<keyof Build>([...goal.by, ...BESIDE]);
  return (Object.keys(changeOf(build, placed)) as (keyof Build)[]).filter((key) => !allowed.has(key));
}

/** @param placed the neck as the step has set it */
export function goalNow(goal: Goal, bench: Bench, placed: Build): GoalNow {
  const needsChecks = goal.wanted.some((wanted) => 'without' in wanted);
  const codes = new Set<CheckCode>(needsChecks ? checksOf(bench).map(({ code }) => code) : []);
  const wanted = goal.wanted.map((one) => heldOf(one, bench, codes));
  const others = changedBeside(goal, bench.build, placed);
  return { wanted, others, isAchieved: others.length === 0 && wanted.every(({ isMet }) => isMet) };
}
