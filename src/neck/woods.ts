/**
 * Woods at 12 % moisture content.
 *
 * MOE is the static-bending value as tabulated. Where the test behind it bends a beam by one force at mid-span, shear is
 * in it and E_L = 1.10 × MOE (Wood Handbook, note to the MOE tables); where the beam bends without shear, E_L = MOE. Elastic
 * ratios: Wood Handbook FPL-GTR-190 (2010), Table 5-1. Woods without a row of their own borrow one; `ratiosAssumed` says so.
 *
 * Sources, all read in copies of the named publication but where it is said:
 *
 *   GTR-190        USDA FPL Wood Handbook FPL-GTR-190 (2010) ch. 5 Table 5-3a
 *   GTR-282        FPL-GTR-282 (2021) ch. 5 Table 5-5b
 *   AH607          Chudnoff, Tropical Timbers of the World, USDA Agriculture Handbook 607 (1984); densities of rows of GTR-282
 *                  too, which are in lb/ft³ there. A range is taken by its middle, and only where the derived density is not in it.
 *   TROPIX         CIRAD Tropix technical sheets; four-point bending, NF B51-016 (from memory)
 *   POLYMERS-2022  Danihelová et al., Polymers 14 (2022) 2813, abstract: sycamore maple heated to 135–185 °C loses density and
 *                  no stiffness. E and strength are those of sugar maple, G less 5 % with half the moisture (assumption).
 *   CBM-2015       Sharma et al., Construction and Building Materials 81 (2015) 66: abstract read, numbers from memory of its
 *                  tables; four-point bending
 *   NEMA-XX        data sheet of paper with phenolic resin, NEMA grade XX: specific gravity 1.34, flexural modulus 1.4 · 10⁶ psi,
 *                  compressive strength 34 000 psi. ASTM D790, which leaves shear out of account at its span of 16 depths.
 *
 * Colours are our own judgement by eye.
 */
import { isOwnWood, OWN_WOOD_IDS } from './materials/own-woods.ts';
import { sourced, type FactSource, type Sourced } from './sources.ts';

/** Ratios to E_L: depth direction R for a flat-sawn board, T for a quarter-sawn one. */
export interface ElasticRatios {
  readonly tangential: number;
  readonly radial: number;
  readonly shearLR: number;
  readonly shearLT: number;
  /** All Poisson's ratios of what is no wood; those of wood otherwise (mechanics/elements/materials.ts). */
  readonly poisson?: number;
}

const RATIOS = {
  'sugar maple': { tangential: 0.065, radial: 0.132, shearLR: 0.111, shearLT: 0.063 },
  'red maple': { tangential: 0.067, radial: 0.14, shearLR: 0.133, shearLT: 0.074 },
  'black walnut': { tangential: 0.056, radial: 0.106, shearLR: 0.085, shearLT: 0.062 },
  'black cherry': { tangential: 0.086, radial: 0.197, shearLR: 0.147, shearLT: 0.097 },
  'yellow-poplar': { tangential: 0.043, radial: 0.092, shearLR: 0.075, shearLT: 0.069 },
  'Honduras mahogany': { tangential: 0.064, radial: 0.107, shearLR: 0.066, shearLT: 0.086 },
  'African mahogany': { tangential: 0.05, radial: 0.111, shearLR: 0.088, shearLT: 0.059 },
  'white ash': { tangential: 0.08, radial: 0.125, shearLR: 0.109, shearLT: 0.077 },
  'red oak': { tangential: 0.082, radial: 0.154, shearLR: 0.089, shearLT: 0.081 },
  // Table 5-1 gives no G_LT for white oak: red oak's is used.
  'white oak': { tangential: 0.072, radial: 0.163, shearLR: 0.086, shearLT: 0.081 },
  'yellow birch': { tangential: 0.05, radial: 0.078, shearLR: 0.074, shearLT: 0.068 },
  // Sheets of paper, pressed: nearly alike in both directions of the sheet, softer through it (assumption; the data sheets of
  // such laminates give 0.9 to 0.95 across).
  'paper laminate': { tangential: 0.93, radial: 0.6, shearLR: 0.2, shearLT: 0.35, poisson: 0.3 },
} as const satisfies Record<string, ElasticRatios>;

