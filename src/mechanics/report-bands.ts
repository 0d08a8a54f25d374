/** The bands of a prediction as JSON: where 90 of 100 such necks lie, and which inputs make most of that. */
import type { BitePosterior } from './bench-log/posterior.ts';
import type { MethodUncertainty, ReadoutBand, Uncertainty } from './uncertainty/types.ts';

/** What has no number (a rod setting of no size, a day that never comes) is null. */
const rounded = (value: number | null, digits: number): number | null =>
  value !== null && Number.isFinite(value) ? Number(value.toFixed(digits)) : null;

function reportBand({ p05, p50, p95, drivers }: ReadoutBand, digits: number) {
  return {
    p05: rounded(p05, digits),
    p50: rounded(p50, digits),
    p95: rounded(p95, digits),
    mostlyFrom: drivers.map(({ input, share }) => ({ input, sharePercent: rounded(100 * share, 1) })),
  };
}

/** Relief in mm, forces in N, rod settings in per cent of its range, times in days since stringing. */
export function reportMethodBands(method: MethodUncertainty) {
  const { rodPercentForTarget: rod, timeCourse } = method;
  const { flat } = timeCourse;
  return {
    frettedReliefMm: reportBand(method.fretted, 4),
    strungReliefMm: reportBand(method.strung, 4),
    settledReliefMm: reportBand(method.settled, 4),
    rodSetReliefMm: reportBand(method.rodSet, 4),
    meanWedgeForceN: reportBand(method.wedgeForceN, 1),
    rodPercentForTarget: rod && { ...reportBand(rod, 1), possiblePercent: rounded(100 * rod.chance, 1) },
    flatAfterDays: {
      p05: rounded(flat.p05Days, 2),
      p50: rounded(flat.p50Days, 2),
      p95: rounded(flat.p95Days, 2),
      fromStartPercent: rounded(100 * flat.shareFromStart, 1),
      notInTenYearsPercent: rounded(100 * flat.shareNever, 1),
    },
  };
}

/** How the bands were made. @param log what a bench log left of the bite's scatter, where one was read */
export function reportHowBanded({ seed, samples }: Uncertainty, log?: Pick<BitePosterior, 'logSpread' | 'necks'>) {
  return {
    share: 'p05 and p95 hold 90 of 100 such necks between them',
    seed,
    samples,
    bite: log
      ? 'scatter of the bite as the bench log leaves it; the bite factor is that of the build'
      : 'scatter of an unmeasured bite: no bench log was read; the bite factor is that of the build',
    ...(log ? { benchLog: { necks: log.necks, biteLogSpread: rounded(log.logSpread, 4) } } : {}),
  };
}
