/**
 * Glues for seating frets. All times are common practice, no source: the label and data sheet of the glue in hand decide.
 */
import { sayText } from '../speech/language.ts';
import { sourced, type Sourced } from './sources.ts';

export interface Glue {
  readonly id: string;
  readonly label: string;
  /** How long there is from spreading the glue to the fret being home, in minutes: shortest to longest that is usual. */
  readonly openMinutes: readonly [number, number];
  /** How long to leave it clamped or under the caul, in minutes. */
  readonly clampMinutes: number;
  /** When the neck may be strung, in hours. */
  readonly fullHours: number;
  readonly cleanUp: string;
  /** How the next repairer gets the fret out again. */
  readonly release: string;
  readonly caution: string;
  readonly mark: 'practice';
  /** Sets so hard that getting the fret out again chips the board or wants more heat than others. */
  readonly isHard: Sourced<boolean>;
  /** Carries water into the slot, which swells and has to dry before the frets are levelled. */
  readonly isWatery: Sourced<boolean>;
  /** Can sensitise the skin for life while it is not yet cured. */
  readonly isSensitising: Sourced<boolean>;
}

const ROWS: readonly Glue[] = [
  {
    id: 'wood-glue',
    label: 'wood glue (PVA or aliphatic resin)',
    openMinutes: [4, 8],
    clampMinutes: 30,
    fullHours: 24,
    cleanUp: 'Wipe off with a damp cloth while wet. Water swells the slot: use little, and let the board dry.',
    release: 'Heat the fret with an iron until the glue softens, then lift.',
    caution: 'Its water swells the wood around the slot for a day: do not level before it has dried out.',
    mark: 'practice',
    isHard: sourced(false, 'practice'),
    isWatery: sourced(true, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'hide-glue',
    label: 'hot hide glue',
    openMinutes: [0.5, 1.5],
    clampMinutes: 60,
    fullHours: 24,
    cleanUp: 'Warm damp cloth.',
    release: 'Heat with a little moisture, then lift.',
    caution: 'Warm the board and the wire; a cold slot gels the glue before the fret is home. Hot water scalds.',
    mark: 'practice',
    isHard: sourced(false, 'practice'),
    isWatery: sourced(true, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'cyanoacrylate',
    label: 'cyanoacrylate',
    openMinutes: [0.1, 0.5],
    clampMinutes: 2,
    fullHours: 12,
    cleanUp: 'Wax or shellac the board beside the slot first; what has set is scraped off.',
    release: 'Heat the fret with an iron; it softens at a higher heat than wood glue, so chips are likelier.',
    caution:
      'Bonds skin and eyelids within seconds, its vapour stings: gloves, glasses, fresh air. Cotton with it can heat up and smoke.',
    mark: 'practice',
    isHard: sourced(true, 'practice'),
    isWatery: sourced(false, 'practice'),
    isSensitising: sourced(false, 'practice'),
  },
  {
    id: 'epoxy',
    label: 'epoxy',
    openMinutes: [5, 30],
    clampMinutes: 360,
    fullHours: 48,
    cleanUp: 'Alcohol on a cloth before it sets. Wax the board beside the slot.',
    release: 'Heat the fret with an iron until the resin softens, then lift slowly.',
    caution:
      'Uncured resin and hardener sensitise the skin for life: gloves, no bare hands, and do not wash it off with solvent.',
    mark: 'practice',
    isHard: sourced(true, 'practice'),
    isWatery: sourced(false, 'practice'),
    isSensitising: sourced(true, 'practice'),
  },
];

export const GLUES: readonly Glue[] = ROWS.map((row) => ({
  ...row,
  label: sayText(row.label),
  cleanUp: sayText(row.cleanUp),
  release: sayText(row.release),
  caution: sayText(row.caution),
}));

/** @throws {RangeError} when no glue has that id. */
export function glueById(id: string): Glue {
  const glue = GLUES.find((candidate) => candidate.id === id);
  if (!glue) throw new RangeError(`glue "${id}" is not in the table`);
  return glue;
}
