/**
 * Asks for the stress around the slot in view, when the picture shows it and only then. The latest wish wins: while one is
 * being computed only the newest of those that came since is kept.
 */
import type { Build } from '../neck/build.ts';
import type { StressField } from '../mechanics/elements/stress.ts';
import type { Solution } from './solution-slice.ts';
import type { BackbowState, BackbowStore } from './store.ts';
import { slotUnderStress } from './stress-view.ts';
import { failureOf, failureText } from '../speech/failures.ts';
import { SOLVER_WORDS } from '../speech/en/workshop/solver.ts';

/** What to ask: of a solution rather than a build, so that it is asked again when a worker was lost and another one solved. */
interface Wish {
  readonly solution: Solution;
  readonly fret: number;
}

function wishOf(state: BackbowState): Wish | null {
  const fret = slotUnderStress(state);
  return fret === null ? null : { solution: state.solution!, fret };
}

function isSame(one: Wish | null, other: Wish | null): boolean {
  return one?.solution === other?.solution && one?.fret === other?.fret;
}

/** @returns a function that stops asking */
export function followStress(
  store: BackbowStore,
  ask: (build: Build, fret: number) => Promise<StressField>,
): () => void {
  let wanted: Wish | null = null;
  let asked: Wish | null = null;
  let stopped = false;

  function askNext(): void {
    if (!wanted || stopped) return;
    const wish = wanted;
    asked = wish;
    const { build } = wish.solution;
    ask(build, wish.fret).then(
      (field) => finish(wish, () => store.getState().setStress({ build, fret: wish.fret, field })),
      (error: unknown) =>
        finish(wish, () => {
          const { notify, unitSystem } = store.getState();
          notify('error', SOLVER_WORDS.stressFailed(failureText(failureOf(error), unitSystem)));
        }),
    );
  }

  function finish(wish: Wish, tell: () => void): void {
    if (asked !== wish || stopped) return;
    asked = null;
    if (isSame(wish, wanted)) tell();
    else askNext();
  }

  function onChange(state: BackbowState): void {
    const wish = wishOf(state);
    if (isSame(wish, wanted)) return;
    wanted = wish;
    // A new solution comes from a worker that is there; what a lost one still owed is no longer waited for.
    if (asked === null || asked.solution !== wish?.solution) askNext();
  }

  const stop = store.subscribe(onChange);
  onChange(store.getState());
  return () => {
    stopped = true;
    stop();
  };
}
