import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { tableCsv } from '../../src/fretwork/plan/csv.ts';
import { fretworkPlan, type PlanNumbers } from '../../src/fretwork/plan/plan.ts';
import { planTables, TABLE_IDS, type Cell } from '../../src/fretwork/plan/tables.ts';
import { shownTable } from '../../src/speech/tables.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, UNBOUND_FLAT } from './boards.ts';
import { expectNear } from './near.ts';

/** Made-up numbers in place of the mechanics'. */
function numbersFor(frets: number): PlanNumbers {
  const each = (value: number) => Array.from({ length: frets }, (_, index) => value + index);
  return {
    stringStressRatios: [0.5],
    rod: { slackReliefMm: 0.2, neededPercent: 0, leastReliefMm: -0.2, mostReliefMm: 0.6 },
    levelling: { reliefMm: each(0).map((index) => -0.001 * index * (frets - index)) },
    seating: {
      seatingForceN: each(600),
      wedgeForceN: each(500),
      pullOutForceN: each(400),
      bowAfterQuarterMm: [-0.06, -0.12, -0.18, -0.24],
      bowBandMm: [
        [-0.09, -0.04],
        [-0.18, -0.08],
        [-0.27, -0.12],
        [-0.36, -0.16],
      ],
    },
    setUp: [{ string: 1, actionMm: 1.7, reliefMm: 0.14, nutOverFret1Mm: 0.5, saddleOverFretsMm: 3.1 }],
    playing: [
      {
        strength: 'hard',
        forceN: 2,
        roomMm: -0.675,
        string: 2,
        frettedAt: 0,
        touchedFret: 5,
        notesBuzzing: 68,
        notesMayBuzz: 61,
        lowestActionMm: 3.54,
      },
    ],
  };
}

describe('the plan', () => {
  it('holds one row per fret everywhere', () => {
    const plan = fretworkPlan(BOUND_CONICAL, numbersFor(22));
    for (const list of [plan.ends, plan.slots, plan.wire, plan.bends, plan.glue.slots, plan.levelling!]) {
      expect(list).toHaveLength(22);
    }
    expect(plan.seating.quarters.map((quarter) => quarter.fretsIn)).toEqual([6, 11, 17, 22]);
    expect(plan.seating.quarters[1]).toMatchObject({ expectedBowMm: -0.12, bandMm: [-0.18, -0.08] });
    expect(plan.seating.forces).toHaveLength(22);
  });

  it('pressure is force over the foot of the crown', () => {
    // fret 12: 611 N on 2.4·52.57735 = 126.18564 mm²: 4.84207 MPa
    const plan = fretworkPlan(BOUND_CONICAL, numbersFor(22));
    expectNear(plan.seating.forces![11].pressureMPa, 4.84207, 2e-6, 'worked by hand to five decimals');
  });

  it('leaves out what needs numbers that it was not given', () => {
    const plan = fretworkPlan(UNBOUND_FLAT);
    expect(plan.levelling).toBeUndefined();
    expect(plan.seating.forces).toBeUndefined();
    expect(plan.glueRecipe).toBeUndefined();
    expect(planTables(plan).map((table) => table.id)).toEqual(
      TABLE_IDS.filter((id) => !['levelling', 'playing', 'setUp'].includes(id)),
    );
    expect(planTables(fretworkPlan({ ...UNBOUND_FLAT, wireForm: 'coil' })).map((table) => table.id)).not.toContain(
      'cutting',
    );
  });

  it('refuses lists of the wrong length, naming them', () => {
    const seating = numbersFor(23).seating!;
    expect(() => fretworkPlan(BOUND_CONICAL, { seating })).toThrow(/seatingForceN has 23 entries; it must have 22/);
    const three = { ...numbersFor(22).seating!, bowAfterQuarterMm: [1, 2, 3] };
    expect(() => fretworkPlan(BOUND_CONICAL, { seating: three })).toThrow(
      /bowAfterQuarterMm has 3 entries; it must have 4/,
    );
  });

  it('is plain data: it survives a structured clone (a worker boundary)', () => {
    const plan = fretworkPlan(BOUND_CONICAL, numbersFor(22));
    expect(structuredClone(plan)).toEqual(plan);
  });
});

