/** At the end: what was predicted at hand-over beside what was read; into the bench log with one tap; and finished. */
import { useState } from 'react';
import { contentProblems } from '../../mechanics/bench-log/entry-problems.ts';
import { newId } from '../../mechanics/bench-log/identity.ts';
import { inOrder } from '../../mechanics/while-fretting/job.ts';
import { fretsInAfterQuarters } from '../../fretwork/plan/seating-order.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import { bowBandText, bowText, enteredBowText } from '../../speech/bow.ts';
import { BENCH_DONE_WORDS, BENCH_READING_WORDS } from '../../speech/en/bench/bench.ts';
import { choiceText } from '../../speech/measured/fretting.ts';
import { logProblemText } from '../../speech/measured/log-problems.ts';
import { finished, logged } from '../../state/jobs/job-changes.ts';
import { neckOf, type BenchJob } from '../../state/jobs/job-document.ts';
import { logEntryOf } from '../../state/jobs/log-entry.ts';
import { formatWhen } from '../../state/library/when.ts';
import { useStock } from '../../state/stock/use-stock.ts';
import { store, useBackbow } from '../../state/store.ts';
import { isoDate } from '../papers/date.ts';
import type { InJob } from './job-view.tsx';
import { unread } from './screens.ts';
import { stockNames } from './stock-name.ts';

interface Row {
  readonly name: string;
  readonly predicted: (Band & { readonly statedMm: number }) | null;
  /** Null where nothing was read; undefined where nothing is read here. */
  readonly readMm: number | null | undefined;
}

/** After each quarter, between them where something was read, and what follows. */
function rowsOf({ predicted, now, neck }: Pick<BenchJob, 'predicted' | 'now' | 'neck'>): Row[] {
  const ends = fretsInAfterQuarters(neckOf({ neck })).map(({ length }) => length);
  const readings = new Map(inOrder(now.readings).map(({ seated, measuredMm }) => [seated, measuredMm]));
  const counts = [...new Set([...ends, ...readings.keys()])].toSorted((a, b) => a - b);
  const quarter = (count: number) => predicted.quarters[ends.indexOf(count)] ?? null;
  return [
    ...counts.map((count) => ({
      name: BENCH_DONE_WORDS.fretsIn(count),
      predicted: quarter(count),
      readMm: readings.get(count) ?? null,
    })),
    { name: BENCH_DONE_WORDS.strung, predicted: predicted.strung, readMm: undefined },
    { name: BENCH_DONE_WORDS.settled, predicted: predicted.settled, readMm: undefined },
  ];
}

function ReadTable({ job, system }: Pick<InJob, 'job' | 'system'>) {
  return (
    <div className="table-scroll">
      <table className="bench-table">
        <caption className="visually-hidden">{BENCH_DONE_WORDS.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{BENCH_DONE_WORDS.state}</th>
            <th scope="col">{BENCH_DONE_WORDS.predicted}</th>
            <th scope="col">{BENCH_DONE_WORDS.range}</th>
            <th scope="col">{BENCH_DONE_WORDS.read}</th>
          </tr>
        </thead>
        <tbody>
          {rowsOf(job).map(({ name, predicted, readMm }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{predicted && bowText(predicted.statedMm, system)}</td>
              <td>{predicted && bowBandText(predicted.p05, predicted.p95, system)}</td>
              <td>
                {readMm === null ? BENCH_DONE_WORDS.notRead : readMm !== undefined && enteredBowText(readMm, system)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function ToLog({ job, system, enter }: Pick<InJob, 'job' | 'system' | 'enter'>) {
  const [problem, setProblem] = useState<string>();
  const entry = logEntryOf(job, (gauge) => BENCH_READING_WORDS.names[gauge]);
  // A job that came from another device may have gone into the log of that one.
  const isElsewhere = useBackbow(({ benchLog }) => benchLog?.every(({ id }) => id !== job.now.logged) ?? false);
  if (job.now.logged !== null) return <p>{isElsewhere ? BENCH_DONE_WORDS.inLogElsewhere : BENCH_DONE_WORDS.inLog}</p>;
  if (job.isTry) return <p className="quiet">{BENCH_DONE_WORDS.tryNote}</p>;
  if (!entry) return <p className="quiet">{BENCH_DONE_WORDS.nothingForLog}</p>;
  const read = entry;
  async function put(): Promise<void> {
    const content = { ...read, date: isoDate(new Date()) };
    const [wrong] = contentProblems(content);
    if (wrong) {
      setProblem(BENCH_DONE_WORDS.notLogged(logProblemText(wrong, system)));
      return;
    }
    const id = newId();
    await store.getState().changeBenchLog([], [{ ...content, id }]);
    await enter(logged(id), BENCH_DONE_WORDS.inLog);
  }
  return (
    <>
      <button type="button" className="bench-main" onClick={() => void put()}>
        {BENCH_DONE_WORDS.toLog}
      </button>
      <p className="quiet">{BENCH_DONE_WORDS.logNote}</p>
      <p className="refusal" role="alert">
        {problem}
      </p>
    </>
  );
}

export function DoneScreen({ job, system, enter }: InJob) {
  const { items } = useStock();
  const names = stockNames(items);
  const { finishedAt, changes } = job.now;
  return (
    <>
      <ReadTable job={job} system={system} />
      {changes.map(({ seated, rest }) => (
        <p key={seated}>{BENCH_DONE_WORDS.changes(choiceText(rest, system, names), seated)}</p>
      ))}
      {unread(neckOf(job)) === null && <ToLog job={job} system={system} enter={enter} />}
      {finishedAt === null ? (
        <button type="button" className="bench-main" onClick={() => void enter(finished(Date.now()))}>
          {BENCH_DONE_WORDS.finish}
        </button>
      ) : (
        <p>{BENCH_DONE_WORDS.isFinished(formatWhen(finishedAt))}</p>
      )}
    </>
  );
}
