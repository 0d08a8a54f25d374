/** The bow to expect while the frets go in, and what to do when it runs ahead. */
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { textOf } from '../../../speech/quantity-text.ts';
import { quarterTable, type Table } from '../../../fretwork/plan/tables.ts';
import { bowText } from '../../../speech/bow.ts';
import { PLAN_WORDS } from '../../../speech/en/pages/papers.ts';
import { RUN_AHEAD_TEXTS } from '../../../speech/en/fretwork/run-ahead.ts';
import { DataTable, SheetTable } from '../data-table.tsx';
import { LineFigure } from '../line-figure.tsx';
import type { AheadRow, SheetPlan } from '../../../verdict/sheet-plan.ts';
import { Raised } from '../../workshop/checks/raised.tsx';
import { Section } from '../section.tsx';

function WhenAhead({ rows, system }: { readonly rows: readonly AheadRow[]; readonly system: UnitSystem }) {
  const columns = [
    { id: 'in', header: PLAN_WORDS.quarters.in, kind: 'number' },
    { id: 'shows', header: PLAN_WORDS.quarters.shows, kind: 'words' },
    { id: 'times', header: PLAN_WORDS.quarters.times, kind: 'number' },
    { id: 'end', header: PLAN_WORDS.quarters.end, kind: 'words' },
    { id: 'kerf', header: PLAN_WORDS.quarters.kerf, kind: 'words' },
    { id: 'advice', header: PLAN_WORDS.quarters.advice, kind: 'words' },
  ] as const;
  return (
    <>
      <h3>{PLAN_WORDS.quarters.aheadTitle}</h3>
      <p>{PLAN_WORDS.quarters.aheadNote}</p>
      <SheetTable
        caption={PLAN_WORDS.quarters.aheadCaption}
        className="table-ahead"
        columns={columns}
        rows={rows.map(({ fretsIn, ratio, measuredMm, expectedFullMm, result }) => [
          fretsIn,
          bowText(measuredMm, system),
          formatNumber(ratio, 2),
          bowText(expectedFullMm, system),
          result.kerfMm === undefined ? '' : textOf('kerfMm', result.kerfMm, system),
          RUN_AHEAD_TEXTS[result.advice].label,
        ])}
      />
      {rows
        .filter(({ raised }) => raised.length > 0)
        .map(({ fretsIn, ratio, result, raised }) => (
          <div key={`${fretsIn} ${ratio}`} data-raised-by={fretsIn}>
            <p>{PLAN_WORDS.quarters.aheadRaises(textOf('kerfMm', result.kerfMm!, system))}</p>
            <Raised checks={raised} system={system} />
          </div>
        ))}
      <dl className="sheet-advice">
        {[...new Set(rows.map(({ result }) => result.advice))].map((advice) => (
          <div key={advice}>
            <dt>{RUN_AHEAD_TEXTS[advice].label}</dt>
            <dd>{RUN_AHEAD_TEXTS[advice].text}</dd>
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
    <Section id="quarters" title={PLAN_WORDS.quarters.title} table={table} onSave={onSave}>
      <p>
        {PLAN_WORDS.quarters.note} {sheet.build.rodKind === 'none' ? '' : PLAN_WORDS.quarters.rodNeutral}
      </p>
      <DataTable
        table={table}
        system={system}
        keep={['frets', 'fretsIn', 'reliefMm', 'reliefP05Mm', 'reliefP95Mm']}
        // Glued frets do not bow the neck: there is no band to give.
        {...(sheet.ahead.length === 0 ? { without: ['reliefP05Mm', 'reliefP95Mm'] } : {})}
      />
      {sheet.ahead.length === 0 ? (
        <p>{PLAN_WORDS.quarters.none}</p>
      ) : (
        <>
          <LineFigure
            title={PLAN_WORDS.quarters.lineTitle}
            prediction={sheet.prediction}
            system={system}
            lines={sheet.quarterLines.map((line, index) => ({ name: PLAN_WORDS.quarters.quarter(index + 1), line }))}
          />
          <WhenAhead rows={sheet.ahead} system={system} />
        </>
      )}
    </Section>
  );
}
