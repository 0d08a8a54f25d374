/** What the backup section is at: making a backup, reading one, showing what it would bring, telling what became of it. */
import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { chooseLanguage } from '../../../speech/choose.ts';
import { lastBackup, noteBackup } from '../../../state/backup/last-backup.ts';
import { foresee, restore } from '../../../state/backup/restore.ts';
import { pageLanguage } from '../../../state/preferences.ts';
import { store } from '../../../state/store.ts';
import { pickFile } from '../../../kit/files.ts';
import { composeFromAgain } from '../../share/compose-store.ts';
import { library } from '../page-library.ts';
import { offeredBackup } from './offered-backup.ts';
import { backUp, failedReport, readBackupFile, restoredReport, undoneReport, type Report } from './page-backup.ts';
import type { FoundBackup } from './restore-box.tsx';

/** The page takes up what has changed on the device. */
async function showDevice(): Promise<void> {
  composeFromAgain();
  await Promise.all([
    library.changedBeside(),
    store.getState().readBenchLog(),
    chooseLanguage(pageLanguage(store.getState().language, navigator.languages)),
  ]);
}

/** Is nothing here yet that a backup could miss? */
function isDeviceEmpty(): boolean {
  const { entries } = library.state.getState();
  return (entries ?? []).length === 0 && (store.getState().benchLog ?? []).length === 0;
}

export interface Told extends Report {
  readonly undo?: () => void;
}

type Busy = 'making' | 'reading' | 'restoring';

/** Restores a backup. @returns what is told of it, and how it is taken back; null when nothing went in */
async function restoreFrom({
  backup,
}: FoundBackup): Promise<{ report: Report; takeBack: (() => Promise<Report>) | null }> {
  const wasEmpty = isDeviceEmpty();
  const { outcomes, takeBack } = await restore(backup);
  await showDevice();
  const report = restoredReport(outcomes);
  // All that is here now is in that file.
  if (wasEmpty && report.ok && lastBackup() === null) {
    const entries = (store.getState().benchLog ?? []).length;
    noteBackup({ at: Math.min(backup.madeAt, Date.now()), entries });
  }
  const back = async (): Promise<Report> => {
    const stuck = await takeBack();
    await showDevice();
    return undoneReport(stuck);
  };
  return { report, takeBack: outcomes.some(({ ok }) => ok) ? back : null };
}

/** @param open has the section show itself */
export function useBackup(open: () => void) {
  const [busy, setBusy] = useState<Busy | null>(null);
  const [told, setTold] = useState<Told | null>(null);
  const [found, setFound] = useState<FoundBackup | null>(null);

  /** One thing at a time; what was shown before goes. */
  async function run(what: Busy, work: () => Promise<Told | FoundBackup>): Promise<void> {
    if (busy !== null) return;
    setBusy(what);
    setTold(null);
    setFound(null);
    try {
      const outcome = await work();
      if ('backup' in outcome) setFound(outcome);
      else setTold(outcome);
    } catch {
      // Such as a text longer than the browser can hold.
      setTold(failedReport());
    } finally {
      setBusy(null);
    }
  }

  const read = (file: File) =>
    run('reading', async () => {
      const backup = await readBackupFile(file);
      return 'parts' in backup ? { fileName: file.name, backup, foreseen: await foresee(backup) } : backup;
    });

  const putIn = (from: FoundBackup) =>
    run('restoring', async () => {
      const { report, takeBack } = await restoreFrom(from);
      return takeBack ? { ...report, undo: () => void run('restoring', takeBack) } : report;
    });

  const offered = useStore(offeredBackup, ({ file }) => file);
  useEffect(() => {
    if (!offered) return;
    offeredBackup.setState({ file: null });
    open();
    void read(offered);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- what was offered is taken once
  }, [offered]);

  return {
    busy,
    told,
    found,
    make: () => void run('making', backUp),
    pick: () => void pickFile('.json,application/json').then((file) => file && read(file)),
    restore: () => found && void putIn(found),
    leave: () => setFound(null),
  };
}
