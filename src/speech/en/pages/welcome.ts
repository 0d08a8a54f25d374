/** Words of the first visit. */
import { words } from '../../language.ts';

export const WELCOME_WORDS = words('WELCOME_WORDS', {
  title: 'Welcome',
  neck: 'A neck like yours',
  three: 'Three things decide most',
  wire: 'Your wire, over its studs',
  saw: 'Your saw, the kerf it leaves',
  seating: 'How they go in',
  read: 'The answer stands above the picture, at once. Everything else has a usual value, and can be set below or beside this.',
  lesson: 'Begin with a lesson',
  glossary: 'Words of the trade',
  close: 'Close',
});
