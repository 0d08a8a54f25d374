/** The planing plan as a table: on the screen and as a file. */
import type { Table } from '../../../fretwork/plan/tables.ts';
import type { PlaningPlan } from '../../../mechanics/inversion/planing.ts';
import { WANTED_WORDS } from '../../../speech/en/answers.ts';

export type PlaningTable = Pick<Table, 'columns' | 'rows'>;

export function planingTable({ rows }: Pick<PlaningPlan, 'rows'>): PlaningTable {
  const mm = (id: string, label: string) => ({ id, label, unit: 'mm', digits: 2 }) as const;
  return {
    columns: [
      { id: 'fret', label: WANTED_WORDS.fret, unit: '', digits: 0 },
      mm('x', WANTED_WORDS.from),
      mm('predicted', WANTED_WORDS.predicted),
      mm('wanted', WANTED_WORDS.wanted),
      mm('plane-off', WANTED_WORDS.planeOff),
    ],
    rows: rows.map((row) => [row.fret, row.xMm, row.predictedMm, row.wantedMm, row.planeOffMm]),
  };
}
