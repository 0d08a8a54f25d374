/** Backing up and restoring as a person does, in the library. */
import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { chooseFiles } from './choose-files.ts';

/** In English or German. */
export async function openBackup(page: Page): Promise<Locator> {
  await page.keyboard.press('i');
  const dialog = page.getByRole('dialog', { name: /^(Library|Sammlung)$/ });
  await dialog.getByText(/is being read|wird gelesen/).waitFor({ state: 'detached' });
  await dialog.getByText(/^(Backup|Sicherung) –/).click();
  return dialog;
}

export async function call(page: Page, text: string): Promise<void> {
  await page.getByLabel('Name of the build').fill(text);
  await page.keyboard.press('Enter');
}

/** Puts something into every part: a neck in the library, one on the bench, an entry of the log, settings. */
export async function furnish(page: Page): Promise<void> {
  await call(page, 'Kept neck');
  await page.keyboard.press('Control+Shift+s');
  await page.getByText('“Kept neck” is kept in the library.').waitFor();
  await call(page, 'Still on the bench');
  await page.keyboard.press('j');
  const log = page.getByRole('dialog', { name: 'Bench log' });
  await log.getByRole('button', { name: 'Enter it' }).waitFor();
  await log.getByLabel('Neck', { exact: true }).fill('Number 11');
  await log
    .getByRole('radiogroup', { name: /^Measured with frets in/ })
    .getByRole('radio', { name: 'hump' })
    .check();
  const size = log.getByRole('textbox', { name: /^Measured with frets in/ });
  await size.fill('0.25');
  await size.press('Enter');
  await log.getByText('Number 11 is in the log.').waitFor();
  await log.locator('header').getByRole('button', { name: 'Close' }).click();
  await page.evaluate(() => localStorage.setItem('backbow.workshop', 'The workshop at the mill'));
  await page.keyboard.press('u');
}

export async function save(page: Page, dialog: Locator): Promise<string> {
  const download = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Back up everything' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^backup-\d{4}-\d\d-\d\d\.backbow-backup\.json$/);
  return readFile(await file.path(), 'utf8');
}

/** @param file its text, or where it lies */
export function choose(page: Page, dialog: Locator, file: string | { path: string }, name = 'backup.json') {
  const button = dialog.getByRole('button', { name: /^(Restore from a backup|Sicherung einspielen) …$/ });
  return chooseFiles(
    page,
    () => button.click(),
    typeof file === 'string' ? { name, mimeType: 'application/json', buffer: Buffer.from(file) } : file.path,
  );
}
