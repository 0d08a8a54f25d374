/**
 * Where a build's bite factor comes from: measurements of a bench log, which the build refers to and does not hold. The
 * band is narrowed by what this device has under these ids and with this hash, never by what stands here.
 */
export interface BiteReference {
  /** The bite factor that the measurements gave. */
  readonly factor: number;
  /** Ids of the measurements; none in a link, which carries the summary alone. */
  readonly measurements: readonly string[];
  /** Hash of all of them: of their ids and of what they say (mechanics/bench-log/identity.ts). */
  readonly hash: string;
  /** The summary: how many necks there were, and the standard deviation of ln bite that they left. It narrows nothing. */
  readonly necks: number;
  readonly logSpread: number;
}

/** Measurements that a build can refer to. */
export const MOST_REFERRED = 2000;
