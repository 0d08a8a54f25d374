/** Laws at the ends of the ranges, where sliders stop: drawn values hardly ever lie there, people's do. */
import fc from 'fast-check';
import type { Build } from '../../src/neck/build.ts';
import type { NumberParameter, Parameter } from '../../src/neck/parameter-kinds.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { holdFinite, type Invariant } from './invariant.ts';

const NUMBERS = (PARAMETERS as readonly Parameter[]).filter(
  (parameter): parameter is NumberParameter => parameter.kind === 'number',
);

/** A build with most of its numbers at one end or the other of their ranges, as far as they go together; by seed. */
export function atTheEnds(build: Build, seed: number): Build {
  const ends = fc.sample(fc.array(fc.nat(4), { minLength: NUMBERS.length, maxLength: NUMBERS.length }), {
    seed,
    numRuns: 1,
  })[0];
  let reached = build;
  NUMBERS.forEach(({ id, min, max }, index) => {
    const end = ends[index];
    if (end === 4) return;
    const checked = checkBuild({ ...reached, [id]: end < 2 ? min : max });
    if (checked.ok) reached = checked.build;
  });
  return reached;
}

export const EXTREMES: readonly Invariant[] = [
  {
    name: 'a build at the ends of its ranges settles too, and every number of it is finite',
    every: 4,
    check: ({ build, predictor, seed }) => holdFinite(predictor.predict(atTheEnds(build, seed)), 'prediction'),
  },
];
