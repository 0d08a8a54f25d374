/** Words of the choice of a language. */
import { words } from '../../language.ts';

export const LANGUAGE_WORDS = words('LANGUAGE_WORDS', {
  language: 'Language',
  system: 'as the system',
  notKept: 'This device does not keep the choice; it holds until the page is closed.',
});
