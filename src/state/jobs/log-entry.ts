/**
 * What a job tells the bench log: one entry. The log holds what was predicted for one kerf and one wire against what was read,
 * so that readings after a change for the rest stay with the job, and so do those between two quarters.
 */
import { fretsInAfterQuarters } from '../../fretwork/plan/seating-order.ts';
import { UNSAID, type EntryContent } from '../../mechanics/bench-log/entry.ts';
import { inOrder } from '../../mechanics/while-fretting/job.ts';
import { workingKerfMm } from '../../neck/kerf.ts';
import { neckOf, type BenchJob, type Gauge } from './job-document.ts';

/** All but its date. @param instrumentName what an instrument is called @returns null where nothing is for the log */
export function logEntryOf(
  job: Pick<BenchJob, 'neck' | 'now' | 'predicted' | 'isTry'>,
  instrumentName: (gauge: Gauge) => string,
): Omit<EntryContent, 'date'> | null {
  const build = neckOf(job);
  const changedAt = Math.min(Infinity, ...job.now.changes.map(({ seated }) => seated));
  const telling = inOrder(job.now.readings).filter(({ seated }) => seated <= changedAt);
  const ends = fretsInAfterQuarters(build).map(({ length }) => length);
  const after = ends.map((end) => telling.find(({ seated }) => seated === end));
  const read = after.filter((reading) => reading !== undefined);
  if (job.isTry || read.length === 0) return null;
  const [first, second, third, all] = after.map((reading) => reading?.measuredMm ?? null);
  const { forLog } = job.predicted;
  const where = <Value>(measured: number | null, value: Value) => (measured === null ? null : value);
  const hasQuarters = [first, second, third].some((measured) => measured !== null);
  const { tangWidthMm, studWidthMm, boardWood, method } = build;
  const coarsest = read.reduce((one, other) => (other.errorMm > one.errorMm ? other : one));
  return {
    ...UNSAID,
    ...forLog,
    neck: build.name,
    method,
    wood: boardWood,
    kerfMm: workingKerfMm(build, method),
    tangWidthMm,
    studWidthMm,
    instrument: instrumentName(coarsest.instrument),
    gaugeErrorMm: coarsest.errorMm,
    measuredFrettedMm: all,
    predictedFrettedMm: where(all, forLog.predictedFrettedMm),
    predictedFrettedFretsMm: where(all, forLog.predictedFrettedFretsMm),
    measuredStrungMm: null,
    predictedStrungMm: null,
    predictedStrungFretsMm: null,
    measuredQuarter1Mm: first,
    measuredQuarter2Mm: second,
    measuredQuarter3Mm: third,
    predictedQuarter1Mm: where(first, forLog.predictedQuarter1Mm),
    predictedQuarter2Mm: where(second, forLog.predictedQuarter2Mm),
    predictedQuarter3Mm: where(third, forLog.predictedQuarter3Mm),
    predictedPullMm: null,
    predictedRodMm: null,
    seatingOrder: hasQuarters ? forLog.seatingOrder : UNSAID.seatingOrder,
  };
}
