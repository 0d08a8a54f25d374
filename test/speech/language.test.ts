/** Tables are live: another language fills them in place, and whoever listens is told. */
import { afterEach, describe, expect, test, vi } from 'vitest';
import { onLanguage, speak, spokenLanguage, words } from '../../src/speech/language.ts';

afterEach(() => speak('en', {}));

const GERMAN = {
  TEST_WORDS: {
    play: 'Abspielen',
    frets: (count: number, neck: string) => `${count} Bünde auf ${neck}`,
    card: { nip: 'abzwicken', deep: { gap: 'Spalt' } },
    notes: ['C', 'Cis'],
  },
};
const ENGLISH = {
  play: 'Play',
  frets: (count: number, neck: string) => `${count} frets on ${neck}`,
  card: { nip: 'nip', deep: { gap: 'gap' }, also: 'or crop' },
  notes: ['C', 'C♯', 'D'],
};

describe('a table', () => {
  test('changes its language in place, there and back', () => {
    const table = words('TEST_WORDS', ENGLISH);
    const { card, notes } = table;
    speak('de', GERMAN);
    expect(spokenLanguage()).toBe('de');
    expect([table.play, table.frets(3, 'x'), card.nip, card.deep.gap]).toEqual([
      'Abspielen',
      '3 Bünde auf x',
      'abzwicken',
      'Spalt',
    ]);
    expect([notes, 'also' in card]).toEqual([['C', 'Cis'], false]);
    speak('en', {});
    expect([table.play, table.frets(3, 'x'), card, notes]).toEqual([
      'Play',
      '3 frets on x',
      ENGLISH.card,
      ENGLISH.notes,
    ]);
  });

  test('that comes later speaks the language of then', () => {
    speak('de', GERMAN);
    expect(words('TEST_WORDS', ENGLISH).play).toBe('Abspielen');
    // A language that lacks a table leaves it English.
    expect(words('OTHER_TEST_WORDS', { play: 'Play' }).play).toBe('Play');
  });

  test('leaves what it was made from as it was', () => {
    const given = structuredClone({ play: 'Play', card: { nip: 'nip' } });
    words('TEST_WORDS', given);
    speak('de', GERMAN);
    expect(given).toEqual({ play: 'Play', card: { nip: 'nip' } });
  });

  test('sets apart what is put into its sentences in every language', () => {
    const table = words('TEST_WORDS', ENGLISH);
    speak('de', GERMAN);
    expect(table.frets(3, 'שלום')).toBe('3 Bünde auf \u2068שלום\u2069');
  });
});

test('who listens is told after the tables have changed, and not when it has left', () => {
  const table = words('TEST_WORDS', ENGLISH);
  const heard: string[] = [];
  const leave = onLanguage(() => heard.push(table.play));
  speak('de', GERMAN);
  leave();
  speak('en', {});
  expect(heard).toEqual(['Abspielen']);
});

describe('the last choice wins', () => {
  test('however long an earlier one takes', async () => {
    vi.resetModules();
    const come: (() => void)[] = [];
    vi.doMock('../../src/speech/load.ts', () => ({
      loadLanguage: (language: string) =>
        language === 'en' ? Promise.resolve({}) : new Promise((resolve) => come.push(() => resolve(GERMAN))),
    }));
    const { chooseLanguage } = await import('../../src/speech/choose.ts');
    const fresh = await import('../../src/speech/language.ts');
    const slow = chooseLanguage('de');
    await chooseLanguage('en');
    come[0]();
    await slow;
    expect(fresh.spokenLanguage()).toBe('en');
    vi.doUnmock('../../src/speech/load.ts');
  });

  test('and one whose words do not come changes nothing', async () => {
    vi.resetModules();
    vi.doMock('../../src/speech/load.ts', () => ({ loadLanguage: () => Promise.reject(new Error('offline')) }));
    const { chooseLanguage } = await import('../../src/speech/choose.ts');
    const fresh = await import('../../src/speech/language.ts');
    expect(await chooseLanguage('de')).toBe(false);
    expect(fresh.spokenLanguage()).toBe('en');
    vi.doUnmock('../../src/speech/load.ts');
  });
});
