/** What a worker answers while frets go in; loaded when somebody is at it. */
import type { Predictor } from '../mechanics/predict.ts';
import { runSteps } from '../mechanics/steps.ts';
import type { FrettingJob } from '../mechanics/while-fretting/advice.ts';
import type { BowReading } from '../mechanics/while-fretting/job.ts';
import { questionSteps, type FrettingQuestion } from '../mechanics/while-fretting/question.ts';
import type { Estimator } from '../mechanics/uncertainty/estimate.ts';
import { frettingSteps, type FrettingAdvice, type StockForRest } from '../verdict/fretting-advice.ts';

/** Null when something newer came. */
export async function frettingAdvice(
  predictor: Predictor,
  estimator: Estimator,
  job: Omit<FrettingJob, 'choices'>,
  stock: StockForRest,
  isStale: () => boolean,
): Promise<FrettingAdvice | null> {
  const run = await runSteps(frettingSteps(predictor, estimator, job, stock), isStale);
  return run && run.value;
}

/** What there is to ask about a reading, if anything; null when something newer came. */
export async function frettingQuestion(
  estimator: Estimator,
  job: Pick<FrettingJob, 'build' | 'readings' | 'evidence'>,
  reading: BowReading,
  isStale: () => boolean,
): Promise<{ readonly question: FrettingQuestion | null } | null> {
  const run = await runSteps(questionSteps(estimator, job, reading), isStale);
  return run && { question: run.value };
}
