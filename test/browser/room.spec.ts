/** Will it buzz? The chart in a real browser: read without colour, walked by key, on a desk and a phone, in German. */
import { describe, expect, test } from 'vitest';
import { testForEverybody } from './for-everybody.ts';
import { DESK, withBrowser, type App, type Open, type OpenOptions } from './harness.ts';
import { violations } from './violations.ts';

const openApp = withBrowser();

async function openRoom(open: Open = openApp, options: OpenOptions = DESK): Promise<App> {
  const app = await open(options);
  await app.page.keyboard.press('h');
  await app.page.locator('.room-grid').waitFor();
  return app;
}

const summary = ({ page }: App) => page.locator('.room-says strong').innerText();
const detail = ({ page }: App) => page.locator('.room-says [data-note]').innerText();
const count = ({ page }: App, verdict: string) => page.locator(`.room-grid [data-verdict="${verdict}"]`).count();
const note = ({ page }: App, string: number, at: number) =>
  page.locator(`.room-grid [data-string="${string}"][data-note="${at}"]`);

describe('on a desk', () => {
  test('every note has a room and a sign that says the same as its colour', async () => {
    const app = await openRoom();
    await app.page.getByLabel('Played').selectOption('hard');
    const cells = await app.page.locator('.room-grid button').evaluateAll((buttons) =>
      buttons.map((button) => ({
        verdict: (button as HTMLElement).dataset['verdict'],
        sign: button.querySelector('.room-sign')!.textContent,
        room: Number(button.querySelector('.room-number')!.textContent.replace('−', '-')),
        says: button.getAttribute('aria-label')!,
      })),
    );
    expect(cells).toHaveLength(6 * 22);
    for (const { verdict, sign, room, says } of cells) {
      // What rounds to nothing is said to just touch.
      const buzzes = says.includes('buzzes on fret') || says.includes('just touches fret');
      expect([verdict === 'buzzes', sign === '!', room <= 0 && buzzes]).toEqual([buzzes, buzzes, buzzes]);
      expect(sign === '?').toBe(says.includes('may swing') || says.includes('may just touch it'));
    }
    const [buzzing, may] = [await count(app, 'buzzes'), await count(app, 'may-buzz')];
    expect(buzzing).toBeGreaterThan(20);
    expect(await summary(app)).toBe(`${buzzing} of 132 notes buzz, ${may} more may.`);
    expect(app.troubles).toEqual([]);
  });

  test('softer playing, or a higher action, clears it', async () => {
    const app = await openRoom();
    await app.page.getByLabel('Played').selectOption('hard');
    const hard = await count(app, 'buzzes');
    await app.page.getByLabel('Played').selectOption('soft');
    expect(await count(app, 'buzzes')).toBe(0);
    expect(await summary(app)).toBe('All 132 notes are clear.');
    await app.page.getByLabel('Played').selectOption('hard');
    expect(await count(app, 'buzzes')).toBe(hard);
    await app.page.locator('summary', { hasText: 'The strings' }).click();
    const action = app.page.getByRole('slider', { name: /^String height at fret 12/ });
    await action.focus();
    for (let step = 0; step < 3; step += 1) await app.afterChange(() => app.page.keyboard.press('PageUp'));
    expect(await count(app, 'buzzes')).toBeLessThan(hard);
  });

  test('is one stop of the Tab key and is walked with the arrows; what is said follows', async () => {
    const app = await openRoom();
    expect(await app.page.locator('.room-grid button[tabindex="0"]').count()).toBe(1);
    await note(app, 3, 4).focus();
    expect(await detail(app)).toMatch(/^String 4 \(D3\), fret 4: /);
    await app.page.keyboard.press('ArrowRight');
    await app.page.keyboard.press('ArrowDown');
    expect(await app.page.locator(':focus').getAttribute('aria-label')).toMatch(/^String 5 \(A2\), fret 5: /);
    expect(await detail(app)).toMatch(/^String 5 \(A2\), fret 5: /);
    await app.page.keyboard.press('Home');
    expect(await detail(app)).toMatch(/^String 5 \(A2\), open: /);
    expect(await app.page.locator('.room-grid button[tabindex="0"]').count()).toBe(1);
    // The arrows have moved nothing else.
    expect(await app.page.getByRole('slider', { name: 'Moment in the job' }).getAttribute('aria-valuetext')).toBe(
      'all 22 frets in, no strings',
    );
  });

  test('the key that shows it brings the line back, and the list chooses between all three', async () => {
    const app = await openRoom();
    await app.page.keyboard.press('h');
    await app.page.locator('.chart .straightedge').waitFor();
    expect(await app.page.locator('.room-grid').count()).toBe(0);
    const list = app.page.getByRole('combobox', { name: 'Chart' });
    await list.selectOption('time');
    await app.page.locator('svg.course').waitFor();
    await list.selectOption('room');
    await app.page.locator('.room-grid').waitFor();
    expect(app.troubles).toEqual([]);
  });

  test('is in inches where the page is', async () => {
    const app = await openRoom();
    await app.page.keyboard.press('u');
    expect(await detail(app)).toMatch(/by 0\.\d\d\d\sin/);
    expect(await app.page.locator('.room-foot').innerText()).toMatch(/0\.2\slbf, 5\.1\sin from the saddle/);
  });
});

