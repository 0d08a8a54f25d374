/** How numbers and units are written. */
import { words } from '../../language.ts';

export const NUMBER_SIGNS = words('NUMBER_SIGNS', { decimal: '.' });

/** Units that are words; symbols are the same in every language. */
export const UNIT_WORDS = words('UNIT_WORDS', { day: 'days', oneDay: 'day', '% MC': '% MC' });

export const RANGE_WORDS = words('RANGE_WORDS', {
  /** The unit, where there is one, stands with the upper end. */
  range: (low: string, high: string) => `${low} to ${high}`,
});