/** Whether a cell reads as it should in the file, by an independent route. */
function reads(text: string, cell: Cell): boolean {
  // A tenth of a micrometre, a tenth of a newton: half of the last digit that is written.
  const same = (written: string, value: number | string) =>
    typeof value === 'string' ? written === value : written !== '' && Math.abs(Number(written) - value) <= 0.0501;
  if (cell === null) return text === '';
  if (typeof cell !== 'object') return same(text, cell);
  return text.split(' ').every((written, index) => same(written, cell[index]));
}

function parse(csv: string): string[][] {
  const { data, errors } = Papa.parse<string[]>(csv, { skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

describe('CSV (RFC 4180), read back by papaparse', () => {
  it.each(PRESETS.map((preset) => [preset.id, preset.build] as const))('%s, every table', (_, build) => {
    const tables = planTables(fretworkPlan(build, numbersFor(build.fretCount)));
    expect(tables.map((table) => table.id)).toEqual(
      TABLE_IDS.filter((id) => id !== 'cutting' || build.wireForm === 'stick'),
    );
    for (const table of tables) {
      const [header, ...read] = parse(tableCsv(table));
      expect(header).toEqual(table.columns);
      expect(read).toHaveLength(table.rows.length);
      for (const [r, row] of table.rows.entries()) {
        expect(read[r]).toHaveLength(row.length);
        for (const [c, cell] of row.entries()) {
          expect([table.columns[c], cell, read[r][c], reads(read[r][c], cell)]).toEqual([
            table.columns[c],
            cell,
            read[r][c],
            true,
          ]);
        }
      }
    }
  });

  it('has keys with their units in the header, and the values themselves to a tenth of a micrometre', () => {
    const slots = planTables(fretworkPlan(BOUND_CONICAL))[0];
    const read = parse(tableCsv(slots));
    expect(read[0].slice(0, 3)).toEqual(['fret', 'fretXMm', 'fromLastFretMm']);
    // 628·(1 − 2^(−1/12)) = 35.24687 by hand; fret 12 is half of 628.
    expect([read[1][1], read[12][1]]).toEqual(['35.2469', '314']);
    expect(parse(tableCsv(planTables(fretworkPlan(UNBOUND_FLAT))[0]))[3][5]).toBe('flat');
  });

  it('writes a minus that machines read; people see a true one', () => {
    const quarters = planTables(fretworkPlan(BOUND_CONICAL, numbersFor(22))).find((table) => table.id === 'quarters')!;
    expect(parse(tableCsv(quarters))[1].slice(3, 7)).toEqual(['-0.06', '-0.09', '-0.04', '']);
    expect(shownTable(quarters, 'metric').rows[0][3]).toBe('−0.06');
  });
});

describe('tables', () => {
  it('never show NaN, Infinity or undefined, for any build (seed 7002)', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        for (const table of planTables(fretworkPlan(build, numbersFor(build.fretCount)))) {
          for (const system of ['metric', 'inch'] as const) {
            const { header, rows } = shownTable(table, system);
            for (const row of rows) {
              expect(row).toHaveLength(header.length);
              expect(row.join(' ')).not.toMatch(/NaN|Infinity|undefined|\[object/);
            }
          }
        }
      }),
      { seed: 7002, numRuns: 60 },
    );
  });

  it('checks carry their own quantity and unit, and no sentence', () => {
    const plan = fretworkPlan({ ...BOUND_CONICAL, kerfMm: 0.8, method: 'press' });
    const checks = planTables(plan).find((table) => table.id === 'checks')!;
    expect(parse(tableCsv(checks))[1]).toEqual([
      'stop',
      'no-bite',
      '',
      'kerfMm',
      'studBiteMm',
      '-0.02',
      'least',
      '0.03',
      'mm',
      '',
      'practice',
    ]);
  });
});
