/** Everything that was measured and speaks for a neck: documents of the device, by the maker's word. */
import type { LogEntry } from '../bench-log/entry.ts';
import type { StripEvidence } from '../try-strip/places.ts';

export interface Evidence {
  readonly strips: readonly StripEvidence[];
  /** Of other necks of the workshop, for their bite. */
  readonly entries: readonly LogEntry[];
  /** Of this very neck. */
  readonly own: readonly LogEntry[];
}

export const NO_EVIDENCE: Evidence = { strips: [], entries: [], own: [] };
