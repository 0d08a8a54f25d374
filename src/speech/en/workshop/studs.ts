/** What the studs of a wire look like through a lens. */
import { words } from '../../language.ts';

export const STUD_WORDS = words('STUD_WORDS', {
  look: 'Look at a stud through a lens: it ends in a flat, in an edge or in a point. Worn ones lie in between.',
  block: { name: 'Block', says: 'ends in a flat as large as its foot' },
  ridge: { name: 'Ridge', says: 'ends in an edge' },
  point: { name: 'Point', says: 'ends in a point' },
  /** @param says what it ends in. @param value of the number beside it */
  choose: (name: string, says: string, value: string) => `${name}: ${says}; sets ${value}`,
});
