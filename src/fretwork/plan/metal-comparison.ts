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
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { metalById, METALS, type Metal } from '../../neck/metals.ts';
import { boardRadiusMm, lastFretMm } from '../../neck/neck-shape.ts';
import { bendFor } from '../bending.ts';
import type { Fact } from '../facts.ts';

export interface MetalRow {
  readonly metal: Metal;
  readonly chosen: boolean;
  /** Hardness, and with it wear life, over that of the chosen metal. */
  readonly wearLifeRatio: number;
  /** Radius to bend to over the tightest radius of the board; negative or Infinity as in bending.ts. */
  readonly bendToRadiusMm: number;
  /** Share of a bend that stays. */
  readonly bendStays: number;
  /** What the metal itself changes in the wedge force of a given tang. */
  readonly wedgeForceRatio: 1;
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
      wedgeForceRatio: 1,
    };
  });
}

export const METAL_FACTS: readonly Fact[] = [
  {
    id: 'nickel-limit',
    text: say`The European limit is a rate of release: articles meant for direct and prolonged contact with the skin may not give off more than 0.5 µg of nickel per cm² and week (0.2 for posts in pierced skin), measured in artificial sweat by EN 1811.`,
    source: say`Regulation (EC) No 1907/2006 (REACH), Annex XVII, entry 27`,
    mark: 'src',
  },
  {
    id: 'nickel-limit-is-not',
    text: say`It is not a limit on how much nickel an alloy contains, not a promise that someone already sensitised will not react, and its list of examples (earrings, watch cases, buttons …) names no frets. Whether fretting counts as prolonged contact is for the authorities to say.`,
    source: say`wording of entry 27; the entry does not define prolonged contact (ECHA, 2014 and 2017)`,
    mark: 'src',
  },
  {
    id: 'nickel-copper-alloys',
    text: say`Copper–nickel alloys give off far more than that in the test: used coins of CuNi25 about 30 µg/cm² in a week of artificial sweat. No figure for fret wire of nickel silver was found; treat it as giving off nickel.`,
    source: say`Lidén & Carter, Nickel release from coins, Contact Dermatitis 44 (2001) 160 (abstract)`,
    mark: 'src',
  },
  {
    id: 'nickel-stainless',
    text: say`Stainless steel 304 contains about 8 to 10 % nickel and gives off hardly any: under 0.05 to 0.08 µg/cm² in a week. Free-machining grades with sulphur (303) exceed the limit. A person who reacts to nickel should still ask a doctor.`,
    source: say`Euro Inox, Stainless Steel – The Safe Choice; a study of 316L, 304, 303 and 201 in artificial sweat (abstract)`,
    mark: 'src',
  },
  {
    id: 'strings-too',
    text: say`Nickel-free frets help little under strings wrapped with nickel-plated or nickel wire: ask for both.`,
    source: say`common practice, no source`,
    mark: 'practice',
  },
  {
    id: 'wear',
    text: say`Worn volume goes with load and sliding distance over hardness, so twice the hardness lasts about twice as long under the same strings. Hardness figures are typical ones: read the ratio as a direction, not a date.`,
    source: say`Archard, J. Appl. Phys. 24 (1953) 981 (from memory); hardness typical, from memory`,
    mark: 'mem',
  },
  {
    id: 'hard-wire-tools',
    text: say`Harder wire takes its toll on nippers, files and time: hardened cutters, and about twice the time to level and dress.`,
    source: say`common practice, no source`,
    mark: 'practice',
  },
  {
    id: 'bending',
    text: say`How far wire springs back depends on yield strength over stiffness, and on its height, not on hardness alone. Sticks of one alloy differ by temper: bend one and hold it to the board.`,
    source: say`springback formula, see bending.ts`,
    mark: 'calc',
  },
  {
    id: 'force',
    text: say`The alloy does not change how hard a pressed fret wedges: that comes from the width over the studs, the tang body and the kerf. All these metals are at least five times stiffer than the wood along its grain. In a glued slot the tang’s stiffness enters, but the thin glue beside it decides.`,
    source: say`mechanics/MODEL.md, seating and filled slots`,
    mark: 'calc',
  },
];
