/** One file for everything on the device, out and in; and whether the browser keeps it all. */
import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { BACKUP_WORDS } from '../../../speech/en/pages/backup.ts';
import { isBackupDue, lastBackup } from '../../../state/backup/last-backup.ts';
import { keepAlways } from '../../../state/device/keep-always.ts';
import { formatWhen } from '../../../state/library/when.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { useLibrary } from '../page-library.ts';
import { RestoreBox } from './restore-box.tsx';
import { useBackup, type Told } from './use-backup.ts';
import './backup.css';

function KeptForGood() {
  const promised = useStore(keepAlways.state);
  return (
    <p className="quiet">
      {BACKUP_WORDS.promised[promised]}{' '}
      {promised === 'denied' && (
        <button type="button" onClick={() => void keepAlways.askAgain()}>
          {BACKUP_WORDS.askAgain}
        </button>
      )}
    </p>
  );
}

function ToldBox({ told }: { readonly told: Told }) {
  return (
    <div className={told.ok ? 'said' : 'said refusal'} role={told.ok ? 'status' : 'alert'}>
      <p>
        {told.title}{' '}
        {told.undo && (
          <button type="button" onClick={told.undo}>
            {BACKUP_WORDS.undo}
          </button>
        )}
      </p>
      {told.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

export function BackupSection() {
  const [isOpen, setOpen] = useState(false);
  const { busy, told, found, make, pick, restore, leave } = useBackup(() => setOpen(true));
  const necks = useLibrary((state) => state.entries);
  const log = useBackbow((state) => state.benchLog);
  useEffect(() => {
    void keepAlways.look();
    void store.getState().readBenchLog();
  }, []);
  const last = lastBackup();
  const isDue = isBackupDue(last, necks ?? [], (log ?? []).length);
  return (
    <div className="backup">
      <details className="more-necks" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{last ? BACKUP_WORDS.titleWith(formatWhen(last.at)) : BACKUP_WORDS.titleNever}</summary>
        <p className="quiet">{BACKUP_WORDS.intro}</p>
        <KeptForGood />
        <div className="button-row">
          <button type="button" disabled={busy !== null} onClick={make}>
            {BACKUP_WORDS.make}
          </button>
          <button type="button" disabled={busy !== null} onClick={pick}>
            {BACKUP_WORDS.restoreFile}
          </button>
        </div>
        {busy && <p className="quiet">{BACKUP_WORDS[busy]}</p>}
        {told && <ToldBox told={told} />}
        {found && <RestoreBox found={found} restore={restore} leave={leave} />}
      </details>
      {isDue && <p className="quiet">{BACKUP_WORDS.due}</p>}
    </div>
  );
}
