/** Backing up and restoring where the browser gives little: plain HTTP, windows that keep nothing, no worker, huge files. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { fileWork, makeBackup } from '../../src/state/backup/backup-file.ts';
import { kit, neck } from '../state/backup/device.ts';
import { call, choose, furnish, openBackup, save } from './back-up.ts';
import { DESK, withBrowser, type App, type OpenOptions } from './harness.ts';
import { OTHER_MACHINE } from './open-page.ts';
import { ownServer, type OwnServer } from './own-server.ts';
import { IS_LONG, draw } from '../draw.ts';

const openApp = withBrowser();
const servers: OwnServer[] = [];

afterEach(async () => {
  await Promise.all(servers.splice(0).map((server) => server.end()));
});

/** The address under which another device of the workshop opens the page: plain HTTP. */
async function plainAddress(): Promise<string> {
  const server = await ownServer();
  servers.push(server);
  const address = new URL(server.address);
  address.hostname = OTHER_MACHINE;
  return address.href;
}

/** A phone that speaks German, in the dark. */
const GERMAN_PHONE = {
  viewport: { width: 390, height: 844 },
  touch: true,
  colourScheme: 'dark',
  context: { locale: 'de-DE' },
} as const satisfies OpenOptions;

const refusing = (refuse: () => void): Pick<OpenOptions, 'prepare'> => ({
  prepare: async (page) => void (await page.addInitScript(refuse)),
});

/** Nothing of the dialog reaches out of the window. */
async function expectWithin({ page }: App): Promise<void> {
  const over = await page.evaluate(() =>
    [...document.querySelectorAll('dialog[open], [role="dialog"]')].flatMap((dialog) =>
      [...dialog.querySelectorAll('*')]
        .filter((each) => each.getBoundingClientRect().right > innerWidth + 1)
        .map((each) => each.outerHTML.slice(0, 80)),
    ),
  );
  expect(over).toEqual([]);
}

const lastSaid = (page: Page) => page.locator('.backup .said').innerText();

describe('on plain HTTP, by the address of another machine', () => {
  test('a backup is made, restored elsewhere, and what the browser cannot promise is said', async () => {
    const address = await plainAddress();
    const app = await openApp({ ...DESK, address });
    expect(await app.page.evaluate(() => [isSecureContext, 'locks' in navigator, 'subtle' in crypto])).toEqual([
      false,
      false,
      false,
    ]);
    await furnish(app.page);
    const dialog = await openBackup(app.page);
    await dialog.getByText(/an address without https/).waitFor();
    const text = await save(app.page, dialog);
    await dialog.getByText('The backup is saved as a file.').waitFor();
    await app.screenshot('backup/plain-http');

    const phone = await openApp({ ...GERMAN_PHONE, address });
    const { page } = phone;
    const there = await openBackup(page);
    await expectWithin(phone);
    await phone.screenshot('backup/plain-http-german-phone');
    await choose(page, there, text);
    await there.getByRole('button', { name: 'Einspielen', exact: true }).waitFor();
    await expectWithin(phone);
    await phone.screenshot('backup/plain-http-german-phone-found');
    await there.getByRole('button', { name: 'Einspielen', exact: true }).click();
    await there.getByText('Die Sicherung ist eingespielt.').waitFor();
    await expectWithin(phone);
    await phone.screenshot('backup/plain-http-german-phone-restored');
    await page.reload();
    await page.waitForFunction(() => (window.backbow?.predictionVersion ?? 0) > 0);
    await page.keyboard.press('i');
    await page.locator('.neck-card', { hasText: 'Kept neck' }).waitFor();
    // A header that has a meaning over https alone.
    const others = (trouble: string) => !trouble.includes('Cross-Origin-Opener-Policy header has been ignored');
    expect([...app.troubles, ...phone.troubles].filter(others)).toEqual([]);
  });
});

