/** What differs between the necks, number by number, and why. */
import { stepTitle } from '../../speech/steps.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { NeckNumbers } from '../../verdict/compared-numbers.ts';
import { bandText, differenceRows, isSame, type Cell, type Row } from './rows.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';

interface DifferenceTableProps {
  readonly labels: readonly string[];
  readonly necks: readonly NeckNumbers[];
  /** The moment on the rail, in words. */
  readonly moment: string;
  readonly system: UnitSystem;
}

function CellText({ cell }: { readonly cell: Cell }) {
  const band = bandText(cell.band);
  return (
    <>
      <span className="compare-value">{cell.value}</span>
      {band !== null && <span className="compare-band">{band}</span>}
      {cell.note !== undefined && <span className="compare-band">{cell.note}</span>}
      {cell.beside !== undefined && <span className="compare-band compare-beside">{cell.beside}</span>}
    </>
  );
}

function RowBody({ row, labels }: { readonly row: Row; readonly labels: readonly string[] }) {
  const count = labels.length;
  return (
    <tbody data-row={row.id}>
      <tr>
        <th colSpan={count} scope="rowgroup">
          {row.label}
        </th>
      </tr>
      <tr className="compare-cells">
        {row.cells.map((cell, index) => (
          <td key={index}>
            <CellText cell={cell} />
          </td>
        ))}
      </tr>
      {(row.why.length > 0 || isSame(row)) && (
        <tr className="compare-why">
          <td colSpan={count}>
            {isSame(row) && COMPARE_WORDS.same}
            {row.why.map(({ neck, text }) => (
              <p key={neck}>
                <b>{labels[neck]}:</b> {text}
              </p>
            ))}
          </td>
        </tr>
      )}
    </tbody>
  );
}

/** The steps of each neck in their order; those that not all have are marked. */
function StepLists({ labels, necks }: Pick<DifferenceTableProps, 'labels' | 'necks'>) {
  const isInAll = (id: string) => necks.every(({ steps }) => steps.some((step) => step.id === id));
  return (
    <details>
      <summary>{COMPARE_WORDS.steps}</summary>
      <div className="compare-columns" data-count={necks.length}>
        {necks.map(({ steps }, index) => (
          <section key={labels[index]} aria-label={labels[index]}>
            <h4>{labels[index]}</h4>
            <ol className="compare-steps">
              {steps.map((step) => (
                <li key={step.id}>
                  {isInAll(step.id) ? (
                    stepTitle(step)
                  ) : (
                    <>
                      <b>{stepTitle(step)}</b> ({COMPARE_WORDS.onlyHere})
                    </>
                  )}
                </li>
              ))}
            </ol>
          </section>
        ))}
      </div>
    </details>
  );
}

export function DifferenceTable({ labels, necks, moment, system }: DifferenceTableProps) {
  return (
    <section className="compare-differences">
      <h3 id="compare-table">{COMPARE_WORDS.table}</h3>
      <table aria-labelledby="compare-table">
        <colgroup>
          {labels.map((label) => (
            <col key={label} className="compare-column" />
          ))}
        </colgroup>
        <thead>
          <tr>
            {labels.map((label) => (
              <th key={label} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        {differenceRows(necks, moment, system).map((row) => (
          <RowBody key={row.id} row={row} labels={labels} />
        ))}
      </table>
      <StepLists labels={labels} necks={necks} />
    </section>
  );
}
