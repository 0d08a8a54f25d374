/** The straightedge is laid on: what is seen is entered, asked about where it is far off, and answered. */
import { useMemo, useRef } from 'react';
import { inOrder } from '../../mechanics/while-fretting/job.ts';
import { bowBandText, bowText, enteredBowText } from '../../speech/bow.ts';
import { BENCH_ADVICE_WORDS, BENCH_READING_WORDS } from '../../speech/en/bench/bench.ts';
import { useSpokenForBuild } from '../../state/bench-log/use-grip.ts';
import { withoutReading, withReading } from '../../state/jobs/job-changes.ts';
import { neckOf, type JobReading } from '../../state/jobs/job-document.ts';
import { formatWhen } from '../../state/library/when.ts';
import { Answer } from './answer.tsx';
import type { InJob } from './job-view.tsx';
import { LineChart } from './line-chart.tsx';
import { ReadingForm } from './reading-form.tsx';
import { ReadingQuestion } from './reading-question.tsx';
import type { Screen } from './screens.ts';
import { useAdvice } from './use-advice.ts';

type ReadScreenProps = InJob & { readonly screen: Extract<Screen, { kind: 'read' }> };

/** All readings of this quarter, those too that a later one took the place of. */
function Readings({
  readings,
  counting,
  system,
  enter,
}: Pick<InJob, 'system' | 'enter'> & {
  readonly readings: readonly JobReading[];
  readonly counting: ReadonlySet<JobReading>;
}) {
  if (readings.length === 0) return null;
  return (
    <section>
      <h2>{BENCH_READING_WORDS.list}</h2>
      <ul className="bench-readings">
        {readings.map((reading) => {
          const bow = enteredBowText(reading.measuredMm, system);
          return (
            <li key={reading.at}>
              <p>
                {BENCH_READING_WORDS.line(bow, reading.seated, formatWhen(reading.at))}
                {!counting.has(reading) && ` (${BENCH_READING_WORDS.replaced})`}
                {reading.note !== '' && (
                  <>
                    <br />
                    <span className="quiet">{reading.note}</span>
                  </>
                )}
              </p>
              <button
                type="button"
                aria-label={BENCH_READING_WORDS.removeName(bow, reading.seated)}
                onClick={() => void enter(withoutReading(reading))}
              >
                {BENCH_READING_WORDS.remove}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

export function ReadScreen({ screen, job, system, enter, next }: ReadScreenProps) {
  const { before, after, quarter } = screen;
  const build = neckOf(job);
  const evidence = useSpokenForBuild(build);
  // A later quarter does not speak for what was advised after this one.
  const soFar = useMemo(() => inOrder(job.now.readings.filter(({ seated }) => seated <= after)), [job, after]);
  const here = job.now.readings.filter(({ seated }) => seated > before && seated <= after);
  const latest = soFar.at(-1);
  const isRead = latest !== undefined && latest.seated > before;
  const { unsure, question, advice } = useAdvice({ job, readings: isRead ? soFar : [], evidence, enter });
  const expected = job.predicted.quarters[quarter - 1];
  const isFull = !isRead || latest.seated === after;
  const { at, program, stamp } = job.predicted;
  const chart = (
    <LineChart
      predicted={job.predicted}
      expected={isFull ? expected.line : null}
      lines={isRead && !unsure ? (advice.value?.lines ?? null) : null}
      measuredMm={isRead ? latest.measuredMm : null}
      system={system}
    />
  );
  const answer = useRef<HTMLDivElement>(null);
  const answered: InJob['enter'] = async (change, said) => {
    await enter(change, said);
    answer.current?.focus({ preventScroll: true });
    answer.current?.scrollIntoView({ block: 'start' });
  };
  const form = (
    <ReadingForm
      key={job.now.readings.length}
      from={before + 1}
      to={after}
      last={job.now.readings.at(-1)}
      system={system}
      enter={(reading) =>
        void answered(
          withReading(reading),
          BENCH_READING_WORDS.entered(enteredBowText(reading.measuredMm, system), reading.seated),
        )
      }
    />
  );
  return (
    <>
      <p>
        {BENCH_READING_WORDS.lay} {build.rodKind === 'none' ? '' : BENCH_READING_WORDS.slack}
      </p>
      <p>
        {BENCH_ADVICE_WORDS.predicted(
          bowText(expected.statedMm, system),
          bowBandText(expected.p05, expected.p95, system),
        )}
      </p>
      {/* What was entered is answered above it: the answer is brought into sight. */}
      <div ref={answer} className="bench-answering" tabIndex={-1}>
        {unsure ? (
          <ReadingQuestion reading={unsure} asked={question} system={system} enter={enter} />
        ) : (
          isRead && (
            <Answer job={job} advice={advice} seated={latest.seated} system={system} enter={enter} next={next} />
          )
        )}
      </div>
      {isRead ? chart : form}
      {isRead ? form : chart}
      <Readings readings={here} counting={new Set(soFar)} system={system} enter={enter} />
      <p className="quiet">{BENCH_ADVICE_WORDS.fixed(formatWhen(at), program, stamp)}</p>
    </>
  );
}
