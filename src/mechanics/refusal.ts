/**
 * What the library refuses to compute, as data: a code and the quantities that belong to it, units in their names. The
 * page puts it into words (speech/failures.ts); a worker hands it on as it is.
 */
export type Refusal =
  | { readonly code: 'fret-not-there'; readonly fret: number; readonly frets: number }
  | { readonly code: 'days-negative'; readonly days: number }
  /** The slot of a fret that was pulled, against what it was. */
  | { readonly code: 'slot-narrower'; readonly kerfMm: number; readonly beforeMm: number }
  | { readonly code: 'rod-beyond-range'; readonly rodPercent: number; readonly mostPercent: number }
  | {
      readonly code: 'relief-beyond-range';
      readonly reliefMm: number;
      readonly leastMm: number;
      readonly mostMm: number;
    }
  /** The kerf that the tang needs is wider than the one that studs and crown allow. */
  | {
      readonly code: 'no-kerf-fits';
      readonly leastMm: number;
      readonly mostMm: number;
      readonly tangWidthMm: number;
    }
  | { readonly code: 'stretches-beyond-range'; readonly stretches: number; readonly most: number }
  | { readonly code: 'no-stretch-or-tang' }
  | {
      readonly code: 'too-many-combinations';
      readonly tangs: number;
      readonly stretches: number;
      readonly combinations: number;
      readonly most: number;
    }
  | { readonly code: 'seating-unsettled'; readonly leftN: number }
  | {
      readonly code: 'samples-beyond-range';
      readonly samples: number;
      readonly least: number;
      readonly most: number;
    }
  | { readonly code: 'seed-not-whole'; readonly seed: number }
  | { readonly code: 'bite-spread-negative'; readonly biteLogSpread: number }
  | { readonly code: 'matrix-not-positive'; readonly row: number; readonly pivot: number }
  | { readonly code: 'element-inside-out'; readonly xMm: number; readonly yMm: number };

/** Thrown with what is refused. Its message is for whoever debugs: the code, then each quantity by its name. */
export class Refused extends RangeError {
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    const { code, ...quantities } = refusal;
    super([code, ...Object.entries(quantities).map(([name, value]) => `${name} ${value}`)].join(', '));
    this.name = 'Refused';
    this.refusal = refusal;
  }
}

/** What an error refuses, also after it came out of a worker, where only its properties are left. */
export function refusalOf(error: unknown): Refusal | undefined {
  return error instanceof Error && 'refusal' in error ? (error.refusal as Refusal) : undefined;
}
