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

/** A document that a build refers to: a try strip, an entry of the bench log of another neck, or one read on this very neck. */
export const DOCUMENT_KINDS = ['strip', 'neck', 'own'] as const;
export interface ReferredDocument {
  readonly kind: (typeof DOCUMENT_KINDS)[number];
  readonly id: string;
  /** Of what it says. */
  readonly hash: string;
  /** Of a strip: was it cut from the board of this neck? */
  readonly ownBoard?: boolean | undefined;
}

/**
 * Where the grip of a build comes from when more than the bench log's bite speaks: strips, other necks, and what was read on
 * the neck itself, heard together. As above: the bands are narrowed by what this device has under these ids and with these
 * hashes, and has accepted, never by what stands here.
 */
export interface GripReference {
  /** What was taken over. */
  readonly biteFactor: number;
  readonly studShape: number;
  /** None in a link, which carries the summary alone. */
  readonly documents: readonly ReferredDocument[];
  /** Hash of all of them. */
  readonly hash: string;
  /** Of the neck as it was read; empty where nothing was read on it itself. */
  readonly neck: string;
  /** The summary: how many documents, and where the bite lies with 90 %. It narrows nothing. */
  readonly measured: number;
  readonly biteLow: number;
  readonly biteHigh: number;
}
