/** Wenn die Rechnung abbricht. Steht mitten im Satz. */
import type { Sentences } from '../../catalogue.ts';

export const STATE_SENTENCES: Sentences = {
  'the calculation broke off': 'die Rechnung ist abgebrochen',
  'the calculation stopped several times in a row': 'die Rechnung ist mehrmals hintereinander stehengeblieben',
};
