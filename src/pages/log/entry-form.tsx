/** The form of one entry: a new one of the neck in hand, or one that is changed. */
import { useId, useRef, useState, type SyntheticEvent } from 'react';
import { unitLabel } from '../../speech/quantity.ts';
import type { EntryContent, LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { BitePosterior } from '../../mechanics/bench-log/posterior.ts';
import { predictedFurther, predictedPart } from '../../mechanics/bench-log/predicted.ts';
import { questionsOf, type Question } from '../../mechanics/bench-log/question.ts';
import { METHODS } from '../../mechanics/prediction-types.ts';
import { GRIP_LOG_SPREAD } from '../../mechanics/uncertainty/inputs.ts';
import { currentBands, type Solution } from '../../state/solution-slice.ts';
import { useBackbow } from '../../state/store.ts';
import { enteredBowText } from '../../speech/bow.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { CircumstancesFields } from './circumstances-fields.tsx';
import { draftOf, fromBuild, keptOf, storedNumbers } from './draft-of.ts';
import {
  entryOf,
  readDraft,
  type DraftBow,
  type DraftNumber,
  type EntryDraft,
  type FromBuild,
  type StoredNumbers,
} from './entry-draft.ts';
import { FurtherFields } from './further-fields.tsx';
import { ChoiceField, Field, NumberField, TextField } from './form-fields.tsx';
import { Questions } from './questions.tsx';

interface EntryFormProps {
  readonly solution: Solution;
  /** The entry to change; null for a new one. */
  readonly entry: LogEntry | null;
  readonly entries: readonly LogEntry[];
  /** What the log says of the bite; null while that is being computed. */
  readonly posterior: BitePosterior | null;
  readonly save: (entry: EntryContent) => void;
  readonly cancel: () => void;
}

/** Before the log says anything. */
const UNMEASURED = { median: 1, logSpread: GRIP_LOG_SPREAD };

interface Asked {
  readonly entry: EntryContent;
  readonly questions: readonly Question[];
}

function useDraft({ solution: { build, prediction }, entry, entries }: EntryFormProps) {
  const system = useBackbow((state) => state.unitSystem);
  const bands = useBackbow(currentBands);
  const [draft, setDraft] = useState<EntryDraft>(() => draftOf(build, entry, entries.at(-1), system));
  const stored = storedNumbers(entry);
  const from = ({ days, dialFret, rodTurns }: StoredNumbers): FromBuild => {
    if (entry) return keptOf(entry);
    const { method, rodWay } = draft;
    return fromBuild(build, method, {
      ...predictedPart(prediction, method, build, days ?? 0, bands?.methods[method].scatter),
      ...predictedFurther(prediction, method, build, { dialFret, rodTurns, rodWay }),
    });
  };
  return { system, draft, setDraft, stored, from, shown: from(readDraft(draft, system, stored).numbers) };
}

export function EntryForm(props: EntryFormProps) {
  const { entry, posterior, save, cancel, solution } = props;
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const { system, draft, setDraft, stored, from, shown } = useDraft(props);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [asked, setAsked] = useState<Asked | null>(null);
  const set = (change: Partial<EntryDraft>) => {
    setDraft({ ...draft, ...change });
    // What was asked about is no longer what is typed.
    setAsked(null);
  };

  function submit(event: SyntheticEvent): void {
    event.preventDefault();
    const made = entryOf(draft, from, system, stored, entry ? undefined : solution.build.bodyJointFret);
    setProblems(made.ok ? [] : made.problems);
    setAsked(null);
    if (!made.ok) return;
    // An entry that is corrected must not be judged by what it said itself, nor any by a log that is in doubt.
    const isTrusted = !entry && posterior !== null && posterior.doubts.length === 0;
    const questions = questionsOf(made.entry, isTrusted ? posterior : UNMEASURED);
    if (questions.length === 0) save(made.entry);
    else setAsked({ entry: made.entry, questions });
  }

  function correct(): void {
    const reading = asked?.questions[0]?.reading;
    setAsked(null);
    form.current?.querySelector<HTMLInputElement>(`[data-reading="${reading}"] input.typed-number`)?.focus();
  }

  const unit = unitLabel('mm', system);
  const number = (field: DraftNumber, label: string) => (
    <NumberField label={label} value={draft[field]} change={(value) => set({ [field]: value })} />
  );
  const bow = (field: DraftBow, label: string, predictedMm: number | null) => (
    <div data-reading={field}>
      <NumberField
        label={label}
        hint={predictedMm === null ? undefined : LOG_WORDS.predicted(enteredBowText(predictedMm, system))}
        value={draft[field]}
        change={(value) => set({ [field]: value })}
        bow={{ way: draft.ways[field], choose: (way) => set({ ways: { ...draft.ways, [field]: way } }) }}
      />
    </div>
  );
  return (
    <form ref={form} className="log-form" aria-labelledby={`${id}-title`} onSubmit={submit} noValidate>
      <h3 id={`${id}-title`}>{entry ? LOG_WORDS.editTitle(entry.neck) : LOG_WORDS.addTitle}</h3>
      <p className="quiet">{entry ? LOG_WORDS.editIntro : LOG_WORDS.addIntro}</p>
      <div className="log-fields">
        <DateAndNeck draft={draft} set={set} isNew={!entry} />
        {bow('measuredFrettedMm', LOG_WORDS.measuredFretted(unit), shown.predictedFrettedMm)}
        {bow('measuredStrungMm', LOG_WORDS.measuredStrung(unit), shown.predictedStrungMm)}
        {!entry && number('days', LOG_WORDS.strungDays)}
        {number('gaugeErrorMm', LOG_WORDS.gaugeError(unit))}
      </div>
      <FurtherFields
        draft={draft}
        set={set}
        shown={shown}
        isNew={!entry}
        hasRod={solution.build.rodKind !== 'none'}
        fields={{ number, bow }}
      />
      <CircumstancesFields draft={draft} set={set} />
      <Problems problems={problems} />
      {asked ? (
        <Questions questions={asked.questions} system={system} keep={() => save(asked.entry)} correct={correct} />
      ) : (
        <div className="button-row">
          <button type="submit">{entry ? LOG_WORDS.saveChange : LOG_WORDS.save}</button>
          {entry && (
            <button type="button" onClick={cancel}>
              {LOG_WORDS.cancel}
            </button>
          )}
        </div>
      )}
    </form>
  );
}

function Problems({ problems }: { readonly problems: readonly string[] }) {
  return (
    <div role="alert">
      {problems.map((problem) => (
        <p key={problem} className="refusal">
          {problem}
        </p>
      ))}
    </div>
  );
}

interface DateAndNeckProps {
  readonly draft: EntryDraft;
  readonly set: (change: Partial<EntryDraft>) => void;
  readonly isNew: boolean;
}

function DateAndNeck({ draft, set, isNew }: DateAndNeckProps) {
  return (
    <>
      <Field label={LOG_WORDS.date}>
        {(id) => (
          <input
            id={id}
            type="date"
            value={draft.date}
            onChange={(event) => set({ date: event.currentTarget.value })}
          />
        )}
      </Field>
      <TextField label={LOG_WORDS.neck} value={draft.neck} change={(neck) => set({ neck })} />
      {isNew && (
        <ChoiceField
          label={LOG_WORDS.method}
          value={draft.method}
          options={METHODS}
          nameOf={(method) => METHOD_WORDS[method].label}
          change={(method) => set({ method })}
        />
      )}
    </>
  );
}
