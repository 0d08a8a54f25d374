/** The study of try strips as a section of the validation page. */
import { readFileSync } from 'node:fs';
import { coverageOf, SHAPES, workshopsOf, type Shape, type Study } from './study.ts';
import { KINDS, OUTCOMES, type Outcome } from './workshops.ts';

export function readStudy(): Study {
  return JSON.parse(readFileSync(new URL('strips.json', import.meta.url), 'utf8')) as Study;
}

const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');

const NAMES: Readonly<Record<Outcome, string>> = {
  fretted: 'fretted',
  strung: 'strung',
  settled: 'settled',
  force: 'force',
};

const shapeText = (shape: Shape) => (shape === null ? 'as drawn, 1 ± 0.5' : `${shape}`);

function coverageTable({ rows }: Study): string {
  const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
  const lines = SHAPES.flatMap((shape) =>
    KINDS.flatMap(({ id, says }) => {
      const row = rows.find((one) => one.kind === id && one.shape === shape);
      if (!row) return [];
      return [
        [
          says,
          shapeText(shape),
          `${workshopsOf(shape)}`,
          ...OUTCOMES.map((outcome) => percent(coverageOf(row, outcome))),
        ],
      ];
    }),
  );
  return table(
    ['measured with', 'shape of the studs in truth', 'workshops', ...OUTCOMES.map((outcome) => NAMES[outcome])],
    lines,
  );
}

function widthTable({ before, after, floor }: Study): string {
  const shown = (outcome: Outcome, width: number) => (outcome === 'force' ? `${width} N` : `${width} mm`);
  const row = (says: string, widths: Readonly<Record<Outcome, number>>) => [
    says,
    ...OUTCOMES.map((outcome) => shown(outcome, widths[outcome])),
  ];
  return table(
    ['measured', ...OUTCOMES.map((outcome) => NAMES[outcome])],
    [
      row('nothing', before),
      ...KINDS.map(({ id, says }) => row(says, after[id])),
      row('all that a strip can see, exactly', floor),
    ],
  );
}

/** Made by `npm run study`; the page shows what it found. */
export function studySection(study: Study): string[] {
  return [
    '## Try strips: how often the bands hold',
    'Made by `npm run study` (`test/study`), seeded. Synthetic workshops, each with a truth drawn from the spreads of the inputs, a strip of 300 × 60 × 6 mm with twelve frets from the board of its neck (the first preset, press fit), readings with the errors that are assumed, and a strip that differs by 3 % (one standard deviation) from the library’s. The neck of the truth lies in the 90 % band that the readings leave in so many of them:',
    coverageTable(study),
    'Of 500 workshops with a true 90 %, between 87 and 93 % lie inside 95 times in 100; of 200 between 86 and 94 %. A shape of 0 or 2 is two standard deviations from what a neck’s band assumes; where a strip is heard, its shape is let in as one, and the bands hold of blocks and points too. A lens on a stud narrows them further.',
    'Width of the 90 % bands of the first preset when everything is read as stated:',
    widthTable(study),
  ];
}
