/** A job one step a screen: where one is, what to do, and on and back; every entry can be taken back. */
import { useEffect, useRef, useState } from 'react';
import { isolated } from '../../speech/isolate.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { stepTitle } from '../../speech/steps.ts';
import { atPlace, lastEntry, takenBack, type JobChange } from '../../state/jobs/job-changes.ts';
import { neckOf, type BenchJob } from '../../state/jobs/job-document.ts';
import { jobStore } from '../../state/jobs/job-store.ts';
import { store } from '../../state/store.ts';
import { DoneScreen } from './done-screen.tsx';
import { ReadScreen } from './read-screen.tsx';
import { placeIn, screensOf, type Screen } from './screens.ts';
import { SeatScreen } from './seat-screen.tsx';
import { StepScreen } from './step-screen.tsx';

export function screenTitle(screen: Screen): string {
  switch (screen.kind) {
    case 'step':
      return stepTitle(screen.step);
    case 'seat':
      return BENCH_WORDS.seatTitle(stepTitle(screen.step), screen.quarter);
    case 'read':
      return BENCH_WORDS.readTitle(screen.after);
    case 'done':
      return BENCH_WORDS.doneTitle;
  }
}

/** What the screens of a job are given. */
export interface InJob {
  readonly job: BenchJob;
  readonly system: UnitSystem;
  /** Enters something, and says it. */
  readonly enter: (change: JobChange, said?: string) => Promise<void>;
  readonly next: () => void;
}

function Body({ screen, ...inJob }: InJob & { readonly screen: Screen }) {
  switch (screen.kind) {
    case 'step':
      return <StepScreen job={inJob.job} step={screen.step} system={inJob.system} />;
    case 'seat':
      return <SeatScreen screen={screen} {...inJob} />;
    case 'read':
      return <ReadScreen screen={screen} {...inJob} />;
    case 'done':
      return <DoneScreen {...inJob} />;
  }
}

/** The key of undo takes back what was entered last; in a field where something is being typed it is the field's. */
function useUndoKey(undo: () => Promise<void>): void {
  const latest = useRef(undo);
  useEffect(() => {
    latest.current = undo;
  });
  useEffect(() => {
    function onKey(event: KeyboardEvent): void {
      const { target } = event;
      const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z';
      if (!isUndo || document.querySelector('dialog[open]')) return;
      const isTyping =
        target instanceof HTMLElement && target.matches('textarea, input[type="text"]:not([data-idle="true"])');
      if (isTyping) return;
      event.preventDefault();
      void latest.current();
    }
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

interface JobViewProps {
  readonly job: BenchJob;
  readonly system: UnitSystem;
  /** Told which screen is shown. */
  readonly shown: (screen: string) => void;
}

export function JobView({ job, system, shown }: JobViewProps) {
  const [said, say] = useState('');
  const screens = screensOf(job);
  const at = placeIn(screens, job.place);
  const screen = screens[at];
  useEffect(() => shown(screen.id), [shown, screen.id]);
  const build = neckOf(job);
  useEffect(() => {
    // What the neck was measured with before is heard with what is read on it.
    void store.getState().lookUpGrips([build]);
  }, [build]);

  const enter: InJob['enter'] = async (change, told = '') => {
    await jobStore.enter(job.id, change);
    say(told);
  };
  const turnTo = (index: number) => void enter(atPlace(screens[index].id));

  const last = lastEntry(job);
  async function undo(): Promise<void> {
    if (last === 'none') return;
    if (last === 'logged') {
      const { benchLog, changeBenchLog } = store.getState();
      const entries = (benchLog ?? []).filter(({ id }) => id === job.now.logged);
      await changeBenchLog(entries, []);
    }
    await enter(takenBack, BENCH_WORDS.tookBack[last]);
  }

  useUndoKey(undo);

  return (
    <article className="bench-job" aria-labelledby="bench-title">
      <p className="bench-place">
        <b>{isolated(build.name || BENCH_WORDS.unnamed)}</b>
        {job.isTry && ` (${BENCH_WORDS.tryMark})`}
        <label>
          <span className="visually-hidden">{BENCH_WORDS.steps}</span>
          <select value={screen.id} onChange={(event) => turnTo(placeIn(screens, event.currentTarget.value))}>
            {screens.map((each, index) => (
              <option key={each.id} value={each.id}>
                {index + 1}. {screenTitle(each)}
              </option>
            ))}
          </select>
        </label>
      </p>
      <progress aria-hidden="true" max={screens.length} value={at + 1} />
      <h1 id="bench-title" tabIndex={-1}>
        {screenTitle(screen)}
      </h1>
      <Body key={screen.id} screen={screen} job={job} system={system} enter={enter} next={() => turnTo(at + 1)} />
      <output className="bench-said">{said}</output>
      {last !== 'none' && (
        <button type="button" className="bench-undo" onClick={() => void undo()}>
          {BENCH_WORDS.takeBack[last]}
        </button>
      )}
      <nav className="bench-turn" aria-label={BENCH_WORDS.steps}>
        <button type="button" disabled={at === 0} onClick={() => turnTo(at - 1)}>
          ‹ {BENCH_WORDS.previous}
        </button>
        <span aria-hidden="true">{BENCH_WORDS.place(at + 1, screens.length)}</span>
        <button type="button" disabled={at === screens.length - 1} onClick={() => turnTo(at + 1)}>
          {BENCH_WORDS.next} ›
        </button>
      </nav>
    </article>
  );
}
