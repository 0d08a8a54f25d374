/** A number that is typed. What it refuses it says; the value that was there stays. */
import { useState, type KeyboardEvent } from 'react';
import type { UnitSystem } from '../neck/units.ts';
import type { Outcome } from '../state/build-slice.ts';
import { displayScale, hasSign, numberText, parseTyped, quantityText, stepped, type Scaled } from '../speech/scale.ts';
import { notANumber, outOfRange, refusalText } from '../speech/refusal.ts';
import { stepsOfKey } from './step-keys.ts';

interface TypedNumberProps {
  readonly id?: string;
  /** Label and range, for the messages. */
  readonly parameter: Scaled & { readonly label: string };
  /** Null where nobody has entered one yet. */
  readonly value: number | null;
  readonly system: UnitSystem;
  /** Name for assistive technology, when no visible label belongs to the field. */
  readonly name?: string;
  readonly describedBy?: string;
  readonly invalid?: boolean;
  /** Said to whoever types a sign, where the field takes none. */
  readonly noSign?: string;
  readonly change: (value: number) => Outcome;
  /** Takes the value away; without it a field that is emptied keeps its value. */
  readonly empty?: () => void;
  /** Told why a value is refused, and undefined when all is well again. */
  readonly refused: (message: string | undefined) => void;
}

export function TypedNumber(props: TypedNumberProps) {
  const { parameter, value, system, change, empty, refused } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const scale = displayScale(parameter, system);
  const shown = value === null ? '' : numberText(value, scale, system);
  const kept = value === null ? null : quantityText(value, scale, system);

  /** @returns whether the value was taken */
  function propose(wanted: number): boolean {
    const range = outOfRange(wanted, parameter, system);
    if (range) {
      refused(`${range} ${refusalText([], kept, system)}`);
      return false;
    }
    const outcome = change(wanted);
    refused(outcome.ok ? undefined : refusalText(outcome.problems, kept, system));
    return outcome.ok;
  }

  /** @returns whether the field may forget what was typed */
  function commit(): boolean {
    if (draft === null || draft.trim() === shown) return true;
    if (props.noSign !== undefined && hasSign(draft)) {
      refused(props.noSign);
      return false;
    }
    if (draft.trim() === '' && empty) {
      empty();
      refused(undefined);
      return true;
    }
    const wanted = parseTyped(draft, parameter, system);
    if (wanted === undefined) {
      refused(`${notANumber(draft, parameter, system)} ${refusalText([], kept, system)}`);
      return false;
    }
    return propose(wanted);
  }

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key === 'Enter') {
      if (commit()) setDraft(null);
      event.currentTarget.select();
      return;
    }
    if (event.key === 'Escape' && draft !== null) {
      event.stopPropagation();
      setDraft(null);
      refused(undefined);
      return;
    }
    // Home, End and the sideways arrows belong to the text.
    const steps = ['ArrowUp', 'ArrowDown', 'PageUp', 'PageDown'].includes(event.key) ? stepsOfKey(event) : undefined;
    if (steps === undefined) return;
    event.preventDefault();
    if (draft !== null && !commit()) return;
    setDraft(null);
    const typed = draft === null ? undefined : parseTyped(draft, parameter, system);
    const from = typed ?? value;
    if (from !== null) propose(stepped(parameter, from, steps, system));
  }

  return (
    <input
      id={props.id}
      className="typed-number"
      type="text"
      inputMode="decimal"
      autoComplete="off"
      spellCheck={false}
      data-idle={draft === null}
      value={draft ?? shown}
      aria-label={props.name}
      aria-describedby={props.describedBy}
      aria-invalid={props.invalid || undefined}
      onFocus={(event) => event.currentTarget.select()}
      onChange={(event) => setDraft(event.currentTarget.value)}
      onKeyDown={onKeyDown}
      onBlur={() => {
        commit();
        setDraft(null);
      }}
    />
  );
}
