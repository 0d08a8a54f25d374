/** Necks to start from, of an invented workshop. Dimensions are common practice, no source. */
import { defaultBuild, type Build } from './build.ts';
import { stringsOf } from './strings.ts';

export interface Preset<Id extends string = string> {
  readonly id: Id;
  /** Without a name: speech has one for it. */
  readonly build: Build;
}

function preset<const Id extends string>(id: Id, change: Partial<Build>): Preset<Id> {
  return { id, build: { ...defaultBuild(), ...change } };
}

const line = (thicknessMm: number, colour: string) => ({ thicknessMm, colour });
const CREAM = '#f2ead7';
const BLACK = '#26211e';

const ROWS = [
  preset('bolt-on-maple', {
    laminates: [{ wood: 'sugar-maple', share: 1 }],
    boardWood: 'indian-rosewood',
  }),
  preset('set-neck-mahogany', {
    scaleLengthMm: 628,
    fretCount: 22,
    bodyJointFret: 16,
    heelStyle: 'set',
    widthLastFretMm: 57,
    thicknessFret1Mm: 21.5,
    thicknessFret12Mm: 24,
    laminates: [{ wood: 'mahogany', share: 1 }],
    boardWood: 'ebony-african',
    boardShape: 'cone',
    radiusNutMm: 254,
    radiusLastFretMm: 406,
    boardThicknessMm: 6.5,
    kerfMm: 0.6,
    method: 'both',
    bindingLineCount: 3,
    linesSawnThrough: 2,
    binding: [line(0.5, BLACK), line(0.5, CREAM), line(1.5, CREAM), line(0.5, BLACK), line(0.5, CREAM)],
    rodKind: 'one-way',
    rodEndMm: 365,
  }),
  preset('thick-five-piece', {
    fretCount: 24,
    bodyJointFret: 19,
    widthLastFretMm: 58,
    thicknessFret1Mm: 26.5,
    thicknessFret12Mm: 28.5,
    backExponent: 2.4,
    laminates: [
      { wood: 'wenge', share: 0.4 },
      { wood: 'purpleheart', share: 0.14 },
      { wood: 'wenge', share: 0.46 },
    ],
    boardWood: 'ebony-african',
    boardThicknessMm: 6.5,
    radiusNutMm: 406,
    rodEndMm: 430,
    stringHeightFret12Mm: 3,
  }),
  preset('slim-soft', {
    scaleLengthMm: 635,
    fretCount: 21,
    thicknessFret1Mm: 19,
    thicknessFret12Mm: 21,
    boardThicknessMm: 5,
    slotDepthMm: 2.6,
    laminates: [{ wood: 'african-mahogany', share: 1 }],
    boardWood: 'black-walnut',
    radiusNutMm: 241,
    crownWidthMm: 2.1,
    crownHeightMm: 1,
    tangDepthMm: 1.6,
    strings: stringsOf('six-9-42', 'six-standard'),
    channelDepthMm: 8,
    rodEndMm: 375,
  }),
  preset('long-four', {
    scaleLengthMm: 864,
    fretCount: 21,
    bodyJointFret: 16,
    widthNutMm: 42,
    widthLastFretMm: 63,
    thicknessFret1Mm: 22,
    thicknessFret12Mm: 24.5,
    laminates: [
      { wood: 'black-walnut', share: 0.2 },
      { wood: 'sugar-maple', share: 0.8 },
    ],
    boardWood: 'ovangkol',
    radiusNutMm: 305,
    crownWidthMm: 2.7,
    crownHeightMm: 1.3,
    strings: stringsOf('four-45-105', 'four-low'),
    stringHeightNutMm: 2.2,
    stringHeightFret12Mm: 3.8,
    stringEdgeMm: 4.5,
    rodEndMm: 520,
    barCount: 2,
    targetReliefMm: 0.25,
  }),
  preset('nylon-flat', {
    scaleLengthMm: 650,
    fretCount: 19,
    bodyJointFret: 12,
    widthNutMm: 52,
    widthLastFretMm: 62.5,
    thicknessFret1Mm: 22,
    thicknessFret12Mm: 23.5,
    backExponent: 2.5,
    heelStyle: 'set',
    heelThicknessMm: 30,
    heelLengthMm: 40,
    laminates: [{ wood: 'spanish-cedar', share: 1 }],
    boardWood: 'ebony-african',
    boardShape: 'flat',
    boardThicknessMm: 6.5,
    crownWidthMm: 2,
    crownHeightMm: 1,
    tangDepthMm: 1.6,
    kerfMm: 0.6,
    strings: stringsOf('nylon-28-43', 'six-standard'),
    stringHeightNutMm: 2,
    stringHeightFret12Mm: 4.5,
    stringEdgeMm: 4.5,
    method: 'glue',
    rodKind: 'none',
    targetReliefMm: 0.1,
  }),
  // The kerf slightly smaller than the tang, read as makers who press say it: smaller than its body.
  preset('bolt-on-tight', {
    laminates: [{ wood: 'sugar-maple', share: 1 }],
    boardWood: 'ebony-african',
    crownWidthMm: 2.6,
    crownHeightMm: 1.4,
    tangWidthMm: 0.53,
    studWidthMm: 0.78,
    kerfMm: 0.51,
  }),
];

export type PresetId = (typeof ROWS)[number]['id'];

export const PRESETS: readonly Preset<PresetId>[] = ROWS;
