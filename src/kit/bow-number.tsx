/** A bow that is typed: hump or hollow, and how much. */
import { useId } from 'react';
import { BOW_ENTRY_WORDS } from '../speech/en/workshop/bow.ts';
import { refusalText } from '../speech/refusal.ts';
import { displayScale, quantityText } from '../speech/scale.ts';
import { BowWayChoice } from './bow-way.tsx';
import { TypedNumber } from './typed-number.tsx';
import { useBow, type Bow } from './use-bow.ts';

interface BowNumberProps extends Bow {
  readonly id?: string;
  /** Name for assistive technology, when no visible label belongs to the field. */
  readonly name?: string;
  readonly describedBy?: string;
  readonly invalid?: boolean;
  readonly refused: (message: string | undefined) => void;
}

export function BowNumber({ id, name, describedBy, invalid = false, refused, ...of }: BowNumberProps) {
  const { system } = of;
  const messageId = useId();
  const bow = useBow(of);
  const { question } = bow;
  const described = [describedBy, question && messageId].filter(Boolean).join(' ');
  return (
    <span className="bow-entry">
      <BowWayChoice
        name={name ?? of.parameter.label}
        way={bow.way}
        describedBy={question && messageId}
        choose={(way) => {
          const outcome = bow.choose(way);
          const kept = quantityText(Math.abs(of.value), displayScale(of.parameter, system), system);
          refused(outcome.ok ? undefined : refusalText(outcome.problems, kept, system));
        }}
      />
      <TypedNumber
        {...(id === undefined ? {} : { id })}
        {...(name === undefined ? {} : { name })}
        {...(described === '' ? {} : { describedBy: described })}
        parameter={bow.parameter}
        value={bow.sizeMm}
        system={system}
        invalid={invalid || question !== undefined}
        noSign={BOW_ENTRY_WORDS.noSign}
        change={bow.setSize}
        refused={refused}
      />
      <span id={messageId} className="refusal" role="alert">
        {question}
      </span>
    </span>
  );
}
