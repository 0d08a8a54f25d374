/** What the choices come to side by side, in a few words each. */
import type { UnitSystem } from '../../neck/units.ts';
import { bowKind } from '../../speech/bow.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import type { ChoiceFacts } from '../../verdict/choice-facts.ts';
import { daysText, sizeText } from './sentences.ts';

export interface GlanceRow {
  readonly label: string;
  readonly say: (facts: ChoiceFacts) => string;
}

export function glanceRows(system: UnitSystem): readonly GlanceRow[] {
  const { glance } = CUSTOMER_WORDS;
  return [
    {
      label: glance.bend,
      say: ({ frettedMm }) =>
        bowKind(frettedMm, system) === 'flat' ? CUSTOMER_WORDS.none : sizeText(frettedMm, system),
    },
    { label: glance.moves, say: ({ movesMm }) => sizeText(movesMm, system) },
    { label: glance.rod, say: ({ rodTask }) => CUSTOMER_WORDS.rodShort[rodTask] },
    { label: glance.wait, say: ({ waitDays }) => daysText(waitDays) },
    { label: glance.refret, say: ({ refret }) => CUSTOMER_WORDS.refretShort[refret] },
  ];
}
