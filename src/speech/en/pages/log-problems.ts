/** What is wrong with an entry of the bench log or with a file of them. Columns are called what they are in the file. */
import { words } from '../../language.ts';

export const LOG_PROBLEM_WORDS = words('LOG_PROBLEM_WORDS', {
  inRow: (row: string, sentence: string) => `Row ${row}: ${sentence}`,
  'not-a-day': (column: string, value: string) =>
    `“${column}” is “${value}”; it takes a day of the calendar, as 2026-02-14 or 14.02.2026.`,
  'day-or-month': (value: string) =>
    `“date” is “${value}”: is the day first, or the month? Nothing in the file tells. Write it as 2026-02-14 or 14.02.2026.`,
  'no-name': (column: string) => `“${column}” is empty; the neck needs a name.`,
  'text-too-long': (column: string, characters: string, most: string) =>
    `“${column}” has ${characters} characters; it takes at most ${most}.`,
  'not-an-option': (column: string, value: string, options: string) =>
    `“${column}” is “${value}”; it takes one of: ${options}.`,
  'not-an-id': (value: string) =>
    `“id” is “${value}”, which is not an id of this log. Leave the cell empty and the entry gets one.`,
  'no-number': (column: string, value: string, range: string) =>
    `“${column}” is “${value}”; it takes a number, ${range}.`,
  'out-of-range': (column: string, value: string, range: string) => `“${column}” is ${value}; it takes ${range}.`,
  empty: (column: string, range: string) => `“${column}” is empty; it takes ${range}.`,
  'nothing-measured': (fretted: string, strung: string) =>
    `nothing was measured: fill in “${fretted}”, “${strung}” or both.`,
  'needed-with': (column: string, other: string) => `“${column}” is missing; it is needed with “${other}”.`,
  'file-empty': 'The file is empty.',
  'file-too-large': (size: string, most: string) => `The file has ${size}; a bench log has at most ${most}.`,
  'too-many-rows': (most: string) => `The file has more than ${most} entries, the most that a log takes.`,
  'not-text': 'The file is not a text that can be read. Save it as CSV in UTF-8.',
  'quotes-open': 'this is not CSV: quotes are opened and never closed.',
  'quotes-go-on': 'this is not CSV: a cell goes on after its closing quotes.',
  'column-twice': (cell: string) => `there are two columns “${cell}”.`,
  'column-unknown': (cell: string) => `a bench log has no column “${cell}”.`,
  'column-unit': (cell: string, column: string) => `column “${cell}” has the wrong unit: it takes ${column}.`,
  'column-missing': (column: string) => `the column “${column}” is missing.`,
  'cell-without-column': (cell: string) => `“${cell}” is in no column: the header ends before it.`,
  'same-id': (id: string, row: string) =>
    `it has the id of row ${row} (${id}) and says something else. If it is another neck, empty its id.`,
  withUnit: (column: string, unit: string) => `“${column} (${unit})”`,
  eitherUnit: (column: string) => `“${column} (mm)” or “${column} (in)”`,
  withoutUnit: (column: string) => `“${column}” without a unit`,
  /** The most that is listed, and how many problems there are beyond. */
  more: (count: number) => `and ${count} more`,
});
