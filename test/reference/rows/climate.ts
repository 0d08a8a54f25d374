import { UNCUT } from '../../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { ISOTROPIC, middleCurvature, rectangularNeck } from '../../mechanics/elements/rectangular.ts';
import { rowFromCheck, type ValueRow } from '../row.ts';

/** Curvature of a two-layer strip of the program's own mesh: neck 15 mm of E 12.6, board 6 mm of E 12.3 GPa. */
function twoLayerCurvature(mismatch: number): number {
  const strip = rectangularNeck({
    lengthMm: 504,
    widthMm: 50,
    boardThicknessMm: 6,
    neckThicknessMm: 15,
    board: { modulusMPa: 12_300, ...ISOTROPIC },
    neck: { modulusMPa: 12_600, ...ISOTROPIC },
  });
  const influence = solveInfluence(createNeckModel(strip), UNCUT, 'named');
  return middleCurvature(influence.stationXMm, combineLine(influence, { cases: { boardStrain: mismatch } }));
}

export const CLIMATE_ROWS: readonly ValueRow[] = [
  rowFromCheck('bimetal', 'Climate', [() => twoLayerCurvature(1e-3)], {
    note: 'The climate load case on a rectangular strip, measured over its middle half, away from the ends.',
  }),
];
