/** The results that the test run leaves beside the page. */
import { z } from 'zod/mini';

export const ROW_KINDS = ['verification', 'validation', 'practice'] as const;
export type RowKind = (typeof ROW_KINDS)[number];

const comparison = z.object({
  label: z.string(),
  reference: z.string(),
  ours: z.string(),
  unit: z.string(),
  difference: z.string(),
  tolerance: z.string(),
  why: z.string(),
  verdict: z.string(),
});

const statement = z.object({ says: z.string(), seen: z.string(), verdict: z.string(), because: z.string() });

const row = z.object({
  id: z.string(),
  kind: z.enum(ROW_KINDS),
  subject: z.string(),
  quantity: z.string(),
  inputs: z.string(),
  source: z.string(),
  mark: z.string(),
  note: z.string(),
  printed: z.string(),
  comparisons: z.array(comparison),
  statements: z.array(statement),
});

const results = z.object({
  marks: z.record(z.string(), z.string()),
  subjects: z.array(z.string()),
  rows: z.array(row),
});

export type Comparison = z.infer<typeof comparison>;
export type Statement = z.infer<typeof statement>;
export type ProofRow = z.infer<typeof row>;
export type Results = z.infer<typeof results>;

/** @returns null when the text is not what a test run writes */
export function readResults(text: string): Results | null {
  try {
    const read = z.safeParse(results, JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

const GOOD = ['agrees', 'holds'];

export const isGood = ({ verdict }: Pick<Comparison, 'verdict'>): boolean => GOOD.includes(verdict);

export interface Tally {
  readonly good: number;
  readonly all: number;
  readonly rows: number;
}

export function tallyOf(rows: readonly ProofRow[]): Tally {
  const verdicts = rows.flatMap(({ comparisons, statements }) => [...comparisons, ...statements]);
  return { good: verdicts.filter(isGood).length, all: verdicts.length, rows: rows.length };
}

/** Rows with at least one verdict that is not good. */
export function disagreeing(rows: readonly ProofRow[]): ProofRow[] {
  return rows.filter(({ comparisons, statements }) => ![...comparisons, ...statements].every(isGood));
}

/** @throws {Error} when there are none to fetch */
export async function fetchResults(): Promise<string> {
  const response = await fetch('./validation.json');
  if (!response.ok) throw new Error(String(response.status));
  return response.text();
}
