/** A part of the sheet with its heading, and the button that saves its table. */
import type { ReactNode } from 'react';
import type { Table } from '../../fretwork/plan/tables.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';

export interface SectionProps {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
  /** Table that the section's button saves. */
  readonly table?: Table | undefined;
  readonly onSave?: ((table: Table) => void) | undefined;
  /** Begins on a page of its own. */
  readonly ownPage?: boolean;
  /** Stays on one page. */
  readonly whole?: boolean;
}

export function Section({ id, title, children, table, onSave, ownPage, whole }: SectionProps) {
  return (
    <section
      id={`sheet-${id}`}
      className="sheet-section"
      aria-labelledby={`sheet-${id}-title`}
      data-own-page={ownPage || undefined}
      data-whole={whole || undefined}
    >
      <header className="section-head">
        <h2 id={`sheet-${id}-title`} tabIndex={-1}>
          {title}
        </h2>
        {table && onSave && (
          <button
            type="button"
            className="screen-only"
            aria-label={PLAN_WORDS.saveTable(title)}
            title={PLAN_WORDS.saveTable(title)}
            onClick={() => onSave(table)}
          >
            {PLAN_WORDS.saveTableShort}
          </button>
        )}
      </header>
      {children}
    </section>
  );
}
