/**
 * The uncertain inputs of a prediction, and how far each scatters from neck to neck.
 *
 *   a factor    median × exp(s·z),  s = √ln(1 + v²)     z standard normal, v coefficient of variation: lognormal
 *   an offset   stated value + s·z                      s in mm: normal
 *
 * Coefficients of variation of clear wood, Wood Handbook Table 5-6 (from memory): E 22 %, crushing parallel to the grain
 * 18 %, density 10 %. All others are assumptions: kerf, slot depth, the studs' width, shape and area, what a wall gives to
 * a stud and to the tang's body, the board across the grain, relaxation and creep. Glue has the variation of its kind
 * (neck/glues.ts). Creep takes the 40 % of
 * the wedge's relaxation, because both rest on one curve for one wood in a steady climate; a lognormal scatter of the
 * coefficients of wood's creep law is what a collection of creep tests shows (Tong, Brown, Corr & Cusatis 2020).
 *
 * Correlations (assumptions): all inputs are independent. Board and neck are different pieces of wood, nearly always of
 * different species. Of one neck, pieces of one wood come from one plank and deviate together, pieces of different woods
 * independently: s_neck = √Σ_w (s·share of the stiffness in wood w)². Within a species denser wood is stiffer; leaving
 * that out widens the band a little, because a denser board bites harder on a stiffer neck.
 *
 * A blank that was measured replaces the 22 % by the error of the measurement: 3 % tapped (mass, sizes and frequency to
 * about 1 %, thickness entering to the third power), 5 % bent under a weight (its deflection to a few per cent). An own
 * wood whose E was typed in counts like a species value.
 */
import type { Build } from '../../neck/build.ts';
import { countedTest } from '../../neck/blanks.ts';
import { glueStiffness } from '../../neck/glues.ts';
import { laminateShares } from '../../neck/neck-shape.ts';
import { AS_STATED, type Deviations } from '../deviations.ts';
import { woodProperties } from '../elements/materials.ts';

export type UncertainInput = keyof Deviations;

export const MODULUS_VARIATION = 0.22;
export const DENSITY_VARIATION = 0.1;
export const TAPPED_ERROR = 0.03;
export const BENT_ERROR = 0.05;
/** One standard deviation of a bow that was measured before the frets go in, mm: feeler gauges under a straightedge (assumption). */
export const GAUGE_ERROR_MM = 0.02;
/** ln of the bite factor before any measurement: N(0, 0.4²). */
export const BITE_LOG_SPREAD = 0.4;
/** ln of the area of the studs along a tang: 0.3 to 0.7 mm² a stud, 2 to 3.5 mm from stud to stud, as 90 % of wires. */
export const STUD_AREA_LOG_SPREAD = 0.31;
/** ln of both together: what a bow measured on a neck tells, since it cannot tell one from the other. */
export const GRIP_LOG_SPREAD = Math.hypot(BITE_LOG_SPREAD, STUD_AREA_LOG_SPREAD);

export interface InputDescription {
  readonly id: UncertainInput;
  readonly kind: 'factor' | 'offset';
  readonly source: string;
}

const ASSUMED = 'assumption';
const HANDBOOK = 'Wood Handbook Table 5-6, from memory';

/** The order of the inputs in every vector of standard normal deviates. */
export const INPUTS: readonly InputDescription[] = [
  { id: 'boardModulus', kind: 'factor', source: HANDBOOK },
  { id: 'neckModulus', kind: 'factor', source: HANDBOOK },
  { id: 'density', kind: 'factor', source: HANDBOOK },
  { id: 'crushing', kind: 'factor', source: HANDBOOK },
  { id: 'kerfMm', kind: 'offset', source: ASSUMED },
  { id: 'studWidthMm', kind: 'offset', source: ASSUMED },
  { id: 'studShape', kind: 'offset', source: ASSUMED },
  { id: 'studArea', kind: 'factor', source: ASSUMED },
  { id: 'studSoftness', kind: 'factor', source: ASSUMED },
  { id: 'wallStiffness', kind: 'factor', source: ASSUMED },
  { id: 'relaxation', kind: 'factor', source: ASSUMED },
  { id: 'creep', kind: 'factor', source: ASSUMED },
  { id: 'bite', kind: 'factor', source: 'assumption, or your bench log' },
  { id: 'slotDepthMm', kind: 'offset', source: ASSUMED },
  { id: 'acrossGrain', kind: 'factor', source: ASSUMED },
  { id: 'glueModulus', kind: 'factor', source: ASSUMED },
  // Last, so that the deviates of the others are the same with it and without.
  { id: 'clampSlide', kind: 'offset', source: ASSUMED },
];

