/** A slider of a number of the build: it steps as the parameter says, names its value with its unit, marks what is usual. */
import { useRef, type KeyboardEvent } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import { displayScale, quantityText, snapped, stepped, type Scaled } from '../../speech/scale.ts';
import { stepsOfKey } from '../step-keys.ts';
import { Slider } from './slider.tsx';

interface RangeSliderProps {
  readonly parameter: Scaled & { readonly typical?: readonly [number, number] };
  readonly value: number;
  readonly system: UnitSystem;
  /** What the value is called, where that is more than a number with its unit. */
  readonly valueText?: string;
  readonly labelledBy: string;
  readonly describedBy?: string;
  readonly slide: (value: number) => void;
  /** A drag or a held key begins; everything until `end` is one step to undo. */
  readonly begin: () => void;
  readonly end: () => void;
  readonly reset: () => void;
}

export function RangeSlider(props: RangeSliderProps) {
  const { parameter, value, system, slide } = props;
  const { min, max, typical } = parameter;
  const busy = useRef(false);
  const share = (at: number) => (Math.min(max, Math.max(min, at)) - min) / (max - min);

  function begin(): void {
    if (busy.current) return;
    busy.current = true;
    props.begin();
  }

  function end(): void {
    if (!busy.current) return;
    busy.current = false;
    props.end();
  }

  function onKeyDown(event: KeyboardEvent): void {
    const steps = stepsOfKey(event);
    if (steps === undefined) return;
    event.preventDefault();
    begin();
    if (Number.isFinite(steps)) slide(stepped(parameter, value, steps, system));
    else slide(steps > 0 ? max : min);
  }

  return (
    <Slider
      min={min}
      max={max}
      value={value}
      aria-labelledby={props.labelledBy}
      aria-describedby={props.describedBy}
      aria-valuetext={props.valueText ?? quantityText(value, displayScale(parameter, system), system)}
      slide={(wanted) => slide(snapped(parameter, wanted, system))}
      begin={begin}
      end={end}
      reset={props.reset}
      onKeyDown={onKeyDown}
    >
      {typical && (
        <span
          className="slider-usual"
          aria-hidden="true"
          style={{
            insetInlineStart: `calc(var(--thumb) / 2 + ${share(typical[0])} * (100% - var(--thumb)))`,
            inlineSize: `calc(${share(typical[1]) - share(typical[0])} * (100% - var(--thumb)))`,
          }}
        />
      )}
    </Slider>
  );
}
