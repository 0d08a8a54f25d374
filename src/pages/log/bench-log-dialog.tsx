/** The bench log: measured necks, and what they say of the next one. */
import { useEffect, useMemo, useState } from 'react';
import type { BroughtIn } from '../../mechanics/bench-log/compare.ts';
import type { EntryContent, LogEntry } from '../../mechanics/bench-log/entry.ts';
import { newId } from '../../mechanics/bench-log/identity.ts';
import { logProblemTexts } from '../../speech/measured/log-problems.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { store, useBackbow } from '../../state/store.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { useNotComputed } from '../workshop/not-computed.tsx';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { BiteSection } from './bite-section.tsx';
import { EntriesTable } from './entries-table.tsx';
import { EntryForm } from './entry-form.tsx';
import { saveLog, useBringing } from './log-file.ts';
import { usePosterior } from './use-posterior.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import '../answers/wanted/wanted.css';
import './bench-log.css';

/** What has just happened, and how to take it back. */
interface Said {
  readonly title: string;
  readonly lines?: readonly string[];
  readonly undo?: () => Promise<void>;
  /** What else can be done. */
  readonly more?: { readonly label: string; readonly run: () => void };
}

/** Problems of a file that are listed; of more than these the number is told. */
const MOST_LISTED = 12;

function SaidLine({ said, say }: { readonly said: Said | null; readonly say: (said: Said) => void }) {
  return (
    <output className="answer-said">
      {said && (
        <>
          <p>
            {said.title}{' '}
            {said.undo && (
              <button type="button" onClick={() => void said.undo!().then(() => say({ title: LOG_WORDS.undone }))}>
                {LOG_WORDS.undo}
              </button>
            )}{' '}
            {said.more && (
              <button type="button" onClick={said.more.run}>
                {said.more.label}
              </button>
            )}
          </p>
          {said.lines && (
            <ul className="refusal">
              {said.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </>
      )}
    </output>
  );
}

export function BenchLogDialog() {
  const log = useBackbow((state) => state.benchLog);
  const trouble = useBackbow((state) => state.logTrouble);
  const unreadable = useBackbow((state) => state.unreadableEntries);
  const solution = useBackbow((state) => state.solution);
  const system = useBackbow((state) => state.unitSystem);
  const reason = useNotComputed();
  const [editing, setEditing] = useState<LogEntry | null>(null);
  const [formCount, setFormCount] = useState(0);
  const [said, setSaid] = useState<Said | null>(null);
  useEffect(() => {
    void store.getState().readBenchLog();
  }, []);
  const entries = useMemo(() => log ?? [], [log]);
  const asked = usePosterior(log);
  const { changeBenchLog } = store.getState();

  /** Changes the log and says so. */
  async function change(
    out: readonly LogEntry[],
    into: readonly LogEntry[],
    title: string,
    more?: Said['more'],
  ): Promise<void> {
    await changeBenchLog(out, into);
    setSaid({ title, undo: () => changeBenchLog(into, out), ...(more ? { more } : {}) });
  }

  function openForm(entry: LogEntry | null): void {
    setEditing(entry);
    setFormCount(formCount + 1);
  }

  async function save(content: EntryContent): Promise<void> {
    const entry = { ...content, id: editing?.id ?? newId() };
    if (editing) await change([editing], [entry], LOG_WORDS.changed(entry.neck));
    else await change([], [entry], LOG_WORDS.added(entry.neck));
    openForm(null);
  }

  async function take(brought: BroughtIn, file: string): Promise<void> {
    if (!brought.ok) {
      const lines = logProblemTexts(brought.problems, brought.count, MOST_LISTED, system);
      setSaid({ title: LOG_WORDS.notImported(file), lines });
      return;
    }
    const { fresh, changed } = brought;
    const theirs = () =>
      void change(
        changed.map(([there]) => there),
        changed.map(([, coming]) => coming),
        LOG_WORDS.tookTheirs(changed.length),
      );
    const more = changed.length > 0 ? { label: LOG_WORDS.takeTheirs(changed.length), run: theirs } : undefined;
    const title = [
      ...(fresh.length > 0 || changed.length === 0 ? [LOG_WORDS.imported(fresh.length)] : []),
      ...(changed.length > 0 ? [LOG_WORDS.otherwise(changed.length)] : []),
    ].join(' ');
    if (fresh.length > 0) await change([], fresh, title, more);
    else setSaid({ title, ...(more ? { more } : {}) });
  }

  const bringing = useBringing(entries, (brought, file) => void take(brought, file));

  return (
    <Dialog title={LOG_WORDS.title} onClose={store.getState().closeDialog} className="bench-log">
      <p className="quiet">{LOG_WORDS.intro}</p>
      {trouble !== null && (
        <p className="refusal" role="alert">
          {LOG_WORDS.troubles[trouble]}
        </p>
      )}
      <div className="button-row">
        <button type="button" disabled={log === null} onClick={bringing.pick}>
          {LOG_WORDS.importFile}
        </button>
        <button type="button" disabled={entries.length === 0} onClick={() => saveLog(entries, system)}>
          {LOG_WORDS.exportFile}
        </button>
      </div>
      <Asking {...bringing.asked} working={LOG_WORDS.fileReading} />
      <SaidLine said={said} say={setSaid} />
      {log === null ? (
        <p className="quiet">{LOG_WORDS.reading}</p>
      ) : entries.length === 0 ? (
        <p>{LOG_WORDS.empty}</p>
      ) : (
        <EntriesTable
          entries={entries}
          system={system}
          edit={openForm}
          remove={(entry) => {
            if (entry === editing) openForm(null);
            void change([entry], [], LOG_WORDS.removed(entry.neck));
          }}
        />
      )}
      {unreadable > 0 && <p className="quiet">{LOG_WORDS.unreadable(unreadable)}</p>}
      {log !== null && <BiteSection entries={entries} asked={asked} system={system} />}
      {solution ? (
        <EntryForm
          key={`${formCount} ${system}`}
          solution={solution}
          entry={editing}
          entries={entries}
          posterior={asked.value}
          save={(entry) => void save(entry)}
          cancel={() => openForm(null)}
        />
      ) : (
        <p className="quiet">{reason === null ? LOG_WORDS.noPrediction : SOLVER_WORDS.notComputedWhy(reason)}</p>
      )}
    </Dialog>
  );
}
