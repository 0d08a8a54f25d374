/** The list of lessons. */
import { useState } from 'react';
import { improvementOf, type ProgressEntry } from '../../state/lessons/progress-entry.ts';
import { forgetProgress } from '../../state/lessons/progress-store.ts';
import { useProgress } from '../../state/lessons/use-progress.ts';
import { store } from '../../state/store.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { LESSONS } from './lessons/index.ts';
import { beginLesson } from './player.ts';
import { textOf } from '../../speech/en/pages/lesson-texts.ts';
import type { Step } from './types.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import './lessons.css';

interface DoneProps {
  readonly lesson: string;
  readonly steps: readonly Step[];
  readonly entries: readonly ProgressEntry[];
}

/** What was done of one lesson on this device; nothing before there is anything. */
function Done({ lesson, steps, entries }: DoneProps) {
  const own = entries.filter((entry) => entry.lesson === lesson);
  const tasks = steps.filter(({ goal }) => goal !== undefined).length;
  const achieved = own.filter(({ kind }) => kind === 'achieved').length;
  const parts = [
    ...(own.some(({ kind }) => kind === 'ended') ? [LESSON_WORDS.ended] : []),
    ...(achieved > 0 ? [LESSON_WORDS.tasksDone(Math.min(achieved, tasks), tasks)] : []),
  ];
  return parts.length === 0 ? null : (
    <p className="quiet" data-done>
      {parts.join(' · ')}
    </p>
  );
}

const share = (of: number): string => formatQuantity(100 * of, '%', 0, 'metric');

/** How near the last guesses came, beside the first ones. */
function Improvement({ entries }: { readonly entries: readonly ProgressEntry[] }) {
  const found = improvementOf(entries);
  if (!found) return null;
  const { count, firstShare, lastShare } = found;
  return <p data-improvement>{LESSON_WORDS.improvement(count, share(firstShare), share(lastShare))}</p>;
}

/** Forgets what this device remembers, and brings it back as long as the list is open. */
function Forget({ isAnything }: { readonly isAnything: boolean }) {
  const [bringBack, setBringBack] = useState<(() => void) | null>(null);
  if (isAnything) {
    const forget = () => setBringBack(() => forgetProgress());
    return (
      <p>
        <button type="button" onClick={forget}>
          {LESSON_WORDS.forget}
        </button>
      </p>
    );
  }
  return (
    bringBack && (
      <p>
        <output>{LESSON_WORDS.forgotten}</output>{' '}
        <button type="button" onClick={bringBack}>
          {LESSON_WORDS.bringBack}
        </button>
      </p>
    )
  );
}

export function LessonsDialog() {
  const entries = useProgress();
  return (
    <Dialog title={LESSON_WORDS.title} onClose={store.getState().closeDialog}>
      <p>{LESSON_WORDS.intro}</p>
      <ol className="lesson-list">
        {LESSONS.map(({ id, minutes, steps }) => {
          const { title, about } = textOf(id);
          return (
            <li key={id}>
              <div>
                <h3>{title}</h3>
                <p>
                  {about} <span className="quiet">{LESSON_WORDS.minutes(minutes)}</span>
                </p>
                <Done lesson={id} steps={steps} entries={entries} />
              </div>
              <button type="button" aria-label={LESSON_WORDS.beginName(title)} onClick={() => beginLesson(id)}>
                {LESSON_WORDS.begin}
              </button>
            </li>
          );
        })}
      </ol>
      <Improvement entries={entries} />
      <Forget isAnything={entries.length > 0} />
    </Dialog>
  );
}
