/**
 * The study of what is read on a neck itself: synthetic necks, each with a truth drawn from the spreads of its inputs and a
 * grip of its own for each quarter of its frets, read with the errors that are assumed. Does the neck lie in the bands that
 * its readings leave? What was found is kept in `neck-readings.json`; the validation page shows it, a test makes some again.
 */
import { readFileSync } from 'node:fs';
import { fretsInAfterQuarters, seatingQuarters } from '../../src/fretwork/plan/seating-order.ts';
import { expectedMm, nutTurnsOf } from '../../src/mechanics/neck-readings/expected.ts';
import { sigmaMm, type OwnNeck } from '../../src/mechanics/neck-readings/likelihood.ts';
import type { NeckReading, ReadingKind } from '../../src/mechanics/neck-readings/readings.ts';
import { QUARTER_LOG_SPREAD, USUAL_DIAL_ERROR_MM } from '../../src/mechanics/neck-readings/spreads.ts';
import { gripPosterior } from '../../src/mechanics/try-strip/grip-posterior.ts';
import { withQuarters } from '../../src/mechanics/uncertainty/quarters.ts';
import { factorsOf } from '../../src/mechanics/uncertainty/sampling.ts';
import { coverageOf } from './study.ts';
import {
  bandsWith,
  drawAll,
  each,
  model,
  NECK,
  normals,
  OUTCOMES,
  outcomesOf,
  rowsOf,
  type Outcome,
} from './workshops.ts';

/** Workshops of a kind. */
export const NECKS_READ = 500;
const FIRST_SEED = 50_000;
const GAUGE_MM = 0.02;

const afterQuarters = fretsInAfterQuarters(NECK);
const QUARTERS = seatingQuarters(NECK);
const FELT = { measuredMm: 0, errorMm: GAUGE_MM } as const;
const DIALLED = { measuredMm: 0, errorMm: USUAL_DIAL_ERROR_MM, fret: 7 } as const;

const PULL: NeckReading = { ...DIALLED, kind: 'pull' };
const ROD: NeckReading = { ...DIALLED, kind: 'rod', turns: 0.5 };
const BY_QUARTERS: readonly NeckReading[] = [
  ...([1, 2, 3] as const).map((quarter): NeckReading => {
    return { ...FELT, kind: 'quarter', fretsIn: afterQuarters[quarter - 1] };
  }),
  { ...FELT, kind: 'fretted' },
];

/** A kind of reading, with what is read. */
export const NECK_KINDS = [
  { id: 'pull', says: 'the strings’ pull, on a dial', readings: [PULL] },
  { id: 'rod', says: 'half a turn of the nut, on a dial', readings: [ROD] },
  { id: 'quarters', says: 'the bow after each quarter of the frets', readings: BY_QUARTERS },
  { id: 'all', says: 'all of it', readings: [PULL, ROD, ...BY_QUARTERS] },
] as const satisfies readonly { id: string; says: string; readings: readonly NeckReading[] }[];
export type NeckKind = (typeof NECK_KINDS)[number];

export interface NeckRow {
  readonly kind: NeckKind['id'];
  /** As in strips.json: one hexadecimal digit a workshop. */
  readonly hits: string;
}
export interface NeckStudy {
  readonly rows: readonly NeckRow[];
  /** Widths of the 90 % bands when everything is read as stated. */
  readonly after: Readonly<Record<NeckKind['id'], Readonly<Record<Outcome, number>>>>;
}

export function readNeckStudy(): NeckStudy {
  return JSON.parse(readFileSync(new URL('neck-readings.json', import.meta.url), 'utf8')) as NeckStudy;
}

const hasQuarters = (readings: readonly NeckReading[]) =>
  readings.some(({ kind }: { kind: ReadingKind }) => kind === 'quarter');

