/**
 * The known limits that rows of the table are judged by: those of the program, and that of the set-up, whose number pages
 * show beside what is assumed of the pluck. It stands here because no check says it, and the first picture needs no playing.
 */
import { atMost } from '../../src/fretwork/checks/check-making.ts';
import type { Build } from '../../src/neck/build.ts';
import { MM_PER_INCH } from '../../src/neck/units.ts';
import { KNOWN_LIMITS, type KnownLimit } from '../../src/verdict/known-limits.ts';
import { actionsOf } from '../../src/verdict/string-aim.ts';

/** “6/64 inch on the bass side”: as high as a steel six-string is set as a rule. */
const USUAL_ACTION_MM = (6 / 64) * MM_PER_INCH;

export const isSteelSix = ({ strings }: Build): boolean =>
  strings.length === 6 && strings.every(({ construction }) => !construction.startsWith('nylon'));

export const LIGHT_STRINGS: KnownLimit = {
  id: 'light-strings',
  row: 'set-up-height',
  said: null,
  concerns: ({ build }) => isSteelSix(build),
  compare: (reckoned) =>
    atMost('lowestActionMm', USUAL_ACTION_MM, actionsOf(reckoned, { strength: 'medium', direction: 'along' }).lowestActionMm),
};

export const LIMITS: readonly KnownLimit[] = [...KNOWN_LIMITS, LIGHT_STRINGS];
