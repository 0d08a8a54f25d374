/** Hölzer, Legierungen, Leime. */
import type * as english from '../../en/neck/materials.ts';

export const WOOD_WORDS: typeof english.WOOD_WORDS = {
  'sugar-maple': 'Zuckerahorn',
  'red-maple': 'Rotahorn',
  'bigleaf-maple': 'Oregon-Ahorn',
  'black-walnut': 'Amerikanischer Nussbaum',
  'black-cherry': 'Amerikanischer Kirschbaum',
  'white-ash': 'Weißesche',
  'yellow-poplar': 'Tulpenbaum',
  'yellow-birch': 'Gelbbirke',
  'white-oak': 'Weißeiche',
  'black-locust': 'Robinie',
  mahogany: 'Mahagoni',
  'african-mahogany': 'Khaya',
  'spanish-cedar': 'Cedro',
  sapele: 'Sapelli',
  'indian-rosewood': 'Ostindischer Palisander',
  bubinga: 'Bubinga',
  ovangkol: 'Ovangkol',
  purpleheart: 'Amarant',
  'goncalo-alves': 'Gonçalo Alves',
  ipe: 'Ipé',
  macawood: 'Macacauba',
  'ebony-african': 'Afrikanisches Ebenholz',
  'african-padauk': 'Padouk',
  'brazilian-rosewood': 'Rio-Palisander',
  sipo: 'Sipo',
  moabi: 'Moabi',
  'roasted-maple': 'Ahorn, geröstet',
  'laminated-bamboo': 'Bambus, Schichtholz',
  'strand-bamboo': 'Bambus, Faserpressholz',
  'paper-resin': 'Papier mit Harz',
  wenge: 'Wenge',
  own: 'eigenes Holz',
  'own-2': 'eigenes Holz 2',
  'own-3': 'eigenes Holz 3',
  'own-4': 'eigenes Holz 4',
};

export const SHEET_WORDS: typeof english.SHEET_WORDS = {
  board: 'wie das Griffbrett',
  celluloid: 'Celluloid',
  'cellulose-acetate': 'Celluloseacetat',
  abs: 'ABS',
  fibre: 'Vulkanfiber',
};

/** Was in Klammern steht, fällt an manchen Stellen weg. */
export const METAL_WORDS: typeof english.METAL_WORDS = {
  'nickel-silver-18': 'Neusilber (CuNi18Zn20, hart)',
  'nickel-silver-770': 'Neusilber (C77000, H04)',
  'phosphor-bronze': 'Phosphorbronze (C51000, H04)',
  'copper-tin-iron': 'Kupfer-Zinn-Eisen, nickelfrei (Typ CuSn15)',
  brass: 'Messing (C26000, H04)',
  stainless: 'Edelstahl (304, halbhart)',
  'mild-steel': 'Weicher Stahl (1010, kaltgezogen)',
};

export const METAL_SOURCE_WORDS: typeof english.METAL_SOURCE_WORDS = {
  memory: (source) => `${source}, aus dem Gedächtnis`,
  practice: 'Werkstattbrauch, ohne Quelle',
  yieldOf: (source, metal) => `${source}; Streckgrenze von ${metal} übernommen`,
};

/** Wie der Bund herauskommt, steht auch klein geschrieben mitten im Satz. */
export const GLUE_WORDS: typeof english.GLUE_WORDS = {
  'wood-glue': {
    label: 'Holzleim (PVA oder Aliphatharz)',
    cleanUp:
      'Nass mit einem feuchten Tuch abwischen. Wasser lässt den Schlitz quellen: wenig nehmen und das Griffbrett trocknen lassen.',
    release: 'Mit einem Lötkolben den Bund erwärmen, bis der Leim weich wird, dann ziehen.',
    caution:
      'Sein Wasser lässt das Holz um den Schlitz einen Tag lang quellen: nicht abrichten, bevor es ausgetrocknet ist.',
  },
  'soft-white-glue': {
    label: 'weicher Weißleim (elastischer PVA)',
    cleanUp:
      'Nass mit einem feuchten Tuch abwischen. Wasser lässt den Schlitz quellen: wenig nehmen und das Griffbrett trocknen lassen.',
    release: 'Mit einem Lötkolben leicht erwärmen, er wird bald weich; dann ziehen.',
    caution:
      'Sein Wasser lässt das Holz um den Schlitz einen Tag lang quellen: nicht abrichten, bevor es ausgetrocknet ist.',
  },
  'hide-glue': {
    label: 'Hautleim, heiß',
    cleanUp: 'Warmes feuchtes Tuch.',
    release: 'Mit etwas Feuchtigkeit erwärmen, dann ziehen.',
    caution:
      'Griffbrett und Bunddraht anwärmen; in einem kalten Schlitz geliert der Leim, bevor der Bund unten ist. Heißes Wasser verbrüht.',
  },
  cyanoacrylate: {
    label: 'Sekundenkleber (Cyanacrylat)',
    cleanUp:
      'Vorher das Griffbrett neben dem Schlitz wachsen oder mit Schellack streichen; Gehärtetes wird mit der Ziehklinge abgezogen.',
    release:
      'Mit einem Lötkolben den Bund erwärmen; der Kleber wird erst bei größerer Hitze weich als Holzleim, darum bricht leichter etwas aus.',
    caution:
      'Klebt Haut und Augenlider in Sekunden zusammen, sein Dampf beißt: Handschuhe, Schutzbrille, frische Luft. Getränkte Baumwolle kann heiß werden und rauchen.',
  },
  epoxy: {
    label: 'Epoxidharz',
    cleanUp: 'Alkohol auf einem Tuch, bevor es härtet. Das Griffbrett neben dem Schlitz wachsen.',
    release: 'Mit einem Lötkolben den Bund erwärmen, bis das Harz weich wird, dann langsam ziehen.',
    caution:
      'Ungehärtetes Harz und Härter können die Haut auf Lebenszeit überempfindlich machen: Handschuhe, nie mit bloßen Händen, und nicht mit Lösemittel abwaschen.',
  },
};
