/** A bow of the build: hump or hollow, its size, and the slider from the one to the other. */
import { useId } from 'react';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import type { BowWay } from '../../../neck/bow-way.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { BowWayChoice } from '../../../kit/bow-way.tsx';
import { RangeSlider } from '../../../kit/slider/range-slider.tsx';
import { TypedNumber } from '../../../kit/typed-number.tsx';
import { useBow } from '../../../kit/use-bow.ts';
import { useRefusal } from '../../../kit/use-refusal.ts';
import { bowText } from '../../../speech/bow.ts';
import { BOW_ENTRY_WORDS } from '../../../speech/en/workshop/bow.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { parameterWords } from '../../../speech/names.ts';
import { refusalText } from '../../../speech/refusal.ts';
import { displayScale } from '../../../speech/scale.ts';
import { ControlRow } from './control-row.tsx';
import { NumberSteppers } from './number-steppers.tsx';

/** Parameters that are bows, and which way a flat one is about to go where that goes without saying. */
const BOWS: Readonly<Record<string, BowWay | null>> = {
  startingBowMm: null,
  heatBeforeMm: null,
  heatAfterMm: null,
  heatRestMm: null,
  targetReliefMm: 'hollow',
};

export function isBow({ id }: Pick<NumberParameter, 'id'>): boolean {
  return Object.hasOwn(BOWS, id);
}

interface BowControlProps {
  readonly parameter: NumberParameter;
  readonly value: number;
  readonly system: UnitSystem;
  readonly change: (value: number) => Outcome;
  readonly begin: () => void;
  readonly end: () => void;
}

export function BowControl({ parameter, value, system, change, begin, end }: BowControlProps) {
  const id = useId();
  const [message, setMessage] = useRefusal();
  const { label } = parameterWords(parameter.id);
  const presumed = BOWS[parameter.id] ?? undefined;
  const bow = useBow({ parameter: { ...parameter, label }, value, system, presumed, change });
  const standard = bowText(parameter.default, system);
  const told = bow.question ?? message;

  function heard(outcome: Outcome): void {
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, bowText(value, system), system));
  }

  return (
    <ControlRow
      id={id}
      parameter={parameter}
      unitLabel={displayScale(parameter, system).unitLabel}
      message={told}
      reset={
        value === parameter.default
          ? undefined
          : { name: CONTROL_WORDS.resetName(label, standard), run: () => heard(change(parameter.default)) }
      }
      field={
        <NumberSteppers
          parameter={{ ...parameter, ...bow.parameter }}
          label={label}
          value={bow.sizeMm}
          system={system}
          step={(size) => heard(bow.setSize(size))}
          begin={begin}
          end={end}
        >
          <TypedNumber
            id={`${id}-field`}
            parameter={bow.parameter}
            value={bow.sizeMm}
            system={system}
            describedBy={told ? `${id}-message` : `${id}-hint`}
            invalid={told !== undefined}
            noSign={BOW_ENTRY_WORDS.noSign}
            change={bow.setSize}
            refused={setMessage}
          />
        </NumberSteppers>
      }
    >
      <BowWayChoice name={label} way={bow.way} choose={(way) => heard(bow.choose(way))} />
      <RangeSlider
        parameter={parameter}
        value={value}
        system={system}
        valueText={bowText(value, system)}
        labelledBy={`${id}-label`}
        describedBy={`${id}-hint`}
        slide={(wanted) => heard(change(wanted))}
        begin={begin}
        end={end}
        reset={() => heard(change(parameter.default))}
      />
    </ControlRow>
  );
}
