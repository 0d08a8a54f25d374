/**
 * A neck that just buzzes, as a measurement: a document of its own, like an entry of the bench log, with an id that stays, what
 * it was taken on, and the errors of what was measured.
 */
import { stringHeightAtNutMm } from '../neck/neck-shape.ts';
import { defaultBuild, type Build } from '../neck/build.ts';
import { digestOf } from '../neck/digest.ts';
import { checkBuild } from '../neck/schema.ts';
import type { PluckDirection } from './swing.ts';

/** What of a neck the room under its strings depends on, besides relief and action. */
const GEOMETRY = [
  'scaleLengthMm',
  'fretCount',
  'bodyJointFret',
  'widthNutMm',
  'widthLastFretMm',
  'boardShape',
  'radiusNutMm',
  'radiusLastFretMm',
  'boardBeyondLastFretMm',
  'crownHeightMm',
  'stringHeightNutMm',
  'stringEdgeMm',
  'fallAwayMm',
  'fallAwayFromFret',
  'strings',
] as const satisfies readonly (keyof Build)[];
export type MatchedNeck = Pick<Build, (typeof GEOMETRY)[number]>;

/** Every number that is measured, with its range. */
export const MATCH_NUMBERS = {
  reliefMm: { min: -1, max: 1.5, unit: 'mm' },
  actionMm: { min: 0.2, max: 6, unit: 'mm' },
  reliefErrorMm: { min: 0.005, max: 0.5, unit: 'mm' },
  actionErrorMm: { min: 0.01, max: 0.5, unit: 'mm' },
  fretErrorMm: { min: 0.001, max: 0.2, unit: 'mm' },
} as const;
export type MatchNumber = keyof typeof MATCH_NUMBERS;
export const MATCH_NUMBER_IDS = Object.keys(MATCH_NUMBERS) as readonly MatchNumber[];

/** How well it is measured where nobody says better: feelers, a rule, a levelled board. Standard deviations, assumed. */
export const USUAL_ERRORS = { reliefErrorMm: 0.03, actionErrorMm: 0.05, fretErrorMm: 0.01 } as const;

export interface BuzzMatch extends Readonly<Record<MatchNumber, number>> {
  readonly id: string;
  readonly date: string;
  readonly name: string;
  readonly neck: MatchedNeck;
  /** 0 = the highest string; 0 = open. */
  readonly string: number;
  readonly note: number;
  /** The fret on which it just buzzes. */
  readonly fret: number;
  readonly direction: PluckDirection;
}

export function geometryOf(build: Build): MatchedNeck {
  const neck = Object.fromEntries(GEOMETRY.map((key) => [key, build[key]])) as unknown as MatchedNeck;
  // Whatever the strings lie on.
  return { ...neck, stringHeightNutMm: stringHeightAtNutMm(build) };
}

const DIRECTIONS: readonly unknown[] = ['along', 'away', 'towards'] satisfies PluckDirection[];
const MOST_NAME = 200;

const isWhole = (value: unknown, most: number): value is number =>
  Number.isInteger(value) && (value as number) >= 0 && (value as number) <= most;

/** A stored document, or null where it is none. */
export function buzzMatchOf(value: unknown): BuzzMatch | null {
  if (typeof value !== 'object' || value === null) return null;
  const of = value as Record<keyof BuzzMatch, unknown>;
  const isNumber = (key: MatchNumber) => {
    const { min, max } = MATCH_NUMBERS[key];
    return typeof of[key] === 'number' && of[key] >= min && of[key] <= max;
  };
  const texts = [of.id, of.date, of.name];
  if (!texts.every((text) => typeof text === 'string' && text.length <= MOST_NAME) || of.id === '') return null;
  if (!MATCH_NUMBER_IDS.every((key) => isNumber(key)) || !DIRECTIONS.includes(of.direction)) return null;
  if (typeof of.neck !== 'object' || of.neck === null) return null;
  const checked = checkBuild({ ...defaultBuild(), ...pitchedHigh(of.neck) });
  if (!checked.ok) return null;
  const { fretCount, strings } = checked.build;
  if (!isWhole(of.string, strings.length - 1) || !isWhole(of.note, fretCount) || !isWhole(of.fret, fretCount))
    return null;
  return { ...(value as BuzzMatch), neck: geometryOf(checked.build) };
}

/** What the neck does not say must fit whatever it says: a thick heelless neck under strings that clear any fret. */
function pitchedHigh(neck: object): object {
  const { tangWidthMm, crownWidthMm } = defaultBuild();
  return { rodKind: 'none', kerfMm: tangWidthMm, crownWidthMm, stringHeightFret12Mm: 8, ...neck };
}

/** Hash of what it says, its id left out. */
export function matchHash({ id: _id, ...content }: BuzzMatch): string {
  return digestOf(JSON.stringify(Object.entries(content).toSorted(([a], [b]) => (a < b ? -1 : 1)))).slice(0, 32);
}
