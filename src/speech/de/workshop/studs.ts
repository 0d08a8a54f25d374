/** Wie die Noppen eines Bunddrahts unter der Lupe aussehen. */
import type * as english from '../../en/workshop/studs.ts';

export const STUD_WORDS: typeof english.STUD_WORDS = {
  look: 'Eine Noppe unter der Lupe ansehen: Sie endet in einer Fläche, in einem Grat oder in einer Spitze. Abgenutzte liegen dazwischen.',
  block: { name: 'Klotz', says: 'endet in einer Fläche, so groß wie ihr Fuß' },
  ridge: { name: 'Grat', says: 'endet in einem Grat' },
  point: { name: 'Spitze', says: 'endet in einer Spitze' },
  choose: (name, says, value) => `${name}: ${says}; setzt ${value}`,
};