describe('the swing in the picture', () => {
  const swung = ({ page }: App) => page.locator('.room-grid [aria-pressed="true"]');
  const tools = ({ page }: App) => page.locator('.room-swing');

  test('is there for the note that was chosen, where the neck is played, and nowhere else', async () => {
    const app = await openRoom();
    expect(await swung(app).count()).toBe(0);
    await note(app, 2, 3).click();
    expect(await swung(app).getAttribute('aria-label')).toMatch(/^String 3 \(G3\), fret 3: /);
    expect(await tools(app).innerText()).toMatch(/^In the picture: String 3 \(G3\), fret 3, ×40 like the bow\./);
    const rail = app.page.getByRole('slider', { name: 'Moment in the job' });
    expect(await rail.getAttribute('aria-valuetext')).toMatch(/rod set/);
    await rail.focus();
    await app.page.keyboard.press('Home');
    // The neck is no longer as it is played: the picture has no swing, and says how to have it again.
    await tools(app).getByRole('button', { name: 'Show the swing' }).click();
    expect(await rail.getAttribute('aria-valuetext')).toMatch(/rod set/);
    await tools(app).getByRole('button', { name: 'Hide the swing' }).click();
    expect(await swung(app).count()).toBe(0);
    expect(app.troubles).toEqual([]);
  });

  test.each([
    ['no-preference', 'Pause'],
    ['reduce', 'Play the swing'],
  ] as const)(
    'moves unless the page shall keep still (%s), and does what its button says',
    async (reducedMotion, first) => {
      const app = await openRoom();
      await app.page.emulateMedia({ reducedMotion });
      await note(app, 0, 5).click();
      const button = tools(app).getByRole('button').first();
      expect(await button.innerText()).toBe(first);
      const frames = () => app.page.evaluate(() => window.backbow!.frames);
      const goOn = async () => {
        const before = await frames();
        await app.page.waitForFunction((count) => window.backbow!.frames > count + 2, before);
      };
      if (first !== 'Pause') await button.click();
      await goOn();
      await button.click();
      await app.settle();
      const still = await frames();
      await app.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      expect(await frames()).toBe(still);
      expect(app.troubles).toEqual([]);
    },
  );
});

describe('a strength of one’s own', () => {
  const fret = ({ page }: App) => page.getByLabel('Just buzzes on fret');
  const form = ({ page }: App) => page.locator('.match-form');

  test('comes from a neck that just buzzes, is played with once accepted, and is there after a reload', async () => {
    const app = await openRoom();
    await app.page.locator('.own-strength summary').click();
    const said = /This pluck was (\d\.\d\d)\sN, ± 0\.\d\d\sN\./.exec(await form(app).innerText())!;
    await app.page.getByRole('button', { name: 'Keep this reading' }).click();
    const played = app.page.getByLabel('Played');
    expect(await played.inputValue()).toBe('medium');
    const joined = app.page.locator('.own-strength strong');
    expect(await joined.innerText()).toContain(`One reading: ${said[1]}`);
    await app.page.getByRole('button', { name: 'Play with this strength' }).click();
    expect(await played.inputValue()).toBe('own');
    const own = await summary(app);
    await app.page.reload();
    await app.page.locator('.readouts .figure-value').first().waitFor();
    await app.page.keyboard.press('h');
    await app.page.locator('.room-grid').waitFor();
    expect(await played.inputValue()).toBe('own');
    expect(await summary(app)).toBe(own);
    await app.page.locator('.own-strength summary').click();
    await app.page.getByRole('button', { name: 'Go back to soft, medium, hard' }).click();
    expect(await played.inputValue()).toBe('medium');
    expect(app.troubles).toEqual([]);
  });

  test('is not taken from a reading that cannot be, and the reason is said', async () => {
    const app = await openRoom();
    await app.page.locator('.own-strength summary').click();
    await fret(app).selectOption('21');
    expect(await form(app).innerText()).toMatch(
      /cannot just buzz there at any strength: it hits fret \d+ first, from \d\.\d\d\sN/,
    );
    expect(await app.page.getByRole('button', { name: 'Keep this reading' }).isDisabled()).toBe(true);
  });
});

