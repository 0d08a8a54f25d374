/** Words of the choice of a language. */
import { words } from '../language.ts';

export const LANGUAGE_WORDS = words('LANGUAGE_WORDS', {
  language: 'Language',
  system: 'as the system',
  afresh: 'The page starts afresh; your build is kept, the steps for Undo are not.',
  notKept: 'This device does not keep the choice, so the language stays.',
});
