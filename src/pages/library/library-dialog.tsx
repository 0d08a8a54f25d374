/** The library: keep the neck on the bench, and what was kept before. */
import { useEffect, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { isolated } from '../../speech/isolate.ts';
import { COLLECTION_EXTENSION } from '../../state/share/file.ts';
import type { LibraryEntry } from '../../state/library/types.ts';
import { store } from '../../state/store.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { offerDownload, pickFile } from '../../kit/files.ts';
import { beginsAsBackup, offeredBackup } from './backup/offered-backup.ts';
import { BackupSection } from './backup/backup-section.tsx';
import { BenchRow } from './bench-row.tsx';
import { DeletedNecks } from './deleted-necks.tsx';
import { importFile, type ImportReport } from './import-file.ts';
import { LeftNecks } from './left-necks.tsx';
import { NeckCard, type CardActions } from './neck-card.tsx';
import { library, useLibrary } from './page-library.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';
import './library.css';

/** With fewer necks than this, looking is quicker than typing. */
const FEW = 8;

/** What has just happened, and how to take it back. */
interface Said {
  readonly title: string;
  readonly lines?: readonly string[];
  readonly undo?: () => void;
}

function bringToBench(build: Build): void {
  const { replaceBuild, notify, closeDialog } = store.getState();
  replaceBuild(build, LIBRARY_WORDS.stepOpen);
  notify('info', LIBRARY_WORDS.opened(build.name));
  closeDialog();
}

function useCardActions(say: (said: Said | null) => void): CardActions & { bringBack: (entry: LibraryEntry) => void } {
  const bringBack = (entry: LibraryEntry): void => {
    void library.setDeleted(entry.id, false).then((done) => {
      say(done.ok ? { title: LIBRARY_WORDS.broughtBack(entry.name) } : null);
    });
  };
  return {
    bringBack,
    open: (entry) => {
      // Cards of necks that cannot be read offer no opening.
      if (!library.open(entry, LIBRARY_WORDS.stepOpen).ok) return;
      const { notify, closeDialog, markSaved, build } = store.getState();
      markSaved(build);
      notify('info', LIBRARY_WORDS.opened(build.name));
      closeDialog();
    },
    duplicate: (entry) => {
      void library.duplicate(entry.id).then((done) => {
        say(done.ok ? { title: LIBRARY_WORDS.duplicated(done.value.name) } : null);
      });
    },
    rename: (entry, name) => {
      const isOnBench = library.benchId() === entry.id && store.getState().build.name === entry.name;
      void library.rename(entry.id, name).then((done) => {
        say(null);
        if (done.ok && isOnBench) store.getState().change({ name }, LIBRARY_WORDS.rename);
      });
    },
    remove: (entry) => {
      void library.setDeleted(entry.id, true).then((done) => {
        say(done.ok ? { title: LIBRARY_WORDS.deleted(entry.name), undo: () => bringBack(entry) } : null);
      });
    },
  };
}

function exportAll(say: (said: Said) => void): void {
  const { text, count, unreadable } = library.exportAll();
  offerDownload(`${LIBRARY_WORDS.fileName}${COLLECTION_EXTENSION}`, text, 'application/json');
  say({
    title: LIBRARY_WORDS.exported(count),
    lines: unreadable.length > 0 ? [LIBRARY_WORDS.exportedWithout(unreadable.map(isolated).join(', '))] : [],
  });
}

async function importNecks(): Promise<ImportReport | null> {
  const file = await pickFile('.json,application/json');
  if (!file) return null;
  if (await beginsAsBackup(file)) {
    offeredBackup.setState({ file });
    return null;
  }
  return importFile(file, store.getState().unitSystem);
}

function SaidLine({ said }: { readonly said: Said | null }) {
  return (
    <output className="said">
      {said && (
        <>
          <p>
            {said.title}{' '}
            {said.undo && (
              <button type="button" onClick={said.undo}>
                {LIBRARY_WORDS.undoDelete}
              </button>
            )}
          </p>
          {said.lines?.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </>
      )}
    </output>
  );
}

/** What the dialog says of the device it says once: a passing message that says the same goes. */
function useSaidOnce(text: string | null): void {
  useEffect(() => {
    const { notices, dismiss } = store.getState();
    for (const notice of notices) if (notice.text === text) dismiss(notice.id);
  }, [text]);
}

export function LibraryDialog() {
  const { entries, trouble, strange } = useLibrary((state) => state);
  const [text, setText] = useState('');
  const [said, setSaid] = useState<Said | null>(null);
  const { bringBack, ...actions } = useCardActions(setSaid);
  useEffect(() => {
    void library.refresh();
  }, []);
  useSaidOnce(trouble && LIBRARY_WORDS.troubles[trouble]);
  const kept = (entries ?? []).filter(({ deletedAt }) => deletedAt === null);
  const deleted = (entries ?? []).filter(({ deletedAt }) => deletedAt !== null);
  const found = kept.filter(({ name }) => name.toLowerCase().includes(text.trim().toLowerCase()));
  const onBench = library.benchId();
  return (
    <Dialog title={LIBRARY_WORDS.title} onClose={store.getState().closeDialog} className="library">
      <p className="quiet">{LIBRARY_WORDS.intro}</p>
      <BenchRow />
      {trouble !== null && (
        <p className="refusal" role="alert">
          {LIBRARY_WORDS.troubles[trouble]}
        </p>
      )}
      <div className="button-row">
        <button type="button" onClick={() => void importNecks().then((report) => report && setSaid(report))}>
          {LIBRARY_WORDS.import}
        </button>
        <button type="button" disabled={kept.length === 0} onClick={() => exportAll(setSaid)}>
          {LIBRARY_WORDS.exportAll}
        </button>
        {kept.length >= FEW && (
          <input
            type="search"
            aria-label={LIBRARY_WORDS.find}
            placeholder={LIBRARY_WORDS.find}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
        )}
      </div>
      <BackupSection />
      <SaidLine said={said} />
      {entries === null && trouble === null && <p className="quiet">{LIBRARY_WORDS.reading}</p>}
      {entries !== null && kept.length === 0 && <p className="quiet">{LIBRARY_WORDS.empty}</p>}
      {kept.length > 0 && found.length === 0 && <p className="quiet">{LIBRARY_WORDS.noneFound(text.trim())}</p>}
      <ul className="neck-cards">
        {found.map((entry) => (
          <NeckCard key={entry.id} entry={entry} isOnBench={entry.id === onBench} actions={actions} />
        ))}
      </ul>
      <DeletedNecks
        entries={deleted}
        bringBack={bringBack}
        forget={() =>
          void library.forgetDeleted().then(({ ok }) => setSaid(ok ? { title: LIBRARY_WORDS.forgotten } : null))
        }
      />
      <LeftNecks
        open={bringToBench}
        discarded={(name, undo) =>
          setSaid({
            title: LIBRARY_WORDS.discarded(name),
            undo: () => {
              undo();
              setSaid({ title: LIBRARY_WORDS.broughtBack(name) });
            },
          })
        }
      />
      {strange > 0 && <p className="quiet">{LIBRARY_WORDS.strange(strange)}</p>}
    </Dialog>
  );
}
