/**
 * The one formatter: a key, a value and a unit system give a text. What a quantity deserves in digits stands with its key
 * (neck/quantities.ts); a number of the build is written as its control writes it, with the digits it was given.
 */
import { isComputed, quantityOf, type QuantityKey } from '../neck/quantities.ts';
import { parameterById } from '../neck/parameters.ts';
import type { NumberParameter } from '../neck/parameter-kinds.ts';
import type { UnitSystem } from '../neck/units.ts';
import { formatQuantity, shownNumber } from './quantity.ts';
import { displayScale, numberText, quantityText } from './scale.ts';

/**
 * The row of a number of the build; undefined for a quantity that is computed.
 * @throws {RangeError} when no quantity has that key
 */
export function givenNumber(key: QuantityKey): NumberParameter | undefined {
  if (isComputed(key)) return undefined;
  const parameter = parameterById(key);
  if (parameter.kind !== 'number') throw new RangeError(`"${key}" is no quantity: it has no number`);
  return parameter;
}

/** "0.29 mm", "0.575 mm", "412 N". */
export function textOf(key: QuantityKey, value: number, system: UnitSystem): string {
  const parameter = givenNumber(key);
  if (parameter) return quantityText(value, displayScale(parameter, system), system);
  const { unit, digits } = quantityOf(key);
  return formatQuantity(value, unit, digits, system);
}

/** The number alone, where its unit stands elsewhere: at the head of a column, behind the end of a range. */
export function numberOf(key: QuantityKey, value: number, system: UnitSystem): string {
  const parameter = givenNumber(key);
  if (parameter) return numberText(value, displayScale(parameter, system), system);
  const { unit, digits } = quantityOf(key);
  return shownNumber(value, unit, digits, system);
}

/** Short of the zeros that a field would show: "648 mm", not "648.0 mm". */
export function shortTextOf(key: QuantityKey, value: number, system: UnitSystem): string {
  return textOf(key, value, system)
    .replace(/([.,]\d*?)0+(?!\d)/, '$1')
    .replace(/[.,](?!\d)/, '');
}
