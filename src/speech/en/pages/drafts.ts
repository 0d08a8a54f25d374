/** What is said of keeping the neck on the bench. */
import { words } from '../../language.ts';

export const DRAFT_WORDS = words('DRAFT_WORDS', {
  restored: (name: string, when: string) =>
    `“${name}” is back on the bench as you left it (${when}). Undo starts afresh.`,
  stepRestore: 'Restored work',
  mayBeLeft:
    'Another window may have closed without saving its last neck properly. Look in the library, under “Left on the bench”.',
  crowded: (count: number) =>
    `Many necks were left on the bench. As more come, the ${count} oldest will go. Keep the ones you want in the library:`,
  full: 'There is no room left on this device to keep the neck on the bench. Save it as a file, and delete what you no longer need.',
  refused:
    'This browser keeps nothing for this page: a private window, or storage is blocked. When the page is closed the neck is gone; save it as a file.',
  silent:
    'The browser’s storage does not answer. Close other windows of this program and load the page again; until then save the neck as a file.',
});
