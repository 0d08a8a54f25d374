/** Choosing files as a person does, in the browser's own window. */
import type { FileChooser, Page } from 'playwright-core';

/**
 * Does what opens the browser's window for files, and chooses some in it.
 *
 * @param action - such as pressing a key; the browser takes it for a person's, without which it opens no such window
 */
export async function chooseFiles(
  page: Page,
  action: () => Promise<unknown>,
  files: Parameters<FileChooser['setFiles']>[0],
): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  // One question and answer: after it the browser has heard that it is not to open the window itself.
  await page.evaluate(() => undefined);
  await action();
  await (await chooser).setFiles(files);
}
