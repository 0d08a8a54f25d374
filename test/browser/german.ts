/** The page in German: waiting for its words, and finding the English ones that are left. */
import { expect } from 'vitest';
import { METALS } from '../../src/neck/metals.ts';
import { GERMAN } from '../../src/speech/de/index.ts';
import { onlyEnglishWords, wordsIn } from '../tools/vocabulary.ts';
import { DESK, type App, type OpenOptions } from './harness.ts';

export const IN_GERMAN: OpenOptions = { ...DESK, context: { locale: 'de-DE' } };

const english = onlyEnglishWords('de');

/** What is said to people on the page in its own language: texts in sight, and what screen readers are told. */
function said({ page }: App): Promise<string[]> {
  return page.evaluate(() => {
    const spoken = document.documentElement.lang;
    const isOurs = (element: Element) => element.closest('[lang]')?.getAttribute('lang') === spoken;
    const texts: string[] = [document.title];
    for (const element of document.querySelectorAll('body *')) {
      if (!isOurs(element) || element.matches('script, style, noscript')) continue;
      const isInSight = element.checkVisibility() || element.matches('option');
      if (!isInSight) continue;
      for (const name of ['aria-label', 'aria-valuetext', 'title', 'alt', 'placeholder'])
        texts.push(element.getAttribute(name) ?? '');
      for (const node of element.childNodes) if (node.nodeType === Node.TEXT_NODE) texts.push(node.textContent ?? '');
    }
    return texts.filter((text) => text.trim() !== '');
  });
}

/** What a publication is called stays as it is in every language. */
function withoutTitles(text: string): string {
  return METALS.reduce((rest, { source }) => (source === '' ? rest : rest.replaceAll(source, '')), text);
}

/** Texts with words that only English has. */
export async function englishLeft(app: App): Promise<string[]> {
  const texts = await said(app);
  expect(texts.length).toBeGreaterThan(10);
  return texts.flatMap((text) => {
    const words = wordsIn(withoutTitles(text)).filter((word) => english.has(word));
    return words.length > 0 ? [`${text.trim()} [${words.join(' ')}]`] : [];
  });
}

export async function openGroups({ page }: App): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
}

export const bandsAreThere = ({ page }: App) =>
  page.waitForFunction(() => !document.querySelector('.figures')?.textContent?.includes('…'));

/** What says that something is still to come. */
const WAITING: readonly string[] = [
  GERMAN.COMPARE_WORDS.drawing,
  GERMAN.COMPARE_WORDS.waiting,
  GERMAN.LICENCE_WORDS.loading,
  GERMAN.PROOF_WORDS.loading,
  GERMAN.SHEETS_WORDS.loading,
  GERMAN.SHEETS_WORDS.working,
  GERMAN.WANTED_WORDS.working,
];

export const answersAreThere = ({ page }: App) =>
  page.waitForFunction((waiting) => !waiting.some((text) => document.body.innerText.includes(text)), WAITING, {
    timeout: 60_000,
  });
