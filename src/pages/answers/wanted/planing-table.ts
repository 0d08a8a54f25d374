/** The planing plan as a table: on the screen and as a file. */
import type { Table } from '../../../fretwork/plan/tables.ts';
import type { PlaningPlan } from '../../../mechanics/inversion/planing.ts';

export type PlaningTable = Pick<Table, 'columns' | 'rows'>;

export function planingTable({ rows }: Pick<PlaningPlan, 'rows'>): PlaningTable {
  return {
    columns: ['fret', 'fretXMm', 'lineReliefMm', 'wantedLineReliefMm', 'planeOffMm'],
    rows: rows.map((row) => [row.fret, row.xMm, row.predictedMm, row.wantedMm, row.planeOffMm]),
  };
}
