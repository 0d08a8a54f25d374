/** The bands of a prediction as JSON: where 90 of 100 such necks lie, and which inputs make most of that. */
import type { BitePosterior } from '../mechanics/bench-log/posterior.ts';
import { filedValue } from '../neck/quantities.ts';
import type { Unit } from '../neck/units.ts';
import type { ReadoutBand, Uncertainty } from '../mechanics/uncertainty/types.ts';

/** What has no number (a rod setting of no size, a day that never comes) is null. */
export const rounded = (value: number | null, unit: Unit): number | null =>
  value !== null && Number.isFinite(value) ? filedValue(value, unit) : null;

export function reportBand({ p05, p50, p95, drivers }: ReadoutBand, unit: Unit) {
  return {
    p05: rounded(p05, unit),
    p50: rounded(p50, unit),
    p95: rounded(p95, unit),
    mostlyFrom: drivers.map(({ input, share }) => ({ input, sharePercent: rounded(100 * share, '%') })),
  };
}

/** What narrowed the bands of a report: a bench log's bite, or strips and readings heard together. */
export type MeasuredFor = Pick<BitePosterior, 'logSpread' | 'necks'> | { readonly measurements: number };

/** How the bands were made. @param measured what narrowed them, where something did */
export function reportHowBanded({ seed, samples }: Uncertainty, measured?: MeasuredFor) {
  if (!measured) return { seed, samples, bite: 'unmeasured' as const };
  if ('measurements' in measured) {
    return { seed, samples, bite: 'measured' as const, measurements: measured.measurements };
  }
  const { necks, logSpread } = measured;
  return { seed, samples, bite: 'bench-log' as const, benchLog: { necks, biteLogSpread: rounded(logSpread, '') } };
}
