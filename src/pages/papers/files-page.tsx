/** Files to take along: tables, template, project, 3D file, picture. */
import { useMemo, useState } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { Build } from '../../neck/build.ts';
import { planTables } from '../../fretwork/plan/tables.ts';
import { useKeptStrength } from '../../state/matches/use-kept-strength.ts';
import { currentBands, type Solution } from '../../state/solution-slice.ts';
import { store, useBackbow } from '../../state/store.ts';
import { drawnBowFactor } from '../../state/view-slice.ts';
import { saveProject } from '../workshop/project/project-file.ts';
import { railText } from '../workshop/rail/rail-text.ts';
import { PICTURE_WORDS, VIEW_WORDS } from '../../speech/en/workshop/workshop.ts';
import { FAILURE_WORDS } from '../../speech/en/workshop/failures.ts';
import { PictureFailed } from '../../scene/picture-failed.ts';
import { FILES_WORDS, PLAN_WORDS } from '../../speech/en/pages/papers.ts';
import { saveAllTables, saveModel, savePicture, saveTable, saveTemplate } from './downloads.ts';
import { sheetPlan } from '../../verdict/sheet-plan.ts';
import { useToday } from './use-today.ts';

interface FileRowProps {
  readonly title: string;
  readonly says: string;
  readonly onSave: () => void | Promise<void>;
}

/** Why a file could not be made. */
function reasonText(error: unknown): string {
  if (error instanceof PictureFailed) return FAILURE_WORDS.pictures[error.code];
  return error instanceof Error ? error.message : String(error);
}

/** One file: what it is, and its button. What goes wrong is said in place. */
function FileRow({ title, says, onSave }: FileRowProps) {
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);
  async function save(): Promise<void> {
    setBusy(true);
    setTrouble('');
    try {
      await onSave();
    } catch (error) {
      setTrouble(FILES_WORDS.failed(title, reasonText(error)));
    } finally {
      setBusy(false);
    }
  }
  return (
    <li className="file-row">
      <div>
        <h2>{title}</h2>
        <p>{says}</p>
        <p className="refusal" role="alert">
          {trouble}
        </p>
      </div>
      <button type="button" disabled={busy} onClick={() => void save()}>
        {FILES_WORDS.save}
        <span className="visually-hidden"> {title}</span>
      </button>
    </li>
  );
}

interface FilesPageProps {
  readonly build: Build;
  /** Null when there is none: then there are the project and the template, and no file with a number that is computed. */
  readonly solution: Solution | null;
  readonly system: UnitSystem;
}

export function FilesPage({ build, solution, system }: FilesPageProps) {
  const uncertainty = useBackbow(currentBands);
  const own = useKeptStrength();
  const tables = useMemo(
    () => (solution ? planTables(sheetPlan(solution, uncertainty, own).plan) : []),
    [solution, uncertainty, own],
  );
  const factor = useBackbow(drawnBowFactor);
  const date = useToday();
  const rail = useBackbow((state) => state.rail);
  const view = useBackbow((state) => state.view);
  const shown = factor === 1 ? PICTURE_WORDS.trueShown : PICTURE_WORDS.shown(String(factor));
  return (
    <article className="files" aria-labelledby="sheet-title">
      <h1 id="sheet-title" tabIndex={-1}>
        {FILES_WORDS.title}
      </h1>
      <p>{FILES_WORDS.intro}</p>
      <ul>
        <FileRow title={FILES_WORDS.project} says={FILES_WORDS.projectSay} onSave={() => saveProject(store)} />
        <FileRow
          title={FILES_WORDS.template}
          says={FILES_WORDS.templateSay}
          onSave={() => saveTemplate(build, system, date)}
        />
        {solution && (
          <>
            <FileRow
              title={FILES_WORDS.model}
              says={FILES_WORDS.modelSay(shown, railText(build, rail, solution?.prediction))}
              onSave={() => saveModel(store)}
            />
            <FileRow
              title={FILES_WORDS.picture}
              says={`${FILES_WORDS.pictureSay(VIEW_WORDS[view].label)} ${FILES_WORDS.pictureWide}.`}
              onSave={() => savePicture(store)}
            />
            <FileRow
              title={FILES_WORDS.allTables}
              says={FILES_WORDS.tablesSay}
              onSave={() => saveAllTables(build, tables)}
            />
          </>
        )}
      </ul>
      {solution && <h2>{FILES_WORDS.tables}</h2>}
      <div className="button-row">
        {tables.map((table) => {
          const { title } = PLAN_WORDS.tables[table.id];
          return (
            <button
              key={table.id}
              type="button"
              aria-label={PLAN_WORDS.saveTable(title)}
              onClick={() => saveTable(build, table)}
            >
              {title}
            </button>
          );
        })}
      </div>
    </article>
  );
}
