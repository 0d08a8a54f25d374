/** From what is typed to an entry of the log, or to the reasons why not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ORDINARY_SCATTER, UNSAID, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { contentHash } from '../../../src/mechanics/bench-log/identity.ts';
import { draftOf, keptOf, storedNumbers } from '../../../src/pages/log/draft-of.ts';
import {
  DRAFT_NUMBERS,
  draftText,
  entryOf,
  waysOf,
  type DraftTexts,
  type EntryDraft,
  type FromBuild,
} from '../../../src/pages/log/entry-draft.ts';
import { defaultBuild } from '../../../src/neck/build.ts';
import { arbitraryEntry } from '../../mechanics/bench-log/arbitrary-entries.ts';
import { expectNear } from '../../expect-near.ts';

const PREDICTED: FromBuild = {
  predictedFrettedMm: -0.21,
  predictedFrettedFretsMm: -0.21,
  predictedStrungMm: 0.11,
  predictedStrungFretsMm: -0.2,
  studShape: 1,
  embeddingLengthMm: 0.017,
  biteFactor: 1,
  ...ORDINARY_SCATTER,
  wood: 'indian-rosewood',
  kerfMm: 0.58,
  tangWidthMm: 0.5,
  studWidthMm: 0.76,
  spanMm: null,
  predictedPullMm: 0.31,
  predictedRodMm: -0.12,
  predictedQuarter1Mm: -0.05,
  predictedQuarter2Mm: -0.11,
  predictedQuarter3Mm: -0.16,
  seatingOrder: 'nut-first',
};
const NO_TEXTS = Object.fromEntries(DRAFT_NUMBERS.map((id) => [id, ''])) as DraftTexts;
const NO_WAYS = waysOf(null);
const { workshop, wire, blade, instrument, rod, straightedgeOn } = UNSAID;
const DRAFT: EntryDraft = {
  date: '2026-05-04',
  neck: 'Number 12',
  method: 'press',
  ...NO_TEXTS,
  measuredFrettedMm: '0.28',
  gaugeErrorMm: '0.02',
  dialErrorMm: '0.01',
  days: '0',
  ways: { ...NO_WAYS, measuredFrettedMm: 'hump' },
  rodWay: 'clockwise',
  rodStrings: 'on',
  workshop,
  wire,
  blade,
  instrument,
  rod,
  straightedgeOn,
};
const made = (change: Partial<EntryDraft>, system: 'metric' | 'inch' = 'metric') =>
  entryOf({ ...DRAFT, ...change }, () => PREDICTED, system);
const problems = (change: Partial<EntryDraft>, system: 'metric' | 'inch' = 'metric') => {
  const result = made(change, system);
  return result.ok ? [] : result.problems;
};
const fretted = (measuredFrettedMm: string, way: 'hump' | 'hollow' | null, system: 'metric' | 'inch' = 'metric') =>
  made(
    {
      measuredFrettedMm,
      ways: { ...NO_WAYS, measuredFrettedMm: way },
      ...(system === 'inch' ? { gaugeErrorMm: '0.001' } : {}),
    },
    system,
  );

describe('an entry that is typed', () => {
  test('keeps what was predicted for what was measured, and nothing for what was not', () => {
    expect(made({})).toMatchObject({
      ok: true,
      entry: {
        measuredFrettedMm: -0.28,
        predictedFrettedMm: -0.21,
        measuredStrungMm: null,
        predictedStrungMm: null,
        kerfMm: 0.58,
        wood: 'indian-rosewood',
        rod: 'slack',
        strungDays: null,
      },
    });
  });

  test('keeps a prediction to a millionth: a nanometre', () => {
    const result = entryOf(DRAFT, () => ({ ...PREDICTED, predictedFrettedMm: -0.21234567891 }), 'metric');
    expect(result.ok && result.entry.predictedFrettedMm).toBe(-0.212346);
  });

  test('takes a comma, a unit of its own, and inches', () => {
    const relief = (...given: Parameters<typeof fretted>) => {
      const result = fretted(...given);
      if (!result.ok) throw new Error(result.problems.join(' '));
      return result.entry.measuredFrettedMm!;
    };
    expect(relief('0,28', 'hump')).toBe(-0.28);
    expectNear(relief('11 thou', 'hump'), -0.2794, 1e-9, '1 in = 25.4 mm exactly');
    expectNear(relief('0.011', 'hollow', 'inch'), 0.2794, 1e-9, '1 in = 25.4 mm exactly');
    expect(relief('0', null)).toBe(0);
  });

  test('asks for the days since stringing at which a strung neck was measured', () => {
    const days: number[] = [];
    const strung = { ...DRAFT, measuredStrungMm: '0.1', ways: { ...DRAFT.ways, measuredStrungMm: 'hollow' } } as const;
    const result = entryOf({ ...strung, days: '14' }, ({ days: at }) => (days.push(at!), PREDICTED), 'metric');
    expect(days).toEqual([14]);
    expect(result.ok && result.entry.strungDays).toBe(14);
    expect(problems({ ...strung, days: '' }).join(' ')).toMatch(/days since it was strung is empty/);
  });

  test.each([
    [
      'no number',
      { measuredFrettedMm: 'a hair' },
      /“a hair” is not a number for measured with frets in: it takes 0 to 5/,
    ],
    ['far too much', { measuredFrettedMm: '7' }, /7\.00\u00a0mm for measured with frets in: it takes 0 to 5/],
    ['no gauge error', { gaugeErrorMm: '' }, /is empty; it takes 0\.001 to 0\.5/],
    ['nothing measured', { measuredFrettedMm: '' }, /nothing was measured/],
    ['no day', { date: '' }, /takes a day/],
    ['no name', { neck: ' ' }, /needs a name/],
  ])('is refused with the reason: %s', (_why, change, message) => {
    expect(problems(change).join(' ')).toMatch(message);
  });

  test('says ranges in inches to whoever reads inches', () => {
    expect(problems({ measuredFrettedMm: '1', gaugeErrorMm: '0.001' }, 'inch').join(' ')).toMatch(
      /1\.0000\u00a0in .*0 to 0\.1968\u00a0in/,
    );
  });
});

describe('hump or hollow', () => {
  test('is asked for, and a sign is taken for neither', () => {
    expect(problems({ ways: NO_WAYS })).toEqual(['measured with frets in: 0.28\u00a0mm: is it a hump or a hollow?']);
    for (const sign of ['-', '−', '+', '–']) {
      const result = fretted(`${sign}0.14`, 'hump');
      expect(result.ok ? [] : result.problems).toEqual([
        'measured with frets in: Choose hump or hollow; the size takes no sign.',
      ]);
    }
  });

  test('whatever is typed, a hump never becomes relief nor a hollow a back-bow (seed 1408)', () => {
    const sign = fc.constantFrom('', '', '-', '+', '−', '–', '- ', '--', '±');
    const number = fc.oneof(
      fc.integer({ min: 0, max: 500 }).map((hundredths) => (hundredths / 100).toFixed(2)),
      fc.constantFrom('.14', ',14', '0,14', '14', '1e-1', '0.14 mm', '11 thou', '1/64"', '-0', ''),
      fc.string({ maxLength: 6 }),
    );
    let kept = 0;
    fc.assert(
      fc.property(
        sign,
        number,
        fc.constantFrom('hump' as const, 'hollow' as const, null),
        fc.constantFrom('metric' as const, 'inch' as const),
        (before, text, way, system) => {
          const result = fretted(before + text, way, system);
          if (!result.ok) return;
          kept += 1;
          const relief = result.entry.measuredFrettedMm!;
          const sign = { hump: -1, hollow: 1 };
          expect([0, way === null ? 0 : sign[way]]).toContain(Math.sign(relief) + 0);
          expect(before).toBe('');
        },
      ),
      { seed: 1408, numRuns: 3000 },
    );
    expect(kept).toBeGreaterThan(100);
  });
});

/** What an entry does not say of further readings that were not made. */
function withoutUnread(entry: LogEntry): Partial<LogEntry> {
  const { measuredPullMm, measuredRodMm } = entry;
  const quarters = ([1, 2, 3] as const).map((quarter) => entry[`measuredQuarter${quarter}Mm`]);
  return {
    ...(measuredPullMm === null ? { predictedPullMm: null } : {}),
    ...(measuredRodMm === null ? { predictedRodMm: null, rodTurns: null } : {}),
    ...(measuredPullMm === null && measuredRodMm === null ? { dialFret: null, dialErrorMm: null } : {}),
    ...Object.fromEntries(
      quarters.map((measured, at) => [
        `predictedQuarter${at + 1}Mm`,
        measured === null ? null : entry[`predictedQuarter${(at + 1) as 1 | 2 | 3}Mm`],
      ]),
    ),
    ...(quarters.every((measured) => measured === null) ? { seatingOrder: 'spread' } : {}),
  };
}

