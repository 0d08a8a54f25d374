/** A typed number that stands alone: its label and unit before it, why it was refused under it. It takes what is in range. */
import { useId } from 'react';
import type { UnitSystem } from '../neck/units.ts';
import { displayScale, type Scaled } from '../speech/scale.ts';
import { TypedNumber } from './typed-number.tsx';
import { useRefusal } from './use-refusal.ts';

interface LabelledNumberProps {
  readonly className: string;
  readonly parameter: Scaled & { readonly label: string };
  /** Where the label has its unit in words. */
  readonly hideUnit?: boolean;
  readonly value: number | null;
  readonly system: UnitSystem;
  readonly set: (value: number) => void;
  /** Takes the value away; without it a field that is emptied keeps its value. */
  readonly empty?: () => void;
}

export function LabelledNumber({ className, parameter, hideUnit, value, system, set, empty }: LabelledNumberProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  const { unitLabel } = displayScale(parameter, system);
  return (
    <div className={className}>
      <label htmlFor={id}>
        {parameter.label}
        {unitLabel !== '' && !hideUnit && <span className="quiet">, {unitLabel}</span>}
      </label>
      <TypedNumber
        id={id}
        parameter={parameter}
        value={value}
        system={system}
        describedBy={`${id}-message`}
        invalid={message !== undefined}
        change={(wanted) => {
          set(wanted);
          return { ok: true };
        }}
        {...(empty ? { empty } : {})}
        refused={setMessage}
      />
      <p id={`${id}-message`} className="refusal" role="alert">
        {message}
      </p>
    </div>
  );
}
