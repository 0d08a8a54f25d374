/** − and + on either side of the field of a number, for fingers: a mouse has the slider, and keys have their arrows. */
import type { ReactNode } from 'react';
import { Stepper } from '../../../kit/steppers/stepper.tsx';
import { useCoarse } from '../../../kit/use-coarse.ts';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { displayScale, stepped } from '../../../speech/scale.ts';
import { formatNumber, withUnit } from '../../../speech/quantity.ts';

/** How many steps of the keys a press is, where makers think in larger ones: blades differ by hundredths. */
const KEY_STEPS: Readonly<Record<string, number>> = { kerfMm: 2 };

interface NumberSteppersProps {
  readonly parameter: NumberParameter;
  readonly label: string;
  readonly value: number;
  readonly system: UnitSystem;
  readonly step: (value: number) => void;
  readonly begin: () => void;
  readonly end: () => void;
  readonly children: ReactNode;
}

export function NumberSteppers({ parameter, label, value, system, step, begin, end, children }: NumberSteppersProps) {
  const isCoarse = useCoarse();
  if (!isCoarse) return children;
  const steps = KEY_STEPS[parameter.id] ?? 1;
  const scale = displayScale(parameter, system);
  const by = withUnit(formatNumber(steps * scale.step, scale.digits), scale.unitLabel);
  const each = {
    step: (direction: -1 | 1) => step(stepped(parameter, value, direction * steps, system)),
    begin,
    end,
  };
  return (
    <span className="stepped-field">
      <Stepper direction={-1} name={CONTROL_WORDS.less(label, by)} atEnd={value <= parameter.min} {...each} />
      {children}
      <Stepper direction={1} name={CONTROL_WORDS.more(label, by)} atEnd={value >= parameter.max} {...each} />
    </span>
  );
}
