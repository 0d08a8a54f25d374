/** A slider: a native range input for keys and assistive technology, whose thumb is dragged by our own rules. */
import {
  useRef,
  type AriaAttributes,
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  type ReactNode,
} from 'react';
import { useThumb } from './use-thumb.ts';
import './slider.css';

/** Digits that a step leaves; beyond them is noise of the addition. */
const STEP_DIGITS = 9;

interface SliderProps extends Pick<
  AriaAttributes,
  'aria-label' | 'aria-labelledby' | 'aria-describedby' | 'aria-valuetext'
> {
  readonly id?: string | undefined;
  readonly min: number;
  readonly max: number;
  readonly value: number;
  /** Values are handed over on this grid, from min on; on none when it is not given. */
  readonly step?: number;
  readonly slide: (value: number) => void;
  /** A drag or a held key begins; everything until `end` is one gesture. */
  readonly begin?: () => void;
  readonly end?: () => void;
  /** A double click with the mouse. */
  readonly reset?: () => void;
  /** Keys other than those of the browser: it is called first, and `preventDefault` keeps the browser out. */
  readonly onKeyDown?: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onFocus?: () => void;
  readonly onBlur?: () => void;
  /** What lies under the thumb. */
  readonly children?: ReactNode;
}

export function Slider({
  children,
  step,
  slide,
  begin,
  end,
  reset,
  onKeyDown,
  onFocus,
  onBlur,
  ...input
}: SliderProps) {
  const { min, max, value } = input;
  const field = useRef<HTMLInputElement>(null);
  const lastPointer = useRef('mouse');

  function slideTo(wanted: number): void {
    if (step === undefined) slide(wanted);
    else slide(Math.min(max, Number((min + Math.round((wanted - min) / step) * step).toFixed(STEP_DIGITS))));
  }

  const { onPointerDown, ...thumb } = useThumb(field, {
    min,
    max,
    value,
    slide: slideTo,
    begin: () => begin?.(),
    end: () => end?.(),
  });

  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- the input inside is the control; this is its thumb
    <span
      className="slider"
      onPointerDown={(event: PointerEvent<HTMLElement>) => {
        lastPointer.current = event.pointerType;
        onPointerDown(event);
      }}
      {...thumb}
      // The press would take the focus from the input.
      onMouseDown={(event: MouseEvent) => event.preventDefault()}
      // Two taps of a finger are two taps.
      onDoubleClick={() => {
        if (lastPointer.current !== 'touch' && lastPointer.current !== 'pen') reset?.();
      }}
    >
      {children}
      <input
        ref={field}
        type="range"
        {...input}
        step={step ?? 'any'}
        onChange={(event) => slide(event.currentTarget.valueAsNumber)}
        onKeyDown={onKeyDown}
        onKeyUp={end}
        onFocus={onFocus}
        onBlur={() => {
          end?.();
          onBlur?.();
        }}
      />
    </span>
  );
}
