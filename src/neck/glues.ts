/**
 * Glues for seating frets. All times are common practice, no source: the label and data sheet of the glue in hand decide.
 */
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
  /** Sets so hard that getting the fret out again chips the board or wants more heat than others. */
  readonly isHard: Sourced<boolean>;
  /** Carries water into the slot, which swells and has to dry before the frets are levelled. */
  readonly isWatery: Sourced<boolean>;
  /** Can sensitise the skin for life while it is not yet cured. */
  readonly isSensitising: Sourced<boolean>;
}

const ROWS = [
  {
    id: 'wood-glue',
    openMinutes: [4, 8],
    clampMinutes: 30,
    fullHours: 24,
    mark: 'practice',
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
