/**
 * What the bite of a build rests on, as this device knows it. A build that refers to measurements is as sure of its bite as
 * they are, for as long as they are here, say the same, and were accepted here; any other build has the spread of an
 * unmeasured bite, whatever its bite factor.
 */
import type { BiteReference } from '../../neck/bite-reference.ts';
import type { Build } from '../../neck/build.ts';
import type { Evidence } from '../neck-readings/evidence.ts';
import type { ResolvedGrip } from '../neck-readings/grip-reference.ts';
import { neckHash } from '../neck-readings/neck-hash.ts';
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
  /** What became of the references to strips and readings that were looked up, by their hash. */
  readonly gripsHere?: GripsHere;
}

export type GripHere =
  Exclude<ResolvedGrip, { code: 'here' }> | (Extract<ResolvedGrip, { code: 'here' }> & { readonly accepted: boolean });
export type GripsHere = Readonly<Record<string, GripHere>>;

/** The grip of a build that refers to strips or to what was read on it, as this device knows it. */
export type GripStanding =
  | { readonly code: 'reading' }
  /** Bite or shape of the studs were changed after they were taken over. */
  | { readonly code: 'other-grip' }
  /** @property isOther the neck was changed since it was read: its own readings narrow nothing */
  | { readonly code: 'in-use'; readonly evidence: Evidence; readonly isOther: boolean }
  | { readonly code: 'not-accepted' }
  | { readonly code: 'not-here' }
  | { readonly code: 'changed'; readonly gone: number; readonly edited: number };

export function gripStanding({ gripsHere }: Pick<Measured, 'gripsHere'>, build: Build): GripStanding | undefined {
  const { gripReference: reference } = build;
  if (!reference) return undefined;
  if (reference.biteFactor !== build.biteFactor || reference.studShape !== build.studShape)
    return { code: 'other-grip' };
  const here = gripsHere?.[reference.hash];
  if (!here) return { code: 'reading' };
  if (here.code !== 'here') return here;
  if (!here.accepted) return { code: 'not-accepted' };
  const isOther = reference.neck !== '' && reference.neck !== neckHash(build);
  return { code: 'in-use', evidence: isOther ? { ...here.evidence, own: NO_OWN } : here.evidence, isOther };
}

const NO_OWN: Evidence['own'] = [];

/** What a band is asked for with. */
export interface BandNarrowing {
  readonly biteLogSpread?: number | undefined;
  readonly evidence?: Evidence;
}

/** What narrows the bands of this build on this device: nothing, the log's bite, or strips and readings. */
export function narrowingOptions(measured: Measured, build: Build): BandNarrowing {
  const grip = gripStanding(measured, build);
  if (!grip) return { biteLogSpread: biteLogSpreadOf(measured, build) };
  if (grip.code !== 'in-use') return {};
  const { strips, entries, own } = grip.evidence;
  return strips.length + entries.length + own.length > 0 ? { evidence: grip.evidence } : {};
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

/** Do they ask for the same bands? */
export function sameNarrowing(one: BandNarrowing, other: BandNarrowing): boolean {
  const [a, b] = [one.evidence, other.evidence];
  return (
    one.biteLogSpread === other.biteLogSpread &&
    (a === b ||
      (a !== undefined && b !== undefined && a.strips === b.strips && a.entries === b.entries && a.own === b.own))
  );
}

/** The bite that makes the bands of this build narrower here than they are elsewhere; a glue fit does not bite. */
export function narrowingBite(measured: Measured, build: Build): BiteReference | undefined {
  if (build.method === 'glue' || build.gripReference) return undefined;
  const standing = biteStanding(measured, build);
  return standing.code === 'in-use' ? standing.bite : undefined;
}

/** Whatever makes them narrower: the reference to it. */
export function narrowing(
  measured: Measured,
  build: Build,
): { readonly hash: string; readonly measured: number; readonly of: 'log' | 'grip' } | undefined {
  const { gripReference } = build;
  if (gripReference) {
    const isNarrow = narrowingOptions(measured, build).evidence !== undefined;
    return isNarrow ? { hash: gripReference.hash, measured: gripReference.measured, of: 'grip' } : undefined;
  }
  const bite = narrowingBite(measured, build);
  return bite && { hash: bite.hash, measured: bite.necks, of: 'log' };
}

/** Are the bands of this build narrower on this device than they are elsewhere? */
export function isNarrowed(measured: Measured, build: Build): boolean {
  return narrowing(measured, build) !== undefined;
}

/** Spread of ln bite for a build; undefined = that of an unmeasured bite. */
export function biteLogSpreadOf(measured: Measured, build: Taken): number | undefined {
  const standing = biteStanding(measured, build);
  return standing.code === 'in-use' ? standing.bite.logSpread : undefined;
}
