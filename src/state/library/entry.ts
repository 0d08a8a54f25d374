/** Reads records of the library: what an older release or another hand left there is told apart, not trusted. */
import { MOST_NAME } from '../../neck/build.ts';
import { readProject } from '../../neck/file.ts';
import type { CheckedBuild } from '../../neck/schema.ts';
import { isMoment } from '../device/moment.ts';
import type { LibraryEntry } from './types.ts';

/** @returns null for a record that is no neck */
export function entryOf(value: unknown): LibraryEntry | null {
  if (typeof value !== 'object' || value === null) return null;
  const { id, name, createdAt, changedAt, revision, project, picture, deletedAt } = value as Record<string, unknown>;
  if (typeof id !== 'string' || typeof project !== 'string' || !isMoment(changedAt)) return null;
  return {
    id,
    project,
    changedAt,
    name: typeof name === 'string' ? name : '',
    createdAt: isMoment(createdAt) ? createdAt : changedAt,
    revision: Number.isFinite(revision) ? (revision as number) : 1,
    picture: typeof picture === 'string' && picture.startsWith('data:image/') ? picture : null,
    deletedAt: isMoment(deletedAt) ? deletedAt : null,
  };
}

/** The build of an entry, checked and brought up to date, or what is wrong with it. */
export function buildOf(entry: Pick<LibraryEntry, 'project'>): CheckedBuild {
  return readProject(entry.project);
}

/** "Ash" → "Ash (2)", "Ash (2)" → "Ash (3)": the first that is not taken, within the length of a name. */
export function freeName(name: string, taken: ReadonlySet<string>): string {
  const [, stem = name, digits] = /^(.*?)(?: \((\d{1,4})\))?$/s.exec(name) ?? [];
  for (let count = digits === undefined ? 2 : Number(digits) + 1; ; count += 1) {
    const suffix = ` (${count})`;
    const candidate = `${stem.slice(0, MOST_NAME - suffix.length)}${suffix}`;
    if (!taken.has(candidate)) return candidate;
  }
}
