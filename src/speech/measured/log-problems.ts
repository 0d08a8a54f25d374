/** What is wrong with an entry of the bench log or with a file of them, in the reader's units. */
import { columnName, type LogColumn, LOG_NUMBERS, type LogNumber } from '../../mechanics/bench-log/entry.ts';
import type { Limits, LogProblem } from '../../mechanics/bench-log/entry-problems.ts';
import { toDisplay, type UnitSystem } from '../../neck/units.ts';
import { LOG_PROBLEM_WORDS } from '../en/pages/log-problems.ts';
import { spokenLocale } from '../language.ts';
import { formatShort, megabytes, unitLabel, withUnit } from '../quantity.ts';
import { displayScale, rangeText } from '../scale.ts';

/** Digits after the point in which a number of an entry is said: what was typed, and no noise. */
const DIGITS = 6;
const RANGE_DIGITS = 3;
/** Longest piece of a file that a sentence shows. */
const MOST_SHOWN = 60;

const shown = (text: string) => (text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)}…` : text);

function numberText(value: number, { unit }: Limits, system: UnitSystem): string {
  return withUnit(formatShort(toDisplay(value, unit, system), DIGITS), unitLabel(unit, system));
}

function limitsText({ min, max, unit }: Limits, system: UnitSystem): string {
  const scale = displayScale({ unit, min, max, step: 0.01, digits: RANGE_DIGITS }, system);
  return rangeText(min, max, scale, system);
}

function unitOf(column: LogNumber['id']): string {
  const { name, unit } = LOG_NUMBERS.find(({ id }) => id === column)!;
  if (unit === 'mm') return LOG_PROBLEM_WORDS.eitherUnit(name);
  return unit === ''
    ? LOG_PROBLEM_WORDS.withoutUnit(name)
    : LOG_PROBLEM_WORDS.withUnit(name, unit === 'day' ? 'days' : unit);
}

const whole = (count: number) => count.toLocaleString(spokenLocale());

function sentence(problem: LogProblem, system: UnitSystem): string {
  const say = LOG_PROBLEM_WORDS;
  const name = (column: LogColumn) => columnName(column);
  switch (problem.code) {
    case 'not-a-day':
      return say[problem.code](name(problem.column), shown(problem.value));
    case 'day-or-month':
    case 'not-an-id':
      return say[problem.code](shown(problem.value));
    case 'no-name':
      return say[problem.code](name(problem.column));
    case 'text-too-long':
      return say[problem.code](name(problem.column), whole(problem.characters), whole(problem.most));
    case 'not-an-option':
      return say[problem.code](name(problem.column), shown(problem.value), problem.options.join(', '));
    case 'no-number':
      return say[problem.code](name(problem.column), shown(problem.value), limitsText(problem, system));
    case 'out-of-range':
      return say[problem.code](
        name(problem.column),
        numberText(problem.value, problem, system),
        limitsText(problem, system),
      );
    case 'empty':
      return say[problem.code](name(problem.column), limitsText(problem, system));
    case 'nothing-measured':
      return say[problem.code](name('measuredFrettedMm'), name('measuredStrungMm'));
    case 'needed-with':
      return say[problem.code](name(problem.column), name(problem.with));
    case 'file-empty':
    case 'not-text':
    case 'quotes-open':
    case 'quotes-go-on':
      return say[problem.code];
    case 'file-too-large':
      return say[problem.code](megabytes(problem.bytes), megabytes(problem.mostBytes));
    case 'too-many-rows':
      return say[problem.code](whole(problem.most));
    case 'column-twice':
    case 'column-unknown':
    case 'cell-without-column':
      return say[problem.code](shown(problem.cell));
    case 'column-unit':
      return say[problem.code](shown(problem.cell), unitOf(problem.column));
    case 'column-missing':
      return say[problem.code](name(problem.column));
    case 'same-id':
      return say[problem.code](problem.id, whole(problem.otherRow));
  }
}

/** One sentence that names the row, the column, the value, its range and its unit. */
export function logProblemText(problem: LogProblem, system: UnitSystem): string {
  const text = sentence(problem, system);
  return problem.row === null ? text : LOG_PROBLEM_WORDS.inRow(whole(problem.row), text);
}

/** Some of many problems, and how many more there are. @param count of all of them, those left out included */
export function logProblemTexts(
  problems: readonly LogProblem[],
  count: number,
  most: number,
  system: UnitSystem,
): string[] {
  const said = problems.slice(0, most).map((problem) => logProblemText(problem, system));
  return count > said.length ? [...said, LOG_PROBLEM_WORDS.more(count - said.length)] : said;
}
