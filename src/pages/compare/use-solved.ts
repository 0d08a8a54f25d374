/** What is known of the compared necks, as it comes; what was computed before is not computed again. */
import { useEffect, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { narrowingOptions } from '../../mechanics/bench-log/standing.ts';
import { solveNecks, type SolvedNeck } from '../../state/compare/solve-necks.ts';
import type { Failure } from '../../speech/failures.ts';
import { store, useBackbow } from '../../state/store.ts';

const NOTHING: SolvedNeck = { prediction: null, uncertainty: null };

export interface SolvedNecks {
  /** In the order of the builds. */
  readonly necks: readonly SolvedNeck[];
  readonly failure: Failure | null;
  readonly retry: () => void;
}

export function useSolved(builds: readonly Build[]): SolvedNecks {
  const adopted = useBackbow((state) => state.adoptedBites);
  const log = useBackbow((state) => state.benchLog);
  const [known, setKnown] = useState<ReadonlyMap<Build, SolvedNeck>>(() => new Map());
  const [failure, setFailure] = useState<Failure | null>(null);
  const [round, setRound] = useState(0);
  useEffect(() => {
    const open = [...new Set(builds)].filter((build) => !known.get(build)?.uncertainty);
    let stop: (() => void) | undefined;
    let isOver = false;
    const solve = () => {
      if (isOver) return;
      stop = solveNecks(open, (build) => narrowingOptions(store.getState(), build), {
        solved: (build, solved) => setKnown((old) => new Map(old).set(build, solved)),
        failed: setFailure,
      });
    };
    // What they refer to is looked up first, so that their bands are what they are on the page.
    if (open.some((build) => build.gripReference)) void store.getState().lookUpGrips(open).then(solve);
    else solve();
    return () => {
      isOver = true;
      stop?.();
    };
    // What arrives must not start it again.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [builds, adopted, log, round]);
  return {
    necks: builds.map((build) => known.get(build) ?? NOTHING),
    failure,
    retry: () => {
      setFailure(null);
      setRound(round + 1);
    },
  };
}
