import { readSolidBoardCases, solveSolidBoardCase, type SolidBoardCase } from '../solid-board-case.ts';
import type { Comparison, ValueRow } from '../row.ts';

const LINES = [
  ['gluedOnClampsOffMm', 'bow, glued on and clamps off'],
  ['pressedOnTheNeckMm', 'bow, pressed on the neck'],
  ['boardAloneFreeMm', 'bow of the board alone'],
] as const;
const WHY = 'a plane model of a solid: 4 %';

export function solidBoardRow(solid: SolidBoardCase): ValueRow {
  const ours = solveSolidBoardCase(solid);
  const comparisons: Comparison[] = LINES.flatMap(([key, label]) => {
    const reference = solid.results[key];
    if (typeof reference !== 'number') return [];
    return [
      { label, printed: String(reference), reference, unit: 'mm', tolerance: 0.04, why: WHY, ours: () => ours[key] },
    ];
  });
  return {
    id: `solid-${solid.id}`,
    kind: 'verification',
    subject: 'Solid finite elements',
    quantity: 'bow of a neck whose board is glued on with its frets in',
    inputs: `test/reference/solid-fe-board-first/${solid.file}`,
    source: solid.method.split(',')[0],
    mark: 'calc',
    comparisons,
  };
}

export const SOLID_BOARD_ROWS: readonly ValueRow[] = readSolidBoardCases().map(solidBoardRow);
