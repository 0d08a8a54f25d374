/** The fields of an entry's form. */
import { useId, type ReactNode } from 'react';
import type { BowWay } from '../../neck/bow-way.ts';
import { BowWayChoice } from '../../kit/bow-way.tsx';

interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly children: (id: string, hintId: string | undefined) => ReactNode;
}

export function Field({ label, hint, children }: FieldProps) {
  const id = useId();
  return (
    <div className="log-field">
      <label htmlFor={id}>{label}</label>
      {children(id, hint === undefined ? undefined : `${id}-hint`)}
      {hint !== undefined && (
        <span id={`${id}-hint`} className="quiet">
          {hint}
        </span>
      )}
    </div>
  );
}

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly change: (value: string) => void;
}

export function TextField({ label, value, change }: TextFieldProps) {
  return (
    <Field label={label}>
      {(id) => (
        <input
          id={id}
          type="text"
          autoComplete="off"
          value={value}
          onChange={(event) => change(event.currentTarget.value)}
        />
      )}
    </Field>
  );
}

interface NumberFieldProps extends TextFieldProps {
  readonly hint?: string | undefined;
  /** Hump or hollow, where the number is the size of a bow. */
  readonly bow?: { readonly way: BowWay | null; readonly choose: (way: BowWay) => void };
}

export function NumberField({ label, value, change, hint, bow }: NumberFieldProps) {
  return (
    <Field label={label} hint={hint}>
      {(id, hintId) => {
        const field = (
          <input
            id={id}
            className="typed-number"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            aria-describedby={hintId}
            value={value}
            onChange={(event) => change(event.currentTarget.value)}
          />
        );
        return bow ? (
          <span className="bow-entry">
            <BowWayChoice name={label} way={bow.way} choose={bow.choose} describedBy={hintId} />
            {field}
          </span>
        ) : (
          field
        );
      }}
    </Field>
  );
}

interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly Value[];
  readonly nameOf: (value: Value) => string;
  readonly change: (value: Value) => void;
}

export function ChoiceField<Value extends string>({ label, value, options, nameOf, change }: ChoiceFieldProps<Value>) {
  return (
    <Field label={label}>
      {(id) => (
        <select id={id} value={value} onChange={(event) => change(event.currentTarget.value as Value)}>
          {options.map((option) => (
            <option key={option} value={option}>
              {nameOf(option)}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