describe('what else is read', () => {
  const dial = { dialFret: '7', measuredPullMm: '0.3', ways: { ...NO_WAYS, measuredPullMm: 'hollow' } } as const;

  test('goes into the entry with what was predicted for it, and nothing of what was not read', () => {
    const result = made({ ...dial, measuredFrettedMm: '' });
    expect(result).toMatchObject({
      ok: true,
      entry: { measuredPullMm: 0.3, predictedPullMm: 0.31, dialFret: 7, dialErrorMm: 0.01 },
    });
    expect(result).toMatchObject({
      entry: { measuredRodMm: null, predictedRodMm: null, predictedQuarter1Mm: null, seatingOrder: 'spread' },
    });
  });

  test('a bow after a quarter brings the order of seating along', () => {
    const result = made({ measuredQuarter1Mm: '0.06', ways: { ...DRAFT.ways, measuredQuarter1Mm: 'hump' } });
    expect(result).toMatchObject({ ok: true, entry: { measuredQuarter1Mm: -0.06, predictedQuarter1Mm: -0.05 } });
    expect(result).toMatchObject({ entry: { seatingOrder: 'nut-first', predictedQuarter2Mm: null } });
  });

  test.each([
    ['a pull without the fret', { ...dial, dialFret: '' }, /fret under the dial is empty; it takes 1 to 36/],
    ['a pull without the dial’s error', { ...dial, dialErrorMm: '' }, /error of the dial is empty/],
    ['a pull that goes neither way', { ...dial, ways: NO_WAYS }, /moved by the strings: .*hump or a hollow/],
    [
      'a turn of the nut of no size',
      { ...dial, measuredRodMm: '0.2', ways: { ...NO_WAYS, measuredRodMm: 'hump' } },
      /turns of the nut is empty; it takes 0\.05 to 10/,
    ],
  ] as const)('is refused with the reason: %s', (_why, change, message) => {
    expect(problems(change).join(' ')).toMatch(message);
  });

  test('a dial beside the beam is refused', () => {
    const at = (dialFret: string) =>
      entryOf(
        { ...DRAFT, ...dial, ways: { ...DRAFT.ways, ...dial.ways, measuredFrettedMm: 'hump' }, dialFret },
        () => PREDICTED,
        'metric',
        undefined,
        16,
      );
    expect(at('16')).toEqual({ ok: false, problems: ['Dial over fret 16: it stands between fret 1 and fret 16.'] });
    expect(at('15').ok).toBe(true);
  });
});

