/**
 * Woods as the calculation needs them, and moduli from measured blanks.
 *
 *   species    E_L = 1.10 × tabulated static-bending MOE where that has shear in it (neck/woods.ts)
 *   tapped     E = 0.9465·(m f²/b)·(L³/t³)·T₁,  T₁ = 1 + 6.585·(t/L)²    m g, f Hz, b L t mm → Pa
 *              (ASTM E1876 for bars with L/t ≥ 20, first free–free bending mode; from memory)
 *   bent       E = F L³/(4 b h³ δ)                                       three-point test, N and mm → MPa
 *   density of a tapped board = mass/volume, as it was on the scale
 *   own wood   as entered; crushing strength otherwise 84.9·G^0.97 MPa, G on a 12 % basis (Wood Handbook, regression for
 *              hardwoods, from memory); elastic ratios of the wood that it is said to be like (assumption)
 */
import type { Build } from '../../neck/build.ts';
import { blankOf, type Blank } from '../../neck/blanks.ts';
import { isOwnWood, ownWoodOf } from '../../neck/materials/own-woods.ts';
import { laminateShares } from '../../neck/neck-shape.ts';
import type { BlankPart } from '../../neck/parameters.ts';
import type { NeckWood } from '../description.ts';
import {
  airDryDensityKgM3,
  elasticRatios,
  longitudinalModulusMPa,
  woodById,
  type ElasticRatios,
} from '../../neck/woods.ts';

/** ν between the grain and either direction across it: about 0.4 for most woods (Wood Handbook Table 5-2, from memory); it matters little. */
export const POISSON = 0.45;

/** ν_RT of hardwoods: 0.56 to 0.77, mean 0.67 (Wood Handbook Table 5-2, from memory). ν_TR = ν_RT·E_T/E_R. */
export const POISSON_RT = 0.67;

/** The elastic ratios of a wood as it stands in the neck. @param depth which of its directions across the grain is the depth */
export function standing(ratios: ElasticRatios, depth: 'radial' | 'tangential'): Omit<NeckWood, 'modulusMPa'> {
  const { radial, tangential, poisson } = ratios;
  const flat = depth === 'radial';
  return {
    depthRatio: flat ? radial : tangential,
    widthRatio: flat ? tangential : radial,
    shearRatio: flat ? ratios.shearLR : ratios.shearLT,
    poisson: poisson ?? POISSON,
    poissonWidth: poisson ?? POISSON,
    poissonDepthWidth: poisson ?? (flat ? POISSON_RT : (POISSON_RT * tangential) / radial),
  };
}

export interface WoodProperties {
  readonly modulusMPa: number;
  readonly densityKgM3: number;
  readonly crushingMPa: number;
  readonly ratios: ElasticRatios;
  readonly ratiosAssumed: boolean;
}

export function woodProperties(id: string, build: Pick<Build, 'ownWoods' | 'woodValues'>): WoodProperties {
  if (isOwnWood(id)) {
    const { modulusGPa, densityKgM3, crushingMPa, like } = ownWoodOf(build, id);
    const gravity = densityKgM3 / 1120;
    return {
      modulusMPa: 1000 * modulusGPa,
      densityKgM3,
      crushingMPa: crushingMPa ?? 84.9 * gravity ** 0.97,
      ratios: elasticRatios(woodById(like).ratiosOf),
      ratiosAssumed: true,
    };
  }
  const wood = woodById(id);
  return {
    modulusMPa: longitudinalModulusMPa(wood, build.woodValues),
    densityKgM3: airDryDensityKgM3(wood, build.woodValues),
    crushingMPa: wood.crushingMPa,
    ratios: elasticRatios(wood.ratiosOf),
    ratiosAssumed: wood.ratiosAssumed,
  };
}

/** Modulus in MPa of a bar hung free and tapped. */
export function modulusFromTapMPa(
  massG: number,
  frequencyHz: number,
  lengthMm: number,
  widthMm: number,
  thicknessMm: number,
): number {
  const slenderness = thicknessMm / lengthMm;
  const shape = 1 + 6.585 * slenderness ** 2;
  return (0.9465 * ((massG * frequencyHz ** 2) / widthMm) * slenderness ** -3 * shape) / 1e6;
}

/** Modulus in MPa of a bar on two supports that sinks under a weight at its middle. */
export function modulusFromSagMPa(
  loadN: number,
  spanMm: number,
  widthMm: number,
  thicknessMm: number,
  sagMm: number,
): number {
  return (loadN * spanMm ** 3) / (4 * widthMm * thicknessMm ** 3 * sagMm);
}

/** The modulus that a blank's own numbers give, MPa. */
export function blankModulusMPa(blank: Extract<Blank, { state: 'whole' }>): number {
  const { WidthMm: width, ThicknessMm: thickness } = blank.values;
  if (blank.test === 'tap') {
    const { MassG, FrequencyHz, LengthMm } = blank.values;
    return modulusFromTapMPa(MassG, FrequencyHz, LengthMm, width, thickness);
  }
  const { LoadN, SpanMm, SagMm } = blank.values;
  return modulusFromSagMPa(LoadN, SpanMm, width, thickness, SagMm);
}

/** The modulus that a measured blank of the neck or the board gives, MPa; undefined until all of it is measured. */
export function measuredModulusMPa(build: Build, part: BlankPart): number | undefined {
  const blank = blankOf(build, part);
  return blank.state === 'whole' ? blankModulusMPa(blank) : undefined;
}

/** The modulus of the neck's or the board's wood by its species, as a blank of it bends, MPa. */
export function speciesModulusMPa(build: Build, part: BlankPart): number {
  return part === 'neck' ? meanModulusMPa(build) : woodProperties(build.boardWood, build).modulusMPa;
}

/** The board's wood; a tapped board's density is its own, not its species'. */
export function boardProperties(build: Build): WoodProperties {
  const wood = woodProperties(build.boardWood, build);
  const blank = blankOf(build, 'board');
  if (blank.state !== 'whole' || blank.test !== 'tap') return wood;
  const { MassG, LengthMm, WidthMm, ThicknessMm } = blank.values;
  return { ...wood, densityKgM3: (MassG * 1e6) / (LengthMm * WidthMm * ThicknessMm) };
}

/** Mean modulus of a blank of these laminates when it bends in the direction of the strings' pull, MPa. */
export function meanModulusMPa(build: Build): number {
  const shares = laminateShares(build);
  return build.laminates.reduce(
    (sum, { wood }, index) => sum + shares[index] * woodProperties(wood, build).modulusMPa,
    0,
  );
}
