/** The results by kind and subject, what disagrees first. */
import { disagreeing, isGood, ROW_KINDS, tallyOf, type ProofRow, type Results, type RowKind } from './results.ts';
import { ProofRowView } from './proof-row.tsx';
import { PROOF_WORDS } from '../../../speech/en/pages/proof.ts';

function Disagreements({ rows }: { readonly rows: readonly ProofRow[] }) {
  if (rows.length === 0) return <p>{PROOF_WORDS.noDisagreements}</p>;
  return (
    <ul className="proof-bad">
      {rows.map((row) => (
        <li key={row.id} lang="en">
          <strong>{row.quantity}</strong>
          <ul>
            {row.comparisons
              .filter((one) => !isGood(one))
              .map((one) => (
                <li key={one.label}>
                  {one.label} {one.reference}, {PROOF_WORDS.columns.ours} {one.ours} {one.unit} ({one.difference})
                </li>
              ))}
            {row.statements
              .filter((one) => !isGood(one))
              .map((one) => (
                <li key={one.says}>
                  {one.says}. {one.seen}.{' '}
                  <span className="quiet">{one.because !== '' && PROOF_WORDS.because(one.because)}</span>
                </li>
              ))}
          </ul>
        </li>
      ))}
    </ul>
  );
}

function Kind({ kind, results }: { readonly kind: RowKind; readonly results: Results }) {
  const rows = results.rows.filter((row) => row.kind === kind);
  const { good, all, rows: count } = tallyOf(rows);
  return (
    <section className="proof-kind" data-kind={kind} aria-labelledby={`proof-${kind}`}>
      <h3 id={`proof-${kind}`}>{PROOF_WORDS.kinds[kind]}</h3>
      <p>
        {rows.length === 0 && kind === 'validation' ? PROOF_WORDS.noNecks : PROOF_WORDS.sums[kind](good, all, count)}
      </p>
      {results.subjects.map((subject) => {
        const of = rows.filter((row) => row.subject === subject);
        if (of.length === 0) return null;
        const sum = tallyOf(of);
        return (
          <details key={subject}>
            <summary>
              <span className="proof-subject" lang="en">
                {subject}
              </span>{' '}
              <span className={sum.good === sum.all ? 'quiet' : 'verdict-bad'}>
                {PROOF_WORDS.subjectSum(sum.good, sum.all)}
              </span>
            </summary>
            {of.map((row) => (
              <ProofRowView key={row.id} row={row} />
            ))}
          </details>
        );
      })}
    </section>
  );
}

export function ProofResults({ results }: { readonly results: Results }) {
  return (
    <>
      <section aria-labelledby="proof-bad">
        <h3 id="proof-bad">{PROOF_WORDS.disagreements}</h3>
        <Disagreements rows={disagreeing(results.rows)} />
      </section>
      {ROW_KINDS.map((kind) => (
        <Kind key={kind} kind={kind} results={results} />
      ))}
      <details>
        <summary>
          <span className="proof-subject">{PROOF_WORDS.marks}</span>
        </summary>
        <dl className="proof-marks">
          {Object.entries(results.marks).map(([mark, meaning]) => (
            <div key={mark} lang="en">
              <dt>[{mark}]</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
      </details>
    </>
  );
}
