/** What is said of keeping the neck on the bench. */
import { words } from '../language.ts';

export const DRAFT_WORDS = words('DRAFT_WORDS', {
  restored: (name: string, when: string) =>
    `“${name}” is back on the bench as you left it (${when}). Undo starts afresh.`,
  stepRestore: 'Restored work',
  full: 'There is no room left on this device to keep the neck on the bench. Save it as a file, and delete what you no longer need.',
  refused:
    'This browser keeps nothing for this page: a private window, or storage is blocked. When the page is closed the neck is gone; save it as a file.',
});
