/**
 * The study of try strips: how often the bands hold that a measurement leaves, and how wide they are. What it found is kept in
 * `strips.json`, a row for each kind of measurement and truth; the validation page shows it, and a test makes some of it again.
 */
import { bandsAfter, bandsWith, floorBands, hits, KINDS, OUTCOMES, type Kind, type Outcome } from './workshops.ts';

/** Workshops of a row: as many as are drawn from the prior, and where the shape of the studs is set. */
export const WORKSHOPS = { drawn: 500, set: 200 } as const;
const FIRST_SEED = 10_000;

/** Shapes of the studs in truth; null as drawn, about 1. */
export const SHAPES = [null, 0, 2] as const;
export type Shape = (typeof SHAPES)[number];

export interface StudyRow {
  readonly kind: Kind['id'];
  readonly shape: Shape;
  /** One hexadecimal digit a workshop: a bit for each outcome that lies in its band, the first outcome lowest. */
  readonly hits: string;
}

export type Widths = Readonly<Record<Outcome, number>>;

export interface Study {
  readonly rows: readonly StudyRow[];
  /** Width of the 90 % bands of the first preset: unmeasured, after each kind read as stated, and the floor. */
  readonly before: Widths;
  readonly after: Readonly<Record<Kind['id'], Widths>>;
  readonly floor: Widths;
}

export function workshopsOf(shape: Shape): number {
  return shape === null ? WORKSHOPS.drawn : WORKSHOPS.set;
}

/** The digit of one workshop. @param index from 0 */
export function digitOf(kind: Kind, shape: Shape, index: number): string {
  const found = hits(kind, shape, FIRST_SEED + index);
  return OUTCOMES.reduce((sum, outcome, bit) => sum + (found[outcome] ? 2 ** bit : 0), 0).toString(16);
}

export function studyRow(kind: Kind, shape: Shape): StudyRow {
  const digits = Array.from({ length: workshopsOf(shape) }, (_, index) => digitOf(kind, shape, index));
  return { kind: kind.id, shape, hits: digits.join('') };
}

/** Digits kept of a width: a tenth of a per cent. */
const DIGITS = 3;

type Bands = ReturnType<typeof bandsWith>;
const widths = (bands: Bands): Widths =>
  Object.fromEntries(
    OUTCOMES.map((outcome) => [outcome, Number((bands[outcome].p95 - bands[outcome].p05).toPrecision(DIGITS))]),
  ) as Record<Outcome, number>;

export function studyBands(): Omit<Study, 'rows'> {
  return {
    before: widths(bandsWith()),
    after: Object.fromEntries(KINDS.map((kind) => [kind.id, widths(bandsAfter(kind))])) as Study['after'],
    floor: widths(floorBands()),
  };
}

/** Share of the workshops of a row whose neck lies in its band. */
export function coverageOf({ hits: digits }: Pick<StudyRow, 'hits'>, outcome: Outcome): number {
  const bit = 2 ** OUTCOMES.indexOf(outcome);
  const inside = Array.from(digits).filter((digit) => (Number.parseInt(digit, 16) & bit) !== 0);
  return inside.length / digits.length;
}
