/** The frame of every control: label with unit, the field, the reset, the hint for assistive technology, the message. */
import type { ReactNode } from 'react';
import type { Parameter } from '../../../neck/parameter-kinds.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { useHint } from './hint-store.ts';
import { parameterWords, type ControlWords } from '../../../speech/names.ts';

interface ControlRowProps {
  readonly id: string;
  readonly parameter: Parameter;
  /** Of a control that is no parameter of the table. */
  readonly words?: (() => ControlWords) | undefined;
  readonly unitLabel?: string;
  /** Why the last value was refused. */
  readonly message?: string | undefined;
  /** Undefined while the value is the standard one. */
  readonly reset?: { readonly name: string; readonly run: () => void } | undefined;
  /** The input that the label belongs to; its id is `${id}-field`. */
  readonly field: ReactNode;
  readonly children?: ReactNode;
}

export function ControlRow(props: ControlRowProps) {
  const { id, parameter, unitLabel, message, reset, field, children } = props;
  const words = props.words ?? (() => parameterWords(parameter.id));
  const point = useHint((state) => state.point);
  const { label, hint } = words();
  const tell = () => point(parameter, words);
  return (
    <div
      className={`control control-${parameter.kind}`}
      data-parameter={parameter.id}
      onPointerEnter={tell}
      onFocus={tell}
    >
      <div className="control-head">
        <label id={`${id}-label`} htmlFor={`${id}-field`}>
          {label}
          {unitLabel ? <span className="unit">, {unitLabel}</span> : null}
        </label>
        {reset ? (
          <button type="button" className="reset" aria-label={reset.name} title={reset.name} onClick={reset.run}>
            {CONTROL_WORDS.reset}
          </button>
        ) : null}
        {field}
      </div>
      {children}
      <p id={`${id}-hint`} className="visually-hidden">
        {hint}
      </p>
      <p id={`${id}-message`} className="refusal" role="alert">
        {message}
      </p>
    </div>
  );
}
