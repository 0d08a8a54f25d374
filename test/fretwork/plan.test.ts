import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { toCsv } from '../../src/fretwork/plan/csv.ts';
import { fretworkPlan, type PlanNumbers } from '../../src/fretwork/plan/plan.ts';
import {
  planTables,
  shownTable,
  TABLE_IDS,
  tableFileName,
  type Cell,
  type Table,
} from '../../src/fretwork/plan/tables.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, UNBOUND_FLAT } from './boards.ts';
import { expectNear } from './near.ts';

/** Made-up numbers in place of the mechanics'. */
function numbersFor(frets: number): PlanNumbers {
  const each = (value: number) => Array.from({ length: frets }, (_, index) => value + index);
  return {
    stringStressRatios: [0.5],
    rod: { slackReliefMm: 0.2, leastReliefMm: -0.2, mostReliefMm: 0.6 },
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
    expectNear(plan.seating.forces![11]!.pressureMPa, 4.84207, 2e-6, 'worked by hand to five decimals');
  });

  it('leaves out what needs numbers that it was not given', () => {
    const plan = fretworkPlan(UNBOUND_FLAT);
    expect(plan.levelling).toBeUndefined();
    expect(plan.seating.forces).toBeUndefined();
    expect(plan.glueRecipe).toBeUndefined();
    expect(planTables(plan).map((table) => table.id)).toEqual(TABLE_IDS.filter((id) => id !== 'levelling'));
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

const MM_PER_INCH = 25.4;

/** Whether a cell reads as it should in the file, by an independent route. */
function reads(text: string, cell: Cell, digits: number, scale: number): boolean {
  const same = (shown: string, value: number) => Math.abs(Number(shown) - value * scale) <= 0.5001 * 10 ** -digits;
  if (cell === null) return text === '';
  if (typeof cell === 'string') return text === cell;
  if (typeof cell === 'number') return text !== '' && same(text, cell);
  if ('value' in cell) return text.startsWith(cell.before ?? '');
  return text.split(' ').every((shown, index) => same(shown, cell[index]!));
}

function parse(csv: string): string[][] {
  const { data, errors } = Papa.parse<string[]>(csv, { skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

describe('CSV (RFC 4180), read back by papaparse', () => {
  it.each(PRESETS.map((preset) => [preset.id, preset.build] as const))(
    '%s, every table, both unit systems',
    (_, build) => {
      const plan = fretworkPlan(build, numbersFor(build.fretCount));
      const tables = planTables(plan);
      expect(tables.map((table) => table.id)).toEqual(
        TABLE_IDS.filter((id) => id !== 'cutting' || build.wireForm === 'stick'),
      );
      for (const table of tables) {
        const metric = parse(toCsv(table, 'metric'));
        const inch = parse(toCsv(table, 'inch'));
        expect(metric).toHaveLength(table.rows.length + 1);
        expect(metric.every((row) => row.length === table.columns.length)).toBe(true);
        for (const [r, row] of table.rows.entries()) {
          for (const [c, cell] of row.entries()) {
            const { unit, digits = 2 } = table.columns[c]!;
            expect([cell, metric[r + 1]![c], reads(metric[r + 1]![c]!, cell, digits, 1)]).toEqual([
              cell,
              metric[r + 1]![c],
              true,
            ]);
            const inches = unit !== 'mm' || reads(inch[r + 1]![c]!, cell, digits + 1, 1 / MM_PER_INCH);
            expect([cell, inch[r + 1]![c], inches]).toEqual([cell, inch[r + 1]![c], true]);
          }
        }
      }
    },
  );

  it('has units in the header, in both systems, and positions to 0.01 mm and 0.001 in', () => {
    const slots = planTables(fretworkPlan(BOUND_CONICAL))[0]!;
    const metric = parse(toCsv(slots, 'metric'));
    const inch = parse(toCsv(slots, 'inch'));
    expect(metric[0]!.slice(0, 3)).toEqual(['Fret', 'From the nut (mm)', 'From the last fret (mm)']);
    expect(inch[0]!.slice(0, 3)).toEqual(['Fret', 'From the nut (in)', 'From the last fret (in)']);
    expect([metric[12]![1], inch[12]![1]]).toEqual(['314.00', '12.362']);
    expect(metric[12]!.slice(4, 6)).toEqual(['52.73', '360']);
    expect(parse(toCsv(planTables(fretworkPlan(UNBOUND_FLAT))[0]!, 'metric'))[3]![5]).toBe('flat');
  });

  it('writes an ASCII minus in numbers', () => {
    const quarters = planTables(fretworkPlan(BOUND_CONICAL, numbersFor(22))).find((table) => table.id === 'quarters')!;
    expect(parse(toCsv(quarters, 'metric'))[1]!.slice(3, 7)).toEqual(['-0.06', '-0.09', '-0.04', '']);
    expect(shownTable(quarters, 'metric').rows[0]![3]).toBe('−0.06');
  });

  it('quotes commas, quotes and line ends; every record ends in CRLF (seed 7001)', () => {
    const words = fc.array(
      fc.array(fc.string({ unit: fc.constantFrom('a', ',', '"', '\r', '\n', ' ', 'é', ';') }), {
        minLength: 2,
        maxLength: 2,
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(words, (rows) => {
        const table: Table = {
          id: 'checks',
          title: 't',
          columns: [
            { id: 'a', label: 'A "quoted", label' },
            { id: 'b', label: 'B' },
          ],
          rows,
        };
        const csv = toCsv(table, 'metric');
        expect(csv.endsWith('\r\n')).toBe(true);
        const { data } = Papa.parse<string[]>(csv.slice(0, -2), { newline: '\r\n', delimiter: ',' });
        expect(data).toEqual([['A "quoted", label', 'B'], ...rows]);
      }),
      { seed: 7001, numRuns: 300 },
    );
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

  it('checks carry their own unit', () => {
    const plan = fretworkPlan({ ...BOUND_CONICAL, kerfMm: 0.8, method: 'press' });
    const checks = planTables(plan).find((table) => table.id === 'checks')!;
    expect(shownTable(checks, 'metric').rows[0]!.slice(0, 5)).toEqual([
      'stop',
      'no-bite',
      'kerfMm',
      '−0.020 mm',
      'at least 0.030 mm',
    ]);
    expect(shownTable(checks, 'inch').rows[0]!.slice(3, 5)).toEqual(['−0.0008 in', 'at least 0.0012 in']);
  });

  it('name their files after the build', () => {
    const table = planTables(fretworkPlan(UNBOUND_FLAT))[0]!;
    expect(tableFileName({ name: 'Nº 12 – Zoë’s “neck”' }, table)).toBe('no-12-zoe-s-neck-slots.csv');
    expect(tableFileName({ name: ' / ' }, table)).toBe('neck-slots.csv');
  });
});
