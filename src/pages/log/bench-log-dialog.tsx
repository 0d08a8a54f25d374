/** The bench log: measured necks, and what they say of the next one. */
import { useEffect, useMemo } from 'react';
import { Asking } from '../answers/wanted/asking.tsx';
import { store, useBackbow } from '../../state/store.ts';
import { SOLVER_WORDS } from '../../speech/en/workshop/solver.ts';
import { useNotComputed } from '../workshop/not-computed.tsx';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { BiteSection } from './bite-section.tsx';
import { EntriesTable } from './entries-table.tsx';
import { EntryForm } from './entry-form.tsx';
import { saveLog, useBringing } from './log-file.ts';
import { OwnSection } from './own-section.tsx';
import { SaidLine } from './said-line.tsx';
import { useLogChanges } from './use-log-changes.ts';
import { usePosterior } from './use-posterior.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { BLANK_WORDS } from '../../speech/en/workshop/blanks.ts';
import '../answers/wanted/wanted.css';
import './bench-log.css';

export function BenchLogDialog() {
  const log = useBackbow((state) => state.benchLog);
  const trouble = useBackbow((state) => state.logTrouble);
  const unreadable = useBackbow((state) => state.unreadableEntries);
  const solution = useBackbow((state) => state.solution);
  const system = useBackbow((state) => state.unitSystem);
  const reason = useNotComputed();
  useEffect(() => {
    void store.getState().readBenchLog();
  }, []);
  const entries = useMemo(() => log ?? [], [log]);
  const asked = usePosterior(log);
  const changes = useLogChanges(system);
  const { editing, formCount, openForm } = changes;
  const bringing = useBringing(entries, (brought, file) => void changes.take(brought, file));

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
        <button type="button" onClick={() => store.getState().openDialog('try-strip')}>
          {BLANK_WORDS.tryStrip}
        </button>
      </div>
      <Asking {...bringing.asked} working={LOG_WORDS.fileReading} />
      <SaidLine said={changes.said} say={changes.say} />
      {log === null ? (
        <p className="quiet">{LOG_WORDS.reading}</p>
      ) : entries.length === 0 ? (
        <p>{LOG_WORDS.empty}</p>
      ) : (
        <EntriesTable entries={entries} system={system} edit={openForm} remove={changes.remove} />
      )}
      {unreadable > 0 && <p className="quiet">{LOG_WORDS.unreadable(unreadable)}</p>}
      {log !== null && <BiteSection entries={entries} asked={asked} system={system} />}
      {log !== null && <OwnSection entries={entries} system={system} />}
      {solution ? (
        <EntryForm
          key={`${formCount} ${system}`}
          solution={solution}
          entry={editing}
          entries={entries}
          posterior={asked.value}
          save={(entry) => void changes.save(entry)}
          cancel={() => openForm(null)}
        />
      ) : (
        <p className="quiet">{reason === null ? LOG_WORDS.noPrediction : SOLVER_WORDS.notComputedWhy(reason)}</p>
      )}
    </Dialog>
  );
}
