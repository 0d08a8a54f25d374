/** A reading far from what was predicted: what it would mean, and the two ways out. */
import { useEffect, useRef } from 'react';
import { wayOf } from '../../neck/bow-way.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { Question } from '../../mechanics/bench-log/question.ts';
import { bowSize } from '../../speech/bow.ts';
import { BOW_ENTRY_WORDS, BOW_WORDS } from '../../speech/en/workshop/bow.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { formatShort } from '../../speech/quantity.ts';

function bow(reliefMm: number, system: UnitSystem): string {
  const way = wayOf(reliefMm);
  return way === null ? BOW_WORDS.flat : `${bowSize(reliefMm, system)} ${BOW_ENTRY_WORDS[way]}`;
}

export function questionText(question: Question, system: UnitSystem): string {
  const measured = bow(question.measuredMm, system);
  const predicted = bow(question.predictedMm, system);
  const reading = LOG_WORDS.fields[question.reading];
  const { biteTimes } = question;
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
