/** What is seen under the straightedge: how many frets are in, hump or hollow, and which leaf goes under. */
import { useId, useState } from 'react';
import { BowWayChoice } from '../../kit/bow-way.tsx';
import { LabelledNumber } from '../../kit/labelled-number.tsx';
import { LabelledSelect } from '../../kit/labelled-select.tsx';
import { LimitedText } from '../../kit/limited-text.tsx';
import type { UnitSystem } from '../../neck/units.ts';
import { bowSize } from '../../speech/bow.ts';
import { BENCH_READING_WORDS } from '../../speech/en/bench/bench.ts';
import { formatQuantity, shownNumber, unitLabel } from '../../speech/quantity.ts';
import {
  GAUGE_ERROR,
  GAUGE_ERROR_MM,
  GAUGES,
  MOST_READING_NOTE,
  READ_RELIEF,
  type Gauge,
  type JobReading,
} from '../../state/jobs/job-document.ts';
import { draftAfter, leavesOf, readingOf, type Missing, type ReadingDraft } from './reading-draft.ts';

interface Editing {
  readonly draft: ReadingDraft;
  readonly set: (change: Partial<ReadingDraft>) => void;
  readonly system: UnitSystem;
}

/** Leaves are called by thousandths of an inch, or by millimetres. */
function leafText(mm: number, system: UnitSystem): string {
  return system === 'inch' ? shownNumber(mm * 1000, 'µm', -1, system) : shownNumber(mm, 'mm', 2, system);
}

function Leaves({ draft, set, system }: Editing) {
  const id = useId();
  const unit = system === 'inch' ? unitLabel('µm', system) : unitLabel('mm', system);
  return (
    <fieldset className="bench-leaves">
      <legend id={id}>
        {BENCH_READING_WORDS.leaves} <span className="quiet">{unit}</span>
      </legend>
      {leavesOf(system).map((mm) => (
        <button
          key={mm}
          type="button"
          aria-label={BENCH_READING_WORDS.leafName(bowSize(mm, system))}
          aria-pressed={draft.sizeMm === mm}
          onClick={() => set({ sizeMm: mm })}
        >
          {leafText(mm, system)}
        </button>
      ))}
      <button
        type="button"
        className="bench-flat"
        aria-pressed={draft.sizeMm === 0}
        onClick={() => set({ sizeMm: 0, way: null })}
      >
        {BENCH_READING_WORDS.noLeaf}
      </button>
    </fieldset>
  );
}

function FretsIn({ draft, set, from, to }: Omit<Editing, 'system'> & { readonly from: number; readonly to: number }) {
  const { seated } = draft;
  return (
    <fieldset className="bench-count">
      <legend>{BENCH_READING_WORDS.fretsIn}</legend>
      <button
        type="button"
        aria-label={BENCH_READING_WORDS.fewer}
        disabled={seated <= from}
        onClick={() => set({ seated: seated - 1 })}
      >
        −
      </button>
      <output>{seated}</output>
      <button
        type="button"
        aria-label={BENCH_READING_WORDS.more}
        disabled={seated >= to}
        onClick={() => set({ seated: seated + 1 })}
      >
        +
      </button>
    </fieldset>
  );
}

function instrumentText(gauge: Gauge, system: UnitSystem): string {
  if (gauge === 'own') return BENCH_READING_WORDS.own;
  return BENCH_READING_WORDS[gauge](formatQuantity(GAUGE_ERROR_MM[gauge], 'mm', 2, system));
}

function Details({ draft, set, system }: Editing) {
  const error = { ...GAUGE_ERROR, label: BENCH_READING_WORDS.ownError, step: 0.005, digits: 3 };
  return (
    <details open={draft.instrument === 'own' || undefined}>
      <summary>{BENCH_READING_WORDS.details}</summary>
      <LabelledSelect
        label={BENCH_READING_WORDS.instrument}
        value={draft.instrument}
        options={GAUGES.map((value) => ({ value, label: instrumentText(value, system) }))}
        choose={(instrument) => set({ instrument })}
      />
      {draft.instrument === 'own' && (
        <LabelledNumber
          className="bench-field"
          parameter={error}
          value={draft.ownErrorMm}
          system={system}
          set={(ownErrorMm) => set({ ownErrorMm })}
          empty={() => set({ ownErrorMm: null })}
        />
      )}
      <LimitedText
        label={BENCH_READING_WORDS.note}
        value={draft.note}
        most={MOST_READING_NOTE}
        rows={2}
        change={(note) => set({ note })}
      />
    </details>
  );
}

interface ReadingFormProps {
  /** Frets that may be in. */
  readonly from: number;
  readonly to: number;
  readonly last: JobReading | undefined;
  readonly system: UnitSystem;
  readonly enter: (reading: JobReading) => void;
}

export function ReadingForm({ from, to, last, system, enter }: ReadingFormProps) {
  const [draft, setDraft] = useState(() => draftAfter(to, last));
  const [missing, setMissing] = useState<Missing>();
  const set = (change: Partial<ReadingDraft>) => {
    setDraft({ ...draft, ...change });
    setMissing(undefined);
  };
  function propose(): void {
    const reading = readingOf(draft, Date.now());
    if (typeof reading === 'string') setMissing(reading);
    else enter(reading);
  }
  const size = { ...READ_RELIEF, min: 0, label: BENCH_READING_WORDS.size, step: 0.01, digits: 2 };
  return (
    <form
      className="bench-reading"
      onSubmit={(event) => {
        event.preventDefault();
        propose();
      }}
    >
      <h2>{BENCH_READING_WORDS.title}</h2>
      <FretsIn draft={draft} set={set} from={from} to={to} />
      <BowWayChoice name={BENCH_READING_WORDS.bow} way={draft.way} choose={(way) => set({ way })} />
      <Leaves draft={draft} set={set} system={system} />
      <LabelledNumber
        className="bench-field"
        parameter={size}
        value={draft.sizeMm}
        system={system}
        set={(sizeMm) => set({ sizeMm })}
        empty={() => set({ sizeMm: null })}
      />
      <Details draft={draft} set={set} system={system} />
      <p className="refusal" role="alert">
        {missing && BENCH_READING_WORDS.missing[missing]}
      </p>
      <button type="submit" className="bench-main">
        {BENCH_READING_WORDS.enter}
      </button>
    </form>
  );
}
