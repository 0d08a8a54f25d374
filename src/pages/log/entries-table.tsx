/** The necks that were measured. */
import { useState } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { bowText } from '../../speech/bow.ts';
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

/** Rows that are shown at once, and added each time. */
const PAGE = 100;

export function EntriesTable({ entries, system, edit, remove }: EntriesTableProps) {
  const [most, setMost] = useState(PAGE);
  const newest = entries.toReversed();
  const hidden = newest.length - most;
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
                <td>{formatQuantity(entry.gaugeErrorMm, 'mm', 3, system)}</td>
                <td>
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
