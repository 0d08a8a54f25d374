/** Words in the tables of the plan: heads of columns that are no quantity, and codes in the cells. */
import type { CellCode, CodeColumn } from '../../../fretwork/plan/tables.ts';
import { words } from '../../language.ts';

export const TABLE_WORDS = words('TABLE_WORDS', {
  columns: {
    slotEnds: 'Slot ends',
    metal: 'Metal',
    chosen: 'Chosen',
    nickel: 'Nickel',
    figures: 'Figures',
    strength: 'Played',
    severity: 'Weight',
    code: 'Check',
    variant: 'Kind',
    parameter: 'Parameter',
    quantity: 'Quantity',
    value: 'Found',
    limitKind: 'Kind of limit',
    limit: 'Limit',
    unit: 'Unit',
    source: 'Source',
  } satisfies Readonly<Record<CodeColumn, string>>,
  cells: {
    soft: 'softly',
    medium: 'medium',
    hard: 'hard',
    own: 'my own',
    flat: 'flat',
    straight: 'straight',
    spare: 'spare',
    open: 'open',
    stopped: 'stopped',
    yes: 'yes',
    no: '',
    free: 'nickel-free',
    contains: 'contains it',
  } satisfies Readonly<Record<CellCode, string>>,
});
