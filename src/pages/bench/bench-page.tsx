/** The bench in place of the neck: which job, or the job that is open, one step a screen. Loaded when it is first opened. */
import { useCallback, useState } from 'react';
import { useAwake } from '../../state/device/use-awake.ts';
import { useJobs } from '../../state/jobs/use-jobs.ts';
import { useBackbow } from '../../state/store.ts';
import { BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { neckOf } from '../../state/jobs/job-document.ts';
import { UnitSwitch } from '../workshop/project/settings.tsx';
import { usePlaceManners } from '../papers/manners.ts';
import { goTo } from '../papers/route.ts';
import { JobView } from './job-view.tsx';
import { StartView } from './start-view.tsx';
import './bench.css';

function Head({ inJob }: { readonly inJob: boolean }) {
  return (
    <header className="bench-bar">
      <button type="button" onClick={() => goTo(null)}>
        ‹ {BENCH_WORDS.back}
      </button>
      {inJob && (
        <button type="button" onClick={() => goTo('bench')}>
          {BENCH_WORDS.jobs}
        </button>
      )}
      <UnitSwitch />
    </header>
  );
}

interface BenchPageProps {
  /** Id of the job that is open. */
  readonly job: string | null;
}

export function BenchPage({ job: id }: BenchPageProps) {
  const system = useBackbow((state) => state.unitSystem);
  const { items, unreadable, trouble } = useJobs();
  const isAwake = useAwake();
  const [screen, setScreen] = useState('');
  const told = useCallback((shown: string) => setScreen(shown), []);
  const job = items?.find((each) => each.id === id);
  const name = job ? neckOf(job).name || BENCH_WORDS.unnamed : BENCH_WORDS.title;
  usePlaceManners(`${id} ${screen}`, BENCH_WORDS.documentTitle(name), 'bench-title');
  return (
    <div className="bench">
      <Head inJob={id !== null} />
      <main>
        {trouble !== null && (
          <p className="refusal" role="alert">
            {BENCH_WORDS.troubles[trouble]}
          </p>
        )}
        {items === null ? (
          <p className="quiet">{BENCH_WORDS.reading}</p>
        ) : job ? (
          <JobView key={job.id} job={job} system={system} shown={told} />
        ) : (
          <StartView jobs={items} unreadable={unreadable} isGone={id !== null} system={system} />
        )}
      </main>
      {isAwake !== null && <p className="bench-awake quiet">{isAwake ? BENCH_WORDS.awake : BENCH_WORDS.notAwake}</p>}
    </div>
  );
}
