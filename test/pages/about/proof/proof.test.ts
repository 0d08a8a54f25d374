/** The results of the test run as the page reads them, and the parts of the note on the model. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { QUANTITY_MEANINGS } from '../../../../src/verdict/quantity-meanings.ts';
import { noteSection } from '../../../../src/pages/about/proof/model-note.ts';
import { disagreeing, isGood, readResults, tallyOf } from '../../../../src/pages/about/proof/results.ts';
import { root } from '../../../tools/project.mjs';

const file = (path: string) => readFileSync(join(root, path), 'utf8');

describe('results', () => {
  test('of the last test run are read whole', () => {
    const results = readResults(file('public/validation.json'))!;
    expect(results.rows.length).toBeGreaterThan(40);
    for (const { subject, mark } of results.rows) {
      expect(results.subjects).toContain(subject);
      expect(Object.keys(results.marks)).toContain(mark);
    }
    const { good, all } = tallyOf(results.rows);
    const bad = disagreeing(results.rows).flatMap(({ comparisons, statements }) =>
      [...comparisons, ...statements].filter((one) => !isGood(one)),
    );
    expect(good + bad.length).toBe(all);
  });

  test('that are something else are not taken', () => {
    expect(readResults('<!doctype html>')).toBeNull();
    expect(readResults('{"rows": 7}')).toBeNull();
    expect(readResults('null')).toBeNull();
  });

  test('what does not agree is never counted as good', () => {
    expect([isGood({ verdict: 'agrees' }), isGood({ verdict: 'holds' })]).toEqual([true, true]);
    expect([isGood({ verdict: 'does not agree' }), isGood({ verdict: 'does not hold' })]).toEqual([false, false]);
  });
});

describe('the note on the model', () => {
  test('has a table of what is simplified and one of what is assumed', () => {
    const note = file('src/mechanics/MODEL.md');
    for (const heading of ['What is simplified', 'What is assumed']) {
      const tables = noteSection(note, heading).filter((block) => block.kind === 'table');
      expect(tables).toHaveLength(1);
      const [table] = tables;
      expect(table.rows.length).toBeGreaterThan(5);
      for (const row of table.rows) expect(row).toHaveLength(table.head.length);
    }
  });

  test('is read as far as the next heading, without marks', () => {
    const note =
      '# T\n\n## 1. One\n\nA **bold** `word`,\nand [a link](x.md).\n\n| A | B |\n| - | - |\n| 1 | 2 |\n\n## 2. Two\n\nx\n';
    expect(noteSection(note, 'One')).toEqual([
      { kind: 'text', text: 'A bold word, and a link.' },
      { kind: 'table', head: ['A', 'B'], rows: [['1', '2']] },
    ]);
    expect(noteSection(note, 'Three')).toEqual([]);
  });

  test('keeps equations as they stand, and each point of a list by itself', () => {
    const note = '## 3. Three\n\n    a   = b\n      c = d\n\n- one\n- two\n  goes on\n';
    expect(noteSection(note, 'Three')).toEqual([
      { kind: 'equations', text: 'a   = b\n  c = d' },
      { kind: 'text', text: '- one' },
      { kind: 'text', text: '- two goes on' },
    ]);
  });

  test('has a section with something in it for every number that says it is derived there', () => {
    const note = file('src/mechanics/MODEL.md');
    const derived = Object.values(QUANTITY_MEANINGS).flatMap(({ model }) => model ?? []);
    expect(derived.length).toBeGreaterThan(40);
    for (const model of derived) expect([model, noteSection(note, model).length > 0]).toEqual([model, true]);
  });
});
