/** Names of files that every file system takes: letters, digits and hyphens of the build's name, then what the file is. */

/** Longest part that comes from the build's name, so that the whole stays far below the 255 bytes that file systems take. */
const MOST_CHARACTERS = 60;

/** @param kind e.g. "slots.csv" */
export function fileName(buildName: string, kind: string): string {
  const stem = buildName
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .toLowerCase();
  const short = Array.from(stem)
    .slice(0, MOST_CHARACTERS)
    .join('')
    .replace(/^-+|-+$/g, '');
  return `${short === '' ? 'neck' : short}-${kind}`;
}
