/** Why a link was not opened, in plain words. */
import type { UnitSystem } from '../../neck/units.ts';
import type { LinkTrouble } from '../../state/share/shared.ts';
import { problemTexts } from '../../speech/problems.ts';
import { LINK_WORDS } from '../../speech/en/pages/share.ts';

/** Problems listed in one message. */
const MOST_PROBLEMS = 8;

/** One line for each thing that is wrong. */
export function troubleTexts(trouble: LinkTrouble, system: UnitSystem): string[] {
  switch (trouble.code) {
    case 'newer':
      return [LINK_WORDS.newer(trouble.version, trouble.newest)];
    case 'broken':
      return [LINK_WORDS.broken];
    case 'too-long':
      return [LINK_WORDS.tooLong(trouble.length, trouble.most)];
    case 'refused':
      return [LINK_WORDS.refused, ...problemTexts(trouble.problems, system).slice(0, MOST_PROBLEMS)];
  }
}