/** Standard deviation of a lognormal factor's logarithm from its coefficient of variation. */
export function logSpread(variation: number): number {
  return Math.sqrt(Math.log1p(variation * variation));
}

/** One standard deviation of each input: of the logarithm for factors, mm for offsets. In the order of `INPUTS`. */
export type Spreads = Readonly<Record<UncertainInput, number>>;

/** ln-spread of the neck's stiffness as a whole. */
function neckModulusSpread(build: Build): number {
  const test = countedTest(build, 'neck');
  if (test === 'tap') return logSpread(TAPPED_ERROR);
  if (test === 'sag') return logSpread(BENT_ERROR);
  const byWood = new Map<string, number>();
  let sum = 0;
  const shares = laminateShares(build);
  for (const [index, { wood }] of build.laminates.entries()) {
    const stiffness = shares[index] * woodProperties(wood, build).modulusMPa;
    byWood.set(wood, (byWood.get(wood) ?? 0) + stiffness);
    sum += stiffness;
  }
  const squares = [...byWood.values()].reduce((total, stiffness) => total + (stiffness / sum) ** 2, 0);
  return logSpread(MODULUS_VARIATION) * Math.sqrt(squares);
}

/**
 * How far each input of a build scatters.
 * @param biteLogSpread of ln bite: what the bench log leaves of it, the area of the studs with it; undefined = unmeasured.
 */
export function spreadsOf(build: Build, biteLogSpread?: number): Spreads {
  const board = { none: MODULUS_VARIATION, tap: TAPPED_ERROR, sag: BENT_ERROR }[countedTest(build, 'board')];
  return {
    boardModulus: logSpread(board),
    neckModulus: neckModulusSpread(build),
    density: logSpread(DENSITY_VARIATION),
    crushing: logSpread(0.18),
    kerfMm: 0.01,
    studWidthMm: 0.02,
    studShape: 0.5,
    studArea: biteLogSpread === undefined ? STUD_AREA_LOG_SPREAD : 0,
    // What a wall gives to a stud: 1 550 to 16 000 N/mm³.
    studSoftness: 0.7,
    wallStiffness: 1,
    relaxation: logSpread(0.4),
    creep: logSpread(0.4),
    bite: biteLogSpread ?? BITE_LOG_SPREAD,
    slotDepthMm: 0.1,
    acrossGrain: logSpread(0.15),
    glueModulus: logSpread(glueStiffness(build).modulusVariation),
    // Anything between held and free: its middle and the spread of an even share.
    clampSlide: build.workOrder === 'board-first' ? 0.29 : 0,
  };
}

/** The deviation of one input that a standard normal deviate stands for: a factor, or an offset in mm. */
export function deviationAt(spreads: Spreads, { id, kind }: InputDescription, deviate: number): number {
  const shift = spreads[id] * deviate;
  return kind === 'factor' ? Math.exp(shift) : shift;
}

/** All deviations of one neck. @param deviates standard normal, in the order of `INPUTS`. */
export function deviationsAt(spreads: Spreads, deviates: ArrayLike<number>): Deviations {
  const out: Record<UncertainInput, number> = { ...AS_STATED };
  INPUTS.forEach((input, index) => (out[input.id] = deviationAt(spreads, input, deviates[index])));
  return out;
}
