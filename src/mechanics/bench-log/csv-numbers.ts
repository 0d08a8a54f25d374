/**
 * Numbers of the log's file. What was written is read back as exactly the same number, in mm and in inches: an inch is
 * 25.4 mm by definition, but divided and multiplied again in floating point a length is another one every third time.
 *
 * So a length in inches with up to 15 digits, all that a spreadsheet keeps, is read to 12 digits in mm, and one with more is
 * multiplied as a decimal number and rounded once. Writing takes the shortest text that is read back as the same.
 */
import { MM_PER_INCH } from '../../neck/units.ts';

const SPREADSHEET_DIGITS = 15;
const READ_DIGITS = 12;
/** With one in 10^21 a length in inches is nearer to its mm than any other double. */
const MOST_DIGITS = 22;

/** A plain decimal number with a point: sign, digits, point, digits, exponent. */
const PLAIN = /^([-+]?)(\d*)\.?(\d*)(?:e([-+]?\d{1,4}))?$/i;

function significantDigits(text: string): number {
  const [, , whole = '', part = ''] = PLAIN.exec(text) ?? [];
  return `${whole}${part}`.replace(/^0+/, '').length;
}

/** text × 25.4, exactly, and then the nearest double. */
function timesMmPerInch(text: string): number {
  const [, sign, whole = '', part = '', exponent = '0'] = PLAIN.exec(text)!;
  const digits = BigInt(`${whole}${part}`) * 254n;
  return Number(`${sign}${digits}e${Number(exponent) - part.length - 1}`);
}

/** @param text a plain decimal number, inches @returns mm */
export function mmOfInches(text: string): number {
  if (significantDigits(text) > SPREADSHEET_DIGITS) return timesMmPerInch(text);
  return Number((Number(text) * MM_PER_INCH).toPrecision(READ_DIGITS));
}

/** value / 25.4 to so many digits, as a decimal text. */
function inchesTo(valueMm: number, digits: number): string {
  if (digits <= SPREADSHEET_DIGITS) return String(Number((valueMm / MM_PER_INCH).toPrecision(digits)));
  const [, sign, whole = '', part = '', exponent = '0'] = PLAIN.exec(String(valueMm))!;
  const given = BigInt(`${whole}${part}`);
  // Zeros behind the number, or digits off its end, so that the quotient has as many as are wanted, or one more.
  const zeros = digits + 2 - String(given).length;
  const quotient = (given * 10n ** BigInt(zeros + 1)) / 254n;
  const surplus = String(quotient).length - digits;
  const power = Number(exponent) - part.length - zeros + surplus;
  const unit = 10n ** BigInt(surplus);
  return `${sign}${plainDecimal(String((quotient + unit / 2n) / unit), power)}`;
}

/** digits × 10^power without an exponent. */
function plainDecimal(digits: string, power: number): string {
  if (power >= 0) return `${digits}${'0'.repeat(power)}`;
  const padded = digits.padStart(1 - power, '0');
  return `${padded.slice(0, power)}.${padded.slice(power)}`;
}

/** The shortest decimal text, in inches, that `mmOfInches` reads as this length. */
export function inchesText(valueMm: number): string {
  if (valueMm === 0) return '0';
  for (let digits = 1; digits < MOST_DIGITS; digits += 1) {
    const text = inchesTo(valueMm, digits);
    if (mmOfInches(text) === valueMm) return text;
  }
  return inchesTo(valueMm, MOST_DIGITS);
}

/**
 * A cell as a plain decimal number: with a point or a comma as its decimal sign and a true minus or none.
 * @returns undefined for anything else, also for a number that has signs for thousands
 */
export function plainNumber(cell: string): string | undefined {
  const text = cell.replaceAll('\u00a0', ' ').trim().replace('−', '-').replace(',', '.');
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d{1,4})?$/i.test(text) ? text : undefined;
}
