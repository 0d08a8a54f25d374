/** Was von Hals zu Hals streut: nach einem Doppelpunkt, mit dem Anteil dahinter. */
import type * as uncertainty from '../../en/workshop/uncertainty.ts';

export const UNCERTAIN_INPUT_WORDS: typeof uncertainty.UNCERTAIN_INPUT_WORDS = {
  boardModulus: 'Steifigkeit des Griffbretts',
  neckModulus: 'Steifigkeit des Halses',
  density: 'Rohdichte des Griffbretts',
  crushing: 'Quetschfestigkeit des Griffbretts',
  kerfMm: 'Schlitzbreite',
  studWidthMm: 'Breite über die Noppen',
  studShape: 'Form der Noppen',
  studArea: 'Fläche und Abstand der Noppen',
  studSoftness: 'wie bald die Noppen greifen',
  wallStiffness: 'wie die Wand unter dem Steg nachgibt',
  relaxation: 'wie viel die Keile nachlassen',
  creep: 'wie viel das Holz kriecht',
  bite: 'wie fest die Noppen greifen',
  slotDepthMm: 'Schlitztiefe',
  acrossGrain: 'Steifigkeit des Griffbretts quer zur Faser',
  clampSlide: 'wie weit das Griffbrett unter den Zwingen gleitet',
  glueModulus: 'Steifigkeit des Klebers',
};
