/**
 * What the first bending tone of a blank can be expected to be.
 *
 *   first     f² = E·b·t³·10⁶ / (0.9465·m·L³·T₁), the tap test of elements/materials.ts the other way round
 *   spread    ln E 0.22 (Wood Handbook, Table 5-6, from memory); of a blank that was not weighed, ln ρ 0.10 more; in f the
 *             half of both together. Expected is what lies within three spreads.
 */
import { laminateShares } from '../../neck/neck-shape.ts';
import type { Build } from '../../neck/build.ts';
import { blankId, blankIds, type BlankNumberName } from '../../neck/blanks.ts';
import type { BlankPart } from '../../neck/parameters.ts';
import { modulusFromTapMPa, speciesModulusMPa, woodProperties } from '../elements/materials.ts';
import { DENSITY_VARIATION, MODULUS_VARIATION } from '../uncertainty/inputs.ts';

/** Where a free bar stands still in its first mode, from either end, as a share of its length (ASTM E1876). */
export const NODE_SHARE = 0.224;

const SPREADS = 3;

export interface Expected {
  readonly firstHz: number;
  readonly lowHz: number;
  readonly highHz: number;
}

function densityKgM3(build: Build, part: BlankPart): number {
  if (part === 'board') return woodProperties(build.boardWood, build).densityKgM3;
  const shares = laminateShares(build);
  return build.laminates.reduce(
    (sum, { wood }, index) => sum + shares[index] * woodProperties(wood, build).densityKgM3,
    0,
  );
}

/** The sizes that have to be there before anything can be expected. */
export function missingForExpected(build: Build, part: BlankPart): BlankNumberName[] {
  const sizes = ['LengthMm', 'WidthMm', 'ThicknessMm'] as const;
  return sizes.filter((name) => build[blankId(part, name)] === null);
}

/** @returns undefined while the blank's sizes are not there */
export function expectedTone(build: Build, part: BlankPart): Expected | undefined {
  if (missingForExpected(build, part).length > 0) return undefined;
  const [length, width, thickness, mass] = blankIds(part, 'tap').map((id) => build[id]) as [
    number,
    number,
    number,
    number | null,
  ];
  const massG = mass ?? (densityKgM3(build, part) * length * width * thickness) / 1e6;
  const firstHz = Math.sqrt(speciesModulusMPa(build, part) / modulusFromTapMPa(massG, 1, length, width, thickness));
  const spread = Math.hypot(MODULUS_VARIATION, mass === null ? DENSITY_VARIATION : 0) / 2;
  return { firstHz, lowHz: firstHz * Math.exp(-SPREADS * spread), highHz: firstHz * Math.exp(SPREADS * spread) };
}
