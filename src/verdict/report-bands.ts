/** The bands of a prediction as JSON: where 90 of 100 such necks lie, and which inputs make most of that. */
import type { BitePosterior } from '../mechanics/bench-log/posterior.ts';
import type { ReadoutBand, Uncertainty } from '../mechanics/uncertainty/types.ts';

/** What has no number (a rod setting of no size, a day that never comes) is null; there is no minus zero. */
export const rounded = (value: number | null, digits: number): number | null =>
  value !== null && Number.isFinite(value) ? Number(value.toFixed(digits)) + 0 : null;

export function reportBand({ p05, p50, p95, drivers }: ReadoutBand, digits: number) {
  return {
    p05: rounded(p05, digits),
    p50: rounded(p50, digits),
    p95: rounded(p95, digits),
    mostlyFrom: drivers.map(({ input, share }) => ({ input, sharePercent: rounded(100 * share, 1) })),
  };
}

/** How the bands were made. @param log what a bench log left of the bite's scatter, where one was read */
export function reportHowBanded({ seed, samples }: Uncertainty, log?: Pick<BitePosterior, 'logSpread' | 'necks'>) {
  return {
    seed,
    samples,
    bite: log ? ('bench-log' as const) : ('unmeasured' as const),
    ...(log ? { benchLog: { necks: log.necks, biteLogSpread: rounded(log.logSpread, 4) } } : {}),
  };
}
