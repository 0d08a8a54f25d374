/** What the readings mean: go on, or stop and what; each choice with what it leads to, and what the checks stop told apart. */
import type { UnitSystem } from '../../neck/units.ts';
import { BENCH_ADVICE_WORDS } from '../../speech/en/bench/bench.ts';
import { biteText, choiceText, outcomeTexts, verdictText } from '../../speech/measured/fretting.ts';
import { isLimit } from '../../speech/checks.ts';
import { stripDoubtText } from '../../speech/measured/strips.ts';
import type { Asked } from '../../state/answers/use-answer.ts';
import { withRestChange } from '../../state/jobs/job-changes.ts';
import { neckOf, type AcceptedChange } from '../../state/jobs/job-document.ts';
import { useStock } from '../../state/stock/use-stock.ts';
import type { AdvisedOutcome, FrettingAdvice } from '../../verdict/fretting-advice.ts';
import { Asking } from '../answers/wanted/asking.tsx';
import { Raised } from '../workshop/checks/raised.tsx';
import type { InJob } from './job-view.tsx';
import { stockNames } from './stock-name.ts';

/** As many choices as are told, going on and the one that is advised among them. */
const MOST_CHOICES = 3;

/** The one that is advised first, then going on, then the surest. */
function toldOf({ outcomes, advised }: FrettingAdvice): AdvisedOutcome[] {
  const [goOn, ...others] = outcomes;
  const surest = others.filter(({ isOffered }) => isOffered).toSorted((a, b) => b.within - a.within);
  return [...new Set([outcomes[advised], goOn, ...surest])].slice(0, MOST_CHOICES);
}

interface AnswerProps extends InJob {
  readonly advice: Asked<FrettingAdvice>;
  readonly seated: number;
}

interface OutcomeProps extends Pick<InJob, 'job' | 'system'> {
  readonly outcome: AdvisedOutcome;
  readonly title: string;
  readonly isAdvised: boolean;
  readonly isTaken: boolean;
  /** Undefined for going on. */
  readonly take?: (() => void) | undefined;
}

function OutcomeCard({ outcome, title, isAdvised, isTaken, take, job, system }: OutcomeProps) {
  const [settled, ...more] = outcomeTexts(outcome, neckOf(job), job.wantedMm, system);
  return (
    <li className="bench-outcome" data-advised={isAdvised || undefined}>
      <h3>
        {title} {isAdvised && <span className="bench-mark">{BENCH_ADVICE_WORDS.advised}</span>}
      </h3>
      <p>
        <b>{settled}</b>
      </p>
      {more.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {/* That the model is known to disagree with practice somewhere is said with the neck, not with each of its slots. */}
      <Raised checks={outcome.raised.filter((check) => !isLimit(check))} system={system} />
      {take && !isTaken && (
        <button
          type="button"
          className={isAdvised ? 'bench-main' : ''}
          aria-label={BENCH_ADVICE_WORDS.takeName(title)}
          onClick={take}
        >
          {BENCH_ADVICE_WORDS.take}
        </button>
      )}
    </li>
  );
}

function Stopped({
  outcomes,
  title,
  system,
}: {
  readonly outcomes: readonly AdvisedOutcome[];
  readonly title: (outcome: AdvisedOutcome) => string;
  readonly system: UnitSystem;
}) {
  if (outcomes.length === 0) return null;
  return (
    <details>
      <summary>{BENCH_ADVICE_WORDS.stopped}</summary>
      {outcomes.map((outcome) => (
        <div key={title(outcome)}>
          <h3>{title(outcome)}</h3>
          <Raised checks={outcome.raised.filter(({ severity }) => severity === 'stop')} system={system} />
        </div>
      ))}
    </details>
  );
}

export function Answer({ job, advice: asked, seated, system, enter, next }: AnswerProps) {
  const { items } = useStock();
  const names = stockNames(items);
  const advice = asked.status === 'done' ? asked.value : null;
  if (!advice) return <Asking {...asked} working={BENCH_ADVICE_WORDS.working} />;
  const title = ({ change }: AdvisedOutcome) => choiceText(change, system, names);
  const taken = job.now.changes.find((change) => change.seated === seated);
  const isTaken = ({ change }: AdvisedOutcome) => JSON.stringify(change) === JSON.stringify(taken?.rest);
  async function take(change: AcceptedChange, said: string): Promise<void> {
    await enter(withRestChange(seated, change, Date.now()), BENCH_ADVICE_WORDS.taken(said));
    next();
  }
  return (
    <section className="bench-answer">
      <output className="bench-verdict">{verdictText(advice, system, names)}</output>
      {taken && <p className="bench-change">{BENCH_ADVICE_WORDS.taken(choiceText(taken.rest, system, names))}</p>}
      <h2>{BENCH_ADVICE_WORDS.choices}</h2>
      <ul className="bench-outcomes">
        {toldOf(advice).map((outcome) => {
          const { change } = outcome;
          return (
            <OutcomeCard
              key={title(outcome)}
              outcome={outcome}
              title={title(outcome)}
              isAdvised={outcome === advice.outcomes[advice.advised]}
              isTaken={isTaken(outcome)}
              job={job}
              system={system}
              take={change.code === 'go-on' ? undefined : () => void take(change, title(outcome))}
            />
          );
        })}
      </ul>
      <Stopped outcomes={advice.outcomes.filter(({ isOffered }) => !isOffered)} title={title} system={system} />
      <p className="quiet">{biteText(advice.bite)}</p>
      {advice.doubts.map((doubt) => (
        <p key={JSON.stringify(doubt)} className="quiet">
          {stripDoubtText(doubt, system)}
        </p>
      ))}
    </section>
  );
}
