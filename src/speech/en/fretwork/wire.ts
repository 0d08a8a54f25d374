/** What happens with a wrong radius, and what is known of wire metals: nickel, wear, bending. */
import type { WrongRadius } from '../../../fretwork/bending.ts';
import type { MetalFactId } from '../../../fretwork/plan/metal-comparison.ts';
import { words } from '../../language.ts';

export const WRONG_RADIUS_TEXTS = words('WRONG_RADIUS_TEXTS', {
  flatter: {
    when: 'The wire is flatter than the board.',
    happens:
      'The middle sits and the ends stand up. Pressed down they spring up again, at once or after the first season, and the player feels them at the edges.',
    remedy: 'Bend tighter, to less than the board’s radius, so that the ends sit down first.',
  },
  tighter: {
    when: 'The wire is much tighter than the board.',
    happens:
      'The ends sit and the middle stands up. Hammering the middle flat spreads the wire: the ends walk outwards, the tang tears the slot, and the crown kinks.',
    remedy: 'Open the bend until the middle stands off by a few tenths only.',
  },
  straight: {
    when: 'Coiled wire goes on a flat board as it comes.',
    happens: 'The middle bulges up under every blow and the ends dig into the edges of the board.',
    remedy: 'Bend the coil open first, past straight, and let it spring back.',
  },
  twisted: {
    when: 'The bend runs out of the plane of the tang.',
    happens: 'The fret leans in its slot, one shoulder of the crown stands off, and the saw cut is prised open.',
    remedy: 'Guide the tang in a groove while bending; sight along every piece.',
  },
} satisfies Readonly<Record<WrongRadius, Readonly<Record<'when' | 'happens' | 'remedy', string>>>>);

export const METAL_FACT_TEXTS = words('METAL_FACT_TEXTS', {
  'nickel-limit': (limit: string, pierced: string) =>
    `The European limit is a rate of release: articles meant for direct and prolonged contact with the skin may not give off more than ${limit} µg of nickel per cm² per week (${pierced} for posts in pierced skin), measured in artificial sweat by EN 1811.`,
  'nickel-limit-is-not':
    'It is not a limit on how much nickel an alloy contains, not a promise that someone already sensitised will not react, and its list of examples (earrings, watch cases, buttons …) names no frets. Whether fretting counts as prolonged contact is for the authorities to say.',
  'nickel-copper-alloys':
    'Copper–nickel alloys give off far more than that in the test: used coins of CuNi25 about 30 µg/cm² in a week of artificial sweat. No figure for fret wire of nickel silver was found; treat it as giving off nickel.',
  'nickel-stainless': (least: string, most: string) =>
    `Stainless steel 304 contains about 8 to 10 % nickel and gives off hardly any: under ${least} to ${most} µg/cm² in a week. Free-machining grades with sulphur (303) exceed the limit. A person who reacts to nickel should still ask a doctor.`,
  'strings-too': 'Nickel-free frets help little under strings wrapped with nickel-plated or nickel wire: ask for both.',
  wear: 'Worn volume goes with load and sliding distance over hardness, so twice the hardness lasts about twice as long under the same strings. Hardness figures are typical ones: read the ratio as a direction, not a date.',
  'hard-wire-tools':
    'Harder wire takes its toll on nippers, files and time: hardened cutters, and about twice the time to level and dress.',
  bending:
    'How far wire springs back depends on yield strength over stiffness, and on its height, not on hardness alone. Sticks of one alloy differ by temper: bend one and hold it to the board.',
  force:
    'The alloy does not change how hard a pressed fret wedges: that comes from the width over the studs, the tang body and the kerf. All these metals are at least five times stiffer than the wood along its grain. In a glued slot the tang’s stiffness enters, but the thin glue beside it decides.',
} satisfies Readonly<Record<MetalFactId, string | ((...given: string[]) => string)>>);
