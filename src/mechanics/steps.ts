/** Long work in steps: run at once, or with a task between steps, so that it can be given up when something newer comes. */

/** The next task of this thread: messages to a worker arrive between tasks only. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}

/**
 * @param shouldStop asked before each step
 * @param told what each step yields
 * @param breathe lets others run between steps
 * @returns null when it was given up
 */
export async function runSteps<Step, Result>(
  steps: Generator<Step, Result>,
  shouldStop: () => boolean,
  told: (step: Step) => void = () => undefined,
  breathe: () => Promise<void> = nextTask,
): Promise<{ readonly value: Result } | null> {
  for (;;) {
    if (shouldStop()) return null;
    const step = steps.next();
    if (step.done) return { value: step.value };
    told(step.value);
    await breathe();
  }
}

export function runAtOnce<Result>(steps: Generator<unknown, Result>): Result {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
