/**
 * Rules for printed pages that depend on what is printed. They are made by script, because the page allows no styles
 * written into its text. Source: CSS Paged Media Module Level 3 (page size, page-margin boxes).
 */
import { useLayoutEffect } from 'react';
import { PAPERS, type Paper } from '../../fretwork/plan/template.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';

/** A text as a CSS string (CSS Syntax Module Level 3, "consume a string token"): what would end it is escaped. */
export function cssString(text: string): string {
  const escaped = text.replace(/["\\\n\r\f]/g, (character) => `\\${character.codePointAt(0)!.toString(16)} `);
  return `"${escaped}"`;
}

/** Characters that fit beside the version at the head of a page. */
const MOST_CHARACTERS = 70;

function shortened(text: string): string {
  const characters = Array.from(text);
  return characters.length <= MOST_CHARACTERS ? text : `${characters.slice(0, MOST_CHARACTERS - 1).join('')}…`;
}

/** Head and foot of every page. Browsers without page-margin boxes print their own, with the title and the page number. */
export function sheetPageRules(left: string, right: string): string {
  const face = "font: 8pt 'Source Sans 3', sans-serif; color: #333;";
  const [page, of] = [cssString(`${PLAN_WORDS.page} `), cssString(` ${PLAN_WORDS.of} `)];
  return `@page {
  margin: 17mm 14mm 15mm;
  @top-left { content: ${cssString(shortened(left))}; ${face} }
  @top-right { content: ${cssString(right)}; ${face} }
  @bottom-right { content: ${page} counter(page) ${of} counter(pages); ${face} }
}`;
}

/** Full-size pages: the drawing brings its own margins. */
export function templatePageRules(paper: Paper): string {
  return `@page { size: ${PAPERS[paper].label} landscape; margin: 0; }`;
}

/** The rules hold for as long as the component is mounted. */
export function usePageRules(rules: string): void {
  useLayoutEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(rules);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [rules]);
}
