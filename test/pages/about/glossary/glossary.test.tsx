// @vitest-environment happy-dom
/** Every term has its words and its drawing, and can be found. */
import { render } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { findTerms } from '../../../../src/pages/about/glossary/find-terms.ts';
import { TermDrawing } from '../../../../src/pages/about/glossary/term-drawing.tsx';
import { TERMS } from '../../../../src/pages/about/glossary/terms.ts';
import { TERM_WORDS } from '../../../../src/speech/en/pages/glossary.ts';

test('terms and words are the same set, and each is said once', () => {
  expect(TERMS.map(({ id }) => id).toSorted()).toEqual(Object.keys(TERM_WORDS).toSorted());
  const said = Object.values(TERM_WORDS).map(({ word }) => word);
  expect(new Set(said).size).toBe(said.length);
});

describe('drawings', () => {
  const drawn = TERMS.map(
    ({ id, drawing }) => [id, render(<TermDrawing drawing={drawing} />).container.innerHTML] as const,
  );

  test.each(drawn)('of “%s” mark something, with numbers and nothing else', (_id, html) => {
    expect(html).toMatch(/marked|dimension/);
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('differ from one another', () => {
    expect(new Set(drawn.map(([, html]) => html)).size).toBe(TERMS.length);
  });
});

describe('finding', () => {
  test('begins with words that begin so, then other names, then meanings', () => {
    expect(findTerms('ker')[0]?.id).toBe('kerf');
    expect(findTerms('barbs').map(({ id }) => id)).toEqual(['studs']);
    expect(findTerms('TRUSS')[0]?.id).toBe('rod');
    expect(findTerms('end grain').map(({ id }) => id)).toContain('slot');
  });

  test('nothing shows everything, and nonsense nothing', () => {
    expect(findTerms('  ')).toEqual(TERMS);
    expect(findTerms('zzz')).toEqual([]);
  });
});
