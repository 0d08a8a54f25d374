/**
 * What a customer sees first: the letter itself, from its link alone, while the page is still on its way. It also sends for the
 * worker. What cannot be read here is left to the page, which says why.
 */
import { decode } from '../state/share/v1/decode.ts';
import { checkPage } from '../state/share/page-text.ts';
import { startEarly } from '../state/new-worker.ts';
import { CHOICES_WORKER } from '../state/share/shared.ts';
import { CUSTOMER_WORDS } from '../speech/en/pages/customer.ts';
import type { Language } from '../speech/language.ts';
import '../pages/customer/customer.css';

async function wordsOf(language: Language): Promise<typeof CUSTOMER_WORDS> {
  return language === 'de' ? (await import('../speech/de/pages/customer.ts')).CUSTOMER_WORDS : CUSTOMER_WORDS;
}

function element(name: string, text: string, className = ''): HTMLElement {
  const made = document.createElement(name);
  made.className = className;
  made.textContent = text;
  return made;
}

/** @param root is empty, and is filled anew by the page */
export async function showFirst(root: HTMLElement, link: string, language: Language): Promise<void> {
  startEarly(CHOICES_WORKER);
  const words = await wordsOf(language);
  const [, body] = /^1\.([\w-]*)$/.exec(link) ?? [];
  const read = body === undefined ? null : decode(body);
  const page = read && checkPage(read.page, read.builds.length);
  if (!page) return;
  const header = document.createElement('header');
  if (page.from !== '') header.append(element('p', page.from, 'from'));
  header.append(element('h1', read.builds.length > 1 ? words.titleMany : words.titleOne));
  if (page.to !== '') header.append(element('p', words.forWhom(page.to), 'to'));
  if (page.note !== '') {
    const note = element('section', '', 'note');
    note.append(element('h2', words.noteTitle), element('p', page.note, 'own-text'));
    header.append(note);
  }
  header.append(element('p', words.intro, 'intro'));
  const main = element('main', '', 'customer');
  main.append(header, element('p', words.computing));
  root.replaceChildren(main);
}
