/** Strips for the tests: an invented workshop's offcut of rosewood with three kerfs. */
import type { TryStrip } from '../../../src/mechanics/try-strip/document.ts';

export const STRIP: TryStrip = {
  id: 'bcdfghjklmnpqr',
  date: '2026-03-02',
  name: 'Offcut of board 12',
  workshop: 'Bench by the window',
  notes: '',
  offcut: {
    lengthMm: 300,
    widthMm: 60,
    thicknessMm: 6,
    wood: 'indian-rosewood',
    sawn: 'flat',
    ownModulusGPa: null,
    ownDensityKgM3: null,
    cutFrom: '',
    stiffness: { test: 'none' },
  },
  wire: {
    name: 'Medium, hard',
    tangWidthMm: 0.5,
    tangDepthMm: 2,
    studWidthMm: 0.76,
    studAreaMm2: 0.48,
    studPitchMm: 2.5,
    studShape: 1,
  },
  slotDepthMm: 3,
  endMm: 12.5,
  groups: [
    { blade: 'thin', kerfMm: 0.54, kerfErrorMm: 0.01, frets: 4 },
    { blade: 'usual', kerfMm: 0.58, kerfErrorMm: 0.01, frets: 4 },
    { blade: 'usual, two passes', kerfMm: 0.62, kerfErrorMm: 0.01, frets: 4 },
  ],
  readings: [
    { days: 0, bow: 'hump', sizeMm: 3.2, over: 'ends', instrument: 'feelers', ownErrorMm: null },
    { days: 0, bow: 'hump', sizeMm: 0.45, over: 0, instrument: 'feelers', ownErrorMm: null },
    { days: 0, bow: 'hump', sizeMm: 0.25, over: 2, instrument: 'own', ownErrorMm: 0.1 },
  ],
};
