/** Which job: the neck of the workshop handed over, or one that was begun; and what there is to saw and to seat with. */
import { useState } from 'react';
import { isolated } from '../../speech/isolate.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { bowText } from '../../speech/bow.ts';
import { BENCH_FILE_WORDS, BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { handedOver } from '../../state/jobs/hand-over.ts';
import { neckOf, type BenchJob } from '../../state/jobs/job-document.ts';
import { jobStore } from '../../state/jobs/job-store.ts';
import { formatWhen } from '../../state/library/when.ts';
import { currentBands } from '../../state/solution-slice.ts';
import { useBackbow } from '../../state/store.ts';
import { SaidLine, type Said } from '../log/said-line.tsx';
import { goTo } from '../papers/route.ts';
import { madeToday } from '../papers/stamp/made.ts';
import { useNotComputed } from '../workshop/not-computed.tsx';
import { OpenJobFile, saveJob } from './job-files.tsx';
import { StockEditor } from './stock-editor.tsx';

function Start({ system }: { readonly system: UnitSystem }) {
  const solution = useBackbow((state) => state.solution);
  const build = useBackbow((state) => state.build);
  const uncertainty = useBackbow(currentBands);
  const reason = useNotComputed();
  const [isTry, setTry] = useState(false);
  const isReady = solution?.build === build && uncertainty !== null;

  async function start(): Promise<void> {
    if (!solution || !uncertainty) return;
    const { prediction } = solution;
    const job = handedOver({ build, prediction, uncertainty, made: madeToday(build), isTry, at: Date.now() });
    await jobStore.put([], [job]);
    goTo('bench', job.id);
  }

  const name = build.name === '' ? BENCH_WORDS.unnamed : isolated(build.name);
  const relief = bowText(build.targetReliefMm, system);
  return (
    <section>
      <h2>{BENCH_WORDS.startTitle}</h2>
      <p>{BENCH_WORDS.startIntro(name, METHOD_WORDS[build.method].label, relief)}</p>
      <label>
        <input type="checkbox" checked={isTry} onChange={(event) => setTry(event.currentTarget.checked)} />{' '}
        {BENCH_WORDS.isTry}
      </label>
      <button type="button" className="bench-main" disabled={!isReady} onClick={() => void start()}>
        {BENCH_WORDS.start}
      </button>
      <output className="quiet">
        {isReady ? BENCH_WORDS.frozen : reason ? SOLVER_WORDS.notComputedWhy(reason) : BENCH_WORDS.computing}
      </output>
    </section>
  );
}

interface JobListProps {
  readonly title: string;
  readonly jobs: readonly BenchJob[];
  readonly open: string;
  readonly save: (job: BenchJob) => void;
  readonly remove: (job: BenchJob) => void;
}

function JobList({ title, jobs, open, save, remove }: JobListProps) {
  if (jobs.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul className="bench-jobs">
        {jobs.map((job) => {
          const name = neckOf(job).name || BENCH_WORDS.unnamed;
          return (
            <li key={job.id}>
              <p>
                <b>{isolated(name)}</b>
                {job.isTry && ` (${BENCH_WORDS.tryMark})`}
                <br />
                <span className="quiet">{BENCH_WORDS.jobLine(formatWhen(job.startedAt), job.now.readings.length)}</span>
              </p>
              <button type="button" aria-label={`${open}: ${name}`} onClick={() => goTo('bench', job.id)}>
                {open}
              </button>
              <button type="button" aria-label={BENCH_FILE_WORDS.saveName(name)} onClick={() => save(job)}>
                {BENCH_FILE_WORDS.save}
              </button>
              <button type="button" aria-label={BENCH_WORDS.removeJobName(name)} onClick={() => remove(job)}>
                {BENCH_WORDS.removeJob}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

interface StartViewProps {
  readonly jobs: readonly BenchJob[];
  readonly unreadable: number;
  /** The address names a job that is not here. */
  readonly isGone: boolean;
  readonly system: UnitSystem;
}

export function StartView({ jobs, unreadable, isGone, system }: StartViewProps) {
  const [said, say] = useState<Said | null>(null);

  async function remove(job: BenchJob): Promise<void> {
    await jobStore.put([job], []);
    const name = isolated(neckOf(job).name || BENCH_WORDS.unnamed);
    say({ title: BENCH_WORDS.removed(name), undo: () => jobStore.put([], [job]) });
  }

  const isDone = ({ now }: BenchJob) => now.finishedAt !== null;
  const shared = { remove: (job: BenchJob) => void remove(job), save: (job: BenchJob) => say(saveJob(job)) };
  return (
    <div className="bench-start">
      <h1 id="bench-title" tabIndex={-1}>
        {BENCH_WORDS.title}
      </h1>
      {isGone && <p className="refusal">{BENCH_WORDS.gone}</p>}
      <SaidLine said={said} say={() => say({ title: BENCH_WORDS.undone })} />
      <JobList
        title={BENCH_WORDS.openTitle}
        jobs={jobs.filter((job) => !isDone(job))}
        open={BENCH_WORDS.goOnWith}
        {...shared}
      />
      <Start system={system} />
      {jobs.length === 0 && <p className="quiet">{BENCH_WORDS.none}</p>}
      <OpenJobFile say={say} />
      <StockEditor system={system} />
      <JobList title={BENCH_WORDS.finishedTitle} jobs={jobs.filter(isDone)} open={BENCH_WORDS.lookAt} {...shared} />
      {unreadable > 0 && <p className="quiet">{BENCH_WORDS.unreadable(unreadable)}</p>}
    </div>
  );
}
