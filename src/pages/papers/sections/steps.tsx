/** The steps in order, to be ticked off, each with its numbers and its cautions. A caution is said in full once. */
import type { UnitSystem } from '../../../neck/units.ts';
import type { Caution, CautionId } from '../../../fretwork/checks/cautions.ts';
import type { Step } from '../../../fretwork/plan/steps.ts';
import { cautionText } from '../../../speech/cautions.ts';
import { CAUTION_WORDS } from '../../../speech/en/fretwork/cautions.ts';
import { STEP_WORDS } from '../../../speech/en/fretwork/steps.ts';
import { stepQuantityText, stepText, stepTitle } from '../../../speech/steps.ts';
import { Section } from '../section.tsx';

interface StepsProps {
  readonly steps: readonly Step[];
  readonly cautions: readonly Caution[];
  readonly system: UnitSystem;
}

export function Steps({ steps, cautions, system }: StepsProps) {
  const texts = new Map(cautions.map((caution) => [caution.id, cautionText(caution)]));
  const firstAt = new Map<CautionId, number>();
  for (const [index, step] of steps.entries()) {
    for (const id of step.cautions) if (!firstAt.has(id)) firstAt.set(id, index);
  }
  return (
    <Section id="steps" title={STEP_WORDS.title}>
      <ol className="sheet-steps">
        {steps.map((step, index) => (
          <li key={step.id}>
            <span className="step-box" aria-hidden="true" />
            <div>
              <h3>
                {index + 1}. {stepTitle(step)}
              </h3>
              <p>{stepText(step)}</p>
              {step.quantities.length > 0 && (
                <p className="step-numbers">
                  {step.quantities
                    .map((quantity) => stepQuantityText(quantity, system))
                    .map(({ name, text }) => (
                      <span key={name} className="sheet-pair">
                        {name}: <b>{text}</b>
                      </span>
                    ))}
                </p>
              )}
              {step.cautions.map((id) => (
                <p key={id} className="step-caution">
                  <strong>{CAUTION_WORDS.caution(CAUTION_WORDS.names[id])}</strong>{' '}
                  {firstAt.get(id) === index ? texts.get(id) : CAUTION_WORDS.asAt(firstAt.get(id)! + 1)}
                </p>
              ))}
            </div>
          </li>
        ))}
      </ol>
    </Section>
  );
}
