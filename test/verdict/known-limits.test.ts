/** Where the model is known to disagree with practice: said on the necks that it concerns, on every surface, and on no other. */
import { describe, expect, it } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS, type PresetId } from '../../src/neck/presets.ts';
import { stringsOf } from '../../src/neck/strings.ts';
import { planTables } from '../../src/fretwork/plan/tables.ts';
import { checkNumbers, checkReason, isLimit } from '../../src/speech/checks.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { predictionReport } from '../../src/verdict/report.ts';
import { sheetPlan } from '../../src/verdict/sheet-plan.ts';
import { solutionOf } from './solution.ts';

const presetOf = (id: PresetId) => PRESETS.find((preset) => preset.id === id)!.build;
const limitsOf = (build: Build) => checksOf(solutionOf(build)).filter(isLimit);
const codes = (build: Build) => limitsOf(build).map(({ code }) => code);
const thick = presetOf('thick-five-piece');

it.each([
  ['bolt-on-maple', []],
  ['set-neck-mahogany', []],
  ['thick-five-piece', ['limit-stiff-neck']],
  ['slim-soft', []],
  ['long-four', ['limit-pressed-settled']],
  ['nylon-flat', []],
  ['bolt-on-tight', []],
] as const)('%s has %s', (id, expected) => {
  expect(codes(presetOf(id))).toEqual(expected);
});

describe('a thick laminated neck of heavy wood', () => {
  const has = (change: Partial<Build>) => codes({ ...thick, ...change }).includes('limit-stiff-neck');

  it('has it over an inch, and not at one', () => {
    expect(has({ thicknessFret1Mm: 25.5 })).toBe(true);
    expect(has({ thicknessFret1Mm: 25.4 })).toBe(false);
  });

  it('has it when it is glued up of heavy wood, and not in one piece or of light wood', () => {
    expect(has({ laminates: [{ wood: 'wenge', share: 1 }] })).toBe(false);
    // Air-dry, Wood Handbook and Tropix: wenge and purpleheart over 800 kg/m³, mahogany and walnut about 600.
    const light = [
      { wood: 'mahogany', share: 0.5 },
      { wood: 'black-walnut', share: 0.5 },
    ] as const;
    expect(has({ laminates: light })).toBe(false);
  });

  it('is quiet where frets do not wedge, in a refret, and where the model says what practice says', () => {
    expect(has({ method: 'both' })).toBe(true);
    expect(has({ method: 'glue' })).toBe(false);
    expect(has({ job: 'refret' })).toBe(false);
    // The last row of the table: light strings and a strong bite keep its back-bow.
    expect(has({ strings: stringsOf('six-9-42', 'six-standard'), biteFactor: 1.4 })).toBe(false);
  });
});

it('a pressed fit that hardly bites is not compared with a glued one', () => {
  const four = presetOf('long-four');
  expect(codes({ ...four, kerfMm: four.studWidthMm - 0.05 })).toEqual([]);
});

it('names the number that is off, beside what practice says, and the value is that of the method', () => {
  const [limit] = limitsOf(thick);
  const { prediction } = solutionOf(thick);
  expect(limit).toMatchObject({ severity: 'note', quantity: 'strungReliefMm', limit: 0, limitKind: 'most' });
  expect(limit.value).toBe(prediction.methods[thick.method].strung.extremeMm);
  expect(checkNumbers(limit, 'metric')).toBe(
    'First day under strings: 0.05\u00a0mm here; in practice below 0.00\u00a0mm, still a back-bow.',
  );
  expect(checkReason(limit)).toMatch(/outlast the stringing/);
  const [other] = limitsOf(presetOf('long-four'));
  expect(checkNumbers(other, 'metric')).toBe(
    'Strung and settled: pressed 0.60\u00a0mm here; in practice less than glued, which is 0.58\u00a0mm.',
  );
});

it('stands in the sheet, its CSV and the report, before the other notes and after what is wrong', () => {
  for (const { build } of PRESETS) {
    const reckoned = solutionOf(build);
    const shown = checksOf(reckoned).map(({ code }) => code);
    const { plan } = sheetPlan(reckoned);
    const csv = planTables(plan).find(({ id }) => id === 'checks')!;
    expect(plan.checks.map(({ code }) => code)).toEqual(shown);
    expect(csv.rows.map((row) => row[1])).toEqual(shown);
    expect(predictionReport(reckoned).checks.map(({ code }) => code)).toEqual(shown);
    const at = checksOf(reckoned).findIndex(isLimit);
    if (at < 0) continue;
    expect(checksOf(reckoned).findIndex(({ severity }) => severity === 'note')).toBe(at);
  }
});
