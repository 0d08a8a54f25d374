/** Words about working without a network, and about new versions. */
import { words } from '../../language.ts';

export const OFFLINE_WORDS = words('OFFLINE_WORDS', {
  title: 'New version',
  waiting: 'A new version of Backbow is ready. The page stays as it is until you load it again; your build is kept.',
  inUse: 'Another window has gone over to a new version of Backbow. This one still shows the version before.',
  load: 'Load the new version',
  later: 'Later',
  kept: {
    'not-here': 'This browser keeps nothing of the page: it needs the network at every visit.',
    preparing: 'The page is being kept in this browser, for use without a network.',
    ready: 'The page is kept in this browser and works without a network.',
    failed: 'The page could not be kept in this browser: it needs the network at the next visit.',
  },
});
