/** Why something could not be computed or drawn, in words. */
import type { UnitSystem } from '../neck/units.ts';
import { formatQuantity, formatShort } from './quantity.ts';
import { refusalOf, type Refusal } from '../mechanics/refusal.ts';
import { FAILURE_WORDS } from './en/workshop/failures.ts';

/** What the library refused, what became of its worker, or an error that nobody foresaw, as its message. */
export type Failure =
  | Refusal
  | { readonly code: 'broke-off' }
  | { readonly code: 'stopped-repeatedly' }
  | { readonly code: 'unforeseen'; readonly message: string };

/** What was thrown, as data. */
export function failureOf(error: unknown): Failure {
  return refusalOf(error) ?? { code: 'unforeseen', message: error instanceof Error ? error.message : String(error) };
}

/** A plain number with the digits that it has. */
const plain = (value: number): string => formatShort(value, 6);

/** The reason in the middle of a sentence: small at its start, no full stop. */
export function failureText(failure: Failure, system: UnitSystem): string {
  const mm = (value: number, digits: number) => formatQuantity(value, 'mm', digits, system);
  switch (failure.code) {
    case 'fret-not-there':
      return FAILURE_WORDS.noSuchFret(plain(failure.fret), plain(failure.frets));
    case 'days-negative':
      return FAILURE_WORDS.days(plain(failure.days));
    case 'slot-narrower':
      return FAILURE_WORDS.narrower(mm(failure.kerfMm, 3), mm(failure.beforeMm, 3));
    case 'rod-beyond-range':
      return FAILURE_WORDS.rod(plain(failure.rodPercent), plain(-failure.mostPercent), plain(failure.mostPercent));
    case 'relief-beyond-range':
      return FAILURE_WORDS.relief(mm(failure.reliefMm, 2), mm(failure.leastMm, 2), mm(failure.mostMm, 2));
    case 'no-kerf-fits':
      return FAILURE_WORDS.kerf(mm(failure.leastMm, 3), mm(failure.tangWidthMm, 3), mm(failure.mostMm, 3));
    case 'stretches-beyond-range':
      return FAILURE_WORDS.stretches(plain(failure.stretches), plain(failure.most));
    case 'no-stretch-or-tang':
      return FAILURE_WORDS.noTangs;
    case 'too-many-combinations':
      return FAILURE_WORDS.combinations(
        plain(failure.tangs),
        plain(failure.stretches),
        plain(failure.combinations),
        plain(failure.most),
      );
    case 'seating-unsettled':
      return FAILURE_WORDS.seating(formatQuantity(failure.leftN, 'N', 1, system));
    case 'samples-beyond-range':
      return FAILURE_WORDS.samples(plain(failure.samples), plain(failure.least), plain(failure.most));
    case 'seed-not-whole':
      return FAILURE_WORDS.seed(plain(failure.seed));
    case 'bite-spread-negative':
      return FAILURE_WORDS.biteSpread(plain(failure.biteLogSpread));
    case 'matrix-not-positive':
      return FAILURE_WORDS.matrix(plain(failure.row), String(failure.pivot));
    case 'element-inside-out':
      return FAILURE_WORDS.element(mm(failure.xMm, 2), mm(failure.yMm, 2));
    case 'broke-off':
      return FAILURE_WORDS.brokeOff;
    case 'stopped-repeatedly':
      return FAILURE_WORDS.stoppedRepeatedly;
    case 'unforeseen':
      return failure.message;
  }
}
