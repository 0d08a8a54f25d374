/** The line at the foot of a saved drawing: program, day, and the stamp of each neck in it. */
import type { Build } from '../../../neck/build.ts';
import { PROGRAM_VERSION } from '../../../neck/version.ts';
import { SHEETS_WORDS } from '../../../speech/en/pages/sheets.ts';
import { STAMP_WORDS } from '../../../speech/en/pages/papers.ts';
import { isoDate } from '../date.ts';
import { stampOnDevice } from './made.ts';

export function footText(builds: readonly Build[]): string {
  const stamps = builds.map(stampOnDevice).join(' · ');
  return `${SHEETS_WORDS.version(PROGRAM_VERSION)}, ${isoDate(new Date())}, ${STAMP_WORDS.stamp(stamps)}`;
}
