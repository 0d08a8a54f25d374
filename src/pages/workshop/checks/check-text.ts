/** Parts of a check as text. */
import type { UnitSystem } from '../../../neck/units.ts';
import { formatQuantity } from '../../../speech/quantity.ts';
import type { Check } from '../../../fretwork/checks/check-types.ts';
import { CHECK_WORDS } from '../../../speech/en/workshop.ts';
import { parameterName } from '../../../speech/names.ts';

/** "0.02 mm; at least 0.05 mm", or nothing where the check is not about a number. */
function numbersText(check: Check, system: UnitSystem): string | undefined {
  const { value, limit, limitKind, unit, digits } = check;
  if (value === null) return undefined;
  const say = (number: number) => formatQuantity(number, unit, digits, system);
  if (limit === null || limitKind === null) return say(value);
  return CHECK_WORDS.numbers(say(value), limitKind, say(limit));
}

function whereText(frets: readonly number[]): string | undefined {
  if (frets.length === 0) return undefined;
  return frets.length === 1 ? CHECK_WORDS.fret(frets[0]!) : CHECK_WORDS.frets(frets[0]!, frets.at(-1)!, frets.length);
}

/** Name of what to change. */
export function labelOf(parameter: Check['parameter']): string {
  return parameter === 'strings' || parameter === 'binding' ? CHECK_WORDS.lists[parameter] : parameterName(parameter);
}

/** What was found and where, as far as the check says. */
export function checkFacts(check: Check, system: UnitSystem): string[] {
  return [numbersText(check, system), whereText(check.frets)].filter((text) => text !== undefined);
}
