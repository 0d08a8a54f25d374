/** A labelled text of limited length. It takes whatever is typed or pasted, and says so while that is too long. */
import { useId } from 'react';
import { tooLong } from './text-limit.ts';

interface LimitedTextProps {
  readonly label: string;
  /** What the sentence of refusal calls it; the label unless it says more than a name. */
  readonly name?: string;
  readonly value: string;
  readonly most: number;
  /** Rows of a text of several lines; a single line when not given. */
  readonly rows?: number;
  readonly change: (text: string) => void;
}

export function LimitedText({ label, name = label, value, most, rows, change }: LimitedTextProps) {
  const id = useId();
  const refusal = tooLong(name, value, most);
  const field = {
    id,
    value,
    'aria-invalid': refusal !== undefined || undefined,
    'aria-describedby': refusal === undefined ? undefined : `${id}-refusal`,
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {rows === undefined ? (
        <input {...field} type="text" onChange={(event) => change(event.currentTarget.value)} />
      ) : (
        <textarea {...field} rows={rows} onChange={(event) => change(event.currentTarget.value)} />
      )}
      <p id={`${id}-refusal`} className="refusal" role="alert">
        {refusal}
      </p>
    </div>
  );
}