export type RatiosId = keyof typeof RATIOS;

/**
 * What its dust does besides what every hardwood dust does: `ordinary` says that no more is known of it here, not that it
 * is harmless.
 */
export type WoodDust = 'ordinary' | 'irritating' | 'sensitising';

/**
 * Is trade in it regulated under CITES? `listed`: the wood of this row is, `some-species`: some that are sold under this
 * name are, `banned`: it is in Appendix I and may not cross a border for trade, `look-alike`: others of its genus are and customs may ask which it is. Listings change.
 */
export type WoodTrade = 'free' | 'listed' | 'banned' | 'some-species' | 'look-alike';

export type WoodSource = 'GTR-190' | 'GTR-282' | 'AH607' | 'TROPIX' | 'POLYMERS-2022' | 'CBM-2015' | 'NEMA-XX';

/** Sources whose bending test has shear in it: a force at the middle of a span of 14 depths (ASTM D143, BS 373). */
const WITH_SHEAR: ReadonlySet<WoodSource> = new Set(['GTR-190', 'GTR-282', 'AH607', 'POLYMERS-2022']);

export interface Wood<Id extends string = string> {
  readonly id: Id;
  readonly botanical: string;
  readonly moeMPa: number;
  readonly specificGravity: number;
  /** 12: oven-dry mass over volume at 12 %; green: over green volume; air: air-dry density given directly. */
  readonly gravityBasis: '12' | 'green' | 'air';
  readonly airDensityKgM3?: number;
  readonly crushingMPa: number;
  readonly ratiosOf: RatiosId;
  readonly ratiosAssumed: boolean;
  readonly source: WoodSource;
  readonly dust: Sourced<WoodDust>;
  readonly trade: Sourced<WoodTrade>;
  /** Oil or resin at the surface that keeps glue off: wiped with solvent just before gluing. */
  readonly isOily: Sourced<boolean>;
  /** Base colour of an oiled surface and of its darker grain, sRGB hex. */
  readonly colour: string;
  readonly grain: string;
}

const w = <const Id extends string>(
  id: Id,
  botanical: string,
  moeMPa: number,
  specificGravity: number,
  gravityBasis: Wood['gravityBasis'],
  airDensityKgM3: number | undefined,
  crushingMPa: number,
  ratiosOf: RatiosId,
  ratiosMark: 'src' | 'assume',
  source: Wood['source'],
  colour: string,
  grain: string,
  facts: Pick<Wood, 'dust' | 'trade' | 'isOily'>,
): Wood<Id> => ({
  id,
  botanical,
  moeMPa,
  specificGravity,
  gravityBasis,
  ...(airDensityKgM3 === undefined ? {} : { airDensityKgM3 }),
  crushingMPa,
  ratiosOf,
  ratiosAssumed: ratiosMark === 'assume',
  source,
  colour,
  grain,
  ...facts,
});

const ORDINARY = sourced('ordinary', 'toxic-woods');
const irritating = (source: FactSource) => sourced('irritating', source);
const sensitising = (source: FactSource) => sourced('sensitising', source);
const FREE = sourced('free', 'cites');
const LISTED = sourced('listed', 'cites');
const BANNED = sourced('banned', 'cites');
const SOME_SPECIES = sourced('some-species', 'cites');
const LOOK_ALIKE = sourced('look-alike', 'cites');
const DRY = sourced(false, 'practice');
const OILY = sourced(true, 'practice');
const HARD_TO_BOND = sourced(true, 'bonding');

