/** One choice of the build, as a native select. */
import { useId, type ReactNode } from 'react';
import type { ChoiceParameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { ControlRow } from './control-row.tsx';
import { refusalText } from '../../../speech/refusal.ts';
import { useRefusal } from '../../../kit/use-refusal.ts';
import { optionName, parameterName, woodNameIn } from '../../../speech/names.ts';

interface ChoiceControlProps {
  readonly parameter: ChoiceParameter;
  readonly value: string;
  readonly system: UnitSystem;
  readonly change: (value: string) => Outcome;
  /** What has to be said under it. */
  readonly children?: ReactNode;
}

export function ChoiceControl({ parameter, value, system, change, children }: ChoiceControlProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  const ownWoods = useBackbow((state) => state.build.ownWoods);
  const labelOf = (wanted: string) =>
    parameter.id === 'boardWood' ? woodNameIn({ ownWoods }, wanted) : optionName(parameter.id, wanted);

  function choose(wanted: string): void {
    const outcome = change(wanted);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, labelOf(value), system));
  }

  return (
    <ControlRow
      id={id}
      parameter={parameter}
      message={message}
      reset={
        value === parameter.default
          ? undefined
          : {
              name: CONTROL_WORDS.resetName(parameterName(parameter.id), labelOf(parameter.default)),
              run: () => choose(parameter.default),
            }
      }
      field={
        <select
          id={`${id}-field`}
          value={value}
          aria-describedby={message ? `${id}-message` : `${id}-hint`}
          aria-invalid={message !== undefined || undefined}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          {parameter.options.map((option) => (
            <option key={option} value={option}>
              {labelOf(option)}
            </option>
          ))}
        </select>
      }
    >
      {children}
    </ControlRow>
  );
}
