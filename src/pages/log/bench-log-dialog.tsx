/** The bench log: measured necks, and what they say of the next one. */
import { useEffect, useMemo, useState } from 'react';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { bitePosterior } from '../../mechanics/bench-log/posterior.ts';
import { store, useBackbow } from '../../state/store.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { useNotComputed } from '../workshop/not-computed.tsx';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { BiteSection } from './bite-section.tsx';
import { EntriesTable } from './entries-table.tsx';
import { EntryForm } from './entry-form.tsx';
import { bringIn, saveLog } from './log-file.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import '../answers/wanted/wanted.css';
import './bench-log.css';

/** What has just happened, and how to take it back. */
interface Said {
  readonly title: string;
  readonly lines?: readonly string[];
  readonly undo?: () => Promise<void>;
}

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
  const posterior = useMemo(() => bitePosterior(entries), [entries]);
  const { changeBenchLog } = store.getState();

  /** Changes the log and says so. */
  async function change(out: readonly LogEntry[], into: readonly LogEntry[], title: string): Promise<void> {
    await changeBenchLog(out, into);
    setSaid({ title, undo: () => changeBenchLog(into, out) });
  }

  function openForm(entry: LogEntry | null): void {
    setEditing(entry);
    setFormCount(formCount + 1);
  }

  async function save(entry: LogEntry): Promise<void> {
    if (editing) await change([editing], [entry], LOG_WORDS.changed(entry.neck));
    else await change([], [entry], LOG_WORDS.added(entry.neck));
    openForm(null);
  }

  async function bring(): Promise<void> {
    const brought = await bringIn(entries, system);
    if (!brought) return;
    if (!brought.ok) setSaid({ title: LOG_WORDS.notImported(brought.file), lines: brought.lines });
    else if (brought.fresh.length === 0) setSaid({ title: LOG_WORDS.imported(0) });
    else await change([], brought.fresh, LOG_WORDS.imported(brought.fresh.length));
  }

  return (
    <Dialog title={LOG_WORDS.title} onClose={store.getState().closeDialog} className="bench-log">
      <p className="quiet">{LOG_WORDS.intro}</p>
      {trouble !== null && (
        <p className="refusal" role="alert">
          {LOG_WORDS.troubles[trouble]}
        </p>
      )}
      <div className="button-row">
        <button type="button" onClick={() => void bring()}>
          {LOG_WORDS.importFile}
        </button>
        <button type="button" disabled={entries.length === 0} onClick={() => saveLog(entries, system)}>
          {LOG_WORDS.exportFile}
        </button>
      </div>
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
      {log !== null && <BiteSection entries={entries} posterior={posterior} system={system} />}
      {solution ? (
        <EntryForm
          key={`${formCount} ${system}`}
          solution={solution}
          entry={editing}
          save={(entry) => void save(entry)}
          cancel={() => openForm(null)}
        />
      ) : (
        <p className="quiet">{reason === null ? LOG_WORDS.noPrediction : SOLVER_WORDS.notComputedWhy(reason)}</p>
      )}
    </Dialog>
  );
}
