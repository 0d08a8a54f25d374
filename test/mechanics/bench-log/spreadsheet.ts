/**
 * A log as a spreadsheet saves it again after opening it: it keeps 15 digits of a number (documented by the makers of
 * spreadsheets as their precision, IEEE 754 double shown to 15 digits; from memory), writes numbers and days as its country
 * does, and quotes what holds its own delimiter.
 */
import Papa from 'papaparse';

export type Country = 'German' | 'British' | 'American';

const NUMBER = /^-?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;
const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

function day(text: string, country: Country): string {
  const [, year, month, date] = DAY.exec(text)!;
  if (country === 'German') return `${date}.${month}.${year}`;
  return country === 'British' ? `${date}/${month}/${year}` : `${Number(month)}/${Number(date)}/${year}`;
}

function cell(text: string, country: Country, isText: boolean): string {
  if (isText) return text;
  if (DAY.test(text)) return day(text, country);
  if (!NUMBER.test(text)) return text;
  const short = String(Number(Number(text).toPrecision(15)));
  return country === 'German' ? short.replace('.', ',').replace('e', 'E') : short;
}

/** Columns that are texts of the workshop's own, which the person has told the spreadsheet to leave alone. */
const TEXTS = new Set(['neck', 'wire', 'blade', 'wood of the board', 'workshop', 'instrument', 'id']);

export function savedAgain(csv: string, country: Country): string {
  const { data } = Papa.parse<string[]>(csv.trimEnd(), { delimiter: ',' });
  const header = data[0];
  const rows = data.slice(1).map((cells) => cells.map((text, at) => cell(text, country, TEXTS.has(header[at]))));
  return `${Papa.unparse([header, ...rows], { delimiter: country === 'German' ? ';' : ',', newline: '\r\n' })}\r\n`;
}
