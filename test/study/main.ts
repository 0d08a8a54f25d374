/**
 * `npm run study`: the study of try strips anew, into test/study/strips.json. It takes ten minutes of one processor, half an
 * hour of a busy one; rows are written as they are done. `npm run study -- drawn`, `-- 0`, `-- 2` make the rows with that
 * shape alone, `-- bands` the widths, `-- necks` what is read on
 * necks themselves, into test/study/neck-readings.json, `-- jobs` what advice while frets go in is worth, into jobs.json. The validation page shows what is in the file: `npx vitest run test/reference -u`.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../tools/project.mjs';
import { NECK_KINDS, neckRow, neckWidths, type NeckKind, type NeckRow, type NeckStudy } from './neck-readings.ts';
import { jobRow, RODS, type JobRow } from './jobs.ts';
import { SHAPES, studyBands, studyRow, type Study } from './study.ts';
import { KINDS } from './workshops.ts';

const file = join(root, 'test', 'study', 'strips.json');
const words = process.argv.slice(2);
const isWanted = (word: string) => words.length === 0 || words.includes(word);
const known = ['bands', 'necks', 'jobs', ...SHAPES.map((shape) => String(shape ?? 'drawn'))];
const unknown = words.filter((word) => !known.includes(word));
if (unknown.length > 0) {
  console.error(`“${unknown.join(' ')}” is no part of the study; there are ${known.join(', ')}.`);
  process.exit(1);
}

/** Puts what is new in its place among what is there. */
function keep(found: Partial<Study>): void {
  const there = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Study) : undefined;
  const study = { ...there, ...found };
  const rows = [...(found.rows ?? []), ...(there?.rows ?? [])];
  const inOrder = SHAPES.flatMap((shape) =>
    KINDS.flatMap(({ id }) => rows.find((row) => row.kind === id && row.shape === shape) ?? []),
  );
  writeFileSync(file, `${JSON.stringify({ ...study, rows: inOrder }, null, 2)}\n`);
}

if (isWanted('bands')) keep(studyBands());
for (const shape of SHAPES.filter((one) => isWanted(String(one ?? 'drawn'))))
  for (const kind of KINDS) {
    const start = performance.now();
    keep({ rows: [studyRow(kind, shape)] });
    const seconds = Math.round((performance.now() - start) / 1000);
    process.stderr.write(`${kind.id}, shape ${shape ?? 'drawn'}: ${seconds} s\n`);
  }

if (isWanted('necks')) {
  const rows: NeckRow[] = [];
  const after: Partial<Record<NeckKind['id'], NeckStudy['after'][NeckKind['id']]>> = {};
  for (const kind of NECK_KINDS) {
    const start = performance.now();
    after[kind.id] = neckWidths(kind);
    rows.push(neckRow(kind));
    process.stderr.write(`${kind.id}: ${Math.round((performance.now() - start) / 1000)} s\n`);
  }
  const path = join(root, 'test', 'study', 'neck-readings.json');
  writeFileSync(path, `${JSON.stringify({ rows, after }, null, 2)}\n`);
}

if (isWanted('jobs')) {
  const rows = RODS.map((rods): JobRow => {
    const start = performance.now();
    const row = jobRow(rods);
    process.stderr.write(`jobs, rods ${rods}: ${Math.round((performance.now() - start) / 1000)} s\n`);
    return row;
  });
  writeFileSync(join(root, 'test', 'study', 'jobs.json'), `${JSON.stringify({ rows }, null, 2)}\n`);
}
