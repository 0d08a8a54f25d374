/** One file for everything on the device, out and in; and whether the browser keeps it all. */
import { useEffect, useRef, useState } from 'react';
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
  const isRefused = useLibrary((state) => state.trouble === 'refused');
  if (isRefused) return <p className="quiet">{BACKUP_WORDS.keptNowhere}</p>;
  return (
    <>
      <p className="quiet">{BACKUP_WORDS.promised[promised]}</p>
      {promised === 'denied' && (
        <div className="button-row">
          <button type="button" onClick={() => void keepAlways.askAgain()}>
            {BACKUP_WORDS.askAgain}
          </button>
        </div>
      )}
    </>
  );
}

function ToldBox({ told }: { readonly told: Told }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The button that was pressed may have gone.
    if (document.activeElement === null || document.activeElement === document.body) box.current?.focus();
  }, [told]);
  return (
    <div ref={box} className="said" role={told.ok ? 'status' : 'alert'} tabIndex={-1}>
      <p className={told.ok ? undefined : 'refusal'}>{told.title}</p>
      {told.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {told.undo && (
        <div className="button-row">
          <button type="button" onClick={told.undo}>
            {BACKUP_WORDS.undo}
          </button>
        </div>
      )}
    </div>
  );
}

export function BackupSection() {
  const [isOpen, setOpen] = useState(false);
  const { busy, told, found, make, pick, restore, leave } = useBackup(() => setOpen(true));
  const pickButton = useRef<HTMLButtonElement>(null);
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
        <div className="backup-body">
          <p className="quiet">{BACKUP_WORDS.intro}</p>
          <KeptForGood />
          <div className="button-row">
            <button type="button" aria-disabled={busy !== null} onClick={make}>
              {BACKUP_WORDS.make}
            </button>
            <button type="button" ref={pickButton} aria-disabled={busy !== null} onClick={pick}>
              {BACKUP_WORDS.restoreFile}
            </button>
          </div>
          {busy && <p className="quiet">{BACKUP_WORDS[busy]}</p>}
          {told && <ToldBox told={told} />}
          {found && (
            <RestoreBox
              found={found}
              restore={restore}
              leave={() => {
                leave();
                pickButton.current?.focus();
              }}
            />
          )}
        </div>
      </details>
      {isDue && <p className="quiet">{BACKUP_WORDS.due}</p>}
    </div>
  );
}
