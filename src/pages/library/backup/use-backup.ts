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
import { backUp, readBackupFile, restoredReport, undoneReport, type Report } from './page-backup.ts';
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

export function useBackup(open: () => void) {
  const [busy, setBusy] = useState<'making' | 'reading' | null>(null);
  const [told, setTold] = useState<Told | null>(null);
  const [found, setFound] = useState<FoundBackup | null>(null);

  async function make(): Promise<void> {
    setBusy('making');
    setFound(null);
    setTold(await backUp());
    setBusy(null);
  }

  async function read(file: File): Promise<void> {
    setBusy('reading');
    setTold(null);
    setFound(null);
    const backup = await readBackupFile(file);
    if ('parts' in backup) setFound({ fileName: file.name, backup, foreseen: await foresee(backup) });
    else setTold(backup);
    setBusy(null);
  }

  async function putIn({ backup }: FoundBackup): Promise<void> {
    const wasEmpty = isDeviceEmpty();
    const { outcomes, takeBack } = await restore(backup);
    await showDevice();
    setFound(null);
    const report = restoredReport(outcomes);
    // All that is here now is in that file.
    if (wasEmpty && report.ok && lastBackup() === null) {
      noteBackup({ at: backup.madeAt, entries: (store.getState().benchLog ?? []).length });
    }
    const undo = async (): Promise<void> => {
      const stuck = await takeBack();
      await showDevice();
      setTold(undoneReport(stuck));
    };
    setTold({ ...report, ...(outcomes.some(({ ok }) => ok) ? { undo: () => void undo() } : {}) });
  }

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
    make: () => void make(),
    pick: () => void pickFile('.json,application/json').then((file) => file && read(file)),
    restore: () => found && void putIn(found),
    leave: () => setFound(null),
  };
}