/** A neck with these readings made as the truth gives them. @param error of each, in standard deviations */
function readOf(kind: NeckKind, deviates: Float64Array, quarterLogs: readonly number[], error: () => number) {
  const quarters = { frets: QUARTERS, logs: quarterLogs.map((log) => Float64Array.of(log)) };
  const draws = withQuarters(factorsOf(model(), deviates), quarters);
  const empty: OwnNeck = { build: NECK, model: model(), read: [] };
  const nut = nutTurnsOf(NECK, model(), 'press');
  const readings = kind.readings.map((reading) => {
    const [expected] = expectedMm(draws, 'press', nut, reading);
    return { ...reading, measuredMm: expected + sigmaMm(empty, reading, expected) * error() };
  });
  const read = { method: 'press', readings, quarters: hasQuarters(readings) ? QUARTERS : undefined } as const;
  return { truth: outcomesOf(draws), own: { ...empty, read: [read] } };
}

function bandsAfterReading(own: OwnNeck) {
  const { deviates, quarters } = gripPosterior(NECK, [], [], { own });
  return bandsWith(deviates, quarters);
}

/** The digit of one workshop: a bit for each outcome that lies in its band. @param index from 0 */
export function neckDigitOf(kind: NeckKind, index: number): string {
  const normal = normals(FIRST_SEED + index);
  const truth = rowsOf(drawAll(normal));
  const logs = QUARTERS.map(() => QUARTER_LOG_SPREAD * normal());
  const found = readOf(kind, truth, logs, normal);
  const bands = bandsAfterReading(found.own);
  const bits = OUTCOMES.map((outcome, bit) => {
    const value = found.truth[outcome][0];
    return value >= bands[outcome].p05 && value <= bands[outcome].p95 ? 2 ** bit : 0;
  });
  return bits.reduce((sum, bit) => sum + bit, 0).toString(16);
}

export function neckRow(kind: NeckKind): NeckRow {
  return { kind: kind.id, hits: Array.from({ length: NECKS_READ }, (_, index) => neckDigitOf(kind, index)).join('') };
}

export function neckWidths(kind: NeckKind): Record<Outcome, number> {
  const zeros = rowsOf(drawAll(() => 0));
  const { own } = readOf(
    kind,
    zeros,
    QUARTERS.map(() => 0),
    () => 0,
  );
  const bands = bandsAfterReading(own);
  return each((outcome) => Number((bands[outcome].p95 - bands[outcome].p05).toPrecision(3)));
}

/** Share of the necks of a row that lie in their bands. */
export const neckCoverage = ({ hits }: NeckRow, outcome: Outcome): number => coverageOf({ hits }, outcome);

/** The table of the validation page. */
export function neckStudySection({ rows, after }: NeckStudy, before: Readonly<Record<Outcome, number>>): string[] {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
  const width = (outcome: Outcome, value: number) => (outcome === 'force' ? `${value} N` : `${value} mm`);
  const head = ['read on the neck', ...OUTCOMES.flatMap((outcome) => [`${outcome}: in its band`, 'width'])];
  const body = rows.map((row) => {
    const { says } = NECK_KINDS.find(({ id }) => id === row.kind)!;
    const cells = OUTCOMES.flatMap((outcome) => [
      percent(neckCoverage(row, outcome)),
      width(outcome, after[row.kind][outcome]),
    ]);
    return line([says, ...cells]);
  });
  const nothing = line(['nothing', ...OUTCOMES.flatMap((outcome) => ['', width(outcome, before[outcome])])]);
  return [
    '## Read on the neck itself: how often the bands hold',
    `Made by \`npm run study -- necks\`, seeded: ${NECKS_READ} synthetic necks of the first preset for each kind of reading, press fit, each with a truth drawn from the spreads of its inputs and with a grip of its own for each quarter of its frets, read with the errors that are assumed (dial over fret 7 ±0.01 mm, feelers ±0.02 mm, and what the model may be off by). The neck of the truth lies in the 90 % band that its readings leave in so many of them; the widths are those left when everything is read as stated. With a true 90 %, between 87 and 93 % lie inside 95 times in 100.`,
    [line(head), line(head.map(() => '---')), nothing, ...body].join('\n'),
  ];
}
