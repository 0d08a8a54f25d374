/** A caution in words. */
import type { Caution } from '../fretwork/checks/cautions.ts';
import { glueById } from '../neck/glues.ts';
import { CAUTION_TEXTS } from './en/cautions.ts';
import { glueName, listed, woodName } from './quantity-names.ts';

export function cautionText({ id, about }: Pick<Caution, 'id' | 'about'>): string {
  switch (id) {
    case 'dust-sensitising':
    case 'listed-wood':
      return CAUTION_TEXTS[id](listed(about.map(woodName)));
    case 'glue': {
      const glue = about[0] ?? '';
      return CAUTION_TEXTS.glue(glueName(glue), glueById(glue).caution);
    }
    default:
      return CAUTION_TEXTS[id];
  }
}
