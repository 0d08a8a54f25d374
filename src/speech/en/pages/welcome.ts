/** Words of the first visit. */
import { words } from '../../language.ts';

export const WELCOME_WORDS = words('WELCOME_WORDS', {
  title: 'Welcome',
  says: [
    'This is one neck with its frets in. Choose one like yours under “Start from”, set its sizes, and see at once what the frets do to it.',
    'The bow in the picture is drawn larger than life; the large numbers are the true ones, and the small ones say how sure they are.',
  ],
  lesson: 'Begin with a lesson',
  glossary: 'Words of the trade',
  close: 'Close',
});
