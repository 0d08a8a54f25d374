/** Changes of the log from its dialog: an entry written, corrected or taken out, a file brought in; each is said. */
import { useState } from 'react';
import type { BroughtIn } from '../../mechanics/bench-log/compare.ts';
import type { EntryContent, LogEntry } from '../../mechanics/bench-log/entry.ts';
import { newId } from '../../mechanics/bench-log/identity.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { logProblemTexts } from '../../speech/measured/log-problems.ts';
import { store } from '../../state/store.ts';
import type { Said } from './said-line.tsx';

/** Problems of a file that are listed; of more than these the number is told. */
const MOST_LISTED = 12;

export interface LogChanges {
  readonly said: Said | null;
  readonly say: (said: Said) => void;
  /** The entry in the form; null for a new one. */
  readonly editing: LogEntry | null;
  /** Another one each time that the form begins anew. */
  readonly formCount: number;
  readonly openForm: (entry: LogEntry | null) => void;
  readonly save: (content: EntryContent) => Promise<void>;
  readonly remove: (entry: LogEntry) => void;
  /** @param file its name */
  readonly take: (brought: BroughtIn, file: string) => Promise<void>;
}

export function useLogChanges(system: UnitSystem): LogChanges {
  const [editing, setEditing] = useState<LogEntry | null>(null);
  const [formCount, setFormCount] = useState(0);
  const [said, setSaid] = useState<Said | null>(null);
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

  function remove(entry: LogEntry): void {
    if (entry === editing) openForm(null);
    void change([entry], [], LOG_WORDS.removed(entry.neck));
  }

  return { said, say: setSaid, editing, formCount, openForm, save, remove, take };
}
