/** Was laut gesagt wird, wenn ein Entwurf so nicht gebaut werden kann. */
import type * as english from '../../en/workshop/stops.ts';

export const STOP_WORDS: typeof english.STOP_WORDS = {
  stop: (label, facts) => (facts === '' ? `Halt: ${label}.` : `Halt: ${label}. ${facts}`),
  more: (count) => `Noch ${count}-mal Halt.`,
  solved: (labels, left) =>
    `Behoben: ${labels.join(', ')}. ${left === 0 ? 'Kein Halt mehr.' : `Noch ${left}-mal Halt.`}`,
};
