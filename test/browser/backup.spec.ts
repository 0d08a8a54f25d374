/** One file takes everything on a device, and brings it back on another; a file that is not whole changes nothing. */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { choose, furnish, openBackup, save } from './back-up.ts';
import { chooseFiles } from './choose-files.ts';
import { withBrowser, type App } from './harness.ts';
import { IS_LONG } from '../draw.ts';

const openApp = withBrowser();

const PHONE = { viewport: { width: 390, height: 844 }, touch: true } as const;

/** A device with something in every part. */
async function furnished(): Promise<App> {
  const app = await openApp({ viewport: { width: 1440, height: 900 } });
  await furnish(app.page);
  return app;
}

/** Every text and every record that the page keeps. */
const everythingKept = (page: Page) =>
  page.evaluate(async () => {
    const rows: Record<string, unknown> = {};
    for (const { name } of await indexedDB.databases()) {
      const open = indexedDB.open(name!);
      const database = await new Promise<IDBDatabase>((resolve) => {
        open.onsuccess = () => resolve(open.result);
      });
      for (const table of database.objectStoreNames) {
        const all = database.transaction(table).objectStore(table).getAll();
        rows[`${name}/${table}`] = await new Promise((resolve) => {
          all.onsuccess = () => resolve(all.result);
        });
      }
      database.close();
    }
    return { rows, texts: Object.fromEntries(Object.entries(localStorage)) as Record<string, string> };
  });

describe('the backup', () => {
  test('brings everything to another device: shown first, restored, undone, restored again', async () => {
    const first = await furnished();
    const dialog = await openBackup(first.page);
    await dialog.getByText(/browser has (not )?promised to keep it/).waitFor();
    const text = await save(first.page, dialog);
    await dialog
      .getByText(/The backup is saved as a file\. It holds one neck of the library, one neck of the bench/)
      .waitFor();
    await dialog.getByText('Backup – last made').waitFor();
    await first.screenshot('backup/wide');
    const before = await everythingKept(first.page);
    // Restoring what is here already changes nothing.
    await choose(first.page, dialog, text);
    await dialog.getByText('All of it is here already.').waitFor();
    expect(await dialog.getByRole('button', { name: 'Restore', exact: true }).count()).toBe(0);

    const second = await openApp(PHONE);
    const there = await openBackup(second.page);
    await choose(second.page, there, text);
    const box = there.getByRole('group', { name: /“backup\.json”: a backup, made/ });
    await box.getByText('Bench log').waitFor();
    await second.screenshot('backup/phone-found');
    expect(await second.page.locator('.neck-card').count()).toBe(0);
    await box.getByRole('button', { name: 'Restore', exact: true }).click();
    await there.getByText('The backup is restored.').waitFor();
    await second.page.locator('.neck-card', { hasText: 'Kept neck' }).waitFor();
    await second.screenshot('backup/phone-restored');
    const after = await everythingKept(second.page);
    expect(after.rows['backbow-library/necks']).toEqual(before.rows['backbow-library/necks']);
    expect(after.rows['backbow-bench-log/log']).toEqual(before.rows['backbow-bench-log/log']);
    expect(after.texts['backbow.workshop']).toBe('The workshop at the mill');
    expect(after.texts['backbow.preferences']).toBe(before.texts['backbow.preferences']);

    await there.getByRole('button', { name: 'Undo' }).click();
    await there.getByText('What was restored is taken out again.').waitFor();
    expect(await second.page.locator('.neck-card').count()).toBe(0);
    await choose(second.page, there, text);
    await there.getByRole('button', { name: 'Restore', exact: true }).click();
    await second.page.locator('.neck-card', { hasText: 'Kept neck' }).waitFor();
    // At once, and after a reload.
    await there.getByText(/^Left on the bench \(/).waitFor();
    await second.page.reload();
    await second.page.waitForFunction(() => (window.backbow?.predictionVersion ?? 0) > 0);
    await second.page.keyboard.press('i');
    const again = second.page.getByRole('dialog', { name: 'Library' });
    await again.getByText(/^Left on the bench/).click();
    await again.getByText('Still on the bench').waitFor();
    expect([...first.troubles, ...second.troubles]).toEqual([]);
  });

  test('refuses a file that is damaged, cut short, of a newer release or none of its own; nothing changes', async () => {
    const app = await furnished();
    const dialog = await openBackup(app.page);
    const text = await save(app.page, dialog);
    await dialog.getByText('The backup is saved as a file.').waitFor();
    const before = await everythingKept(app.page);
    const bad: [string, RegExp][] = [
      [text.replace('Kept neck', 'Kept nick'), /It is damaged: what it holds is not what was written/],
      [text.slice(0, -40), /it is cut short/],
      [text.replace('"version":1', '"version":2'), /newer release/],
      ['{"format":"backbow project"}', /It is no backup of this program/],
      ['['.repeat(100_000), /nested too deep/],
    ];
    for (const [damaged, why] of bad) {
      await choose(app.page, dialog, damaged, 'old.json');
      const told = dialog.getByRole('alert').filter({ hasText: why });
      await told.waitFor();
      expect(await told.innerText()).toContain('“old.json” was not restored; nothing has changed.');
    }
    await app.screenshot('backup/refused');
    expect(await everythingKept(app.page)).toEqual(before);
    expect(app.troubles).toEqual([]);
  });

  // On a German phone in every run (backup-hard.spec.ts).
  test.runIf(IS_LONG)('speaks German, and brings its language along', async () => {
    const first = await furnished();
    await first.page.getByRole('button', { name: 'Menu', exact: true }).click();
    await first.page.getByRole('combobox', { name: 'Language' }).selectOption('de');
    await first.page.keyboard.press('Escape');
    await first.page.keyboard.press('i');
    const here = first.page.getByRole('dialog', { name: 'Sammlung' });
    await here.getByText(/^Sicherung –/).click();
    const download = first.page.waitForEvent('download');
    await here.getByRole('button', { name: 'Alles sichern' }).click();
    const text = await readFile(await (await download).path(), 'utf8');
    const second = await openApp({ ...PHONE, colourScheme: 'dark' });
    const dialog = await openBackup(second.page);
    await choose(second.page, dialog, text);
    await dialog.getByRole('button', { name: 'Restore', exact: true }).press('Enter');
    const there = second.page.getByRole('dialog', { name: 'Sammlung' });
    await there.getByText('Die Sicherung ist eingespielt.').waitFor();
    // The focus is on what came of it, not lost with the button.
    expect(await second.page.evaluate(() => document.activeElement?.className)).toBe('said');
    await second.screenshot('backup/phone-german');
    expect([...first.troubles, ...second.troubles]).toEqual([]);
  });

  test('a backup opened like a project file is shown where it is restored', async () => {
    const first = await furnished();
    const text = await save(first.page, await openBackup(first.page));
    const second = await openApp();
    await chooseFiles(second.page, () => second.page.keyboard.press('Control+o'), {
      name: 'backup.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    const dialog = second.page.getByRole('dialog', { name: 'Library' });
    await dialog.getByRole('button', { name: 'Restore', exact: true }).waitFor();
    expect(second.troubles).toEqual([]);
  });
});
