/**
 * Links and files that people have must open for ever, to exactly what they held. Each folder beside this file has what one
 * release wrote, and is never changed afterwards.
 *
 * Adding a version, at the release that brings one (a new LINK_VERSION, PROJECT_VERSION or COLLECTION_VERSION):
 *
 *   1. Write the reader of the new version beside the old one (src/state/share/v2/, a migration in src/neck/file.ts). The
 *      folder of the old reader stays as it is, its frozen.json to the last character.
 *   2. `npx tsx test/links/make.ts version-2`, with the program as it will be released; commit the folder.
 *   3. For a frozen.json of the new version add its checksum below.
 *   4. Run this test. The old folders must pass unchanged. A parameter that is new since then has its default in an old build,
 *      which this test allows by itself; one that was renamed or has another unit is brought up to date in `nowadays`.
 *
 * It is never right to write an old folder anew because this test fails: then it is the reader that is wrong.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import {
  before4,
  EARLIER_GRIP,
  before3,
  PROJECT_EXTENSION,
  PROJECT_VERSION,
  readProject,
} from '../../src/neck/file.ts';
import { PARAMETERS } from '../../src/neck/parameters.ts';
import { UNSAID, type LogEntry } from '../../src/mechanics/bench-log/entry.ts';
import { isId } from '../../src/mechanics/bench-log/identity.ts';
import { readLog } from '../../src/mechanics/bench-log/read-csv.ts';
import { routeOf } from '../../src/state/share/address.ts';
import { COLLECTION_EXTENSION, COLLECTION_VERSION, readCollection } from '../../src/state/share/file.ts';
import { LINK_VERSION, readLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import type { Released } from './make.ts';

const folders = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .toSorted();

/** SHA-256 of each frozen file with its lines ended by "\n", by its folder in src/state/share. */
const FROZEN: Readonly<Record<string, string>> = {
  v1: '071c1fdf6d6fb5e1cca3ac792911b3d93db1d8783bd4ebc21143f9b3131d8de1',
};

const textOf = (folder: string, file: string) => readFileSync(join(import.meta.dirname, folder, file), 'utf8');

const expectedOf = (folder: string) => JSON.parse(textOf(folder, 'expected.json')) as Released;

/** A build of an old release as this one has it: what did not exist then has its default, or what it was until then. */
function nowadays(build: Build): Build {
  const has = (id: keyof Build) => (build as Partial<Build>)[id] !== undefined;
  // Project version 1 knew no shape of the studs: all were blocks.
  const shaped: Record<string, unknown> = {
    ...(has('studShape') ? {} : { studShape: EARLIER_GRIP.studShape }),
    ...build,
  };
  // Version 3 brought the set-up of strings, ends of slots, the order of work and left-handed necks.
  const third = has('bridgeMm') ? shaped : before3(shaped);
  // Version 4 brought the stiffness of each kind of glue, several own woods, channels, rods and bars as they are made, zero
  // frets and heat, and kept the values of woods that moved.
  return { ...defaultBuild(), ...(has('ownWoods') ? third : before4(third)) };
}

/** What a link in a file opens. */
function opened(folder: string, file: string) {
  const route = routeOf(textOf(folder, file).trim());
  return { kind: route?.kind, read: readLink(route?.link ?? '') };
}

test('the formats that this program writes are among those that are kept here', () => {
  const versions = folders.map((folder) => expectedOf(folder).versions);
  expect(versions).toContainEqual({ link: LINK_VERSION, project: PROJECT_VERSION, collection: COLLECTION_VERSION });
});

test.each(Object.entries(FROZEN))(
  'src/state/share/%s/frozen.json is what it was at its release',
  (folder, checksum) => {
    const path = join(import.meta.dirname, '../../src/state/share', folder, 'frozen.json');
    const text = readFileSync(path, 'utf8').replaceAll('\r\n', '\n');
    const found = createHash('sha256').update(text).digest('hex');
    const alarm =
      `${folder}/frozen.json has changed. Every link of that version was packed against this very text: with one character ` +
      'changed, links that customers and workshops have kept no longer open, or open to another neck. Put it back as it ' +
      'was; what is new in a build travels in the link as a change, and a new base belongs to a new version.';
    expect(found === checksum ? 'unchanged' : alarm).toBe('unchanged');
  },
);

test('every version of links has its frozen file pinned', () => {
  const share = readdirSync(join(import.meta.dirname, '../../src/state/share'), { withFileTypes: true });
  const versions = share.filter((entry) => entry.isDirectory() && /^v\d+$/.test(entry.name)).map(({ name }) => name);
  expect(Object.keys(FROZEN)).toEqual(versions.toSorted());
});

describe.each(folders)('%s', (folder) => {
  const { builds, compared, page, changedAt, entries } = expectedOf(folder);
  const together = compared.map((id) => nowadays(builds[id]));

  test('has one build that differs from the standard in every parameter it knew', () => {
    const odd = builds['off-standard'];
    const standard = defaultBuild();
    const known = PARAMETERS.filter(({ id }) => id in odd);
    expect(known.length).toBeGreaterThan(90);
    expect(known.filter(({ id }) => odd[id] === standard[id]).map(({ id }) => id)).toEqual([]);
  });

  test.each(Object.entries(builds))('the link and the file of %s open to exactly that build', (id, build) => {
    expect(opened(folder, `${id}.txt`)).toEqual({
      kind: 'neck',
      read: { ok: true, shared: { builds: [nowadays(build)], page: EMPTY_PAGE } },
    });
    expect(readProject(textOf(folder, `${id}${PROJECT_EXTENSION}`))).toEqual({ ok: true, build: nowadays(build) });
  });

  test('the comparison opens to exactly those builds, as a link and as a file', () => {
    expect(opened(folder, 'comparison.txt')).toEqual({
      kind: 'neck',
      read: { ok: true, shared: { builds: together, page: EMPTY_PAGE } },
    });
    expect(readCollection(textOf(folder, `comparison${COLLECTION_EXTENSION}`))).toEqual({
      ok: true,
      builds: together.map((build) => ({ build, changedAt: null })),
      refused: [],
      page,
    });
  });

  test('the customer’s link opens to those builds and the words of its page', () => {
    expect(opened(folder, 'customer.txt')).toEqual({
      kind: 'customer',
      read: { ok: true, shared: { builds: together, page } },
    });
  });

  test('the library comes in with every neck and when it was changed', () => {
    expect(readCollection(textOf(folder, `library${COLLECTION_EXTENSION}`))).toEqual({
      ok: true,
      builds: Object.values(builds).map((build) => ({ build: nowadays(build), changedAt })),
      refused: [],
      page: EMPTY_PAGE,
    });
  });

  test.each(['mm', 'in'])('the bench log with lengths in %s comes in with every entry', (unit) => {
    const read = readLog(textOf(folder, `bench-log-${unit}.csv`));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    // To 12 digits: from mm to inches and back a number is rounded twice, by some 1e-16 of itself.
    const rounded = (value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(12)) : value);
    const plain = (list: readonly Omit<LogEntry, 'id'>[]) =>
      list.map((entry) => Object.fromEntries(Object.entries(entry).map(([key, value]) => [key, rounded(value)])));
    // What did not exist then is not said, and an entry without an id gets the one of its content.
    for (const { id } of read.entries) expect(isId(id)).toBe(true);
    const said = plain(read.entries.map(({ id: _id, ...entry }) => entry));
    expect(said).toEqual(plain(entries.map(({ id: _id, ...entry }) => ({ ...UNSAID, ...entry }))));
  });
});
