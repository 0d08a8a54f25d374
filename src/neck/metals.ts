/**
 * Fret-wire metals. `mark`: src = read in a copy of the named source; mem = quoted from memory of the named source;
 * practice = common practice, no source. Hardness figures are typical values from memory for drawn wire and serve only
 * as ratios. Where yield and strength are not published the neighbouring bronze's are taken and marked as practice.
 */
import { sourced, type Sourced } from './sources.ts';

/** `bound`: the alloy contains nickel and gives off hardly any of it; `released`: it gives it off to the skin. */
export type NickelOf = 'none' | 'bound' | 'released';

export interface Metal<Id extends string = string> {
  readonly id: Id;
  readonly nickel: Sourced<NickelOf>;
  readonly modulusGPa: number;
  readonly yieldMPa: number;
  readonly hardnessHV: number;
  readonly densityGCm3: number;
  /** The publication as it is cited; empty for common practice. */
  readonly source: string;
  /** The metal whose yield strength stands in for one that is not published. */
  readonly yieldOf?: string;
  readonly mark: 'src' | 'mem' | 'practice';
  /** Colour of the polished wire, sRGB hex. */
  readonly colour: string;
}

const NONE = sourced('none', 'alloy-standard');
const BOUND = sourced('bound', 'nickel-release');
const RELEASED = sourced('released', 'nickel-coins');

// prettier-ignore
const ROWS = [
  { id: 'nickel-silver-18', nickel: RELEASED, modulusGPa: 124, yieldMPa: 510, hardnessHV: 190, densityGCm3: 8.73, source: 'Copper Development Association alloy data (C75200)', mark: 'mem', colour: '#d9d4c5' },
  { id: 'nickel-silver-770', nickel: RELEASED, modulusGPa: 120, yieldMPa: 590, hardnessHV: 200, densityGCm3: 8.3, source: 'MakeItFrom material data', mark: 'src', colour: '#d8d2c0' },
  { id: 'phosphor-bronze', nickel: NONE, modulusGPa: 110, yieldMPa: 515, hardnessHV: 180, densityGCm3: 8.86, source: 'Copper Development Association alloy data', mark: 'mem', colour: '#c98f5e' },
  { id: 'copper-tin-iron', nickel: NONE, modulusGPa: 110, yieldMPa: 515, hardnessHV: 250, densityGCm3: 8.7, source: '', yieldOf: 'phosphor-bronze', mark: 'practice', colour: '#d4b06a' },
  { id: 'brass', nickel: NONE, modulusGPa: 110, yieldMPa: 435, hardnessHV: 155, densityGCm3: 8.53, source: 'Copper Development Association alloy data', mark: 'mem', colour: '#d8b65c' },
  { id: 'stainless', nickel: BOUND, modulusGPa: 193, yieldMPa: 760, hardnessHV: 300, densityGCm3: 8.0, source: 'ASTM A666', mark: 'mem', colour: '#cfd3d6' },
  { id: 'mild-steel', nickel: NONE, modulusGPa: 200, yieldMPa: 305, hardnessHV: 110, densityGCm3: 7.87, source: 'SAE J1397', mark: 'mem', colour: '#b9bcbf' },
] as const satisfies readonly Metal[];

export type MetalId = (typeof ROWS)[number]['id'];

export const METALS: readonly Metal<MetalId>[] = ROWS;

/** @throws {RangeError} when no metal has that id. */
export function metalById(id: string): Metal<MetalId> {
  const metal = METALS.find((candidate) => candidate.id === id);
  if (!metal) throw new RangeError(`wire metal "${id}" is not in the table`);
  return metal;
}
