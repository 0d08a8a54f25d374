/** What scatters from neck to neck, as it stands after “most of the band comes from”. */
import type { UncertainInput } from '../../../mechanics/uncertainty/inputs.ts';
import { words } from '../../language.ts';

export const UNCERTAIN_INPUT_WORDS: Readonly<Record<UncertainInput, string>> = words('UNCERTAIN_INPUT_WORDS', {
  boardModulus: 'stiffness of the board',
  neckModulus: 'stiffness of the neck',
  density: 'density of the board',
  crushing: 'crushing strength of the board',
  kerfMm: 'kerf',
  studWidthMm: 'width over the studs',
  studSoftness: 'how soon the studs grip',
  relaxation: 'how much the wedges relax',
  creep: 'how much the wood creeps',
  bite: 'how hard the studs bite',
});
