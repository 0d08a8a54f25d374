/** A native select with its label; a value that is not among the options shows as `other`. */
import { useId } from 'react';

interface LabelledSelectProps<Value extends string> {
  readonly label: string;
  readonly value: Value | '';
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly other?: string;
  readonly describedBy?: string;
  readonly choose: (value: Value) => void;
}

export function LabelledSelect<Value extends string>(props: LabelledSelectProps<Value>) {
  const id = useId();
  return (
    <div className="control control-choice">
      <div className="control-head">
        <label htmlFor={id}>{props.label}</label>
        <select
          id={id}
          value={props.value}
          aria-describedby={props.describedBy}
          onChange={(event) => props.choose(event.currentTarget.value as Value)}
        >
          {props.value === '' && props.other ? (
            <option value="" disabled>
              {props.other}
            </option>
          ) : null}
          {props.options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
