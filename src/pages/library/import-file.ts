/** Necks from a file into the library: a collection, or one project file. */
import { readProject } from '../../neck/file.ts';
import { isolated } from '../../speech/isolate.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { looksLikeCollection, readCollection, type ReadCollection } from '../../state/share/file.ts';
import { EMPTY_PAGE } from '../../state/share/shared.ts';
import { problemTexts } from '../../speech/problems.ts';
import { library } from './page-library.ts';
import { LIBRARY_WORDS } from '../../speech/en/pages/library.ts';

/** Room for a few thousand necks. */
const MOST_BYTES = 40_000_000;
/** Names and problems listed before the rest is only counted. */
const MOST_LISTED = 12;

/** What is told after bringing in a file. */
export interface ImportReport {
  readonly ok: boolean;
  readonly title: string;
  readonly lines: readonly string[];
}

function listed(names: readonly string[]): string {
  const shown = names.slice(0, MOST_LISTED).map((name) => `“${isolated(name)}”`);
  return names.length > MOST_LISTED ? `${shown.join(', ')} …` : shown.join(', ');
}

/** A project file as a collection of one. */
function read(text: string): ReadCollection {
  if (looksLikeCollection(text)) return readCollection(text);
  const project = readProject(text);
  if (project.ok) {
    return { ok: true, builds: [{ build: project.build, changedAt: null }], refused: [], page: EMPTY_PAGE };
  }
  const isProject = project.problems.every(({ code }) => code !== 'not-json' && code !== 'not-a-project');
  if (!isProject) return readCollection(text);
  return { ok: true, builds: [], refused: [{ place: 1, name: null, problems: project.problems }], page: EMPTY_PAGE };
}

export async function importFile(file: File, system: UnitSystem): Promise<ImportReport> {
  const refuse = (why: keyof typeof LIBRARY_WORDS.fileTroubles): ImportReport => ({
    ok: false,
    title: LIBRARY_WORDS.notImported(file.name),
    lines: [LIBRARY_WORDS.fileTroubles[why]],
  });
  if (file.size > MOST_BYTES) return refuse('too-large');
  let text: string;
  try {
    text = await file.text();
  } catch {
    return refuse('unreadable');
  }
  const collection = read(text);
  if (!collection.ok) return refuse(collection.trouble);
  const imported = await library.import(collection.builds);
  if (!imported.ok) {
    return {
      ok: false,
      title: LIBRARY_WORDS.notImported(file.name),
      lines: [LIBRARY_WORDS.troubles[imported.trouble]],
    };
  }
  const { added, alreadyThere, notKept } = imported.value;
  const lines = [
    ...(alreadyThere.length > 0 ? [LIBRARY_WORDS.alreadyThere(listed(alreadyThere))] : []),
    ...collection.refused
      .slice(0, MOST_LISTED)
      .map(({ place, name, problems }) =>
        [LIBRARY_WORDS.refused(place, name), ...problemTexts(problems, system).slice(0, 3)].join(' '),
      ),
    ...(notKept ? [LIBRARY_WORDS.notKept(notKept.count), LIBRARY_WORDS.troubles[notKept.trouble]] : []),
    ...(collection.page === null && collection.refused.length === 0 ? [LIBRARY_WORDS.pageRefused] : []),
  ];
  return {
    ok: collection.refused.length === 0 && notKept === null,
    title: LIBRARY_WORDS.imported(added.length),
    lines,
  };
}
