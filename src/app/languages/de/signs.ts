/** Zahlzeichen, Töne und woraus Saiten sind. */
import type * as strings from '../../../build/strings.ts';
import type * as units from '../../../build/units.ts';

export const NUMBER_SIGNS: typeof units.NUMBER_SIGNS = { decimal: ',' };

/** Das deutsche B liegt einen Halbton unter dem H. */
export const NOTE_NAMES: typeof strings.NOTE_NAMES = ['C', 'Cis', 'D', 'Es', 'E', 'F', 'Fis', 'G', 'As', 'A', 'B', 'H'];

export const CONSTRUCTION_LABELS: typeof strings.CONSTRUCTION_LABELS = {
  'steel-plain': 'blanker Stahl',
  'steel-wound': 'Stahl, mit vernickeltem Stahl umsponnen',
  'bronze-wound': 'Stahl, mit Bronze umsponnen',
  'nylon-plain': 'blankes Nylon',
  'nylon-wound': 'Nylonseide, mit Kupfer umsponnen',
};