describe('an entry that is changed', () => {
  test('goes into the form as it was typed', () => {
    expect(draftText('measuredFrettedMm', -0.28, 'metric')).toBe('0.28');
    expect(draftText('measuredStrungMm', null, 'metric')).toBe('');
  });

  test('and comes out as it was where nothing was touched, in either unit (seed 1409)', () => {
    fc.assert(
      fc.property(arbitraryEntry, fc.constantFrom('metric' as const, 'inch' as const), (entry, system) => {
        const draft = draftOf(defaultBuild(), entry, undefined, system);
        const result = entryOf(draft, () => keptOf(entry), system, storedNumbers(entry));
        if (!result.ok) throw new Error(result.problems.join(' '));
        // Texts lose the spaces around them, and what was not measured its prediction.
        const expected = {
          ...entry,
          ...Object.fromEntries(
            (['neck', 'wire', 'blade', 'workshop', 'instrument'] as const).map((id) => [id, entry[id].trim()]),
          ),
          ...(entry.measuredFrettedMm === null ? { predictedFrettedMm: null, predictedFrettedFretsMm: null } : {}),
          ...(entry.measuredStrungMm === null
            ? { predictedStrungMm: null, predictedStrungFretsMm: null, strungDays: null }
            : { strungDays: entry.strungDays ?? 0 }),
          ...withoutUnread(entry),
        };
        expect(contentHash(result.entry)).toBe(contentHash(expected));
      }),
      { seed: 1409, numRuns: 500 },
    );
  });
});
