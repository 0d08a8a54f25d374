/** Where limits, cautions and facts come from, and how well that is known. */
import type { SourceCode } from '../../../fretwork/facts.ts';
import type { Mark } from '../../../neck/sources.ts';
import { words } from '../../language.ts';

export const BASIS_WORDS = words('BASIS_WORDS', {
  practice: 'common practice, no source',
  assumption: 'assumption of the program, no source',
  geometry: 'geometry of this build',
  prediction: 'this prediction',
  'prediction-and-margin': 'this prediction; margin: common practice',
  'levelling-budget': 'levelling budget of this build',
  springback: 'bending of a rectangular section past its yield strength, and its springback',
  'wedge-model': 'how studs and tang press on the walls of the slot, as this program computes it',
  'known-limit': 'common practice, no source, beside this prediction; the table under “Accuracy and proof”',
  'wire-strength': 'ASTM A228 least tensile strengths; margin: common practice',
  'large-deflection': 'ASTM D790, 12.3 (from memory): bending beyond a tenth of the span needs a correction',
  'wood-stiffness': 'range of the woods in the table (Wood Handbook, Tropix), with a margin of about a half',
  'wood-tables': 'the publications behind the table of woods; see “Board wood”',
  'shear-strength':
    'shear strength of hardwoods along the grain, Wood Handbook, regression (from memory); margin: common practice',
  'nickel-rule': 'Regulation (EC) No 1907/2006 (REACH), Annex XVII, entry 27; EN 1811',
  'nickel-rule-wording': 'wording of entry 27; the entry does not define prolonged contact (ECHA, 2014 and 2017)',
  'nickel-coins': 'Lidén & Carter, Nickel release from coins, Contact Dermatitis 44 (2001) 160 (abstract)',
  'nickel-steels':
    'Euro Inox, Stainless Steel – The Safe Choice; a study of 316L, 304, 303 and 201 in artificial sweat (abstract)',
  'nickel-strings':
    'Režić, Ćurković & Ujević, Corrosion Science 51 (2009) 1985: plated strings in artificial sweat (abstract)',
  archard: 'Archard, J. Appl. Phys. 24 (1953) 981 (from memory); hardness typical, from memory',
  'dust-rule': 'IARC group 1; Directive 2004/37/EC as amended by (EU) 2017/2398 (from memory)',
  'toxic-woods': 'HSE woodworking sheet on toxic woods, and a chart of wood toxicity after Woods & Calnan (1976)',
  'listed-species': 'notes of the wood table; Checklist of CITES Species',
} satisfies Readonly<Record<SourceCode, string>>);

export const MARK_WORDS = words('MARK_WORDS', {
  src: 'read in the source named',
  mem: 'from memory of the source named',
  calc: 'computed here',
  practice: 'common practice, no source',
} satisfies Readonly<Record<Mark, string>>);
