/** Names of files that every file system takes: letters, digits and hyphens of the build's name, then what the file is. */

/** Longest part that comes from the build's name, so that the whole stays far below the 255 bytes that file systems take. */
const MOST_CHARACTERS = 60;

/** Names that Windows keeps for devices, whatever ending follows (Microsoft, “Naming Files, Paths, and Namespaces”). */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** The part that comes from the build's name; letters with marks lose them (ü → u). */
export function fileStem(buildName: string): string {
  const stem = buildName
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .toLowerCase();
  const short = Array.from(stem)
    .slice(0, MOST_CHARACTERS)
    .join('')
    .replace(/^-+|-+$/g, '');
  if (short === '') return 'neck';
  return RESERVED.test(short) ? `${short}-neck` : short;
}

/** @param kind e.g. "slots.csv" */
export function fileName(buildName: string, kind: string): string {
  return `${fileStem(buildName)}-${kind}`;
}