describe('in a window that keeps nothing', () => {
  const REFUSALS: [string, () => void][] = [
    [
      'every storage refused',
      () => {
        for (const name of ['localStorage', 'sessionStorage', 'indexedDB'] as const)
          Object.defineProperty(window, name, {
            get: () => {
              throw new DOMException('blocked', 'SecurityError');
            },
          });
      },
    ],
    [
      'a database that does not open, and texts without room',
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('A mutation operation was attempted', 'InvalidStateError');
        };
        Storage.prototype.setItem = () => {
          throw new DOMException('no room', 'QuotaExceededError');
        };
      },
    ],
  ];

  test.each(REFUSALS.slice(0, draw(REFUSALS.length, 1)))(
    '%s: what is on the bench and in the log is saved, and what is not is said',
    async (name, refuse) => {
      const app = await openApp({ ...DESK, ...refusing(refuse) });
      await call(app.page, 'On this bench alone');
      const dialog = await openBackup(app.page);
      const text = await save(app.page, dialog);
      await app.page.locator('.backup .said').waitFor();
      const said = await lastSaid(app.page);
      expect(said).toContain('one neck of the bench');
      expect(said).toContain('Library is not in the file. The browser keeps nothing for this page');
      await app.screenshot(`backup/refused-${name.slice(0, 5).trim()}`);
      expect(text).toContain('On this bench alone');

      // It cannot be restored where it was made: that is said, at once or when it is tried, and the page goes on.
      await choose(app.page, dialog, text);
      const button = dialog.getByRole('button', { name: 'Restore', exact: true });
      const failed = dialog.getByText(/cannot be restored|not restored\. There is no room left/).first();
      await failed.or(button).first().waitFor();
      if (await button.isVisible()) await button.click();
      await failed.waitFor();
      await app.screenshot(`backup/refused-${name.slice(0, 5).trim()}-restoring`);

      const other = await openApp(DESK);
      const there = await openBackup(other.page);
      await choose(other.page, there, text);
      await there.getByRole('button', { name: 'Restore', exact: true }).click();
      await there.getByText(/^Left on the bench \(/).click();
      await there.getByText('On this bench alone').waitFor();
      expect([...app.troubles, ...other.troubles]).toEqual([]);
    },
  );

  test.runIf(IS_LONG)('on a German phone all of that fits and is German', async () => {
    const whole = await openApp(DESK);
    await furnish(whole.page);
    const text = await save(whole.page, await openBackup(whole.page));
    const app = await openApp({ ...GERMAN_PHONE, ...refusing(REFUSALS[0][1]) });
    const dialog = await openBackup(app.page);
    await choose(app.page, dialog, text);
    await dialog
      .getByText(/nicht einspielen/)
      .first()
      .waitFor();
    await expectWithin(app);
    expect(await dialog.getByRole('button', { name: 'Einspielen', exact: true }).count()).toBe(0);
    await app.screenshot('backup/refused-german-phone');
    expect(app.troubles).toEqual([]);
  });
});

describe('without a worker', () => {
  test('the page itself makes the backup and restores it', async () => {
    const app = await openApp({
      ...DESK,
      prepare: async (page) =>
        void (await page.route('**/backup.worker-*.js', (route) => route.fulfill({ status: 404, body: '' }))),
    });
    await furnish(app.page);
    const dialog = await openBackup(app.page);
    const text = await save(app.page, dialog);
    await choose(app.page, dialog, text);
    await dialog.getByText('All of it is here already.').waitFor();
    expect(text).toContain('Kept neck');
  });
});

describe('a huge backup', () => {
  test('is refused with its size and the limit, unread', async () => {
    const app = await openApp(DESK);
    const dialog = await openBackup(app.page);
    await app.page.evaluate(() => {
      Object.defineProperty(File.prototype, 'size', { get: () => 310_000_000 });
    });
    await choose(app.page, dialog, '{}');
    await dialog.getByText('It has 310 MB; a backup may have 200 MB at most.').waitFor();
    expect(app.troubles).toEqual([]);
  });

  const NECKS = draw(1000);

  test(`of ${NECKS / 20} MB is read aside, so that the page goes on`, async () => {
    const device = kit();
    for (let count = 0; count < NECKS; count += 1) {
      const picture = `data:image/png;base64,${'ABCDefgh0123/+xy'.repeat(3000)}`;
      device.library.records.set(`${count}`, neck(`${count}`, `Neck ${count}`, { picture }));
    }
    const made = await makeBackup(device.parts, Date.now(), fileWork);
    const path = join(mkdtempSync(join(tmpdir(), 'backbow-')), 'large.json');
    writeFileSync(path, 'file' in made ? await made.file.text() : '');
    try {
      const app = await openApp(DESK);
      const dialog = await openBackup(app.page);
      const worker = app.page.waitForEvent('worker');
      await choose(app.page, dialog, { path });
      expect((await worker).url()).toContain('backup.worker');
      await dialog.getByText(`${NECKS} to add`).waitFor();
      expect(app.troubles).toEqual([]);
    } finally {
      rmSync(dirname(path), { recursive: true });
    }
  });
});
