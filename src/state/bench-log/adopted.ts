/**
 * Bite factors that were taken over from the bench log, each with the spread that the log left of it. A build that uses one
 * of them is as sure of its bite as the log was then; any other bite factor has the spread of an unmeasured one.
 */
import type { Build } from '../../neck/build.ts';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';

export interface AdoptedBite {
  /** As it stands in the builds, see `biteFactorOf`. */
  readonly biteFactor: number;
  /** Standard deviation of ln bite. */
  readonly logSpread: number;
  /** Measured necks behind it. */
  readonly necks: number;
}

/** Older ones are forgotten. */
export const MOST_ADOPTED = 50;

/** The posterior's median as a build takes it: to a hundredth. */
export function biteFactorOf({ median }: Pick<BitePosterior, 'median'>): number {
  return Math.round(median * 100) / 100;
}

/** The list with another one in front; an earlier one with the same factor gives way. */
export function withAdopted(adopted: readonly AdoptedBite[], bite: AdoptedBite): AdoptedBite[] {
  return [bite, ...adopted.filter((other) => other.biteFactor !== bite.biteFactor)].slice(0, MOST_ADOPTED);
}

/** What the log said when this build's bite factor was taken from it; undefined when it was not. */
export function adoptedFor(
  adopted: readonly AdoptedBite[],
  { biteFactor }: Pick<Build, 'biteFactor'>,
): AdoptedBite | undefined {
  return adopted.find((bite) => bite.biteFactor === biteFactor);
}

/** The bite that makes the bands of this build narrower here than they are elsewhere; a glue fit does not bite. */
export function narrowingBite(
  adopted: readonly AdoptedBite[],
  build: Pick<Build, 'biteFactor' | 'method'>,
): AdoptedBite | undefined {
  return build.method === 'glue' ? undefined : adoptedFor(adopted, build);
}

/** Are the bands of this build narrower on this device than they are elsewhere? */
export function isNarrowed(adopted: readonly AdoptedBite[], build: Pick<Build, 'biteFactor' | 'method'>): boolean {
  return narrowingBite(adopted, build) !== undefined;
}

/** Spread of ln bite for a build; undefined = that of an unmeasured bite. */
export function biteLogSpreadOf(adopted: readonly AdoptedBite[], build: Pick<Build, 'biteFactor'>): number | undefined {
  return adoptedFor(adopted, build)?.logSpread;
}
