/** Runs the invariants over builds made from seeds, and counts. */
import fc from 'fast-check';
import type { Build } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { anyBuild } from '../arbitrary/any-build.ts';
import { ANSWERS } from './answers.ts';
import { KERFS } from './kerfs.ts';
import { EXTREMES } from './extremes.ts';
import { FILES } from './files.ts';
import type { Invariant } from './invariant.ts';
import { MAKING } from './making.ts';
import { CHANGES, EQUILIBRIUM, REPEATS, SIGNS, STATES } from './mechanics.ts';
import { PLAYING } from './playing.ts';
import { STEPS } from './steps.ts';

export const INVARIANTS: readonly Invariant[] = [
  ...FILES,
  ...SIGNS,
  ...EQUILIBRIUM,
  ...STATES,
  ...CHANGES,
  ...REPEATS,
  ...STEPS,
  ...EXTREMES,
  ...ANSWERS,
  ...MAKING,
  ...PLAYING,
  ...KERFS,
];

/** The build of a seed; the same seed makes the same build. */
export function buildOfSeed(seed: number): Build {
  return fc.sample(anyBuild, { seed, numRuns: 1 })[0];
}

export interface Failure {
  readonly seed: number;
  readonly invariant: string;
  readonly message: string;
}

export interface Count {
  readonly invariant: string;
  checked: number;
  failed: number;
}

export interface Outcome {
  readonly builds: number;
  readonly counts: readonly Count[];
  readonly failures: readonly Failure[];
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

export interface SweepOptions {
  /** Checks every invariant for every build, whatever its share. */
  readonly thorough?: boolean;
  /** Called after each build with the number of builds done. */
  readonly onBuild?: (done: number) => void;
  readonly invariants?: readonly Invariant[];
  /** The build of a seed; drawn from it when omitted. */
  readonly buildOf?: (seed: number) => Build;
}

/** @param count number of builds, from seeds `first`, `first + 1`, … */
export async function sweep(
  count: number,
  first: number,
  { thorough = false, onBuild = () => undefined, invariants = INVARIANTS, buildOf = buildOfSeed }: SweepOptions = {},
): Promise<Outcome> {
  const predictor = createPredictor();
  const predicting: Count = { invariant: 'the build can be predicted', checked: 0, failed: 0 };
  const counts = invariants.map(({ name }): Count => ({ invariant: name, checked: 0, failed: 0 }));
  const failures: Failure[] = [];
  for (let seed = first; seed < first + count; seed += 1) {
    const build = buildOf(seed);
    const attempt = async (tally: Count, work: () => unknown) => {
      tally.checked += 1;
      try {
        await work();
      } catch (error) {
        tally.failed += 1;
        failures.push({ seed, invariant: tally.invariant, message: messageOf(error) });
      }
    };
    await attempt(predicting, async () => {
      const prediction = predictor.predict(build);
      for (const [index, { every, check }] of invariants.entries()) {
        // Dear ones take turns, so that no build has all of them.
        if (thorough || (seed + index) % every === 0)
          await attempt(counts[index], () => check({ seed, build, prediction, predictor }));
      }
    });
    onBuild(seed - first + 1);
  }
  return { builds: count, counts: [predicting, ...counts], failures };
}
