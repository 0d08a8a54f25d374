/**
 * Wire metals side by side.
 *
 *   wear life, relative        H/H_chosen            Archard 1953: worn volume ∝ load × sliding/H, so life ∝ H
 *   bend to aim at, what stays see bending.ts, over the tightest radius of this board
 *   effect on the wedge        none: studs and tang body push by their width, and the wood gives, not the metal
 *
 * H = Vickers hardness. Only ratios of H are used, because the tabulated figures are typical ones; Archard's coefficient
 * differs from pair to pair of metals, so a ratio near 1 says nothing.
 */
import type { Build } from '../../neck/build.ts';
import { metalById, METALS, type Metal } from '../../neck/metals.ts';
import { boardRadiusMm, lastFretMm } from '../../neck/neck-shape.ts';
import { bendFor } from '../bending.ts';
import { basedOn, type Basis, type SourceCode } from '../facts.ts';

export interface MetalRow {
  readonly metal: Metal;
  readonly chosen: boolean;
  /** Hardness, and with it wear life, over that of the chosen metal. */
  readonly wearLifeRatio: number;
  /** Radius to bend to over the tightest radius of the board; negative or Infinity as in bending.ts. */
  readonly bendToRadiusMm: number;
  /** Share of a bend that stays. */
  readonly bendStays: number;
}

/** Tightest radius of the board under any fret; Infinity on a flat one. */
export function tightestRadiusMm(build: Build): number {
  return Math.min(boardRadiusMm(build, 0), boardRadiusMm(build, lastFretMm(build)));
}

export function compareMetals(build: Build): MetalRow[] {
  const chosen = metalById(build.wireMetal);
  const radius = tightestRadiusMm(build);
  return METALS.map((metal) => {
    const bend = bendFor(build, radius, metal.id);
    return {
      metal,
      chosen: metal.id === chosen.id,
      wearLifeRatio: metal.hardnessHV / chosen.hardnessHV,
      bendToRadiusMm: bend.bendToRadiusMm,
      bendStays: bend.stays,
    };
  });
}

/** What is known of the metals, with what each rests on; the words are in speech/en/wire.ts. */
const FACTS = {
  'nickel-limit': 'nickel-rule',
  'nickel-limit-is-not': 'nickel-rule-wording',
  'nickel-copper-alloys': 'nickel-coins',
  'nickel-stainless': 'nickel-steels',
  'strings-too': 'practice',
  wear: 'archard',
  'hard-wire-tools': 'practice',
  bending: 'springback',
  force: 'wedge-model',
} as const satisfies Readonly<Record<string, SourceCode>>;

export type MetalFactId = keyof typeof FACTS;

export interface MetalFact extends Basis {
  readonly id: MetalFactId;
}

export const METAL_FACTS: readonly MetalFact[] = (Object.keys(FACTS) as MetalFactId[]).map((id) => ({
  id,
  ...basedOn(FACTS[id]),
}));
