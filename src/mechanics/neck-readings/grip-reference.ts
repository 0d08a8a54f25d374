/**
 * The measurements that a build's grip was taken from: the reference that it keeps, and what of it is at hand.
 *
 * What was read on a neck holds for that neck: when it is changed, other than in what the readings themselves gave, its own
 * readings narrow nothing, and are said to be of another neck.
 */
import type { GripReference, ReferredDocument } from '../../neck/bite-reference.ts';
import type { Build } from '../../neck/build.ts';
import { informs } from '../bench-log/likelihood.ts';
import type { LogEntry } from '../bench-log/entry.ts';
import { contentHash, hashOfText } from '../bench-log/identity.ts';
import type { TryStrip } from '../try-strip/document.ts';
import { stripHash } from '../try-strip/document-file.ts';
import { NO_EVIDENCE, type Evidence } from './evidence.ts';
import type { Heard } from './heard.ts';
import { neckHash } from './neck-hash.ts';

export type ResolvedGrip =
  | { readonly code: 'here'; readonly evidence: Evidence }
  /** None of them is here. */
  | { readonly code: 'not-here' }
  /** Some are gone, others say something else than they did. */
  | { readonly code: 'changed'; readonly gone: number; readonly edited: number };

/** What speaks of a workshop's other necks beside what was read on this one. */
export function othersIn(entries: readonly LogEntry[], own: readonly LogEntry[]): LogEntry[] {
  const ownIds = new Set(own.map(({ id }) => id));
  return entries.filter((entry) => informs(entry) && !ownIds.has(entry.id));
}

function documentsOf({ strips, entries, own }: Evidence): ReferredDocument[] {
  const ofEntry = (kind: 'neck' | 'own') => (entry: LogEntry) => ({ kind, id: entry.id, hash: contentHash(entry) });
  return [
    ...strips.map(({ strip, ownBoard }) => ({
      kind: 'strip' as const,
      id: strip.id,
      hash: stripHash(strip),
      ...(ownBoard ? { ownBoard } : {}),
    })),
    ...entries.map(ofEntry('neck')),
    ...own.map(ofEntry('own')),
  ];
}

/** Of documents in any order, and of the neck that was read. */
export function hashOfDocuments(documents: readonly ReferredDocument[], neck: string): string {
  const lines = documents.map(({ kind, id, hash, ownBoard }) => `${kind} ${id} ${hash} ${ownBoard ? 'own board' : ''}`);
  return hashOfText(['backbow grip 1', neck, ...lines.toSorted()].join('\n'));
}

export function gripReferenceTo(
  build: Build,
  evidence: Evidence,
  {
    taken,
    posterior: { bite },
  }: { readonly taken: Heard['taken']; readonly posterior: Pick<Heard['posterior'], 'bite'> },
): GripReference {
  const documents = documentsOf(evidence);
  const neck = evidence.own.length > 0 ? neckHash(build) : '';
  return {
    ...taken,
    documents,
    hash: hashOfDocuments(documents, neck),
    neck,
    measured: documents.length,
    biteLow: bite.p05,
    biteHigh: bite.p95,
  };
}

/** @param documents of the reference, or those that go with its hash where it names none */
export function resolveGrip(
  documents: readonly ReferredDocument[],
  strips: readonly TryStrip[],
  log: readonly LogEntry[],
): ResolvedGrip {
  const stripsById = new Map(strips.map((strip) => [strip.id, strip]));
  const entriesById = new Map(log.map((entry) => [entry.id, entry]));
  const found = { strips: [...NO_EVIDENCE.strips], entries: [...NO_EVIDENCE.entries], own: [...NO_EVIDENCE.own] };
  let [here, gone, edited] = [0, 0, 0];
  for (const { kind, id, hash, ownBoard = false } of documents) {
    const strip = kind === 'strip' ? stripsById.get(id) : undefined;
    const entry = kind === 'strip' ? undefined : entriesById.get(id);
    if (!strip && !entry) {
      gone += 1;
      continue;
    }
    here += 1;
    if ((strip ? stripHash(strip) : contentHash(entry!)) !== hash) edited += 1;
    if (strip) found.strips.push({ strip, ownBoard });
    if (entry) (kind === 'own' ? found.own : found.entries).push(entry);
  }
  if (here === 0) return { code: 'not-here' };
  return gone + edited > 0 ? { code: 'changed', gone, edited } : { code: 'here', evidence: found };
}
