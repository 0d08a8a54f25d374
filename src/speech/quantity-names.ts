/** Names of quantities, in the language of the page. */
import { isComputed, type QuantityKey } from '../neck/quantities.ts';
import { QUANTITY_WORDS } from './en/neck/quantities.ts';
import { spokenLocale } from './language.ts';
import { parameterName } from './names.ts';

/** What a quantity is called: a computed one by its key, a number of the build as its control is. */
export function quantityName(key: QuantityKey): string {
  return isComputed(key) ? QUANTITY_WORDS[key] : parameterName(key);
}

/** "maple, ebony and walnut", as the language joins a list. */
export function listed(names: readonly string[]): string {
  return new Intl.ListFormat(spokenLocale(), { type: 'conjunction' }).format(names);
}
