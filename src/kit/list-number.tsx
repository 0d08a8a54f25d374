/** A typed number inside a list of the build: ranges from the schema, its own message under it. */
import { LIST_NUMBERS } from '../neck/schema.ts';
import type { UnitSystem } from '../neck/units.ts';
import type { Outcome } from '../state/build-slice.ts';
import type { Scaled } from '../speech/scale.ts';
import { RefusedNumber } from './refused-number.tsx';
import { TypedNumber } from './typed-number.tsx';

const STEPS = {
  diameterMm: { step: 0.01, digits: 3 },
  coreMm: { step: 0.01, digits: 3 },
  besidePreviousMm: { step: 0.1, digits: 2 },
  thicknessMm: { step: 0.1, digits: 2 },
  modulusGPa: { step: 0.1, digits: 1 },
  densityKgM3: { step: 5, digits: 0 },
  crushingMPa: { step: 1, digits: 0 },
  widthMm: { step: 0.5, digits: 1 },
  daysIn: { step: 1, digits: 0 },
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
  const { min, max, unit } = LIST_NUMBERS[kind];
  const parameter = { label: name, min, max, unit, ...STEPS[kind] };
  return (
    <RefusedNumber>
      {(told) => (
        <TypedNumber parameter={parameter} value={value} system={system} name={name} change={change} {...told} />
      )}
    </RefusedNumber>
  );
}
