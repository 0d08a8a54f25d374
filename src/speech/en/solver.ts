/** Words of the state: what is said when something goes wrong behind the page. */
import { words } from '../language.ts';

export const SOLVER_WORDS = words('SOLVER_WORDS', {
  restarted: 'The calculation broke off and was started again. Your build is unchanged.',
  failed: (reason: string) =>
    `The calculation failed: ${reason}. The numbers shown belong to the last build that could be computed; change a value to try again.`,
});
