import { fretPositionMm } from '../../../src/neck/neck-shape.ts';
import { halfDigit, printedCheck, rowFromCheck, type ValueRow } from '../row.ts';

function row(id: string, fret: number): ValueRow {
  const { inputs, printed, tolerance } = printedCheck(id);
  const scaleMm = Number(/scale ([\d.]+)/.exec(inputs)![1]);
  const exact = Number(tolerance) < 1e-6;
  return rowFromCheck(
    id,
    'Fret positions',
    [() => fretPositionMm(scaleMm, fret)],
    exact ? {} : { tolerance: [halfDigit(printed), 'half a unit of the last digit printed'] },
  );
}

export const FRET_ROWS: readonly ValueRow[] = [row('fret-1', 1), row('fret-7', 7), row('fret-12', 12), row('fret-24', 24)];
