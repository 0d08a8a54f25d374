/** A reading that is far off is asked about before anything is advised from it; it is kept meanwhile. */
import type { FrettingQuestion } from '../../mechanics/while-fretting/question.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { BENCH_READING_WORDS } from '../../speech/en/bench/bench.ts';
import { frettingQuestionText } from '../../speech/measured/fretting.ts';
import type { Asked } from '../../state/answers/use-answer.ts';
import { assured, withoutReading } from '../../state/jobs/job-changes.ts';
import type { JobReading } from '../../state/jobs/job-document.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import type { InJob } from './job-view.tsx';

interface ReadingQuestionProps extends Pick<InJob, 'enter'> {
  readonly reading: JobReading;
  readonly asked: Asked<{ readonly question: FrettingQuestion | null }>;
  readonly system: UnitSystem;
}

export function ReadingQuestion({ reading, asked, system, enter }: ReadingQuestionProps) {
  const question = asked.status === 'done' ? asked.value?.question : undefined;
  const isUnanswered = asked.status === 'failed' || asked.status === 'given-up';
  return (
    <section className="bench-question">
      <Asking {...asked} working={BENCH_READING_WORDS.asking} />
      {(question || isUnanswered) && (
        <div role="alert">
          <p>{question ? frettingQuestionText(question, system) : BENCH_READING_WORDS.notAsked}</p>
          <div className="bench-pair">
            <button type="button" onClick={() => void enter(withoutReading(reading))}>
              {BENCH_READING_WORDS.correct}
            </button>
            <button type="button" onClick={() => void enter(assured(reading))}>
              {BENCH_READING_WORDS.keep}
            </button>
          </div>
        </div>
      )}
    </section>
  );
}
