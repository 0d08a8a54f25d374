/** A task: its control beside it, what has to hold with how it is now, and what is said once all of it does. */
import { useEffect, useMemo } from 'react';
import type { Build } from '../../neck/build.ts';
import { parameterById, PARAMETERS, type ParameterId } from '../../neck/parameters.ts';
import { keepProgress } from '../../state/lessons/progress-store.ts';
import { store, useBackbow } from '../../state/store.ts';
import { checkTitle } from '../../speech/checks.ts';
import { listed } from '../../speech/quantity-names.ts';
import { parameterName } from '../../speech/names.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import type { StepText } from '../../speech/lesson-text.ts';
import { changeParameter } from '../workshop/controls/change-parameter.ts';
import { ChoiceControl } from '../workshop/controls/choice-control.tsx';
import { isKerf, KerfControl } from '../workshop/controls/kerf-control.tsx';
import { NumberControl } from '../workshop/controls/number-control.tsx';
import { FactText } from './fact-text.tsx';
import { goalNow, type Held } from './goals.ts';
import { measureText, type Bench } from './quantities.ts';
import type { Goal, Step } from './types.ts';
import { useComing } from './use-bench.ts';

function Control({ id }: { readonly id: ParameterId }) {
  const parameter = parameterById(id);
  const value = useBackbow((state) => state.build[id]);
  const system = useBackbow((state) => state.unitSystem);
  const shared = {
    system,
    begin: () => store.getState().beginGesture(parameterName(id)),
    end: store.getState().endGesture,
  };
  if (parameter.kind === 'choice')
    return (
      <ChoiceControl
        parameter={parameter}
        value={String(value)}
        system={system}
        change={(wanted) => changeParameter(parameter, wanted)}
      />
    );
  if (parameter.kind !== 'number') throw new RangeError(`parameter "${id}" has no control in a lesson`);
  const Number_ = isKerf(parameter) ? KerfControl : NumberControl;
  return (
    <Number_
      parameter={parameter}
      value={value as number}
      change={(wanted) => changeParameter(parameter, wanted)}
      {...shared}
    />
  );
}

/** "0.18 to 0.22 mm", "at most 0.10 mm", or nothing where it is about checks. */
function useLimits({ least, most }: Held): string {
  const system = useBackbow((state) => state.unitSystem);
  if (least && most) return LESSON_WORDS.between(measureText(least, system), measureText(most, system));
  if (least) return LESSON_WORDS.atLeast(measureText(least, system));
  return most ? LESSON_WORDS.atMost(measureText(most, system)) : '';
}

function HeldLine({ held, name }: { readonly held: Held; readonly name: string }) {
  const system = useBackbow((state) => state.unitSystem);
  const limits = useLimits(held);
  const { now, isMet, found } = held;
  return (
    <li data-met={isMet || undefined}>
      <span className="mark" aria-hidden="true">
        {isMet ? '✓' : '○'}
      </span>
      <span>
        {name}
        {now && (
          <>
            {': '}
            <strong>{measureText(now, system)}</strong>
          </>
        )}
        {found.length > 0 && <>: {listed(found.map((code) => checkTitle({ code })))}</>}{' '}
        {limits !== '' && <span className="quiet">({limits})</span>}
        <span className="visually-hidden"> {isMet ? LESSON_WORDS.met : LESSON_WORDS.notMet}</span>
      </span>
    </li>
  );
}

const isParameter = (key: keyof Build): key is ParameterId => PARAMETERS.some(({ id }) => id === key);
const nameOf = (key: keyof Build): string => (isParameter(key) ? parameterName(key) : LESSON_WORDS.otherList);

/** What else was changed, and the way back. */
function Others({ others, placed }: { readonly others: readonly (keyof Build)[]; readonly placed: Build }) {
  if (others.length === 0) return null;
  const setBack = () =>
    store.getState().change(Object.fromEntries(others.map((key) => [key, placed[key]])), LESSON_WORDS.setBack);
  return (
    <p>
      {LESSON_WORDS.otherwise(listed([...new Set(others.map(nameOf))]))}{' '}
      <button type="button" className="link" onClick={setBack}>
        {LESSON_WORDS.setBack}
      </button>
    </p>
  );
}

interface GoalViewProps {
  readonly lesson: string;
  readonly step: Step;
  readonly goal: Goal;
  readonly text: StepText;
  readonly bench: Bench | null;
}

export function GoalView({ lesson, step, goal, text, bench }: GoalViewProps) {
  const placed = useBackbow((state) => state.lesson?.placed ?? null);
  const coming = useComing();
  const now = useMemo(() => bench && placed && goalNow(goal, bench, placed), [goal, bench, placed]);
  const isAchieved = now?.isAchieved ?? false;
  useEffect(() => {
    if (isAchieved) keepProgress({ kind: 'achieved', lesson, step: step.id, at: new Date().toISOString() });
  }, [isAchieved, lesson, step.id]);
  return (
    <fieldset className="question goal" data-achieved={isAchieved || undefined}>
      <legend>{text.task}</legend>
      {goal.by.map((id) => (
        <Control key={id} id={id} />
      ))}
      {now ? (
        <ul className="held">
          {now.wanted.map((held) => (
            <HeldLine key={held.id} held={held} name={text.wanted?.[held.id] ?? held.id} />
          ))}
        </ul>
      ) : (
        <p className="quiet">{coming}</p>
      )}
      {now && placed && <Others others={now.others} placed={placed} />}
      <output className="answer">{isAchieved && LESSON_WORDS.achieved}</output>
      {isAchieved &&
        text.done?.map((paragraph) => (
          <FactText key={paragraph} text={paragraph} facts={step.facts ?? {}} bench={bench} />
        ))}
    </fieldset>
  );
}
