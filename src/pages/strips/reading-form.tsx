/** One reading of a strip: when, over what, hump or hollow and how much. A far one is asked about before it is kept. */
import { useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { BowWayChoice } from '../../kit/bow-way.tsx';
import { LabelledSelect } from '../../kit/labelled-select.tsx';
import type { Instrument, StripReading, TryStrip } from '../../mechanics/try-strip/document.ts';
import type { StripQuestion } from '../../mechanics/try-strip/predicted.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { instrumentText, stripQuestionText } from '../../speech/measured/strips.ts';
import { useAnswer } from '../../state/answers/use-answer.ts';
import { useBackbow } from '../../state/store.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { StripField } from './strip-field.tsx';

interface ReadingFormProps {
  readonly build: Build;
  readonly strip: TryStrip;
  readonly ownBoard: boolean;
  readonly add: (reading: StripReading) => void;
}

interface Draft {
  readonly days: number | null;
  readonly sizeMm: number | null;
  readonly bow: StripReading['bow'] | null;
  readonly over: string;
  readonly instrument: Instrument;
  /** Of an instrument of one's own. */
  readonly errorMm: number | null;
}

const EMPTY: Draft = { days: null, sizeMm: null, bow: null, over: 'ends', instrument: 'feelers', errorMm: null };

export const overText = (over: StripReading['over']): string =>
  over === 'ends' ? STRIP_WORDS.overEnds : STRIP_WORDS.overGroup(over + 1);

/** @returns what is missing, in words, or the reading */
function readingOf({ days, sizeMm, bow, over, instrument, errorMm }: Draft): StripReading | string {
  if (days === null) return STRIP_WORDS.noDays;
  if (sizeMm === null) return STRIP_WORDS.noSize;
  if (bow === null) return STRIP_WORDS.whichWay;
  if (instrument === 'own' && errorMm === null) return STRIP_WORDS.noError;
  const ownErrorMm = instrument === 'own' ? errorMm : null;
  return { days, sizeMm, bow, instrument, over: over === 'ends' ? over : Number(over), ownErrorMm };
}

interface QuestionProps {
  readonly questions: readonly StripQuestion[];
  readonly correct: () => void;
  readonly keep: () => void;
}

function Question({ questions, correct, keep }: QuestionProps) {
  const system = useBackbow((state) => state.unitSystem);
  return (
    <div role="alert" className="strip-question">
      {questions.map((question) => (
        <p key={question.reading}>{stripQuestionText(question, system)}</p>
      ))}
      <div className="button-row">
        <button type="button" onClick={correct}>
          {STRIP_WORDS.correct}
        </button>
        <button type="button" onClick={keep}>
          {STRIP_WORDS.keepReading}
        </button>
      </div>
    </div>
  );
}

export function ReadingForm({ build, strip, ownBoard, add }: ReadingFormProps) {
  const system = useBackbow((state) => state.unitSystem);
  const [draft, setDraft] = useState(EMPTY);
  const [missing, setMissing] = useState<string>();
  const [coming, setComing] = useState<StripReading>();
  const key = coming ? JSON.stringify([coming, strip.id, ownBoard, { ...build, name: '' }]) : null;
  const asked = useAnswer<{ readonly reading: StripReading; readonly questions: readonly StripQuestion[] }>(
    key,
    async (api) => {
      const questions = await api.stripQuestions(build, { ...strip, readings: [coming!] }, ownBoard);
      if (questions.length === 0) take(coming!);
      return { reading: coming!, questions };
    },
  );
  const set = (change: Partial<Draft>) => {
    setDraft({ ...draft, ...change });
    setMissing(undefined);
    setComing(undefined);
  };

  function take(reading: StripReading): void {
    add(reading);
    setComing(undefined);
    setDraft({ ...EMPTY, instrument: reading.instrument, errorMm: reading.ownErrorMm });
  }

  function propose(): void {
    const reading = readingOf(draft);
    if (typeof reading === 'string') setMissing(reading);
    else setComing(reading);
  }

  const isAsked = coming !== undefined && asked.status === 'done' && asked.key === key;
  return (
    <form
      className="strip-part"
      onSubmit={(event) => {
        event.preventDefault();
        propose();
      }}
    >
      <div className="strip-fields">
        <StripField name="days" value={draft.days} set={(days) => set({ days })} />
        <StripField name="sizeMm" value={draft.sizeMm} set={(sizeMm) => set({ sizeMm })} />
        <BowWayChoice name={STRIP_WORDS.bow} way={draft.bow} choose={(bow) => set({ bow })} />
        <LabelledSelect
          label={STRIP_WORDS.over}
          value={draft.over}
          options={(strip.groups.length > 1 ? (['ends', ...strip.groups.keys()] as const) : (['ends'] as const)).map(
            (over) => ({ value: String(over), label: overText(over) }),
          )}
          choose={(over) => set({ over })}
        />
        <LabelledSelect
          label={STRIP_WORDS.instrument}
          value={draft.instrument}
          options={(['feelers', 'ruler', 'own'] as const).map((value) => ({
            value,
            label: instrumentText(value, system),
          }))}
          choose={(instrument) => set({ instrument })}
        />
        {draft.instrument === 'own' && (
          <StripField name="errorMm" value={draft.errorMm} set={(errorMm) => set({ errorMm })} />
        )}
      </div>
      <p className="refusal" role="alert">
        {missing}
      </p>
      {isAsked && asked.value ? (
        <Question questions={asked.value.questions} correct={() => setComing(undefined)} keep={() => take(coming)} />
      ) : (
        <div className="button-row">
          <button type="submit">{STRIP_WORDS.add}</button>
        </div>
      )}
      {coming && !isAsked && <Asking {...asked} />}
    </form>
  );
}
