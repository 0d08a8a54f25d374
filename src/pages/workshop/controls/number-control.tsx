/** One number of the build: its name and unit, the number, the slider, and why a value was refused. */
import { useId, type ReactNode } from 'react';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { ControlRow } from './control-row.tsx';
import { displayScale, quantityText } from '../../../speech/scale.ts';
import { RangeSlider } from '../../../kit/slider/range-slider.tsx';
import { NumberSteppers } from './number-steppers.tsx';
import { refusalText } from '../../../speech/refusal.ts';
import { TypedNumber } from '../../../kit/typed-number.tsx';
import { useRefusal } from '../../../kit/use-refusal.ts';
import { parameterWords, type ControlWords } from '../../../speech/names.ts';

export interface NumberControlProps {
  readonly parameter: NumberParameter;
  /** Of a number that is no parameter of the table. */
  readonly words?: () => ControlWords;
  readonly value: number;
  readonly system: UnitSystem;
  readonly change: (value: number) => Outcome;
  readonly begin: () => void;
  readonly end: () => void;
  /** What is said under the slider. */
  readonly children?: ReactNode;
}

export function NumberControl({ parameter, words, value, system, change, begin, end, children }: NumberControlProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  const scale = displayScale(parameter, system);
  const { label } = words ? words() : parameterWords(parameter.id);
  const standard = quantityText(parameter.default, scale, system);

  function slide(wanted: number): void {
    const outcome = change(wanted);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, quantityText(value, scale, system), system));
  }

  return (
    <ControlRow
      id={id}
      parameter={parameter}
      words={words}
      unitLabel={scale.unitLabel}
      message={message}
      reset={
        value === parameter.default
          ? undefined
          : { name: CONTROL_WORDS.resetName(label, standard), run: () => slide(parameter.default) }
      }
      field={
        <NumberSteppers
          parameter={parameter}
          label={label}
          value={value}
          system={system}
          step={slide}
          begin={begin}
          end={end}
        >
          <TypedNumber
            id={`${id}-field`}
            parameter={{ ...parameter, label }}
            value={value}
            system={system}
            describedBy={message ? `${id}-message` : `${id}-hint`}
            invalid={message !== undefined}
            change={change}
            refused={setMessage}
          />
        </NumberSteppers>
      }
    >
      <RangeSlider
        parameter={parameter}
        value={value}
        system={system}
        labelledBy={`${id}-label`}
        describedBy={`${id}-hint`}
        slide={slide}
        begin={begin}
        end={end}
        reset={() => slide(parameter.default)}
      />
      {children}
    </ControlRow>
  );
}
