/** A caution in words. */
import type { Caution } from '../fretwork/checks/cautions.ts';
import { CAUTION_TEXTS } from './en/fretwork/cautions.ts';
import { glueWords, woodName } from './names.ts';
import { listed } from './quantity-names.ts';

export function cautionText({ id, about }: Pick<Caution, 'id' | 'about'>): string {
  switch (id) {
    case 'dust-sensitising':
    case 'listed-wood':
      return CAUTION_TEXTS[id](listed(about.map(woodName)));
    case 'glue': {
      const { label, caution } = glueWords(about[0] ?? '');
      return CAUTION_TEXTS.glue(label, caution);
    }
    default:
      return CAUTION_TEXTS[id];
  }
}
