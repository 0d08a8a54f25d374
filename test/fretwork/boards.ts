/** Three boards whose fretwork is worked by hand in the tests. */
import { defaultBuild, type Build } from '../../src/neck/build.ts';

/** Flat, unbound; 24 frets on 650 mm. */
export const UNBOUND_FLAT: Build = {
  ...defaultBuild(),
  name: 'unbound flat',
  scaleLengthMm: 650,
  fretCount: 24,
  widthNutMm: 43,
  widthLastFretMm: 56,
  boardShape: 'flat',
  boardThicknessMm: 6,
  slotDepthMm: 3,
  tangDepthMm: 2,
  slotClearanceMm: 0.4,
  crownWidthMm: 2.4,
  crownHeightMm: 1.2,
  kerfMm: 0.58,
  bindingLineCount: 0,
  linesSawnThrough: 0,
  endBevelDegrees: 32,
  endInsetMm: 0.1,
  oversizeMm: 2,
  wireForm: 'stick',
  stickLengthMm: 260,
  cutLossMm: 0.5,
  wireSparePercent: 10,
};

/** Conical, 254 to 406 mm; three lines of binding, the saw passes through two; slot follows the radius. */
export const BOUND_CONICAL: Build = {
  ...UNBOUND_FLAT,
  name: 'bound conical',
  scaleLengthMm: 628,
  fretCount: 22,
  widthLastFretMm: 57,
  boardShape: 'cone',
  radiusNutMm: 254,
  radiusLastFretMm: 406,
  boardThicknessMm: 6.5,
  bindingLineCount: 3,
  linesSawnThrough: 2,
  binding: [
    { thicknessMm: 0.5, colour: '#26211e' },
    { thicknessMm: 0.5, colour: '#f2ead7' },
    { thicknessMm: 1.5, colour: '#f2ead7' },
    { thicknessMm: 0.5, colour: '#26211e' },
    { thicknessMm: 0.5, colour: '#f2ead7' },
  ],
  nipClearanceMm: 0.5,
};

/** Straight saw cuts in a board of 184 mm radius, 52 to 60 mm wide; unbound. */
export const FLAT_CUT_TIGHT: Build = {
  ...UNBOUND_FLAT,
  name: 'flat cut, tight radius',
  fretCount: 20,
  widthNutMm: 52,
  widthLastFretMm: 60,
  boardShape: 'cylinder',
  radiusNutMm: 184,
  boardThicknessMm: 7,
  slotBottom: 'flat',
  slotDepthMm: 4.7,
};
