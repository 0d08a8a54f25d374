/** A neck handed over to the bench, for tests. */
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { handedOver } from '../../../src/state/jobs/hand-over.ts';
import type { BenchJob, JobReading } from '../../../src/state/jobs/job-document.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);

export async function aJob(change: Partial<Build> = {}, isTry = false): Promise<BenchJob> {
  const build = { ...defaultBuild(), name: 'Walnut seven', ...change };
  const uncertainty = await estimator.estimate(build, { samples: 100 });
  return handedOver({
    build,
    prediction: predictor.predict(build),
    uncertainty: uncertainty!,
    made: { stamp: 'HGKDRT-BXQ-PLM', program: '0.1.0', date: '2026-11-29' },
    isTry,
    at: 1_000_000,
  });
}

export const aReading = (seated: number, measuredMm: number, change: Partial<JobReading> = {}): JobReading => ({
  seated,
  measuredMm,
  errorMm: 0.02,
  instrument: 'feelers',
  note: '',
  isSure: true,
  at: 2_000_000 + seated,
  ...change,
});
