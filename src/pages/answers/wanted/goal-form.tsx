/** What is wanted: how much relief, when, and with the rod at what. */
import { useId, useState } from 'react';
import { unitLabel } from '../../../speech/quantity.ts';
import { LEAST_TARGET_MM, MOST_TARGET_MM, type ReliefGoal } from '../../../mechanics/inversion/goal.ts';
import { useBackbow } from '../../../state/store.ts';
import { BowNumber } from '../../../kit/bow-number.tsx';
import { TypedNumber } from '../../../kit/typed-number.tsx';
import { timeText } from '../../../speech/times.ts';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

const RELIEF = {
  unit: 'mm',
  min: LEAST_TARGET_MM,
  max: MOST_TARGET_MM,
  step: 0.01,
  digits: 2,
} as const;

interface GoalFormProps {
  readonly goal: ReliefGoal;
  readonly setGoal: (goal: ReliefGoal) => void;
  /** Is the rod's setting asked for? Otherwise it counts as neutral. */
  readonly withRod?: boolean;
}

/** Settings that the rod of the build can take, per cent. */
function useRodRange(): { min: number; max: number } | null {
  const kind = useBackbow((state) => state.build.rodKind);
  if (kind === 'none') return null;
  return { min: kind === 'one-way' ? 0 : -100, max: 100 };
}

export function GoalForm({ goal, setGoal, withRod = false }: GoalFormProps) {
  const id = useId();
  const system = useBackbow((state) => state.unitSystem);
  const settleDays = useBackbow((state) => state.build.settleDays);
  const rod = useRodRange();
  const [refused, setRefused] = useState<string>();
  const take = (change: Partial<ReliefGoal>) => {
    setGoal({ ...goal, ...change });
    return { ok: true } as const;
  };
  return (
    <fieldset className="goal-form">
      <legend className="visually-hidden">{WANTED_WORDS.goal}</legend>
      <div className="goal-field">
        <label htmlFor={`${id}-relief`}>
          {WANTED_WORDS.relief}, {unitLabel('mm', system)}
        </label>
        <BowNumber
          id={`${id}-relief`}
          presumed="hollow"
          parameter={{ label: WANTED_WORDS.relief, ...RELIEF }}
          value={goal.reliefMm}
          system={system}
          describedBy={`${id}-refused`}
          invalid={refused !== undefined}
          change={(reliefMm) => take({ reliefMm })}
          refused={setRefused}
        />
      </div>
      <div className="goal-field">
        <label htmlFor={`${id}-when`}>{WANTED_WORDS.when}</label>
        <select
          id={`${id}-when`}
          value={goal.when}
          onChange={(event) => take({ when: event.currentTarget.value === 'strung' ? 'strung' : 'settled' })}
        >
          <option value="strung">{WANTED_WORDS.strung}</option>
          <option value="settled">{WANTED_WORDS.settled(timeText(settleDays))}</option>
        </select>
      </div>
      {withRod && rod && (
        <div className="goal-field">
          <label htmlFor={`${id}-rod`}>{WANTED_WORDS.rod}, %</label>
          <TypedNumber
            id={`${id}-rod`}
            parameter={{ label: WANTED_WORDS.rod, unit: '%', ...rod, step: 1, digits: 0 }}
            value={goal.rodPercent}
            system={system}
            describedBy={`${id}-rod-hint ${id}-refused`}
            invalid={refused !== undefined}
            change={(rodPercent) => take({ rodPercent })}
            refused={setRefused}
          />
          <span id={`${id}-rod-hint`} className="quiet">
            {WANTED_WORDS.rodHint}
          </span>
        </div>
      )}
      <p id={`${id}-refused`} className="refusal" role="alert">
        {refused}
      </p>
    </fieldset>
  );
}
