/** Finding words of the glossary, by the word, its other names, or what it means. */
import { TERMS, type Term } from './terms.ts';
import { TERM_WORDS, type TermId } from '../../../speech/en/pages/glossary.ts';

/** Words that begin with the text come first. */
export function findTerms(text: string): readonly Term[] {
  const wanted = text.trim().toLowerCase();
  if (wanted === '') return TERMS;
  const rank = (id: TermId): number => {
    const { word, also = '', means } = TERM_WORDS[id];
    if (word.toLowerCase().startsWith(wanted)) return 0;
    if (`${word} ${also}`.toLowerCase().includes(wanted)) return 1;
    return means.toLowerCase().includes(wanted) ? 2 : 3;
  };
  return TERMS.filter(({ id }) => rank(id) < 3).toSorted((a, b) => rank(a.id) - rank(b.id));
}
