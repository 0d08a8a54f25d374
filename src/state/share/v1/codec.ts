/**
 * Links of version 1.
 *
 *   text      base64url(CRC-32 of what follows, 4 bytes big-endian ‖ raw deflate of the JSON)
 *   JSON      { "project": version of the project format, "builds": [changes, …], "page": { … }, "offers": [{ … }, …],
 *             "bites": [summary, …], "grips": … }
 *   changes   of the first build against the frozen base, of each other one against the first; from project version 4 on the base
 *             is that with what had been added by then (added-4.json), or a neck like any other would fill its link with defaults
 *   summary   of the measurements behind each build's bite, and behind its grip, without their ids, or null; left out where no build has any.
 *             A reader that does not know it opens the same necks.
 *   offers    price and time of each build in the workshop's words; left out where nothing is said. A reader that does not know
 *             them opens the page without.
 *
 * Deflate starts from a frozen dictionary. Base and dictionary stand in frozen.json and never change: what later releases
 * add or rename travels as changes, and the project format's own migrations bring old builds up to date.
 */
import { deflateSync } from 'fflate';
import { PROJECT_VERSION } from '../../../neck/file.ts';
import { toBase64Url } from '../base64url.ts';
import { changesFrom } from '../changes.ts';
import { crc32 } from '../crc32.ts';
import { saysAnything } from '../page-text.ts';
import type { Shared } from '../shared.ts';
import { baseOf, CHECK_BYTES, DICTIONARY } from './decode.ts';

export { decode, DICTIONARY, type Unchecked } from './decode.ts';

export function encode({ builds, page, offers }: Shared): string {
  const [first, ...others] = builds.map(({ biteReference: _bite, gripReference: _grip, ...build }) => ({ ...build }));
  const grips = builds.map(({ gripReference }) => (gripReference ? { ...gripReference, documents: [] } : null));
  const bites = builds.map(({ biteReference }) => (biteReference ? { ...biteReference, measurements: [] } : null));
  const changes = [changesFrom(baseOf(PROJECT_VERSION), first), ...others.map((build) => changesFrom(first, build))];
  const isPlain = page.from === '' && page.to === '' && page.note === '' && page.advised === null;
  const json = new TextEncoder().encode(
    JSON.stringify({
      project: PROJECT_VERSION,
      builds: changes,
      ...(isPlain ? {} : { page }),
      ...(saysAnything(offers) ? { offers } : {}),
      ...(bites.some(Boolean) ? { bites } : {}),
      ...(grips.some(Boolean) ? { grips } : {}),
    }),
  );
  const packed = deflateSync(json, { level: 9, dictionary: DICTIONARY });
  const bytes = new Uint8Array(CHECK_BYTES + packed.length);
  new DataView(bytes.buffer).setUint32(0, crc32(packed));
  bytes.set(packed, CHECK_BYTES);
  return toBase64Url(bytes);
}
