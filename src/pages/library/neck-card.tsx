/** One neck of the library: its picture, what it is, and what can be done with it. */
import { useId, useState, type FormEvent } from 'react';
import { MOST_NAME } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { shortTextOf } from '../../speech/quantity-text.ts';
import { buildOf } from '../../state/library/entry.ts';
import type { LibraryEntry } from '../../state/library/types.ts';
import { formatWhen } from '../../state/library/when.ts';
import { useBackbow } from '../../state/store.ts';
import { tooLong } from '../../kit/text-limit.ts';
import { offerDownload } from '../../kit/files.ts';
import { fileNameOf } from '../workshop/project/project-file.ts';
import { METHOD_WORDS } from '../../speech/en/workshop/workshop.ts';
import { problemTexts } from '../../speech/problems.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';

export interface CardActions {
  readonly open: (entry: LibraryEntry) => void;
  readonly duplicate: (entry: LibraryEntry) => void;
  readonly rename: (entry: LibraryEntry, name: string) => void;
  readonly remove: (entry: LibraryEntry) => void;
}

interface NeckCardProps {
  readonly entry: LibraryEntry;
  readonly isOnBench: boolean;
  readonly actions: CardActions;
}

function summaryOf(entry: LibraryEntry, system: UnitSystem): { text: string; problems: readonly string[] } {
  const read = buildOf(entry);
  if (!read.ok) return { text: '', problems: problemTexts(read.problems, system) };
  const { scaleLengthMm, fretCount, method } = read.build;
  const scale = shortTextOf('scaleLengthMm', scaleLengthMm, system);
  return { text: LIBRARY_WORDS.summary(scale, fretCount, METHOD_WORDS[method].label), problems: [] };
}

interface RenameFormProps {
  readonly name: string;
  readonly onDone: (name: string | null) => void;
}

function RenameForm({ name, onDone }: RenameFormProps) {
  const id = useId();
  const [draft, setDraft] = useState(name);
  const [empty, setEmpty] = useState(false);
  const refusal = empty ? LIBRARY_WORDS.emptyName : tooLong(LIBRARY_WORDS.newName(name), draft, MOST_NAME);
  function submit(event: FormEvent): void {
    event.preventDefault();
    if (draft.trim() === '') setEmpty(true);
    else if (draft.length <= MOST_NAME) onDone(draft);
  }
  return (
    <form className="rename" onSubmit={submit}>
      <input
        type="text"
        aria-label={LIBRARY_WORDS.newName(name)}
        aria-describedby={refusal === undefined ? undefined : id}
        aria-invalid={refusal !== undefined || undefined}
        value={draft}
        // oxlint-disable-next-line jsx-a11y/no-autofocus -- the person has just asked for this field
        autoFocus
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => {
          setDraft(event.currentTarget.value);
          setEmpty(false);
        }}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          // Escape leaves the field, not the whole library.
          event.preventDefault();
          event.stopPropagation();
          onDone(null);
        }}
      />
      <span className="button-row">
        <button type="submit">{LIBRARY_WORDS.renameDone}</button>
        <button type="button" onClick={() => onDone(null)}>
          {LIBRARY_WORDS.cancel}
        </button>
      </span>
      <p id={id} className="refusal" role="alert">
        {refusal}
      </p>
    </form>
  );
}

export function NeckCard({ entry, isOnBench, actions }: NeckCardProps) {
  const system = useBackbow((state) => state.unitSystem);
  const [renaming, setRenaming] = useState(false);
  const { text, problems } = summaryOf(entry, system);
  const { name } = entry;
  const isReadable = problems.length === 0;
  return (
    <li className="neck-card" data-bench={isOnBench || undefined}>
      {entry.picture === null ? (
        <span className="neck-picture quiet">{LIBRARY_WORDS.noPicture}</span>
      ) : (
        <img className="neck-picture" src={entry.picture} alt={LIBRARY_WORDS.picture(name)} />
      )}
      <div className="neck-says">
        {renaming ? (
          <RenameForm
            name={name}
            onDone={(wanted) => {
              setRenaming(false);
              if (wanted !== null && wanted !== name) actions.rename(entry, wanted);
            }}
          />
        ) : (
          <h3>{name}</h3>
        )}
        <p className="quiet">
          {text}
          {text === '' ? '' : '; '}
          <time dateTime={new Date(entry.changedAt).toISOString()}>
            {LIBRARY_WORDS.changed(formatWhen(entry.changedAt))}
          </time>
          {isOnBench && <strong> – {LIBRARY_WORDS.onBench}</strong>}
        </p>
        {!isReadable && (
          <p className="refusal">
            {LIBRARY_WORDS.unreadable} {problems[0]}
          </p>
        )}
        <div className="button-row">
          {isReadable ? (
            <>
              <button type="button" aria-label={LIBRARY_WORDS.openName(name)} onClick={() => actions.open(entry)}>
                {LIBRARY_WORDS.open}
              </button>
              <button
                type="button"
                aria-label={LIBRARY_WORDS.duplicateName(name)}
                onClick={() => actions.duplicate(entry)}
              >
                {LIBRARY_WORDS.duplicate}
              </button>
              <button type="button" aria-label={LIBRARY_WORDS.renameName(name)} onClick={() => setRenaming(true)}>
                {LIBRARY_WORDS.rename}
              </button>
            </>
          ) : (
            <button
              type="button"
              aria-label={LIBRARY_WORDS.saveRawName(name)}
              onClick={() => offerDownload(fileNameOf(name), entry.project, 'application/json')}
            >
              {LIBRARY_WORDS.saveRaw}
            </button>
          )}
          <button type="button" aria-label={LIBRARY_WORDS.deleteName(name)} onClick={() => actions.remove(entry)}>
            {LIBRARY_WORDS.delete}
          </button>
        </div>
      </div>
    </li>
  );
}
