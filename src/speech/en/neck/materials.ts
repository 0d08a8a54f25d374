/** Woods, wire metals and glues in words. */
import type { GlueId } from '../../../neck/glues.ts';
import type { SheetMaterialId } from '../../../neck/materials/binding.ts';
import type { MetalId } from '../../../neck/metals.ts';
import type { OwnWoodId } from '../../../neck/materials/own-woods.ts';
import type { WoodId } from '../../../neck/woods.ts';
import { words } from '../../language.ts';

export const WOOD_WORDS = words('WOOD_WORDS', {
  'sugar-maple': 'sugar maple',
  'red-maple': 'red maple',
  'bigleaf-maple': 'bigleaf maple',
  'black-walnut': 'black walnut',
  'black-cherry': 'black cherry',
  'white-ash': 'white ash',
  'yellow-poplar': 'yellow-poplar',
  'yellow-birch': 'yellow birch',
  'white-oak': 'white oak',
  'black-locust': 'black locust',
  mahogany: 'mahogany',
  'african-mahogany': 'African mahogany',
  'spanish-cedar': 'Spanish-cedar',
  sapele: 'sapele',
  'indian-rosewood': 'Indian rosewood',
  bubinga: 'bubinga',
  ovangkol: 'ovangkol',
  purpleheart: 'purpleheart',
  'goncalo-alves': 'goncalo alves',
  ipe: 'ipe',
  macawood: 'macawood',
  'ebony-african': 'ebony (African)',
  'african-padauk': 'African padauk',
  'brazilian-rosewood': 'Brazilian rosewood',
  sipo: 'sipo',
  moabi: 'moabi',
  'roasted-maple': 'roasted maple',
  'laminated-bamboo': 'laminated bamboo',
  'strand-bamboo': 'strand-woven bamboo',
  'paper-resin': 'paper and resin',
  wenge: 'wenge',
  own: 'my own wood',
  'own-2': 'my own wood 2',
  'own-3': 'my own wood 3',
  'own-4': 'my own wood 4',
} satisfies Record<WoodId | OwnWoodId, string>);

/** Binding that is no wood. */
export const SHEET_WORDS = words('SHEET_WORDS', {
  board: 'as the board',
  celluloid: 'celluloid',
  'cellulose-acetate': 'cellulose acetate',
  abs: 'ABS',
  fibre: 'vulcanised fibre',
} satisfies Record<SheetMaterialId | 'board', string>);

export const METAL_WORDS = words('METAL_WORDS', {
  'nickel-silver-18': 'nickel silver (CuNi18Zn20, hard)',
  'nickel-silver-770': 'nickel silver (C77000, H04)',
  'phosphor-bronze': 'phosphor bronze (C51000, H04)',
  'copper-tin-iron': 'copper–tin–iron, nickel-free (CuSn15 type)',
  brass: 'brass (C26000, H04)',
  stainless: 'stainless steel (304, half hard)',
  'mild-steel': 'mild steel (1010, cold drawn)',
} satisfies Record<MetalId, string>);

/** Where the numbers of a metal are from. */
export const METAL_SOURCE_WORDS = words('METAL_SOURCE_WORDS', {
  memory: (source: string) => `${source}, from memory`,
  practice: 'common practice, no source',
  yieldOf: (source: string, metal: string) => `${source}; yield taken from ${metal}`,
});

interface GlueWords {
  readonly label: string;
  readonly cleanUp: string;
  /** How the next repairer gets the fret out again. */
  readonly release: string;
  readonly caution: string;
}

export const GLUE_WORDS = words('GLUE_WORDS', {
  'wood-glue': {
    label: 'wood glue (PVA or aliphatic resin)',
    cleanUp: 'Wipe off with a damp cloth while wet. Water swells the slot: use little, and let the board dry.',
    release: 'Heat the fret with an iron until the glue softens, then lift.',
    caution: 'Its water swells the wood around the slot for a day: do not level before it has dried out.',
  },
  'soft-white-glue': {
    label: 'soft white glue (flexible PVA)',
    cleanUp: 'Wipe off with a damp cloth while wet. Water swells the slot: use little, and let the board dry.',
    release: 'A little heat from an iron softens it; lift.',
    caution: 'Its water swells the wood around the slot for a day: do not level before it has dried out.',
  },
  'hide-glue': {
    label: 'hot hide glue',
    cleanUp: 'Warm damp cloth.',
    release: 'Heat with a little moisture, then lift.',
    caution: 'Warm the board and the wire; a cold slot gels the glue before the fret is home. Hot water scalds.',
  },
  cyanoacrylate: {
    label: 'cyanoacrylate',
    cleanUp: 'Wax or shellac the board beside the slot first; what has set is scraped off.',
    release: 'Heat the fret with an iron; it softens at a higher heat than wood glue, so chips are likelier.',
    caution:
      'Bonds skin and eyelids within seconds, its vapour stings: gloves, glasses, fresh air. Cotton with it can heat up and smoke.',
  },
  epoxy: {
    label: 'epoxy',
    cleanUp: 'Alcohol on a cloth before it sets. Wax the board beside the slot.',
    release: 'Heat the fret with an iron until the resin softens, then lift slowly.',
    caution:
      'Uncured resin and hardener sensitise the skin for life: gloves, no bare hands, and do not wash it off with solvent.',
  },
} satisfies Record<GlueId, GlueWords>);
