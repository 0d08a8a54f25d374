/** A bow that is entered: hump or hollow, and how much. A size without a way changes nothing: it waits for its way. */
import { useState } from 'react';
import { reliefOf, wayOf, type BowWay } from '../neck/bow-way.ts';
import type { UnitSystem } from '../neck/units.ts';
import { bowSize } from '../speech/bow.ts';
import { BOW_ENTRY_WORDS } from '../speech/en/workshop/bow.ts';
import type { Scaled } from '../speech/scale.ts';
import type { Outcome } from '../state/build-slice.ts';

type Named = Scaled & { readonly label: string };

export interface EnteredBow {
  /** Null while neither was chosen. */
  readonly way: BowWay | null;
  readonly sizeMm: number;
  /** The size as a number of its own: without a sign, up to the end of its way. */
  readonly parameter: Named;
  /** Asks for the way of a size that waits for it. */
  readonly question: string | undefined;
  readonly setSize: (sizeMm: number) => Outcome;
  readonly choose: (way: BowWay) => Outcome;
}

export interface Bow {
  /** Label and range of the relief, mm: positive hollow, negative humped. */
  readonly parameter: Named;
  readonly value: number;
  readonly system: UnitSystem;
  /** Which way a flat one is about to go, where that goes without saying. */
  readonly presumed?: BowWay | undefined;
  readonly change: (reliefMm: number) => Outcome;
}

function mostOf({ min, max }: Scaled, way: BowWay | null): number {
  const most = { hump: Math.max(0, -min), hollow: Math.max(0, max) };
  return way === null ? Math.max(most.hump, most.hollow) : most[way];
}

export function useBow({ parameter, value, system, presumed, change }: Bow): EnteredBow {
  const [chosen, setChosen] = useState<BowWay | null>(null);
  const [waiting, setWaiting] = useState<number | null>(null);
  const way = wayOf(value) ?? chosen ?? presumed ?? null;
  const sizeMm = waiting ?? Math.abs(value);

  function setSize(wantedMm: number): Outcome {
    if (way === null && wantedMm !== 0) {
      setWaiting(wantedMm);
      return { ok: true };
    }
    // A size brought to nothing and up again goes the same way.
    setChosen(way);
    setWaiting(null);
    return change(way === null ? 0 : reliefOf(way, wantedMm));
  }

  function choose(wanted: BowWay): Outcome {
    setChosen(wanted);
    setWaiting(null);
    return sizeMm === 0 ? { ok: true } : change(reliefOf(wanted, sizeMm));
  }

  return {
    way,
    sizeMm,
    parameter: { ...parameter, min: 0, max: mostOf(parameter, way) },
    question: waiting === null ? undefined : BOW_ENTRY_WORDS.whichWay(bowSize(waiting, system)),
    setSize,
    choose,
  };
}