describe('the other way round', () => {
  const aim = ({ page }: App) => page.locator('.room-aim p').first().innerText();
  const least = async (app: App) =>
    Math.min(
      ...(await app.page.locator('.room-number').allTextContents()).map((text) => Number(text.replace('−', '-'))),
    );

  test('says the relief with the most room; taking it is one step, and the chart then has that room', async () => {
    const app = await openRoom();
    const said = /Most room: with (0\.\d\d)\smm relief, (0\.\d\d)\smm at the worst note/.exec(await aim(app))!;
    const take = app.page.locator('.room-aim').getByRole('button');
    expect(await take.innerText()).toMatch(new RegExp(`^Want ${said[1]}\\smm relief$`));
    expect(await least(app)).toBeLessThan(Number(said[2]));
    await take.focus();
    await app.afterChange(() => app.page.keyboard.press('Enter'));
    expect(await least(app)).toBe(Number(said[2]));
    expect(await aim(app)).toMatch(/No other relief leaves more room\.$/);
    expect(await take.count()).toBe(0);
    expect(await app.page.locator('[data-figure="rod"] dt').innerText()).toContain(said[1]);
    await app.afterChange(() => app.page.keyboard.press('Control+z'));
    expect(await aim(app)).toContain(said[0]);
    expect(app.troubles).toEqual([]);
  });

  test('says the lowest action, and nothing of relief on a neck without a rod', async () => {
    const app = await openRoom();
    expect(await aim(app)).toMatch(/^Lowest action for this neck: 1\.\d\d\smm at fret 12, now 1\.90\smm\./);
    await app.afterChange(() => app.page.getByRole('combobox', { name: 'Start from' }).selectOption('nylon-flat'));
    expect(await aim(app)).toMatch(/^Lowest action for this neck: \d\.\d\d\smm at fret 12, now 3\.50\smm\.$/);
    expect(await app.page.locator('.room-aim').getByRole('button').count()).toBe(0);
  });
});

test('another neck with fewer strings has its own notes', async () => {
  const app = await openRoom();
  await note(app, 5, 20).focus();
  await app.afterChange(() => app.page.getByRole('combobox', { name: 'Start from' }).selectOption('long-four'));
  expect(await app.page.locator('.room-grid tbody tr').count()).toBe(4);
  expect(await detail(app)).toMatch(/^String \d \([A-G].?\d\), /);
  expect(app.troubles).toEqual([]);
});

describe('as narrow as a phone, in German', () => {
  const shared = openApp.shared((open) =>
    openRoom(open, { viewport: { width: 390, height: 844 }, touch: true, context: { locale: 'de-DE' } }),
  );

  test('the signs stand alone, large enough to touch, and the words say the number', async () => {
    const app = await shared();
    const cell = note(app, 1, 1);
    await cell.scrollIntoViewIfNeeded();
    const { width, height } = (await cell.boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(43.9);
    expect(await cell.innerText()).toMatch(/^[!?✓]$/);
    await cell.tap();
    expect(await detail(app)).toMatch(/^Saite 2 \(H3\), Bund 1: .*0,\d\d\smm/);
    expect(await summary(app)).toMatch(/^Kein Ton schnarrt sicher; \d+ von 132 könnten es\.$/);
    // The page itself goes no wider.
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });

  test('the accessibility checker finds nothing in the dark', async () => {
    const app = await shared();
    await app.page.emulateMedia({ colorScheme: 'dark' });
    await app.settle();
    expect(await violations(app, '.chart')).toEqual([]);
  });
});

describe('for everybody', () => {
  const shared = openApp.shared(async (open) => {
    const app = await openRoom(open);
    await app.page.getByLabel('Played').selectOption('hard');
    return app;
  });
  testForEverybody(shared, '.chart');
});
