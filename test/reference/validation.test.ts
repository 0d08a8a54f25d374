import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import prettier from 'prettier';
import { describe, expect, it } from 'vitest';
import { LIMITS } from './limits.ts';
import { readStudy } from '../study/table.ts';
import { validationPage } from './markdown.ts';
import { resultsOf, type ValidationResults } from './results.ts';
import { CHECK_IDS } from './row.ts';
import { ROWS } from './table.ts';

const results = resultsOf(ROWS);

describe('the table of reference values', () => {
  it('holds every row of checks.csv, and each id once', () => {
    const ids = ROWS.map((row) => row.id);
    expect(CHECK_IDS.length).toBeGreaterThan(20);
    expect(CHECK_IDS.filter((id) => !ids.includes(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has every kind of row but measured necks, and no row without a comparison', () => {
    expect(ROWS.filter((row) => row.kind === 'verification').length).toBeGreaterThan(20);
    expect(ROWS.filter((row) => row.kind === 'practice').map((row) => row.id)).toEqual(
      expect.arrayContaining(['one-fret', 'full-set', 'strings-flatten', 'glue-only', 'stiff-neck']),
    );
    const empty = results.rows.filter((row) => row.comparisons.length + row.statements.length === 0);
    expect(empty.map((row) => row.id)).toEqual([]);
  });

  const comparisons = results.rows.flatMap((row) =>
    row.comparisons.map((c) => [row.id, c.label || row.quantity, `${c.ours} beside ${c.reference}`, c.verdict] as const),
  );
  it.each(comparisons)('%s, %s: %s', (_id, _label, _numbers, verdict) => {
    expect(verdict).toBe('agrees');
  });

  // A statement that does not hold must say why, and one that holds has nothing to explain.
  const statements = results.rows.flatMap((row) =>
    row.statements.map((s) => [row.id, s.says, s.seen, s.verdict, s.because === '' ? 'holds' : 'does not hold'] as const),
  );
  it('each statement that does not hold is a known limit on the list, each limit such a statement of its row, and no more', () => {
    const off = results.rows.flatMap((row) =>
      row.statements.filter((s) => s.verdict === 'does not hold').map((s) => `${row.id}: ${s.limit}`),
    );
    expect(off.toSorted()).toEqual(LIMITS.map(({ id, row }) => `${row}: ${id}`).toSorted());
  });

  it.each(statements)('%s, %s: %s', (_id, _says, _seen, verdict, expected) => {
    expect(verdict).toBe(expected);
  });
});

/** As `npm run format` leaves it. */
async function formatted(path: string, text: string): Promise<string> {
  const filepath = fileURLToPath(new URL(path, import.meta.url));
  return prettier.format(text, { ...(await prettier.resolveConfig(filepath)), filepath });
}

const PAGE = '../../src/mechanics/VALIDATION.md';

/** Is the page being written anew (`vitest -u`)? */
function updating(): boolean {
  const { snapshotState } = expect.getState() as unknown as { snapshotState?: { _updateSnapshot?: string } };
  return snapshotState?._updateSnapshot === 'all';
}

/**
 * What the page must show. A solid finite-element case that was only just dropped into its folder is tested at once, and
 * comes onto the page when it is next written.
 */
function shown(): ValidationResults {
  if (updating()) return results;
  const page = readFileSync(new URL(PAGE, import.meta.url), 'utf8');
  return { ...results, rows: results.rows.filter((row) => row.subject !== 'Solid finite elements' || page.includes(`#### ${row.id}:`)) };
}

describe('the validation page', () => {
  it('is what the table says: src/mechanics/VALIDATION.md', async () => {
    await expect(await formatted(PAGE, validationPage(shown(), readStudy()))).toMatchFileSnapshot(PAGE);
  });

  it('is what the table says: public/validation.json', async () => {
    const path = '../../public/validation.json';
    await expect(await formatted(path, JSON.stringify(shown()))).toMatchFileSnapshot(path);
  });
});
