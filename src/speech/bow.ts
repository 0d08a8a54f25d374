/** How a bow is said in words: "back-bow" and "relief", never a bare sign. */
import { filedValue, quantityOf } from '../neck/quantities.ts';
import { displayDigits, toDisplay, type UnitSystem } from '../neck/units.ts';
import { BOW_ENTRY_WORDS, BOW_WORDS, type BowKind } from './en/workshop/bow.ts';
import { formatRange } from './quantity.ts';
import { numberOf, textOf } from './quantity-text.ts';

/** Digits of a bow in mm: a hundredth is what a feeler gauge tells. */
const BOW_DIGITS = quantityOf('reliefMm').digits;

/** Which way a bow goes, judged by what would be printed of it. */
export function bowKind(reliefMm: number, system: UnitSystem): BowKind {
  const printed = Number(
    toDisplay(filedValue(reliefMm, 'mm'), 'mm', system).toFixed(displayDigits(BOW_DIGITS, 'mm', system)),
  );
  if (printed === 0) return 'flat';
  return printed < 0 ? 'back-bow' : 'relief';
}

/** The size of a bow, without its direction: "0.29 mm". */
export function bowSize(reliefMm: number, system: UnitSystem): string {
  return textOf('reliefMm', Math.abs(reliefMm), system);
}

/** "0.29 mm back-bow", "0.06 mm relief" or "flat". */
export function bowText(reliefMm: number, system: UnitSystem): string {
  const kind = bowKind(reliefMm, system);
  return kind === 'flat' ? BOW_WORDS.flat : `${bowSize(reliefMm, system)} ${BOW_WORDS[kind]}`;
}

/** "0.29 mm hump", "0.06 mm hollow" or "flat": in the words in which a bow is entered. */
export function enteredBowText(reliefMm: number, system: UnitSystem): string {
  const kind = bowKind(reliefMm, system);
  if (kind === 'flat') return BOW_WORDS.flat;
  return `${bowSize(reliefMm, system)} ${BOW_ENTRY_WORDS[kind === 'relief' ? 'hollow' : 'hump']}`;
}

/** How a relief changes, with its sign: "−0.02 mm" is towards a hump. Nothing where nothing of it would be printed. */
export function changeText(changeMm: number, system: UnitSystem): string {
  const kind = bowKind(changeMm, system);
  return kind === 'flat' ? '' : `${kind === 'relief' ? '+' : '−'}${bowSize(changeMm, system)}`;
}

/**
 * A band of bows, low to high: "0.19 to 0.41 mm", with both words where it goes from a hump to a hollow, "flat" where
 * neither end would be printed as a bow.
 */
export function bowBandText(lowMm: number, highMm: number, system: UnitSystem): string {
  const kinds = [bowKind(lowMm, system), bowKind(highMm, system)];
  if (kinds.includes('back-bow') && kinds.includes('relief')) {
    return formatRange(bowText(lowMm, system), bowText(highMm, system), '');
  }
  if (kinds.every((kind) => kind === 'flat')) return BOW_WORDS.flat;
  const sizes = [Math.abs(lowMm), Math.abs(highMm)].sort((a, b) => a - b) as [number, number];
  return formatRange(numberOf('reliefMm', sizes[0], system), bowSize(sizes[1], system), '');
}
