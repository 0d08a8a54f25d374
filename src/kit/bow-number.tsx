/** A bow that is typed: hump or hollow, and how much. A size without a way changes nothing: it asks which way. */
import { useId, useState } from 'react';
import { reliefOf, wayOf, type BowWay } from '../neck/bow-way.ts';
import type { UnitSystem } from '../neck/units.ts';
import type { Outcome } from '../state/build-slice.ts';
import { bowSize } from '../speech/bow.ts';
import { BOW_ENTRY_WORDS } from '../speech/en/workshop/bow.ts';
import { refusalText } from '../speech/refusal.ts';
import { displayScale, quantityText, type Scaled } from '../speech/scale.ts';
import { BowWayChoice } from './bow-way.tsx';
import { TypedNumber } from './typed-number.tsx';

interface BowNumberProps {
  readonly id?: string;
  /** Label and range of the relief, mm: positive hollow, negative humped. */
  readonly parameter: Scaled & { readonly label: string };
  readonly value: number;
  readonly system: UnitSystem;
  /** Which way a flat one is about to go, where that goes without saying. */
  readonly presumed?: BowWay;
  readonly name?: string;
  readonly describedBy?: string;
  readonly invalid?: boolean;
  readonly change: (reliefMm: number) => Outcome;
  readonly refused: (message: string | undefined) => void;
}

function sizesOf({ min, max }: Scaled, way: BowWay | null): { readonly min: number; readonly max: number } {
  const most = { hump: -min, hollow: max };
  return { min: 0, max: way === null ? Math.max(most.hump, most.hollow) : Math.max(0, most[way]) };
}

export function BowNumber(props: BowNumberProps) {
  const { parameter, value, system, presumed = null, change, refused } = props;
  const messageId = useId();
  const [chosen, setChosen] = useState<BowWay | null>(null);
  /** A size that waits for its way. */
  const [waiting, setWaiting] = useState<number | null>(null);
  const way = wayOf(value) ?? chosen ?? presumed;

  function size(sizeMm: number): Outcome {
    if (way === null && sizeMm !== 0) {
      setWaiting(sizeMm);
      return { ok: true };
    }
    // A size brought to nothing and up again goes the same way.
    if (way !== null) setChosen(way);
    setWaiting(null);
    return change(way === null ? 0 : reliefOf(way, sizeMm));
  }

  function choose(wanted: BowWay): void {
    const sizeMm = waiting ?? Math.abs(value);
    setChosen(wanted);
    setWaiting(null);
    if (sizeMm === 0) return;
    const outcome = change(reliefOf(wanted, sizeMm));
    const kept = quantityText(Math.abs(value), displayScale(parameter, system), system);
    refused(outcome.ok ? undefined : refusalText(outcome.problems, kept, system));
  }

  const name = props.name ?? parameter.label;
  const describedBy = [props.describedBy, waiting === null ? undefined : messageId].filter(Boolean).join(' ');
  return (
    <span className="bow-entry">
      <BowWayChoice name={name} way={way} choose={choose} describedBy={waiting === null ? undefined : messageId} />
      <TypedNumber
        {...(props.id === undefined ? {} : { id: props.id })}
        {...(props.name === undefined ? {} : { name: props.name })}
        {...(describedBy === '' ? {} : { describedBy })}
        parameter={{ ...parameter, ...sizesOf(parameter, way) }}
        value={waiting ?? Math.abs(value)}
        system={system}
        invalid={(props.invalid ?? false) || waiting !== null}
        noSign={BOW_ENTRY_WORDS.noSign}
        change={size}
        refused={refused}
      />
      <span id={messageId} className="refusal" role="alert">
        {waiting === null ? undefined : BOW_ENTRY_WORDS.whichWay(bowSize(waiting, system))}
      </span>
    </span>
  );
}
