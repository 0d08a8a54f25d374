/** How much to plane off the board at each fret before it is slotted. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { formatQuantity } from '../../../speech/quantity.ts';
import { cellText, columnHeader } from '../../../speech/tables.ts';
import type { WantedAnswer } from '../../../mechanics/inversion/answers.ts';
import { offerDownload } from '../../../kit/files.ts';
import { csvFileName, csvText } from '../../papers/csv-file.ts';
import { stampOnDevice } from '../../papers/stamp/made.ts';
import { bandText } from './goal.ts';
import { planingTable } from './planing-table.ts';
import { nearerSentence } from '../../../speech/answers/paired.ts';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

interface PlaningAnswerProps {
  readonly build: Build;
  readonly answer: WantedAnswer;
  readonly system: UnitSystem;
}

export function PlaningAnswer({ build, answer, system }: PlaningAnswerProps) {
  const { planing } = answer;
  const table = planingTable(planing);
  return (
    <section aria-labelledby="wanted-planing">
      <h3 id="wanted-planing">{WANTED_WORDS.planing}</h3>
      <p>
        {WANTED_WORDS.planingIntro(formatQuantity(planing.mostMm, 'mm', 2, system))} {WANTED_WORDS.thicknessNote}{' '}
        <span className="quiet">
          {WANTED_WORDS.band(bandText(planing.bandMm, system))} {planing.mostMm > 0 && nearerSentence(planing.paired)}
        </span>
      </p>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it */}
      <section className="table-scroll planing" tabIndex={0} aria-label={WANTED_WORDS.planingCaption}>
        <table className="answer-table">
          <caption className="visually-hidden">{WANTED_WORDS.planingCaption}</caption>
          <thead>
            <tr>
              {table.columns.map((column) => (
                <th key={column} scope="col" className="number">
                  {columnHeader(column, system)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, index) => (
              <tr key={index}>
                {row.map((cell, at) => {
                  const column = table.columns[at];
                  const text = cellText(cell, column, system);
                  return at === 0 ? (
                    <th key={column} scope="row" className="number">
                      {text}
                    </th>
                  ) : (
                    <td key={column} className="number" data-column={column}>
                      {text}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <div className="button-row">
        <button
          type="button"
          onClick={() =>
            offerDownload(
              csvFileName(build, { id: 'planing' }, stampOnDevice(build)),
              csvText(table),
              'text/csv;charset=utf-8',
            )
          }
        >
          {WANTED_WORDS.saveCsv}
        </button>
      </div>
    </section>
  );
}
