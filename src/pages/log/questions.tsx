/** A reading far from what was predicted: what it would mean, and the two ways out. */
import { useEffect, useRef } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { Question } from '../../mechanics/bench-log/question.ts';
import { enteredBowText } from '../../speech/bow.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { formatShort } from '../../speech/quantity.ts';

export function questionText(question: Question, system: UnitSystem): string {
  const measured = enteredBowText(question.measuredMm, system);
  const predicted = enteredBowText(question.predictedMm, system);
  const reading = LOG_WORDS.fields[question.reading];
  const { biteTimes, times: ofPredicted } = question;
  if (question.code === 'other-way') return LOG_WORDS.askOtherWay(measured, reading, predicted);
  if (ofPredicted !== undefined) {
    const said = formatShort(ofPredicted, ofPredicted < 1 ? 2 : 1);
    return LOG_WORDS.askTimes(measured, reading, said, predicted);
  }
  if (question.code === 'without-bite') return LOG_WORDS.askWithoutBite(measured, reading, predicted);
  if (biteTimes === null) return LOG_WORDS.askNoBite(measured, reading, predicted);
  const times = formatShort(biteTimes, biteTimes < 1 ? 2 : 1);
  return biteTimes < 1
    ? LOG_WORDS.askSofter(measured, reading, times, predicted)
    : LOG_WORDS.askHarder(measured, reading, times, predicted);
}

interface QuestionsProps {
  readonly questions: readonly Question[];
  readonly system: UnitSystem;
  /** It is right. */
  readonly keep: () => void;
  /** It is to be corrected. */
  readonly correct: () => void;
}

export function Questions({ questions, system, keep, correct }: QuestionsProps) {
  const group = useRef<HTMLFieldSetElement>(null);
  useEffect(() => group.current?.focus(), []);
  return (
    <fieldset ref={group} className="log-question" tabIndex={-1} aria-label={LOG_WORDS.askTitle}>
      <div role="alert">
        {questions.map((question) => (
          <p key={question.reading}>{questionText(question, system)}</p>
        ))}
      </div>
      <div className="button-row">
        <button type="button" onClick={correct}>
          {LOG_WORDS.askCorrect}
        </button>
        <button type="button" onClick={keep}>
          {LOG_WORDS.askKeep}
        </button>
      </div>
    </fieldset>
  );
}
