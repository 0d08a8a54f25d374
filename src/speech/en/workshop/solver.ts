/** Words of the state: what is said when something goes wrong behind the page. */
import { words } from '../../language.ts';

export const SOLVER_WORDS = words('SOLVER_WORDS', {
  restarted: 'The calculation broke off and was started again. Your build is unchanged.',
  failed: (reason: string) =>
    `This neck could not be computed: ${reason}. Your build is as you left it; change a value to try again.`,
  bandsFailed: (reason: string) =>
    `How sure the numbers are could not be computed: ${reason}. The numbers hold; change a value to try again.`,
  stressFailed: (reason: string) => `The stress in the wood could not be computed: ${reason}.`,
  /** In the place of a number. */
  notComputed: 'not computed',
  noBand: 'band not computed',
  /** Where a list, a chart or a sheet would be. */
  notComputedWhy: (reason: string) => `Not computed: ${reason}.`,
  notChecked: (reason: string) => `Not checked, because the neck could not be computed: ${reason}.`,
});
