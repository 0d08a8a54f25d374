/** A table of the plan: on a narrow screen it scrolls sideways with its first column held, on paper its head repeats. */
import type { ReactNode } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { ColumnKey, Table } from '../../fretwork/plan/tables.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';
import { foldTable, type ShownColumn } from './folded-table.ts';

export interface SheetTableProps {
  /** Names the table for those who do not see where it stands. */
  readonly caption: string;
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly (readonly ReactNode[])[];
  readonly className?: string;
}

export function SheetTable({ caption, columns, rows, className }: SheetTableProps) {
  return (
    // Scrolls by key too, so it takes the focus.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section className="sheet-scroll" tabIndex={0} aria-label={PLAN_WORDS.scrollable(caption)}>
      <table className={`sheet-table ${className ?? ''}`}>
        <caption className="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.id} scope="col" className={`cell-${column.kind}`} data-column={column.id}>
                {column.header}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {row.map((cell, place) => {
                const { id, kind } = columns[place];
                const className = `cell-${kind}`;
                return place === 0 ? (
                  <th key={id} scope="row" className={className}>
                    {cell}
                  </th>
                ) : (
                  <td key={id} className={className} data-column={id}>
                    {cell}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface DataTableProps {
  readonly table: Table;
  readonly system: UnitSystem;
  readonly keep?: readonly ColumnKey[];
  readonly without?: readonly ColumnKey[];
  /** What goes before that which all rows have alike. */
  readonly alike?: string;
}

/** A table of the library; what is alike in all rows is said once above it. */
export function DataTable({ table, system, keep, without, alike = PLAN_WORDS.allFrets }: DataTableProps) {
  const { columns, rows, common } = foldTable(table, system, {
    ...(keep ? { keep } : {}),
    ...(without ? { without } : {}),
  });
  return (
    <>
      {common.length > 0 && (
        <p className="sheet-common">
          <strong>{alike}</strong>{' '}
          {common.map(({ label, text }) => (
            <span key={label} className="sheet-pair">
              {label}: <b>{text}</b>
            </span>
          ))}
        </p>
      )}
      <SheetTable
        caption={PLAN_WORDS.tables[table.id].title}
        columns={columns}
        rows={rows}
        className={`table-${table.id}`}
      />
    </>
  );
}
