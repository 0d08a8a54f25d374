import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { PARAMETERS } from '../../../src/neck/parameters.ts';
import { PRESETS } from '../../tools/presets.ts';
import { isoDate } from '../../../src/pages/papers/date.ts';
import { cssString, sheetPageRules, templatePageRules } from '../../../src/pages/papers/page-rules.ts';
import { hrefOf, placeOf, SHEETS } from '../../../src/pages/papers/route.ts';
import { valueRows } from '../../../src/pages/papers/value-text.ts';
import { routeOf } from '../../../src/state/share/address.ts';
import { parameterName } from '../../../src/speech/names.ts';

describe('the address', () => {
  test('names the papers, the bench with its job, and nothing else', () => {
    for (const sheet of SHEETS) expect(placeOf(hrefOf(sheet))).toEqual({ at: sheet });
    expect(placeOf(hrefOf('bench'))).toEqual({ at: 'bench', job: null });
    expect(placeOf(hrefOf('bench', 'bcdfghjklmnpqr'))).toEqual({ at: 'bench', job: 'bcdfghjklmnpqr' });
    for (const other of [
      '',
      '#',
      '#plan',
      '#/',
      '#/nothing',
      '#/plan/',
      '#/plan/bcd',
      '#/bench/',
      '#/bench/BCD',
      '#neck=1.abc',
      '#customer=1.abc',
      '#controls',
    ]) {
      expect(placeOf(other)).toBeNull();
    }
  });

  test('is never taken for a link, nor a link for it', () => {
    for (const place of [...SHEETS, 'bench' as const]) expect(routeOf(hrefOf(place))).toBeNull();
  });
});

describe('rules for printed pages', () => {
  /** Reads a CSS string back, as CSS Syntax Level 3 has it: \ and up to six hex digits and one space, or the character itself. */
  function readCss(text: string): string {
    expect(text).toMatch(/^"([^"\\\n\r\f]|\\[0-9a-f]{1,6} )*"$/u);
    return text
      .slice(1, -1)
      .replace(/\\([0-9a-f]{1,6}) /g, (_, digits: string) => String.fromCodePoint(Number.parseInt(digits, 16)));
  }

  test('a text stays inside its string, whatever it holds (seed 433)', () => {
    const text = fc.string({
      unit: fc.constantFrom('"', '\\', '\n', '\r', '\f', '}', '{', ';', 'a', '0', ' ', 'é', '🎸'),
    });
    fc.assert(
      fc.property(text, (value) => {
        expect(readCss(cssString(value))).toBe(value);
      }),
      { seed: 433, numRuns: 500 },
    );
  });

  test('a name as long as names may be leaves room for the version', () => {
    const rules = sheetPageRules('x'.repeat(200), 'Backbow 0.1.0');
    expect(rules).toContain(`"${'x'.repeat(69)}…"`);
    expect(rules).toContain('counter(pages)');
  });

  test('template pages are as large as their paper', () => {
    expect(templatePageRules('a4')).toBe('@page { size: A4 landscape; margin: 0; }');
    expect(templatePageRules('letter')).toBe('@page { size: Letter landscape; margin: 0; }');
  });
});

test('dates are year, month, day in the local calendar', () => {
  expect(isoDate(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
  expect(isoDate(new Date(2026, 10, 25, 0, 0))).toBe('2026-11-25');
});

describe('every value of a build', () => {
  const texts = (build = defaultBuild()) => valueRows(build, 'metric').flatMap(({ rows }) => rows);

  test('stands on the sheet when it matters, in the units that are asked for', () => {
    const rows = texts();
    const labels = new Set(rows.map(({ label }) => label));
    const missing = PARAMETERS.filter(({ id }) => !labels.has(parameterName(id))).map(({ id }) => id);
    // What a plain build does not use: measured blanks, a second radius, coil, glue, binding, bars, a second rod, zero fret, climate, heat, refret, earlier woods.
    expect(
      missing.every((id) =>
        /Blank|radiusLast|coil|glue|nip|linesSawn|bridge|undercut|clampSlide|bar|Curve|Follows|Apart|Moisture|starting|heat|zeroFretHigher|endsChanged|woodValues/i.test(
          id,
        ),
      ),
    ).toBe(true);
    expect(rows.find(({ label }) => label === 'Kerf')).toEqual({ label: 'Kerf', text: '0.580\u00a0mm' });
    const inch = valueRows(defaultBuild(), 'inch').flatMap(({ rows: all }) => all);
    expect(inch.find(({ label }) => label === 'Scale length')?.text).toBe('25.51\u00a0in');
  });

  test('includes the lists: woods, binding, strings, stretches of frets, measured reliefs', () => {
    const build = {
      ...PRESETS.find(({ id }) => id === 'set-neck-mahogany')!.build,
      regions: [{ fromFret: 3, toFret: 5, kerfMm: 0.62, tangWidthMm: 0.52, studWidthMm: 0.8 }],
      job: 'refret' as const,
      startingReliefMm: [0.1, -0.05],
    };
    const all = texts(build)
      .map(({ label, text }) => `${label}: ${text}`)
      .join('\n')
      .replaceAll('\u00a0', ' ');
    expect(all).toContain('mahogany 100.0 %');
    expect(all).toContain('0.50 mm #26211e; 0.50 mm #f2ead7; 1.50 mm #f2ead7');
    expect(all).toContain('frets 3 to 5: kerf 0.620 mm, tang 0.520 mm, over the studs 0.800 mm');
    expect(all).toContain('E4 0.254 mm plain steel');
    expect(all).toContain('0.10 mm; −0.05 mm');
  });

  test('never shows what is no number', () => {
    for (const { build } of PRESETS) {
      for (const system of ['metric', 'inch'] as const) {
        for (const { rows } of valueRows(build, system)) {
          for (const { text } of rows) expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
        }
      }
    }
  });
});
