/** Names of quantities and of rows in tables, in the language of the page. */
import { glueById } from '../neck/glues.ts';
import { metalById } from '../neck/metals.ts';
import { parameterById } from '../neck/parameters.ts';
import { isComputed, type QuantityKey } from '../neck/quantities.ts';
import { OWN_WOOD_ID, woodById } from '../neck/woods.ts';
import { CAUTION_WORDS } from './en/cautions.ts';
import { QUANTITY_WORDS } from './en/quantities.ts';
import { spokenLocale } from './language.ts';

/** What a quantity is called: a computed one by its key, a number of the build as its control is. */
export function quantityName(key: QuantityKey): string {
  return isComputed(key) ? QUANTITY_WORDS[key] : parameterById(key).label;
}

export function woodName(id: string): string {
  return id === OWN_WOOD_ID ? CAUTION_WORDS.ownWood : woodById(id).label;
}

export function glueName(id: string): string {
  return glueById(id).label;
}

export function metalName(id: string): string {
  return metalById(id).label;
}

/** "maple, ebony and walnut", as the language joins a list. */
export function listed(names: readonly string[]): string {
  return new Intl.ListFormat(spokenLocale(), { type: 'conjunction' }).format(names);
}
