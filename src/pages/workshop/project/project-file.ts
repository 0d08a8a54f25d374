/** Saving the build to a project file and opening one. A file that is refused leaves the build as it was. */
import { MOST_PROJECT_BYTES, PROJECT_EXTENSION, readProject, writeProject } from '../../../neck/file.ts';
import type { BackbowStore } from '../../../state/store.ts';
import { PROJECT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { problemTexts } from '../../../speech/problems.ts';
import { fileStem } from '../../../kit/file-name.ts';
import { offerDownload, pickFile } from '../../../kit/files.ts';

/** Problems listed in one message. */
const MOST_PROBLEMS = 8;

/** The name under which a build is saved. */
export function fileNameOf(name: string): string {
  return `${fileStem(name)}${PROJECT_EXTENSION}`;
}

/** What the file was made of is said in it; where the part that knows how cannot be fetched, the neck is saved all the same. */
export async function saveProject(store: BackbowStore): Promise<void> {
  const { build, markSaved } = store.getState();
  const made = await import('../../papers/stamp/made.ts').then(
    ({ madeToday }) => madeToday(build),
    () => undefined,
  );
  offerDownload(fileNameOf(build.name), writeProject(build, made), 'application/json');
  markSaved(build);
}

export async function openProject(store: BackbowStore): Promise<void> {
  const file = await pickFile('.json,application/json');
  if (file) await readProjectFile(store, file);
}

/** Reads one file into the store, or says what is wrong with it. */
export async function readProjectFile(store: BackbowStore, file: File): Promise<void> {
  const { notify, replaceBuild, markSaved, unitSystem } = store.getState();
  const refuse = (details: readonly string[]) =>
    notify('error', PROJECT_WORDS.notOpened(file.name), details.slice(0, MOST_PROBLEMS));
  /** @returns whether it was no project but something else of this program, and what came of it is settled */
  async function isElsewhere(text: string | null): Promise<boolean> {
    try {
      const { openOther } = await import('./other-file.ts');
      const { isOther, why } = await openOther(store, file, text);
      if (why !== undefined) refuse([why]);
      return isOther;
    } catch {
      // What looks does not come over the network: it is refused as no project.
      return false;
    }
  }
  if (file.size > MOST_PROJECT_BYTES) {
    if (await isElsewhere(null)) return;
    refuse([PROJECT_WORDS.tooBig(`${Math.ceil(file.size / 1000)} kB`, `${MOST_PROJECT_BYTES / 1000} kB`)]);
    return;
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    refuse([PROJECT_WORDS.unreadable]);
    return;
  }
  const read = readProject(text);
  if (!read.ok && read.problems.some(({ code }) => code === 'not-a-project') && (await isElsewhere(text))) return;
  const outcome = read.ok ? replaceBuild(read.build, PROJECT_WORDS.stepOpen) : read;
  if (!outcome.ok) {
    const texts = problemTexts(outcome.problems, unitSystem);
    const more = texts.length - MOST_PROBLEMS;
    refuse(more > 0 ? [...texts.slice(0, MOST_PROBLEMS - 1), PROJECT_WORDS.moreProblems(more + 1)] : texts);
    return;
  }
  markSaved(store.getState().build);
  notify('info', PROJECT_WORDS.opened(store.getState().build.name));
}
