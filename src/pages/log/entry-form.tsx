/** The form of one entry: a new one of the neck in hand, or one that is changed. */
import { useId, useState, type ReactNode, type SyntheticEvent } from 'react';
import { unitLabel } from '../../speech/quantity.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { predictedPart, type PredictedPart } from '../../mechanics/bench-log/predicted.ts';
import { METHODS, type Method } from '../../mechanics/prediction-types.ts';
import { currentBands, type Solution } from '../../state/solution-slice.ts';
import { useBackbow } from '../../state/store.ts';
import { isoDate } from '../papers/date.ts';
import { bowText } from '../../speech/bow.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import {
  draftText,
  entryOf,
  readDraft,
  USUAL_GAUGE_ERROR_MM,
  type DraftNumber,
  type EntryDraft,
} from './entry-draft.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

interface EntryFormProps {
  readonly solution: Solution;
  /** The entry to change; null for a new one. */
  readonly entry: LogEntry | null;
  readonly save: (entry: LogEntry) => void;
  readonly cancel: () => void;
}

function predictedOf(entry: LogEntry): PredictedPart {
  const {
    date: _d,
    neck: _n,
    method: _m,
    measuredFrettedMm: _f,
    measuredStrungMm: _s,
    gaugeErrorMm: _g,
    ...rest
  } = entry;
  return rest;
}

interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly children: (id: string, hintId: string | undefined) => ReactNode;
}

function Field({ label, hint, children }: FieldProps) {
  const id = useId();
  return (
    <div className="log-field">
      <label htmlFor={id}>{label}</label>
      {children(id, hint === undefined ? undefined : `${id}-hint`)}
      {hint !== undefined && (
        <span id={`${id}-hint`} className="quiet">
          {hint}
        </span>
      )}
    </div>
  );
}

export function EntryForm({ solution, entry, save, cancel }: EntryFormProps) {
  const id = useId();
  const system = useBackbow((state) => state.unitSystem);
  const bands = useBackbow(currentBands);
  const { build, prediction } = solution;
  const [draft, setDraft] = useState<EntryDraft>(() => ({
    date: entry?.date ?? isoDate(new Date()),
    neck: entry?.neck ?? build.name,
    method: entry?.method ?? build.method,
    measuredFrettedMm: draftText('measuredFrettedMm', entry?.measuredFrettedMm ?? null, system),
    measuredStrungMm: draftText('measuredStrungMm', entry?.measuredStrungMm ?? null, system),
    gaugeErrorMm: draftText('gaugeErrorMm', entry?.gaugeErrorMm ?? USUAL_GAUGE_ERROR_MM, system),
    days: '0',
  }));
  const [problems, setProblems] = useState<readonly string[]>([]);
  const set = (change: Partial<EntryDraft>) => setDraft({ ...draft, ...change });
  const predicted = (days: number): PredictedPart =>
    entry
      ? predictedOf(entry)
      : predictedPart(prediction, draft.method, build.biteFactor, days, bands?.methods[draft.method].scatter);
  const shown = predicted(readDraft(draft, system).numbers.days ?? 0);
  const bow = (reliefMm: number | null) =>
    reliefMm === null ? undefined : LOG_WORDS.predicted(bowText(reliefMm, system));
  const unit = unitLabel('mm', system);

  function submit(event: SyntheticEvent): void {
    event.preventDefault();
    const made = entryOf(draft, predicted, system);
    setProblems(made.ok ? [] : made.problems);
    if (made.ok) save(made.entry);
  }

  const number = (field: DraftNumber, label: string, hint?: string) => (
    <Field label={label} hint={hint}>
      {(fieldId, hintId) => (
        <input
          id={fieldId}
          className="typed-number"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-describedby={hintId}
          value={draft[field]}
          onChange={(event) => set({ [field]: event.currentTarget.value })}
        />
      )}
    </Field>
  );

  return (
    <form className="log-form" aria-labelledby={`${id}-title`} onSubmit={submit} noValidate>
      <h3 id={`${id}-title`}>{entry ? LOG_WORDS.editTitle(entry.neck) : LOG_WORDS.addTitle}</h3>
      <p className="quiet">{entry ? LOG_WORDS.editIntro : LOG_WORDS.addIntro}</p>
      <div className="log-fields">
        <Field label={LOG_WORDS.date}>
          {(fieldId) => (
            <input
              id={fieldId}
              type="date"
              value={draft.date}
              onChange={(event) => set({ date: event.currentTarget.value })}
            />
          )}
        </Field>
        <Field label={LOG_WORDS.neck}>
          {(fieldId) => (
            <input
              id={fieldId}
              type="text"
              autoComplete="off"
              value={draft.neck}
              onChange={(event) => set({ neck: event.currentTarget.value })}
            />
          )}
        </Field>
        {!entry && (
          <Field label={LOG_WORDS.method}>
            {(fieldId) => (
              <select
                id={fieldId}
                value={draft.method}
                onChange={(event) => set({ method: event.currentTarget.value as Method })}
              >
                {METHODS.map((method) => (
                  <option key={method} value={method}>
                    {METHOD_WORDS[method].label}
                  </option>
                ))}
              </select>
            )}
          </Field>
        )}
        {number('measuredFrettedMm', LOG_WORDS.measuredFretted(unit), bow(shown.predictedFrettedMm))}
        {number('measuredStrungMm', LOG_WORDS.measuredStrung(unit), bow(shown.predictedStrungMm))}
        {!entry && number('days', LOG_WORDS.strungDays)}
        {number('gaugeErrorMm', LOG_WORDS.gaugeError(unit))}
      </div>
      <div role="alert">
        {problems.map((problem) => (
          <p key={problem} className="refusal">
            {problem}
          </p>
        ))}
      </div>
      <div className="button-row">
        <button type="submit">{entry ? LOG_WORDS.saveChange : LOG_WORDS.save}</button>
        {entry && (
          <button type="button" onClick={cancel}>
            {LOG_WORDS.cancel}
          </button>
        )}
      </div>
    </form>
  );
}
