/** One yes or no of the build. */
import { useId } from 'react';
import type { FlagParameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { ControlRow } from './control-row.tsx';
import { refusalText } from '../../../speech/refusal.ts';
import { useRefusal } from '../../../kit/use-refusal.ts';

interface FlagControlProps {
  readonly parameter: FlagParameter;
  readonly value: boolean;
  readonly system: UnitSystem;
  readonly change: (value: boolean) => Outcome;
}

export function FlagControl({ parameter, value, system, change }: FlagControlProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  return (
    <ControlRow
      id={id}
      parameter={parameter}
      message={message}
      field={
        <input
          id={`${id}-field`}
          type="checkbox"
          checked={value}
          aria-describedby={message ? `${id}-message` : `${id}-hint`}
          onChange={(event) => {
            const outcome = change(event.currentTarget.checked);
            const kept = value ? CONTROL_WORDS.yes : CONTROL_WORDS.no;
            setMessage(outcome.ok ? undefined : refusalText(outcome.problems, kept, system));
          }}
        />
      }
    />
  );
}
