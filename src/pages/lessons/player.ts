/** Running a lesson: begin, go on, go back, show the answer, leave. */
import { store } from '../../state/store.ts';
import { act } from './acts.ts';
import { forgetGuesses } from './guesses.ts';
import { LESSONS } from './lessons/index.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import type { Lesson, Step } from './types.ts';

function reducedMotion(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

/** @throws {RangeError} when no lesson has that id */
export function lessonById(id: string): Lesson {
  const lesson = LESSONS.find((candidate) => candidate.id === id);
  if (!lesson) throw new RangeError(`lesson "${id}" is not in the list`);
  return lesson;
}

/** The one that follows in the list; undefined after the last. */
export function lessonAfter(id: string): Lesson | undefined {
  return LESSONS[LESSONS.findIndex((lesson) => lesson.id === id) + 1];
}

function enter(step: Step): void {
  if (step.acts) act(store, step.acts, reducedMotion());
}

/** The numbers are covered before the neck is there that they speak of. */
function open(steps: readonly Step[], index: number): void {
  store.getState().setLessonStep(index, steps[index].ask !== undefined);
}

export function beginLesson(id: string): void {
  const lesson = lessonById(id);
  const { beginLesson: begin, closeDialog } = store.getState();
  closeDialog();
  forgetGuesses();
  begin(id);
  open(lesson.steps, 0);
  enter(lesson.steps[0]);
}

/** Goes to another step. Going back does again what the steps up to there do, so that each finds what it expects. */
export function goToStep(index: number): void {
  const running = store.getState().lesson;
  if (!running) return;
  const { steps } = lessonById(running.id);
  const to = Math.max(0, Math.min(steps.length - 1, index));
  open(steps, to);
  if (to === running.step + 1) enter(steps[to]);
  else for (const step of steps.slice(0, to + 1)) enter(step);
}

/** Shows what is computed, whether or not there was a guess. */
export function revealStep(): void {
  const running = store.getState().lesson;
  if (!running?.asking) return;
  store.getState().setLessonAnswered();
  const { reveal } = lessonById(running.id).steps[running.step];
  if (reveal) act(store, reveal, reducedMotion());
}

export function leaveLesson(): void {
  store.getState().endLesson();
  store.getState().notify('info', LESSON_WORDS.left);
}

/** Leaves the lesson and goes on with its neck, as one step that undo takes back. */
export function takeLessonNeck(): void {
  const { build, lesson, replaceBuild, notify } = store.getState();
  if (!lesson) return;
  replaceBuild(build, LESSON_WORDS.stepTake);
  notify('info', LESSON_WORDS.taken);
}
