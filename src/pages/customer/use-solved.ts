/** Predictions and bands of the choices, as they arrive. */
import { useEffect, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { solveChoices, type Solved } from '../../state/share/solve-choices.ts';

const NOTHING: Solved = { prediction: null, uncertainty: null };

export interface SolvedChoices {
  readonly choices: readonly Solved[];
  readonly failed: boolean;
  readonly retry: () => void;
}

export function useSolved(builds: readonly Build[]): SolvedChoices {
  const [round, setRound] = useState(0);
  const [choices, setChoices] = useState<readonly Solved[]>(() => builds.map(() => NOTHING));
  const [failed, setFailed] = useState(false);
  useEffect(
    () =>
      solveChoices(builds, {
        solved: (index, solved) =>
          setChoices((old) => builds.map((_, at) => (at === index ? solved : (old[at] ?? NOTHING)))),
        failed: () => setFailed(true),
      }),
    [builds, round],
  );
  return {
    choices,
    failed,
    retry: () => {
      setFailed(false);
      setRound(round + 1);
    },
  };
}
