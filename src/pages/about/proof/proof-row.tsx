/** One row of the table of checks: where the reference comes from, and how the library compares. Results are in English. */
import { spokenLanguage } from '../../../speech/language.ts';
import { isGood, type Comparison, type ProofRow, type Statement } from './results.ts';
import { PROOF_WORDS } from '../../../speech/en/pages/proof.ts';

function Verdict({ of }: { readonly of: Pick<Comparison, 'verdict'> }) {
  return <span className={isGood(of) ? 'verdict' : 'verdict verdict-bad'}>{of.verdict}</span>;
}

const withUnit = (value: string, unit: string) => (unit === '' ? value : `${value}\u00a0${unit}`);

function Comparisons({ name, comparisons }: { readonly name: string; readonly comparisons: readonly Comparison[] }) {
  const labelled = comparisons.some(({ label }) => label !== '');
  const { columns } = PROOF_WORDS;
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="table-scroll" tabIndex={0} aria-label={name}>
      <table className="answer-table">
        <thead>
          <tr>
            {labelled && (
              <th scope="col" lang={spokenLanguage()}>
                {PROOF_WORDS.part}
              </th>
            )}
            {Object.values(columns).map((label) => (
              <th key={label} scope="col" lang={spokenLanguage()}>
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {comparisons.map((one, index) => (
            <tr key={index}>
              {labelled && <th scope="row">{one.label}</th>}
              <td>{withUnit(one.reference, one.unit)}</td>
              <td>{withUnit(one.ours, one.unit)}</td>
              <td>{one.difference}</td>
              <td className="proof-why">
                {one.tolerance}
                <span className="quiet"> {one.why}</span>
              </td>
              <td>
                <Verdict of={one} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function StatementItem({ statement }: { readonly statement: Statement }) {
  return (
    <li>
      {statement.says}: <Verdict of={statement} />
      <br />
      <span className="quiet">
        {statement.seen} {statement.because !== '' && PROOF_WORDS.because(statement.because)}
      </span>
    </li>
  );
}

export function ProofRowView({ row }: { readonly row: ProofRow }) {
  const { quantity, inputs, source, mark, printed, note, comparisons, statements } = row;
  return (
    <div className="proof-row" data-row={row.id} lang="en">
      <h4>{quantity}</h4>
      <p className="quiet">
        {PROOF_WORDS.inputs(inputs)} {PROOF_WORDS.source(source, mark)} {printed !== '' && PROOF_WORDS.printed(printed)}{' '}
        {note}
      </p>
      {comparisons.length > 0 && <Comparisons name={quantity} comparisons={comparisons} />}
      {statements.length > 0 && (
        <ul className="proof-statements">
          {statements.map((statement) => (
            <StatementItem key={statement.says} statement={statement} />
          ))}
        </ul>
      )}
    </div>
  );
}
