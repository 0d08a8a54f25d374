/** A typed number inside a list of the build: ranges from the schema, its own message under it. */
import { useId } from 'react';
import { LIST_NUMBERS } from '../neck/schema.ts';
import type { UnitSystem } from '../neck/units.ts';
import type { Outcome } from '../state/build-slice.ts';
import type { Scaled } from '../speech/scale.ts';
import { TypedNumber } from './typed-number.tsx';
import { useRefusal } from './use-refusal.ts';

const STEPS = {
  diameterMm: { step: 0.01, digits: 3 },
  coreMm: { step: 0.01, digits: 3 },
  thicknessMm: { step: 0.1, digits: 2 },
  fromFret: { step: 1, digits: 0, integer: true },
  toFret: { step: 1, digits: 0, integer: true },
  kerfMm: { step: 0.005, digits: 3 },
  tangWidthMm: { step: 0.005, digits: 3 },
  studWidthMm: { step: 0.005, digits: 3 },
} as const satisfies Record<string, Pick<Scaled, 'step' | 'digits' | 'integer'>>;

type ListNumberId = keyof typeof STEPS;

interface ListNumberProps {
  readonly kind: ListNumberId;
  /** Name for assistive technology and for the messages. */
  readonly name: string;
  readonly value: number;
  readonly system: UnitSystem;
  readonly change: (value: number) => Outcome;
}

export function ListNumber({ kind, name, value, system, change }: ListNumberProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  const { min, max, unit } = LIST_NUMBERS[kind]!;
  return (
    <>
      <TypedNumber
        parameter={{ label: name, min, max, unit, ...STEPS[kind] }}
        value={value}
        system={system}
        name={name}
        describedBy={`${id}-message`}
        invalid={message !== undefined}
        change={change}
        refused={setMessage}
      />
      <span id={`${id}-message`} className="refusal" role="alert">
        {message}
      </span>
    </>
  );
}
