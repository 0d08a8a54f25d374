/** The lesson that runs: what its step says and asks, what comes out, and the way on, back and out. */
import { useEffect, useRef } from 'react';
import { keepProgress } from '../../state/lessons/progress-store.ts';
import { useProgress } from '../../state/lessons/use-progress.ts';
import { store, useBackbow } from '../../state/store.ts';
import { AskLine } from './ask-line.tsx';
import { AskValue } from './ask-value.tsx';
import { AskWhich } from './ask-which.tsx';
import { FactText } from './fact-text.tsx';
import { FIGURES } from './figures/index.ts';
import { guessEntry, remember, useGuesses } from './guesses.ts';
import { GoalView } from './goal-view.tsx';
import { beginLesson, goToStep, leaveLesson, lessonAfter, lessonById, revealStep, takeLessonNeck } from './player.ts';
import { measure, type Bench } from './quantities.ts';
import { textOf } from '../../speech/en/pages/lesson-texts.ts';
import type { Step } from './types.ts';
import type { StepText } from '../../speech/lesson-text.ts';
import { useBench } from './use-bench.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import './lessons.css';

/** Keeps the numbers that later steps speak of. */
function useRemember(step: Step, bench: Bench | null): void {
  const { remember: wanted } = step;
  useEffect(() => {
    if (!wanted || !bench || store.getState().history.past.length > 0) return;
    remember(Object.fromEntries(Object.entries(wanted).map(([name, quantity]) => [name, measure(quantity, bench)])));
    // Remembering must not follow what is remembered.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [wanted, bench?.prediction]);
}

interface QuestionProps {
  readonly lesson: string;
  readonly step: Step;
  readonly text: StepText;
  readonly bench: Bench | null;
  readonly asking: boolean;
}

function Question({ lesson, step, text, bench, asking }: QuestionProps) {
  const { ask } = step;
  const hasGuess = useGuesses(({ guesses }) => guesses[step.id] !== undefined);
  if (!ask) return null;
  const reveal = () => {
    const entry = bench && guessEntry(lesson, step, bench);
    if (entry) keepProgress(entry);
    revealStep();
  };
  const shared = { step: step.id, bench, asking };
  return (
    <fieldset className="question">
      <legend>{text.question}</legend>
      {ask.kind === 'line' && <AskLine ask={ask} {...shared} />}
      {ask.kind === 'value' && <AskValue ask={ask} {...shared} />}
      {ask.kind === 'which' && <AskWhich ask={ask} names={text.options ?? {}} {...shared} />}
      {asking && (
        <>
          <button type="button" onClick={reveal}>
            {hasGuess ? LESSON_WORDS.reveal : LESSON_WORDS.skip}
          </button>
          <p className="quiet">{LESSON_WORDS.covered}</p>
        </>
      )}
    </fieldset>
  );
}

interface StepViewProps {
  readonly lesson: string;
  readonly step: Step;
  readonly text: StepText;
  readonly asking: boolean;
}

function StepView({ lesson, step, text, asking }: StepViewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const bench = useBench();
  const isChanged = useBackbow((state) => state.history.past.length > 0);
  useRemember(step, bench);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    // Where there is little room it scrolls together with the controls.
    const panel = heading.current?.closest('.lesson');
    for (const scroller of [panel, panel?.parentElement]) scroller?.scrollTo({ top: 0 });
  }, [step]);
  const facts = step.facts ?? {};
  const Figure = step.figure && FIGURES[step.figure];
  return (
    <>
      <h3 ref={heading} tabIndex={-1}>
        {text.title}
      </h3>
      {text.says.map((paragraph) => (
        <FactText key={paragraph} text={paragraph} facts={facts} bench={bench} />
      ))}
      {Figure && bench && <Figure bench={bench} />}
      <Question lesson={lesson} step={step} text={text} bench={bench} asking={asking} />
      {step.ask &&
        !asking &&
        text.after?.map((paragraph) => <FactText key={paragraph} text={paragraph} facts={facts} bench={bench} />)}
      {step.goal && <GoalView lesson={lesson} step={step} goal={step.goal} text={text} bench={bench} />}
      {isChanged && !step.goal && <p className="quiet">{LESSON_WORDS.changed}</p>}
    </>
  );
}

/** Whoever has come to the last step has gone through the lesson. */
function useEnded(running: { readonly id: string; readonly step: number } | null): void {
  const ended = running && running.step === lessonById(running.id).steps.length - 1 ? running.id : null;
  useEffect(() => {
    if (ended !== null) keepProgress({ kind: 'ended', lesson: ended, at: new Date().toISOString() });
  }, [ended]);
}

/** Has this device seen the step's task done? A step without one has nothing to wait for. */
function useDone(lesson: string | undefined, step: Step | undefined): boolean {
  const entries = useProgress();
  if (!step?.goal) return true;
  return entries.some((entry) => entry.kind === 'achieved' && entry.lesson === lesson && entry.step === step.id);
}

export function LessonPanel() {
  const running = useBackbow((state) => state.lesson);
  useEnded(running);
  const isDone = useDone(running?.id, running ? lessonById(running.id).steps[running.step] : undefined);
  if (!running) return null;
  const lesson = lessonById(running.id);
  const text = textOf(running.id);
  const step = lesson.steps[running.step];
  const count = lesson.steps.length;
  const isLast = running.step === count - 1;
  const after = lessonAfter(running.id);
  return (
    <section className="lesson" aria-label={LESSON_WORDS.running(text.title)}>
      <header>
        <p>
          <strong>{text.title}</strong> <span className="quiet">{LESSON_WORDS.step(running.step + 1, count)}</span>
        </p>
        <button type="button" onClick={leaveLesson}>
          {LESSON_WORDS.leave}
        </button>
      </header>
      <div className="lesson-step">
        <StepView key={step.id} lesson={lesson.id} step={step} text={text.steps[step.id]} asking={running.asking} />
      </div>
      <footer className="button-row">
        <button type="button" disabled={running.step === 0} onClick={() => goToStep(running.step - 1)}>
          {LESSON_WORDS.back}
        </button>
        {isLast ? (
          <>
            {after && (
              <button type="button" className={isDone ? 'main' : undefined} onClick={() => beginLesson(after.id)}>
                {LESSON_WORDS.nextLesson(textOf(after.id).title)}
              </button>
            )}
            <button type="button" className={after || !isDone ? undefined : 'main'} onClick={leaveLesson}>
              {LESSON_WORDS.finish}
            </button>
            <button type="button" onClick={takeLessonNeck}>
              {LESSON_WORDS.take}
            </button>
          </>
        ) : (
          <button type="button" className="main" onClick={() => goToStep(running.step + 1)}>
            {LESSON_WORDS.next}
          </button>
        )}
      </footer>
    </section>
  );
}