// prettier-ignore
const ROWS = [
  w('sugar-maple', 'Acer saccharum', 12600, 0.63, '12', undefined, 54.0, 'sugar maple', 'src', 'GTR-190', '#dcbf92', '#c29f6c', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('red-maple', 'Acer rubrum', 11300, 0.54, '12', undefined, 45.1, 'red maple', 'src', 'GTR-190', '#d8b78d', '#bb9566', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('bigleaf-maple', 'Acer macrophyllum', 10000, 0.48, '12', undefined, 41.0, 'red maple', 'assume', 'GTR-190', '#dcbc8f', '#bd9a6c', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('black-walnut', 'Juglans nigra', 11600, 0.55, '12', undefined, 52.3, 'black walnut', 'src', 'GTR-190', '#6f4d35', '#4d3322', { dust: sensitising('toxicity-chart'), trade: FREE, isOily: DRY }),
  w('black-cherry', 'Prunus serotina', 10300, 0.50, '12', undefined, 49.0, 'black cherry', 'src', 'GTR-190', '#a9693f', '#86502d', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('white-ash', 'Fraxinus americana', 12000, 0.60, '12', undefined, 51.1, 'white ash', 'src', 'GTR-190', '#d6bd93', '#ab8d5f', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('yellow-poplar', 'Liriodendron tulipifera', 10900, 0.42, '12', undefined, 38.2, 'yellow-poplar', 'src', 'GTR-190', '#c9bd8b', '#9c9463', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('yellow-birch', 'Betula alleghaniensis', 13900, 0.62, '12', undefined, 56.3, 'yellow birch', 'src', 'GTR-190', '#d2ae7c', '#b28a58', { dust: sensitising('toxicity-chart'), trade: FREE, isOily: DRY }),
  // Table 5-1 gives no G_LT: red oak’s ratio is used.
  w('white-oak', 'Quercus alba', 12300, 0.68, '12', undefined, 51.3, 'white oak', 'src', 'GTR-190', '#b8935f', '#8f6d40', { dust: sensitising('toxicity-chart'), trade: FREE, isOily: DRY }),
  w('black-locust', 'Robinia pseudoacacia', 14100, 0.69, '12', undefined, 70.2, 'white ash', 'assume', 'GTR-190', '#a98347', '#7d5f2e', { dust: irritating('toxicity-chart'), trade: FREE, isOily: DRY }),
  w('mahogany', 'Swietenia macrophylla', 10340, 0.45, 'green', undefined, 46.7, 'Honduras mahogany', 'src', 'GTR-282', '#8f4f30', '#6d3820', { dust: sensitising('toxicity-chart'), trade: LISTED, isOily: DRY }),
  w('african-mahogany', 'Khaya spp.', 9650, 0.42, 'green', undefined, 44.5, 'African mahogany', 'src', 'GTR-282', '#9a5b3a', '#774227', { dust: sensitising('toxic-woods'), trade: LISTED, isOily: DRY }),
  w('spanish-cedar', 'Cedrela spp.', 9930, 0.41, 'green', 481, 42.8, 'Honduras mahogany', 'assume', 'GTR-282', '#a9653f', '#87492a', { dust: sensitising('toxic-woods'), trade: LISTED, isOily: OILY }),
  w('sapele', 'Entandrophragma cylindricum', 12550, 0.55, 'green', 673, 56.3, 'African mahogany', 'assume', 'GTR-282', '#85462c', '#63301c', { dust: irritating('toxic-woods'), trade: FREE, isOily: DRY }),
  w('indian-rosewood', 'Dalbergia latifolia', 12270, 0.75, 'green', 849, 63.6, 'sugar maple', 'assume', 'GTR-282', '#513128', '#321c18', { dust: sensitising('toxicity-chart'), trade: LISTED, isOily: HARD_TO_BOND }),
  w('bubinga', 'Guibourtia spp.', 17100, 0.71, 'green', undefined, 72.4, 'sugar maple', 'assume', 'GTR-282', '#8a4434', '#672c22', { dust: irritating('toxic-woods'), trade: SOME_SPECIES, isOily: DRY }),
  w('ovangkol', 'Guibourtia ehie', 17650, 0.67, 'green', undefined, 57.2, 'sugar maple', 'assume', 'GTR-282', '#7d5c3a', '#573c22', { dust: irritating('toxic-woods'), trade: LOOK_ALIKE, isOily: DRY }),
  w('purpleheart', 'Peltogyne spp.', 15650, 0.67, 'green', undefined, 71.2, 'sugar maple', 'assume', 'GTR-282', '#6a3a56', '#4e273f', { dust: irritating('toxicity-chart'), trade: FREE, isOily: DRY }),
  w('goncalo-alves', 'Astronium graveolens', 15380, 0.84, 'green', 961, 71.2, 'sugar maple', 'assume', 'GTR-282', '#9a5c34', '#5a3018', { dust: sensitising('toxicity-chart'), trade: FREE, isOily: OILY }),
  w('ipe', 'Handroanthus / Tabebuia', 21650, 0.92, 'green', 1129, 89.7, 'sugar maple', 'assume', 'GTR-282', '#67492f', '#48301c', { dust: sensitising('toxic-woods'), trade: LISTED, isOily: HARD_TO_BOND }),
  w('macawood', 'Platymiscium spp.', 22060, 0.94, 'green', undefined, 111.0, 'sugar maple', 'assume', 'GTR-282', '#8d432a', '#662a18', { dust: irritating('toxic-woods'), trade: SOME_SPECIES, isOily: OILY }),
  // A second data set in the same sheet gives crushing 64.5 MPa.
  w('ebony-african', 'Diospyros spp.', 17650, 0.82, 'green', 1010, 92.0, 'sugar maple', 'assume', 'AH607', '#2d2724', '#1b1716', { dust: sensitising('toxicity-chart'), trade: SOME_SPECIES, isOily: DRY }),
  // A second data set gives MOE 12 070 MPa and crushing 53.8 MPa; the printed specific gravity ranges over 0.55–0.67.
  w('african-padauk', 'Pterocarpus soyauxii', 10760, 0.61, 'green', 745, 58.3, 'sugar maple', 'assume', 'AH607', '#97412a', '#6f2b1a', { dust: sensitising('toxicity-chart'), trade: LISTED, isOily: DRY }),
  // The tests behind the strengths were of heavier wood, of a basic specific gravity of 0.80.
  w('brazilian-rosewood', 'Dalbergia nigra', 12960, 0.68, 'green', 825, 66.2, 'sugar maple', 'assume', 'AH607', '#5a3222', '#2e1a14', { dust: sensitising('toxic-woods'), trade: BANNED, isOily: HARD_TO_BOND }),
  w('sipo', 'Entandrophragma utile', 11100, 0.53, 'green', 657, 54.5, 'African mahogany', 'assume', 'AH607', '#8c4b33', '#6a3423', { dust: irritating('toxic-woods'), trade: FREE, isOily: DRY }),
  w('moabi', 'Baillonella toxisperma', 21040, 0.87, 'air', 870, 74.0, 'sugar maple', 'assume', 'TROPIX', '#94553c', '#74402c', { dust: irritating('toxic-woods'), trade: FREE, isOily: DRY }),
  w('roasted-maple', 'Acer saccharum', 12600, 0.6, '12', 635, 54.0, 'sugar maple', 'assume', 'POLYMERS-2022', '#a97a4c', '#875a34', { dust: ORDINARY, trade: FREE, isOily: DRY }),
  w('laminated-bamboo', 'Phyllostachys edulis', 11000, 0.69, 'air', 686, 77.0, 'sugar maple', 'assume', 'CBM-2015', '#c8a266', '#a27f48', { dust: irritating('practice'), trade: FREE, isOily: DRY }),
  w('strand-bamboo', 'Phyllostachys edulis', 13000, 1.16, 'air', 1163, 86.0, 'sugar maple', 'assume', 'CBM-2015', '#7a5a36', '#57401f', { dust: irritating('practice'), trade: FREE, isOily: DRY }),
  w('paper-resin', '', 9650, 1.34, 'air', 1340, 234.0, 'paper laminate', 'assume', 'NEMA-XX', '#262321', '#171514', { dust: sensitising('practice'), trade: FREE, isOily: DRY }),
  w('wenge', 'Millettia laurentii', 21050, 0.87, 'air', 870, 85.0, 'sugar maple', 'assume', 'TROPIX', '#463428', '#291d16', { dust: sensitising('toxicity-chart'), trade: FREE, isOily: DRY }),
];

export type WoodId = (typeof ROWS)[number]['id'];

export const WOODS: readonly Wood<WoodId>[] = ROWS;

/** What a part of a neck can be made of. */
export const WOOD_IDS: readonly string[] = [...WOODS.map(({ id }) => id), ...OWN_WOOD_IDS];

/** What a measurement can say of its wood: an own one has its numbers there, and none of the names of a build. */
export const DOCUMENT_WOOD_IDS: readonly string[] = [...WOODS.map(({ id }) => id), OWN_WOOD_IDS[0]];

/** The wood of a build as measurements name it. */
export const documentWood = (id: string): string => (isOwnWood(id) ? OWN_WOOD_IDS[0] : id);

/** @throws {RangeError} when no wood has that id. */
export function woodById(id: string): Wood<WoodId> {
  const wood = WOODS.find((candidate) => candidate.id === id);
  if (!wood) throw new RangeError(`wood "${id}" is not in the table`);
  return wood;
}

export function elasticRatios(id: RatiosId): ElasticRatios {
  return RATIOS[id];
}

/**
 * Where values are from: `printed` as they stand in the table; `earlier` as until project version 3, when densities were
 * derived from specific gravities though the source prints them, and every modulus was taken to have shear in it.
 */
export type WoodValues = 'printed' | 'earlier';

/** Woods whose values were others until project version 3. */
const MOVED: ReadonlySet<string> = new Set<WoodId>([
  'spanish-cedar',
  'sapele',
  'indian-rosewood',
  'goncalo-alves',
  'ipe',
  'wenge',
]);

/** Had this wood other values until project version 3? */
export const hasMoved = (id: string): boolean => MOVED.has(id);

/** Longitudinal modulus E_L in MPa: 1.10 × the tabulated static-bending MOE where that has shear in it. */
export function longitudinalModulusMPa(wood: Wood, values: WoodValues = 'printed'): number {
  return (values === 'earlier' || WITH_SHEAR.has(wood.source) ? 1.1 : 1) * wood.moeMPa;
}

/**
 * Density in kg/m³ at 12 % moisture content.
 *
 * Given directly where the table gives it. On a 12 % volume basis ρ = 1000·G₁₂·(1 + 0.12). From a green basis the
 * Wood Handbook's ch. 4 relation is used: G_M = G_b / (1 − 0.265·a·G_b), a = (30 − M)/30 (eq. 4-13, from memory; fibre saturation taken at
 * 30 %), then ρ = 1000·G_M·(1 + M/100). Its shrinkage grows with density, so it makes dense tropical woods of little
 * shrinkage some 5–13 % too heavy: Indian rosewood, printed at 849, comes out at 954.
 */
export function airDryDensityKgM3(wood: Wood, values: WoodValues = 'printed'): number {
  const isDerived = values === 'earlier' && wood.gravityBasis === 'green' && hasMoved(wood.id);
  if (wood.airDensityKgM3 !== undefined && !isDerived) return wood.airDensityKgM3;
  const moisture = 12;
  const gravity =
    wood.gravityBasis === 'green'
      ? wood.specificGravity / (1 - 0.265 * ((30 - moisture) / 30) * wood.specificGravity)
      : wood.specificGravity;
  return 1000 * gravity * (1 + moisture / 100);
}
