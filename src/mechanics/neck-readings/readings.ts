/**
 * What the entries of the bench log say of the very neck that is asked about: everything that was read on it, each with the
 * error of its instrument. What was read with the rod snug is left out where the model is that of a slack one.
 */
import { fretsInAfterQuarters } from '../../fretwork/plan/seating-order.ts';
import type { Build } from '../../neck/build.ts';
import type { EntryContent, LogEntry } from '../bench-log/entry.ts';
import type { Method } from '../prediction-types.ts';

export const QUARTERS = [1, 2, 3] as const;
export type Quarter = (typeof QUARTERS)[number];

interface Read {
  readonly measuredMm: number;
  readonly errorMm: number;
}

export type NeckReading = Read &
  (
    | { readonly kind: 'pull'; readonly fret: number }
    /** Turns clockwise; negative = anticlockwise. */
    | { readonly kind: 'rod'; readonly fret: number; readonly turns: number }
    | { readonly kind: 'quarter'; readonly fretsIn: readonly number[] }
    | { readonly kind: 'fretted' }
    | { readonly kind: 'strung'; readonly days: number }
  );
export type ReadingKind = NeckReading['kind'];
export const READING_KINDS = ['pull', 'rod', 'quarter', 'fretted', 'strung'] as const satisfies readonly ReadingKind[];

/** What was read on a neck in one go. */
export interface ReadNeck {
  readonly method: Method;
  readonly readings: readonly NeckReading[];
  /** Frets of each quarter in the order in which they went in; undefined where no quarter was read. */
  readonly quarters: readonly (readonly number[])[] | undefined;
}

const measuredQuarter = (entry: EntryContent, quarter: Quarter) => entry[`measuredQuarter${quarter}Mm`];

/** @param build for the number of its frets @param kinds that count */
export function readingsOf(
  entry: LogEntry,
  build: Pick<Build, 'fretCount'>,
  kinds: readonly ReadingKind[] = READING_KINDS,
): ReadNeck {
  const { dialFret, dialErrorMm, gaugeErrorMm: errorMm, rodTurns, rodWay, rod, method } = entry;
  const isSlack = rod === 'slack';
  const order = { seatingOrder: entry.seatingOrder, fretCount: build.fretCount };
  const afterQuarters = fretsInAfterQuarters(order);
  const readings: NeckReading[] = [];
  const isDial = dialFret !== null && dialErrorMm !== null && dialFret <= build.fretCount;
  if (isDial && isSlack && entry.measuredPullMm !== null) {
    readings.push({ kind: 'pull', fret: dialFret, measuredMm: entry.measuredPullMm, errorMm: dialErrorMm });
  }
  if (isDial && rodTurns !== null && entry.measuredRodMm !== null) {
    const turns = rodWay === 'clockwise' ? rodTurns : -rodTurns;
    readings.push({ kind: 'rod', fret: dialFret, turns, measuredMm: entry.measuredRodMm, errorMm: dialErrorMm });
  }
  if (isSlack) {
    for (const quarter of QUARTERS) {
      const measuredMm = measuredQuarter(entry, quarter);
      const fretsIn = afterQuarters[quarter - 1];
      if (measuredMm !== null) readings.push({ kind: 'quarter', fretsIn, measuredMm, errorMm });
    }
    const { measuredFrettedMm, measuredStrungMm, strungDays } = entry;
    if (measuredFrettedMm !== null) readings.push({ kind: 'fretted', measuredMm: measuredFrettedMm, errorMm });
    if (measuredStrungMm !== null)
      readings.push({ kind: 'strung', days: strungDays ?? 0, measuredMm: measuredStrungMm, errorMm });
  }
  const counting = readings.filter(({ kind }) => kinds.includes(kind));
  const hasQuarters = counting.some(({ kind }) => kind === 'quarter');
  const before = [[], ...afterQuarters];
  return {
    method,
    readings: counting,
    quarters: hasQuarters ? afterQuarters.map((frets, at) => frets.slice(before[at].length)) : undefined,
  };
}

/** Does anything in it speak of a neck beyond its grip? Bows with frets in and strung are in the log for their bite. */
export function hasFurther(entry: LogEntry): boolean {
  return [
    entry.measuredPullMm,
    entry.measuredRodMm,
    ...QUARTERS.map((quarter) => measuredQuarter(entry, quarter)),
  ].some((measured) => measured !== null);
}
