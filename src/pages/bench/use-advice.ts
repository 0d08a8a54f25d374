/** What readings mean: whether one of them is far off, and when none is, go on or what to do with the rest. */
import type { Evidence } from '../../mechanics/neck-readings/evidence.ts';
import type { BowReading } from '../../mechanics/while-fretting/job.ts';
import type { FrettingQuestion } from '../../mechanics/while-fretting/question.ts';
import type { FrettingAdvice } from '../../verdict/fretting-advice.ts';
import { useAnswer, type Asked } from '../../state/answers/use-answer.ts';
import { assured } from '../../state/jobs/job-changes.ts';
import { neckBefore, type BenchJob, type JobReading } from '../../state/jobs/job-document.ts';
import { stockForRest } from '../../state/stock/stock-item.ts';
import { useStock } from '../../state/stock/use-stock.ts';
import type { InJob } from './job-view.tsx';

interface Wish extends Pick<InJob, 'enter'> {
  readonly job: BenchJob;
  /** In the order of the work, one for each number of frets. */
  readonly readings: readonly JobReading[];
  readonly evidence: Evidence;
}

export interface Advised {
  /** The first reading that nobody is sure of yet. */
  readonly unsure: JobReading | undefined;
  readonly question: Asked<{ readonly question: FrettingQuestion | null }>;
  readonly advice: Asked<FrettingAdvice>;
}

const bowOf = ({ seated, measuredMm, errorMm }: JobReading): BowReading => ({ seated, measuredMm, errorMm });

export function useAdvice({ job, readings, evidence, enter }: Wish): Advised {
  const { items } = useStock();
  const stock = stockForRest(items);
  const unsure = readings.find(({ isSure }) => !isSure);
  const bows = readings.map(bowOf);
  const latest = readings.at(-1)?.seated ?? 0;
  const { wantedMm } = job;
  // What was decided after the last reading is among the choices, and not what they start from.
  const build = neckBefore(job, latest);
  const at = [build.regions, bows, evidence, job.id];
  const question = useAnswer<{ readonly question: FrettingQuestion | null }>(
    unsure ? JSON.stringify(['far?', unsure.at, ...at]) : null,
    async (api) => {
      const reading = unsure!;
      const earlier = bows.filter(({ seated }) => seated < reading.seated);
      const asked = await api.frettingQuestion(
        { build: neckBefore(job, reading.seated), readings: earlier, evidence },
        bowOf(reading),
      );
      if (asked?.question === null) await enter(assured(reading));
      return asked;
    },
  );
  const advice = useAnswer<FrettingAdvice>(
    unsure === undefined && readings.length > 0 ? JSON.stringify(['advice', stock, wantedMm, ...at]) : null,
    (api) => api.fretting({ build, readings: bows, evidence, wantedMm }, stock),
  );
  return { unsure, question, advice };
}
