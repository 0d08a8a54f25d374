/**
 * Woods and boards that the maker enters: what a table has no sound source for, or a blank in hand. A build holds four; those
 * that nothing is made of are nowhere shown.
 */

export interface OwnWood {
  /** Empty: “my own wood”. */
  readonly name: string;
  /** E along the grain. */
  readonly modulusGPa: number;
  /** At the moisture content of the shop. */
  readonly densityKgM3: number;
  /** Crushing strength along the grain; null: by the density, as hardwoods have it. */
  readonly crushingMPa: number | null;
  /** Id of the wood of the table whose stiffness across the grain and in shear it has, as shares of that along it. */
  readonly like: string;
}

/** In the order of `Build.ownWoods`. */
export const OWN_WOOD_IDS = ['own', 'own-2', 'own-3', 'own-4'] as const;
export type OwnWoodId = (typeof OWN_WOOD_IDS)[number];

/** Longest name of an own wood, in characters. */
export const MOST_WOOD_NAME = 60;

export const isOwnWood = (id: string): id is OwnWoodId => (OWN_WOOD_IDS as readonly string[]).includes(id);

/** An own wood as nobody has changed it yet. */
export const STANDARD_OWN_WOOD: OwnWood = {
  name: '',
  modulusGPa: 13,
  densityKgM3: 700,
  crushingMPa: null,
  like: 'sugar-maple',
};

/** @throws {RangeError} when the id is none of an own wood */
export function ownWoodOf({ ownWoods }: { readonly ownWoods: readonly OwnWood[] }, id: string): OwnWood {
  const wood = ownWoods[(OWN_WOOD_IDS as readonly string[]).indexOf(id)];
  if (!wood) throw new RangeError(`"${id}" is no own wood of this build`);
  return wood;
}

/** The four, with some of them entered. */
export function ownWoodsWith(...entered: readonly Partial<OwnWood>[]): readonly OwnWood[] {
  return OWN_WOOD_IDS.map((_, index) => ({ ...STANDARD_OWN_WOOD, ...entered[index] }));
}
