/** One step: what is done, its numbers large, its cautions in full. */
import { cautionsFor } from '../../fretwork/checks/cautions.ts';
import type { Step } from '../../fretwork/plan/steps.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { cautionText } from '../../speech/cautions.ts';
import { CAUTION_WORDS } from '../../speech/en/fretwork/cautions.ts';
import { stepQuantityText, stepText } from '../../speech/steps.ts';
import { neckNow, type BenchJob } from '../../state/jobs/job-document.ts';

interface StepProps {
  readonly job: BenchJob;
  readonly step: Step;
  readonly system: UnitSystem;
}

export function Cautions({ job, step }: Omit<StepProps, 'system'>) {
  const called = cautionsFor(neckNow(job));
  return step.cautions.map((id) => (
    <p key={id} className="bench-caution">
      <strong>{CAUTION_WORDS.caution(CAUTION_WORDS.names[id])}</strong> {cautionText(called.get(id)!)}
    </p>
  ));
}

export function StepScreen({ job, step, system }: StepProps) {
  return (
    <>
      <p>{stepText(step)}</p>
      {step.quantities.length > 0 && (
        <dl className="bench-numbers">
          {step.quantities
            .map((quantity) => stepQuantityText(quantity, system))
            .map(({ name, text }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>{text}</dd>
              </div>
            ))}
        </dl>
      )}
      <Cautions job={job} step={step} />
    </>
  );
}
