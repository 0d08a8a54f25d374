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
  studShape: 'shape of the studs',
  studArea: 'area and pitch of the studs',
  studSoftness: 'how soon the studs grip',
  wallStiffness: 'how the wall gives under the tang body',
  relaxation: 'how much the wedges relax',
  creep: 'how much the wood creeps',
  bite: 'how hard the studs bite',
  slotDepthMm: 'slot depth',
  acrossGrain: 'stiffness of the board across the grain',
  glueModulus: 'stiffness of the glue',
  clampSlide: 'how far the board slides under the clamps',
});
