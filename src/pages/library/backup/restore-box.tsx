/** What a backup would bring, before it does. */
import { useEffect, useId, useRef } from 'react';
import { isolated } from '../../../speech/isolate.ts';
import { BACKUP_WORDS } from '../../../speech/en/pages/backup.ts';
import type { SoundBackup } from '../../../state/backup/backup-file.ts';
import type { PartOutcome } from '../../../state/backup/restore.ts';
import { formatWhen } from '../../../state/library/when.ts';
import { bringsAnything, foreseenLines } from './page-backup.ts';

/** A backup that was read, and what it would do. */
export interface FoundBackup {
  readonly fileName: string;
  readonly backup: SoundBackup;
  readonly foreseen: readonly PartOutcome[];
}

interface RestoreBoxProps {
  readonly found: FoundBackup;
  readonly restore: () => void;
  readonly leave: () => void;
}

export function RestoreBox({ found: { fileName, backup, foreseen }, restore, leave }: RestoreBoxProps) {
  const id = useId();
  const box = useRef<HTMLFieldSetElement>(null);
  useEffect(() => box.current?.focus(), []);
  const isNew = bringsAnything(foreseen);
  return (
    <fieldset ref={box} className="restore-box" aria-labelledby={id} tabIndex={-1}>
      <h3 id={id}>{BACKUP_WORDS.foundTitle(isolated(fileName), formatWhen(backup.madeAt))}</h3>
      {foreseen.length === 0 ? (
        <p>{BACKUP_WORDS.emptyFile}</p>
      ) : (
        <>
          <p>{isNew ? BACKUP_WORDS.foundIntro : foreseen.every(({ ok }) => ok) ? BACKUP_WORDS.nothingNew : ''}</p>
          <dl>
            {foreseenLines(foreseen).map(({ part, says }) => (
              <div key={part}>
                <dt>{part}</dt>
                <dd>{says}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      <div className="button-row">
        {isNew && (
          <button type="button" onClick={restore}>
            {BACKUP_WORDS.restore}
          </button>
        )}
        <button type="button" onClick={leave}>
          {BACKUP_WORDS.leave}
        </button>
      </div>
    </fieldset>
  );
}
