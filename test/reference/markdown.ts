/** The validation page as Markdown. */
import { LIGHT_STRINGS, LIMITS } from './limits.ts';
import type { Study } from '../study/study.ts';
import { jobStudySection, readJobStudy } from '../study/jobs.ts';
import { neckStudySection, readNeckStudy } from '../study/neck-readings.ts';
import { studySection } from '../study/table.ts';
import type { ComparisonResult, RowResult, ValidationResults } from './results.ts';

const cell = (text: string) => text.replaceAll('|', '\\|');
const line = (cells: readonly string[]) => `| ${cells.map(cell).join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');

const withUnit = (value: string, unit: string) => (unit === '' || unit === '1' ? value : `${value} ${unit}`);

function comparisonTable(comparisons: readonly ComparisonResult[]): string {
  const labelled = comparisons.some((comparison) => comparison.label !== '');
  return table(
    [...(labelled ? ['what'] : []), 'reference', 'ours', 'difference', 'tolerance', 'verdict'],
    comparisons.map((c) => [
      ...(labelled ? [c.label] : []),
      withUnit(c.reference, c.unit),
      withUnit(c.ours, c.unit),
      c.difference,
      `${c.tolerance}: ${c.why}`,
      c.verdict === 'agrees' ? c.verdict : `**${c.verdict}**`,
    ]),
  );
}

function rowText(row: RowResult): string {
  const head = [
    `#### ${row.id}: ${row.quantity}`,
    `Inputs: ${row.inputs}. Source: ${row.source} [${row.mark}].`,
    ...(row.printed === '' ? [] : [`As it is said: ${row.printed}.`]),
    ...(row.note === '' ? [] : [row.note]),
  ];
  const body =
    row.kind === 'practice'
      ? row.statements
          .map(
            (s) =>
              `- ${s.verdict === 'holds' ? 'Holds' : '**Does not hold**'}: ${s.says}. Seen: ${s.seen}.${s.because === '' ? '' : ` Why not: ${s.because}.`}`,
          )
          .join('\n')
      : comparisonTable(row.comparisons);
  return [...head, body].join('\n\n');
}

/** Where the pages say it of a neck that it concerns. */
function wherePageSays(id: string): string {
  const limit = LIMITS.find((known) => known.id === id);
  if (!limit) return '';
  return limit.said
    ? ` The check \`${limit.said.code}\` says so on such a neck.`
    : limit === LIGHT_STRINGS
      ? ' Pages show the number beside what is assumed of it.'
      : ' No page shows the number that it is about.';
}

/** What does not come out as the source says. */
function disagreements(rows: readonly RowResult[]): string {
  const lines = rows.flatMap((row) => [
    ...row.comparisons
      .filter((c) => c.verdict === 'differs')
      .map((c) => `- ${row.id}${c.label === '' ? '' : `, ${c.label}`}: ${c.ours} beside ${c.reference}.`),
    ...row.statements.filter((s) => s.verdict === 'does not hold').map((s) => `- ${row.id}: ${s.says}.${wherePageSays(s.limit)}`),
  ]);
  return lines.length === 0 ? 'None.' : lines.join('\n');
}

export function validationPage(results: ValidationResults, study: Study): string {
  const { rows, subjects, marks } = results;
  const ofKind = (kind: RowResult['kind']) => rows.filter((row) => row.kind === kind);
  const verification = ofKind('verification');
  const validation = ofKind('validation');
  const practice = ofKind('practice');
  const comparisons = verification.flatMap((row) => row.comparisons);
  const statements = practice.flatMap((row) => row.statements);
  const sections = (kind: readonly RowResult[]) =>
    subjects.flatMap((subject) => {
      const here = kind.filter((row) => row.subject === subject);
      return here.length === 0 ? [] : [`### ${subject}`, ...here.map(rowText)];
    });
  return [
    '# How the library compares',
    'Made by the test run from the one table in `test/reference`; do not edit it. `npx vitest run test/reference -u` writes it anew, and the run fails while it is stale. [MODEL.md](MODEL.md) has the equations.',
    `- **Verification** (are the equations solved right?): ${comparisons.filter((c) => c.verdict === 'agrees').length} of ${comparisons.length} comparisons in ${verification.length} rows agree.\n- **Validation** (do they describe real necks?): ${
      validation.length === 0 ? 'no measured neck yet' : `${validation.length} rows`
    }.\n- **Practice** (does it look like what makers see?): ${statements.filter((s) => s.verdict === 'holds').length} of ${statements.length} statements in ${practice.length} rows hold.`,
    `The mark behind a source says where the reference comes from: ${Object.entries(marks)
      .map(([mark, means]) => `[${mark}] ${means}`)
      .join('; ')}.`,
    '## What does not come out as the source says',
    disagreements(rows),
    '## Verification',
    ...sections(verification),
    '## Validation',
    ...(validation.length === 0
      ? [
          'No measured necks yet. Nothing in the program was fitted to a neck, and nothing was tried on one. Rows of this kind wait for bows measured by a straightedge and a feeler gauge on necks whose wood was measured first.',
        ]
      : sections(validation)),
    '## Practice',
    'What makers see, said in words: the predicates make numbers of the words. No source; the invented presets.',
    ...practice.map(rowText),
    ...studySection(study),
    ...neckStudySection(readNeckStudy(), study.before),
    ...jobStudySection(readJobStudy()),
    '',
  ].join('\n\n');
}
