/** Words of the shell. */
import { words } from '../build/language.ts';

export const APP_WORDS = words('APP_WORDS', {
  skip: 'Go to the controls',
  loading: 'The controls are being prepared.',
});
