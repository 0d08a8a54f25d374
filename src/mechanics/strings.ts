/**
 * Strings: tension, stress and unit mass.
 *
 *   T = μ·(2·L·f)²             μ kg/m, L m, f Hz → N;  f = 440·2^((pitch − 69)/12), twelve-tone equal temperament at A4 = 440 Hz (ISO 16)
 *   plain   μ = ρ·π·d²/4
 *   wound   μ = (π/4)·ρ_c·d_c² + (π²/4)·ρ_w·d_w·(d_c + d_w),  d_w = (d − d_c)/2     close round winding, helix geometry
 *
 * Densities: steel 7850, nylon 1140, bronze 8800, copper 8900 kg/m³ (handbook values, from memory); a nickel-plated wrap
 * is taken as steel. Strength of steel wire: least tensile strength of ASTM A228, S = 2211/d^0.145 MPa (d mm; Shigley's
 * Mechanical Engineering Design, table of wire constants, from memory). Nylon: 600 MPa (common practice, no source).
 */
import { NOMINAL_A4_HZ, type StringConstruction, type StringSpec } from '../neck/strings.ts';
import type { StringPrediction } from './prediction-types.ts';

const STEEL = 7850;
const NYLON = 1140;
const BRONZE = 8800;
const COPPER = 8900;
const NYLON_STRENGTH_MPA = 600;

const MATERIALS: Record<StringConstruction, { readonly core: number; readonly wrap?: number }> = {
  'steel-plain': { core: STEEL },
  'steel-wound': { core: STEEL, wrap: STEEL },
  'bronze-wound': { core: STEEL, wrap: BRONZE },
  'nylon-plain': { core: NYLON },
  'nylon-wound': { core: NYLON, wrap: COPPER },
};

/** Frequency of a MIDI note number in Hz. */
export function pitchFrequencyHz(pitch: number): number {
  return NOMINAL_A4_HZ * 2 ** ((pitch - 69) / 12);
}

/** Mass per length of a string in kg/m. */
export function unitMassKgM(string: Pick<StringSpec, 'construction' | 'diameterMm' | 'coreMm'>): number {
  const { core, wrap } = MATERIALS[string.construction];
  if (wrap === undefined) return (core * Math.PI * (string.diameterMm / 1000) ** 2) / 4;
  const dc = string.coreMm / 1000;
  const dw = (string.diameterMm / 1000 - dc) / 2;
  return (Math.PI / 4) * core * dc ** 2 + (Math.PI ** 2 / 4) * wrap * dw * (dc + dw);
}

/** Tension in N of a string of unit mass kg/m and length mm that sounds at Hz. */
export function tensionN(massKgM: number, lengthMm: number, frequencyHz: number): number {
  return massKgM * ((2 * lengthMm * frequencyHz) / 1000) ** 2;
}

/** Least tensile strength of steel music wire of a diameter, MPa. */
export function musicWireStrengthMPa(diameterMm: number): number {
  return 2211 / diameterMm ** 0.145;
}

export function predictString(string: StringSpec, scaleLengthMm: number): StringPrediction {
  const { wrap } = MATERIALS[string.construction];
  const mass = unitMassKgM(string);
  const frequencyHz = pitchFrequencyHz(string.pitch);
  const tension = tensionN(mass, scaleLengthMm, frequencyHz);
  const loaded = wrap === undefined ? string.diameterMm : string.coreMm;
  const stressMPa = tension / ((Math.PI * loaded ** 2) / 4);
  const strength = string.construction.startsWith('nylon') ? NYLON_STRENGTH_MPA : musicWireStrengthMPa(loaded);
  return { tensionN: tension, stressMPa, stressRatio: stressMPa / strength, unitMassKgM: mass, frequencyHz };
}
