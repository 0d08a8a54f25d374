/** The necks that were measured. */
import { useState } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { hasFurther } from '../../mechanics/neck-readings/readings.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { bowText, enteredBowText } from '../../speech/bow.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

interface EntriesTableProps {
  readonly entries: readonly LogEntry[];
  readonly system: UnitSystem;
  readonly edit: (entry: LogEntry) => void;
  readonly remove: (entry: LogEntry) => void;
}

interface PairProps {
  readonly measuredMm: number | null;
  readonly predictedMm: number | null;
  readonly system: UnitSystem;
}

function Pair({ measuredMm, predictedMm, system }: PairProps) {
  if (measuredMm === null || predictedMm === null) return LOG_WORDS.notMeasured;
  return (
    <>
      {bowText(measuredMm, system)}
      <span className="quiet log-predicted">{LOG_WORDS.predicted(bowText(predictedMm, system))}</span>
    </>
  );
}

const FURTHER = [
  ['measuredPullMm', 'predictedPullMm'],
  ['measuredRodMm', 'predictedRodMm'],
  ['measuredQuarter1Mm', 'predictedQuarter1Mm'],
  ['measuredQuarter2Mm', 'predictedQuarter2Mm'],
  ['measuredQuarter3Mm', 'predictedQuarter3Mm'],
] as const;

/** What else was read on it, a line each. */
function Further({ entry, system }: { readonly entry: LogEntry; readonly system: UnitSystem }) {
  return FURTHER.map(([measured, predicted]) => {
    const [measuredMm, predictedMm] = [entry[measured], entry[predicted]];
    if (measuredMm === null || predictedMm === null) return null;
    const said = LOG_WORDS.predicted(enteredBowText(predictedMm, system));
    return (
      <div key={measured} className="log-predicted">
        {LOG_WORDS.furtherRead(LOG_WORDS.fields[measured], enteredBowText(measuredMm, system), said)}
      </div>
    );
  });
}

function Does({ entry, edit, remove }: Pick<EntriesTableProps, 'edit' | 'remove'> & { readonly entry: LogEntry }) {
  return (
    <span className="button-row">
      <button
        type="button"
        className="link"
        aria-label={LOG_WORDS.editName(entry.neck, entry.date)}
        onClick={() => edit(entry)}
      >
        {LOG_WORDS.edit}
      </button>
      <button
        type="button"
        className="link"
        aria-label={LOG_WORDS.removeName(entry.neck, entry.date)}
        onClick={() => remove(entry)}
      >
        {LOG_WORDS.remove}
      </button>
    </span>
  );
}

/** Rows that are shown at once, and added each time. */
const PAGE = 100;

export function EntriesTable({ entries, system, edit, remove }: EntriesTableProps) {
  const [most, setMost] = useState(PAGE);
  const newest = entries.toReversed();
  const hidden = newest.length - most;
  const isFurther = entries.some(hasFurther);
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it */}
      <section className="table-scroll log-entries" tabIndex={0} aria-label={LOG_WORDS.entries}>
        <table className="answer-table">
          <caption className="quiet">{LOG_WORDS.caption}</caption>
          <thead>
            <tr>
              {[
                LOG_WORDS.date,
                LOG_WORDS.neck,
                LOG_WORDS.method,
                LOG_WORDS.fretted,
                LOG_WORDS.strung,
                ...(isFurther ? [LOG_WORDS.further] : []),
                LOG_WORDS.gauge,
              ].map((label) => (
                <th key={label} scope="col">
                  {label}
                </th>
              ))}
              <th scope="col">
                <span className="visually-hidden">{LOG_WORDS.does}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {newest.slice(0, most).map((entry) => (
              <tr key={entry.id}>
                <td>{entry.date}</td>
                <th scope="row" className="log-neck">
                  {entry.neck}
                </th>
                <td>{METHOD_WORDS[entry.method].label}</td>
                <td>
                  <Pair measuredMm={entry.measuredFrettedMm} predictedMm={entry.predictedFrettedMm} system={system} />
                </td>
                <td>
                  <Pair measuredMm={entry.measuredStrungMm} predictedMm={entry.predictedStrungMm} system={system} />
                </td>
                {isFurther && (
                  <td>
                    <Further entry={entry} system={system} />
                  </td>
                )}
                <td>{formatQuantity(entry.gaugeErrorMm, 'mm', 3, system)}</td>
                <td>
                  <Does entry={entry} edit={edit} remove={remove} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {hidden > 0 && (
        <button type="button" onClick={() => setMost(most + PAGE)}>
          {LOG_WORDS.showMore(Math.min(PAGE, hidden), newest.length)}
        </button>
      )}
    </>
  );
}
