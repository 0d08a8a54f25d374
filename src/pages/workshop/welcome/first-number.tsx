/** A number of the build with its own short name; refused like in its control. */
import { useId } from 'react';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { TypedNumber } from '../../../kit/typed-number.tsx';
import { useRefusal } from '../../../kit/use-refusal.ts';
import { displayScale } from '../../../speech/scale.ts';
import type { Outcome } from '../../../state/build-slice.ts';

interface FirstNumberProps {
  readonly parameter: NumberParameter;
  readonly label: string;
  readonly value: number;
  readonly system: UnitSystem;
  readonly change: (value: number) => Outcome;
}

export function FirstNumber({ parameter, label, value, system, change }: FirstNumberProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  return (
    <div className="first-number">
      <label htmlFor={id}>
        {label}
        <span className="quiet">, {displayScale(parameter, system).unitLabel}</span>
      </label>
      <TypedNumber
        id={id}
        parameter={{ ...parameter, label }}
        value={value}
        system={system}
        describedBy={`${id}-message`}
        invalid={message !== undefined}
        change={change}
        refused={setMessage}
      />
      <p id={`${id}-message`} className="refusal" role="alert">
        {message}
      </p>
    </div>
  );
}
