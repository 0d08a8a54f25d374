/** A job as screens, one after the other: its steps, and while the frets go in a quarter to seat and a straightedge to lay on. */
import { seatingQuarters } from '../../fretwork/plan/seating-order.ts';
import { fretworkSteps, type Step } from '../../fretwork/plan/steps.ts';
import type { Build } from '../../neck/build.ts';
import { neckNow, type BenchJob } from '../../state/jobs/job-document.ts';

export type Screen =
  | { readonly id: string; readonly kind: 'step'; readonly step: Step }
  | {
      readonly id: string;
      readonly kind: 'seat';
      readonly step: Step;
      /** From 1. */
      readonly quarter: number;
      /** In the order of seating. */
      readonly frets: readonly number[];
      /** Frets that are in before. */
      readonly before: number;
    }
  | {
      readonly id: string;
      readonly kind: 'read';
      readonly quarter: number;
      /** Frets that are in before this quarter and after it. */
      readonly before: number;
      readonly after: number;
    }
  | { readonly id: string; readonly kind: 'done' };

/** Why nothing is read while the frets go in; null where it is. */
export function unread({ method, workOrder }: Pick<Build, 'method' | 'workOrder'>): 'nothing' | 'board' | null {
  if (workOrder === 'board-first') return 'board';
  return method === 'glue' ? 'nothing' : null;
}

function seatingScreens(step: Step, build: Build): Screen[] {
  const isRead = unread(build) === null;
  let before = 0;
  return seatingQuarters(build).flatMap((frets, index): Screen[] => {
    const quarter = index + 1;
    const seat: Screen = { id: `seat-${quarter}`, kind: 'seat', step, quarter, frets, before };
    const after = before + frets.length;
    const read: Screen = { id: `read-${quarter}`, kind: 'read', quarter, before, after };
    before = after;
    return isRead ? [seat, read] : [seat];
  });
}

/** Screens of a job as it goes on now: with what was changed for the frets to come. */
export function screensOf(job: Pick<BenchJob, 'neck' | 'now' | 'predicted'>): Screen[] {
  const build = neckNow(job);
  const { frettedBoard } = job.predicted;
  const screens = fretworkSteps(build, frettedBoard ? { frettedBoard } : {}).flatMap((step): Screen[] => {
    if (step.id === 'straightedge') return [];
    if (step.id === 'seat') return seatingScreens(step, build);
    return [{ id: step.id, kind: 'step', step }];
  });
  return [...screens, { id: 'done', kind: 'done' }];
}

/** Where a job is; at its beginning where its place is no longer there. */
export function placeIn(screens: readonly Screen[], place: string): number {
  return Math.max(
    0,
    screens.findIndex(({ id }) => id === place),
  );
}
