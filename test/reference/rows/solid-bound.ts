import { readSolidBoundCases, solveSolidBoundCase, type SolidBoundCase } from '../solid-bound-case.ts';
import type { Comparison, ValueRow } from '../row.ts';

const LINES = [
  ['wedgeAllMm', 'bow, all frets wedged', 0.03],
  ['stringsSlotsEmptyMm', 'bow, strings, slots empty', 0.02],
  ['stringsNoSlotsMm', 'bow, strings, no slots', 0.02],
] as const;

export function solidBoundRow(solid: SolidBoundCase): ValueRow {
  const ours = solveSolidBoundCase(solid);
  const comparisons: Comparison[] = LINES.flatMap(([key, label, tolerance]) => {
    const reference = solid.results[key];
    const why = 'a plane model of a solid: 3 % for frets, 2 % for strings';
    return reference === null
      ? []
      : [{ label, printed: String(reference), reference, unit: 'mm', tolerance, why, ours: () => ours[key] }];
  });
  return {
    id: `solid-${solid.id}`,
    kind: 'verification',
    subject: 'Solid finite elements',
    quantity: 'bow of a bound neck, or of one whose slots stop before the edge',
    inputs: `test/reference/solid-fe-bound/${solid.file}`,
    source: solid.method.split(',')[0],
    mark: 'calc',
    comparisons,
  };
}

export const SOLID_BOUND_ROWS: readonly ValueRow[] = readSolidBoundCases().map(solidBoundRow);
