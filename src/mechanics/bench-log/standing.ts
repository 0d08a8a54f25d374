/**
 * What the bite of a build rests on, as this device knows it. A build that refers to measurements is as sure of its bite as
 * they are, for as long as they are here, say the same, and were accepted here; any other build has the spread of an
 * unmeasured bite, whatever its bite factor.
 */
import type { BiteReference } from '../../neck/bite-reference.ts';
import type { Build } from '../../neck/build.ts';
import type { LogEntry } from './entry.ts';
import type { GripLaw } from './law.ts';
import { resolveReference, type Referred } from './reference.ts';

/** What this device has measured and accepted. */
export interface Measured {
  /** Null while it is being read. */
  readonly benchLog: readonly LogEntry[] | null;
  readonly adoptedBites: readonly BiteReference[];
  /** Bite factors that an earlier release took from the log, when builds did not refer to it. */
  readonly earlierBites: readonly number[];
}

/** The bite of a build as this device knows it. */
export type BiteStanding =
  | { readonly code: 'unmeasured' }
  /** The factor is one that an earlier release took from the log here. */
  | { readonly code: 'earlier' }
  | { readonly code: 'reading' }
  /** The factor was changed after it was taken over. */
  | { readonly code: 'other-factor'; readonly reference: BiteReference }
  | { readonly code: 'in-use'; readonly bite: BiteReference }
  /** Here, saying the same, and not accepted on this device. */
  | { readonly code: 'not-accepted'; readonly reference: BiteReference; readonly entries: readonly LogEntry[] }
  | { readonly code: 'not-here'; readonly reference: BiteReference }
  | { readonly code: 'changed'; readonly reference: BiteReference; readonly deleted: number };

type Taken = Pick<Build, 'biteFactor' | 'biteReference'> & GripLaw;

/** What was found in each log: a slider asks for every value that it passes. */
const found = new WeakMap<readonly LogEntry[], Map<string, Referred>>();

function resolved(
  reference: BiteReference,
  log: readonly LogEntry[],
  { studShape, studSoftnessMm }: GripLaw,
  known: readonly string[],
): Referred {
  const law = { studShape, studSoftnessMm };
  const inLog = found.get(log) ?? new Map<string, Referred>();
  found.set(log, inLog);
  const key = JSON.stringify([reference.hash, reference.measurements, law, known]);
  const referred = inLog.get(key) ?? resolveReference(reference, log, law, known);
  inLog.set(key, referred);
  return referred;
}

export function biteStanding({ benchLog, adoptedBites, earlierBites }: Measured, build: Taken): BiteStanding {
  const { biteReference: reference, biteFactor } = build;
  if (!reference) return { code: earlierBites.includes(biteFactor) ? 'earlier' : 'unmeasured' };
  if (reference.factor !== biteFactor) return { code: 'other-factor', reference };
  if (benchLog === null) return { code: 'reading' };
  // What was accepted here counts, not what a file says of it.
  const bite = adoptedBites.find(({ hash, factor }) => hash === reference.hash && factor === reference.factor);
  const referred = resolved(reference, benchLog, build, bite?.measurements ?? []);
  if (referred.code !== 'here') return { ...referred, reference };
  return bite ? { code: 'in-use', bite } : { code: 'not-accepted', reference, entries: referred.entries };
}

/** The bite that makes the bands of this build narrower here than they are elsewhere; a glue fit does not bite. */
export function narrowingBite(measured: Measured, build: Taken & Pick<Build, 'method'>): BiteReference | undefined {
  if (build.method === 'glue') return undefined;
  const standing = biteStanding(measured, build);
  return standing.code === 'in-use' ? standing.bite : undefined;
}

/** Are the bands of this build narrower on this device than they are elsewhere? */
export function isNarrowed(measured: Measured, build: Taken & Pick<Build, 'method'>): boolean {
  return narrowingBite(measured, build) !== undefined;
}

/** Spread of ln bite for a build; undefined = that of an unmeasured bite. */
export function biteLogSpreadOf(measured: Measured, build: Taken): number | undefined {
  const standing = biteStanding(measured, build);
  return standing.code === 'in-use' ? standing.bite.logSpread : undefined;
}
