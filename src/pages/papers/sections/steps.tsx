/** The steps in order, to be ticked off, each with its numbers and its cautions. A caution is said in full once. */
import { withinSentence } from '../../../speech/language.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { formatQuantity } from '../../../speech/quantity.ts';
import type { Caution, CautionId } from '../../../fretwork/checks/cautions.ts';
import type { Step } from '../../../fretwork/plan/steps.ts';
import { PLAN_WORDS } from '../../../speech/en/papers.ts';
import { timeText } from '../../../speech/times.ts';
import { Section } from '../section.tsx';

/** With a capital at its beginning. */
const sentence = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1);

interface StepsProps {
  readonly steps: readonly Step[];
  readonly cautions: readonly Caution[];
  readonly system: UnitSystem;
}

export function Steps({ steps, cautions, system }: StepsProps) {
  const texts = new Map(cautions.map((caution) => [caution.id, caution.text]));
  const firstAt = new Map<CautionId, number>();
  for (const [index, step] of steps.entries()) {
    for (const id of step.cautions) if (!firstAt.has(id)) firstAt.set(id, index);
  }
  return (
    <Section id="steps" title={PLAN_WORDS.steps.title}>
      <ol className="sheet-steps">
        {steps.map((step, index) => (
          <li key={step.id}>
            <span className="step-box" aria-hidden="true" />
            <div>
              <h3>
                {index + 1}. {step.title}
              </h3>
              <p>{sentence(step.text)}</p>
              {step.quantities.length > 0 && (
                <p className="step-numbers">
                  {step.quantities.map(({ label, value, unit, digits }) => (
                    <span key={label} className="sheet-pair">
                      {label}:{' '}
                      <b>
                        {unit === 'day' && value > 0 ? timeText(value) : formatQuantity(value, unit, digits, system)}
                      </b>
                    </span>
                  ))}
                </p>
              )}
              {step.cautions.map((id) => (
                <p key={id} className="step-caution">
                  <strong>
                    {PLAN_WORDS.steps.mind}: {withinSentence(PLAN_WORDS.steps.names[id])}
                  </strong>{' '}
                  {firstAt.get(id) === index
                    ? sentence(texts.get(id) ?? '')
                    : `${PLAN_WORDS.steps.asAt(firstAt.get(id)! + 1)}.`}
                </p>
              ))}
            </div>
          </li>
        ))}
      </ol>
    </Section>
  );
}
