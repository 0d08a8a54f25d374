/** The bow to expect while the frets go in, and what to do when it runs ahead. */
import { formatNumber, formatQuantity, type UnitSystem } from '../../../neck/units.ts';
import { quarterTable, type Table } from '../../../fretwork/plan/tables.ts';
import { bowText } from '../../../speech/en/bow.ts';
import { PLAN_WORDS } from '../../../speech/en/papers.ts';
import { DataTable, SheetTable } from '../data-table.tsx';
import { LineFigure } from '../line-figure.tsx';
import type { AheadRow, SheetPlan } from '../../../verdict/sheet-plan.ts';
import { Section } from '../section.tsx';

const WORDS = PLAN_WORDS.quarters;

function WhenAhead({ rows, system }: { readonly rows: readonly AheadRow[]; readonly system: UnitSystem }) {
  const columns = [
    { id: 'in', header: WORDS.in, kind: 'number' },
    { id: 'shows', header: WORDS.shows, kind: 'words' },
    { id: 'times', header: WORDS.times, kind: 'number' },
    { id: 'end', header: WORDS.end, kind: 'words' },
    { id: 'kerf', header: WORDS.kerf, kind: 'words' },
    { id: 'advice', header: WORDS.advice, kind: 'words' },
  ] as const;
  return (
    <>
      <h3>{WORDS.aheadTitle}</h3>
      <p>{WORDS.aheadNote}</p>
      <SheetTable
        caption={WORDS.aheadCaption}
        className="table-ahead"
        columns={columns}
        rows={rows.map(({ fretsIn, ratio, measuredMm, result }) => [
          fretsIn,
          bowText(measuredMm, system),
          formatNumber(ratio, 2),
          bowText(result.expectedFullMm, system),
          result.kerfMm === undefined ? '' : formatQuantity(result.kerfMm, 'mm', 2, system),
          WORDS.labels[result.advice],
        ])}
      />
      <dl className="sheet-advice">
        {[...new Map(rows.map(({ result }) => [result.advice, result.text]))].map(([advice, text]) => (
          <div key={advice}>
            <dt>{WORDS.labels[advice]}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

interface QuartersProps {
  readonly sheet: SheetPlan;
  readonly system: UnitSystem;
  readonly onSave: (table: Table) => void;
}

export function Quarters({ sheet, system, onSave }: QuartersProps) {
  const table = quarterTable(sheet.plan);
  return (
    <Section id="quarters" title={WORDS.title} table={table} onSave={onSave}>
      <p>
        {WORDS.note} {sheet.build.rodKind === 'none' ? '' : WORDS.rodNeutral}
      </p>
      <DataTable
        table={table}
        system={system}
        keep={['frets', 'in', 'expected', 'least', 'most']}
        // Glued frets do not bow the neck: there is no band to give.
        {...(sheet.ahead.length === 0 ? { without: ['least', 'most'] } : {})}
      />
      {sheet.ahead.length === 0 ? (
        <p>{WORDS.none}</p>
      ) : (
        <>
          <LineFigure
            title={WORDS.lineTitle}
            prediction={sheet.prediction}
            system={system}
            lines={sheet.quarterLines.map((line, index) => ({ name: WORDS.quarter(index + 1), line }))}
          />
          <WhenAhead rows={sheet.ahead} system={system} />
        </>
      )}
    </Section>
  );
}
