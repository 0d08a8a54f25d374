/**
 * Glues for seating frets. All times are common practice, no source: the label and data sheet of the glue in hand decide.
 *
 * Modulus of the set glue, MPa, and its coefficient of variation from bottle to bottle. Films of seven polymers that wood is
 * glued with lie between 470 (polyurethane) and 6 300 MPa (melamine–urea–formaldehyde): Konnerth, Gindl & Müller, J. Appl.
 * Polym. Sci. 103 (2007) 3936 (abstract, read). Of each kind:
 *
 *   wood glue        2 500 ± 50 %   in the middle of them; PVA without resin lies lower, and softens above 40 % humidity
 *                                   (Cowan, Blankenhorn & Murphey, Wood and Fiber Science; abstract, read) (assumption)
 *   soft white glue    300 ± 60 %   PVA with plasticiser, near its glass temperature at 20 °C (assumption)
 *   hide glue        3 000 ± 40 %   dry films of animal glue, 2 to 4 GPa (from memory of conservation papers)
 *   cyanoacrylate    1 700 ± 40 %   bulk ethyl cyanoacrylate, 1.3 to 2 GPa; filled kinds lower (data sheets, from memory)
 *   epoxy            2 400 ± 40 %   slow resins 2.4 to 3.5, five-minute ones 1 to 2 GPa (data sheets, from memory)
 */
import type { Build } from './build.ts';
import { sourced, type Sourced } from './sources.ts';

export interface Glue<Id extends string = string> {
  readonly id: Id;
  /** How long there is from spreading the glue to the fret being home, in minutes: shortest to longest that is usual. */
  readonly openMinutes: readonly [number, number];
  /** How long to leave it clamped or under the caul, in minutes. */
  readonly clampMinutes: number;
  /** When the neck may be strung, in hours. */
  readonly fullHours: number;
  readonly mark: 'practice';
  /** Modulus of the set glue, and its coefficient of variation. */
  readonly modulusMPa: number;
  readonly modulusVariation: number;
  /** Sets so hard that getting the fret out again chips the board or wants more heat than others. */
  readonly isHard: Sourced<boolean>;
  /** Carries water into the slot, which swells and has to dry before the frets are levelled. */
  readonly isWatery: Sourced<boolean>;
  /** Can sensitise the skin for life while it is not yet cured. */
  readonly isSensitising: Sourced<boolean>;
}

/** Of a modulus that is entered by hand, and of wood glue: assumption. */
const MODULUS_VARIATION = 0.5;

const ROWS = [
  {
    id: 'wood-glue',
    openMinutes: [4, 8],
    clampMinutes: 30,
    fullHours: 24,
    mark: 'practice',
    modulusMPa: 2500,
    modulusVariation: MODULUS_VARIATION,
    isHard: sourced(false, 'practice'),
    isWatery: sourced(true, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'soft-white-glue',
    openMinutes: [5, 10],
    clampMinutes: 45,
    fullHours: 24,
    mark: 'practice',
    modulusMPa: 300,
    modulusVariation: 0.6,
    isHard: sourced(false, 'practice'),
    isWatery: sourced(true, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'hide-glue',
    openMinutes: [0.5, 1.5],
    clampMinutes: 60,
    fullHours: 24,
    mark: 'practice',
    modulusMPa: 3000,
    modulusVariation: 0.4,
    isHard: sourced(false, 'practice'),
    isWatery: sourced(true, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'cyanoacrylate',
    openMinutes: [0.1, 0.5],
    clampMinutes: 2,
    fullHours: 12,
    mark: 'practice',
    modulusMPa: 1700,
    modulusVariation: 0.4,
    isHard: sourced(true, 'practice'),
    isWatery: sourced(false, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'epoxy',
    openMinutes: [5, 30],
    clampMinutes: 360,
    fullHours: 48,
    mark: 'practice',
    modulusMPa: 2400,
    modulusVariation: 0.4,
    isHard: sourced(true, 'practice'),
    isWatery: sourced(false, 'practice'),
    isSensitising: sourced(true, 'practice'),
  },
] as const satisfies readonly Glue[];

export type GlueId = (typeof ROWS)[number]['id'];

export const GLUES: readonly Glue<GlueId>[] = ROWS;

/** @throws {RangeError} when no glue has that id. */
export function glueById(id: string): Glue<GlueId> {
  const glue = GLUES.find((candidate) => candidate.id === id);
  if (!glue) throw new RangeError(`glue "${id}" is not in the table`);
  return glue;
}

/** Modulus of the set glue in the slots, MPa, with its coefficient of variation: that of its kind, or one that was entered. */
export function glueStiffness(
  build: Pick<Build, 'glueKind' | 'glueStiffness' | 'glueModulusMPa'>,
): Pick<Glue, 'modulusMPa' | 'modulusVariation'> {
  return build.glueStiffness === 'kind'
    ? glueById(build.glueKind)
    : { modulusMPa: build.glueModulusMPa, modulusVariation: MODULUS_VARIATION };
}
