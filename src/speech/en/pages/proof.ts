/** Words of the validation page. */
import { words } from '../../language.ts';

export const PROOF_WORDS = words('PROOF_WORDS', {
  title: 'Accuracy and proof',
  loading: 'The results are being fetched.',
  missing:
    'The results could not be fetched. They are made by the test run and belong to the page; a page that was copied may lack them.',
  unreadable: 'The results are in a form that this release cannot read.',
  again: 'Try again',
  intro:
    'Made by the test run from one table of published values, handbooks, three-dimensional solid models and what makers say. Nothing here was adjusted to agree.',
  kinds: {
    verification: 'Verification: are the equations solved right?',
    validation: 'Validation: do they describe real necks?',
    practice: 'Practice: does it look like what makers see?',
  },
  sums: {
    verification: (good: number, all: number, rows: number) => `${good} of ${all} comparisons in ${rows} rows agree.`,
    validation: (good: number, all: number, rows: number) => `${good} of ${all} comparisons in ${rows} necks agree.`,
    practice: (good: number, all: number, rows: number) => `${good} of ${all} statements in ${rows} rows hold.`,
  },
  noNecks:
    'None yet: no measured neck stands behind the numbers. That the equations are solved right does not say that they are the right equations; your bench log is where that is found out.',
  disagreements: 'What does not come out as the source says',
  noDisagreements: 'Everything comes out as the sources say, within the tolerances.',
  columns: {
    reference: 'reference',
    ours: 'ours',
    difference: 'difference',
    tolerance: 'tolerance',
    verdict: 'verdict',
  },
  statementColumns: { says: 'statement', seen: 'what comes out', verdict: 'verdict' },
  part: 'part',
  inputs: (inputs: string) => `For: ${inputs}.`,
  source: (source: string, mark: string) => `Source: ${source} [${mark}].`,
  printed: (printed: string) => `Printed: ${printed}.`,
  because: (reason: string) => `Because: ${reason}.`,
  subjectSum: (good: number, all: number) => `${good} of ${all}`,
  marks: 'The marks behind the sources',
  simplified: 'What is simplified, and what it costs',
  assumed: 'What is assumed, and how to replace it',
  toSimplified: 'What is simplified in the model, and what that costs',
  noModel: 'The note on the model could not be fetched.',
});

/** Where a number comes from. */
export const ORIGIN_WORDS = words('ORIGIN_WORDS', {
  title: 'Where a number comes from',
  number: 'Number',
  equations: (section: string) => `The model, ${section}`,
  proof: 'How well it agrees with what is known',
});
