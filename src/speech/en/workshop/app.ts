/** Words of the shell. */
import { words } from '../../language.ts';

export const APP_WORDS = words('APP_WORDS', {
  skip: 'Go to the controls',
  loading: 'The controls are being prepared.',
  partMissing:
    'A part of the page could not be fetched. Your build is kept: load the page again when the network is back.',
  loadAgain: 'Load the page again',
});
