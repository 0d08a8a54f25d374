/**
 * Writes the links and files of a release into a folder beside this file, as the program writes them at that moment. How and
 * when: see released.test.ts. It refuses to write over a folder that is there.
 *
 * What links of version 4 are written against (added-4.json) is brought up to date with it, until that version is released.
 *
 *   npx tsx test/links/make.ts version-2
 */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PROJECT_EXTENSION, PROJECT_VERSION, writeProject } from '../../src/neck/file.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { UNSAID, type LogEntry } from '../../src/mechanics/bench-log/entry.ts';
import { writeLog } from '../../src/mechanics/bench-log/csv.ts';
import { addressOf, type Route } from '../../src/state/share/address.ts';
import { COLLECTION_EXTENSION, COLLECTION_VERSION, writeCollection } from '../../src/state/share/file.ts';
import { changesFrom } from '../../src/state/share/changes.ts';
import ADDED_4 from '../../src/state/share/v1/added-4.json' with { type: 'json' };
import FROZEN from '../../src/state/share/v1/frozen.json' with { type: 'json' };
import { LINK_VERSION, writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE, type PageText, type Shared } from '../../src/state/share/shared.ts';
import { ENTRY } from '../mechanics/bench-log/entries.ts';
import { offStandard } from './off-standard.ts';

/** What the files of a release hold: the test compares with it. */
export interface Released {
  readonly versions: { readonly link: number; readonly project: number; readonly collection: number };
  /** Builds by id: each has a link and a project file; all of them are the library. */
  readonly builds: Readonly<Record<string, Build>>;
  /** Ids of the builds that are compared. */
  readonly compared: readonly string[];
  /** Texts of the customer's page of the comparison. */
  readonly page: PageText;
  /** When a neck of the library was last changed, ms since 1970. */
  readonly changedAt: number;
  readonly entries: readonly LogEntry[];
}

const released: Released = {
  versions: { link: LINK_VERSION, project: PROJECT_VERSION, collection: COLLECTION_VERSION },
  builds: {
    ...Object.fromEntries(PRESETS.map(({ id, build }) => [id, build])),
    'off-standard': offStandard(),
  },
  compared: ['bolt-on-maple', 'set-neck-mahogany', 'off-standard'],
  page: {
    from: 'Workshop at the Mill Race, 12 Weir Lane',
    to: 'Mira',
    note: 'Two lines,\nand “quotes” – 100 % & more.\nשלום',
    advised: 1,
  },
  changedAt: Date.UTC(2026, 1, 14, 9, 30),
  entries: [
    { ...ENTRY, neck: 'No. 41, "walnut" board' },
    {
      ...UNSAID,
      id: 'zxwvtsrqpnmlkj',
      date: '2026-03-01',
      neck: '=No. 42\nsecond line',
      method: 'both',
      measuredFrettedMm: null,
      measuredStrungMm: 0.1234,
      gaugeErrorMm: 0.015,
      predictedFrettedMm: null,
      predictedFrettedFretsMm: null,
      predictedStrungMm: 0.2,
      predictedStrungFretsMm: -0.1,
      biteFactor: 1.25,
      fretShift: -0.05,
      fretScatter: 0.3,
      stringScatter: 0.2,
      scatterCorrelation: 0.5,
    },
  ],
};

function fragment(kind: Route['kind'], shared: Shared): string {
  const link = writeLink(shared);
  if (!link.ok) throw new Error(`not written: ${link.trouble.code}`);
  return `${addressOf('', { kind, link: link.text })}\n`;
}

function main(name: string | undefined): void {
  if (name === undefined || !/^version-\d+$/.test(name)) throw new Error('Name the folder: version-2, say.');
  const folder = join(import.meta.dirname, name);
  if (existsSync(folder)) throw new Error(`${folder} is there already; what was released is not written anew.`);
  if (PROJECT_VERSION === 4) {
    const { name: _name, notes: _notes, ...standard } = defaultBuild();
    const { name: _base, notes: _none, ...base } = FROZEN.base;
    const added = changesFrom(base, { ...standard });
    if (JSON.stringify(added) !== JSON.stringify(ADDED_4)) {
      writeFileSync(join(import.meta.dirname, '../../src/state/share/v1/added-4.json'), `${JSON.stringify(added)}\n`);
      throw new Error(
        'What links are written against (added-4.json) was out of date and is written anew: format it, run this again.',
      );
    }
  }
  mkdirSync(folder);
  const write = (file: string, text: string) => writeFileSync(join(folder, file), text);
  const { builds, compared, page, changedAt, entries } = released;
  write('expected.json', `${JSON.stringify(released, null, 2)}\n`);
  for (const [id, build] of Object.entries(builds)) {
    write(`${id}.txt`, fragment('neck', { builds: [build], page: EMPTY_PAGE }));
    write(`${id}${PROJECT_EXTENSION}`, writeProject(build));
  }
  const together = compared.map((id) => builds[id]);
  write('comparison.txt', fragment('neck', { builds: together, page: EMPTY_PAGE }));
  write('customer.txt', fragment('customer', { builds: together, page }));
  write(
    `comparison${COLLECTION_EXTENSION}`,
    writeCollection(
      together.map((build) => ({ build, changedAt: null })),
      page,
    ),
  );
  write(
    `library${COLLECTION_EXTENSION}`,
    writeCollection(Object.values(builds).map((build) => ({ build, changedAt }))),
  );
  write('bench-log-mm.csv', writeLog(entries, 'metric'));
  write('bench-log-in.csv', writeLog(entries, 'inch'));
}

if (process.argv[1] === import.meta.filename) main(process.argv[2]);
