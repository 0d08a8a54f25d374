/** What the keys mean on every number: arrow = step, Shift = finer, Page = coarser, Home and End = limits. */
interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

const DIRECTIONS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
};

/** Steps that a key asks for (±1, ±0.1 with Shift, ±10 for Page keys, ±Infinity for the limits), or undefined. */
export function stepsOfKey(press: KeyPress): number | undefined {
  if (press.altKey || press.ctrlKey || press.metaKey) return undefined;
  if (press.key === 'Home') return -Infinity;
  if (press.key === 'End') return Infinity;
  const steps = DIRECTIONS[press.key];
  return steps !== undefined && press.shiftKey && Math.abs(steps) === 1 ? steps / 10 : steps;
}
