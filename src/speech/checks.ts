/** A check in words, with its numbers in the reader's units. */
import type { Check, LimitCode } from '../fretwork/checks/check-types.ts';
import { NICKEL_RELEASE_LIMIT } from '../fretwork/checks/limits.ts';
import type { QuantityKey } from '../neck/quantities.ts';
import type { UnitSystem } from '../neck/units.ts';
import { formatNumber } from './quantity.ts';
import { cautionText } from './cautions.ts';
import { CHECK_TEXTS, CHECK_WORDS } from './en/fretwork/checks.ts';
import { BASIS_WORDS } from './en/neck/sources.ts';
import { constructionName, parameterName, woodName } from './names.ts';
import { listed, quantityName } from './quantity-names.ts';
import { shownApart } from './shown-apart.ts';

export function checkTitle({ code }: Pick<Check, 'code'>): string {
  return CHECK_TEXTS[code].title;
}

export function checkRemedy({ code }: Pick<Check, 'code'>): string {
  return CHECK_TEXTS[code].remedy;
}

/** What goes wrong. */
export function checkReason({ code, variant, about }: Pick<Check, 'code' | 'variant' | 'about'>): string {
  switch (code) {
    case 'nickel':
      return CHECK_TEXTS.nickel.reason(formatNumber(NICKEL_RELEASE_LIMIT, 1));
    case 'nickel-strings':
      return CHECK_TEXTS[code].reason(listed(about.map(constructionName)));
    case 'earlier-woods':
      return CHECK_TEXTS[code].reason(listed(about.map(woodName)));
    case 'dust':
    case 'dust-sensitising':
    case 'glue':
    case 'heat':
    case 'listed-wood':
      return CHECK_TEXTS[code].reason(cautionText({ id: code, about }));
    default: {
      const { reason } = CHECK_TEXTS[code];
      if (typeof reason === 'string') return reason;
      const said = (reason as Readonly<Record<string, string>>)[variant ?? ''];
      if (said === undefined) throw new RangeError(`check "${code}" has no variant "${variant}"`);
      return said;
    }
  }
}

export function checkSource({ source }: Pick<Check, 'source'>): string {
  return CHECK_WORDS.source(BASIS_WORDS[source]);
}

/** Name of what to change. */
export function labelOf(parameter: Check['parameter']): string {
  return parameter === 'strings' || parameter === 'binding' ? CHECK_WORDS.lists[parameter] : parameterName(parameter);
}

function whereText(frets: readonly number[]): string {
  const first = frets[0];
  const last = frets.at(-1);
  if (first === undefined || last === undefined) return '';
  return frets.length === 1 ? CHECK_WORDS.fret(first) : CHECK_WORDS.frets(first, last, frets.length);
}

function nameOf(quantity: QuantityKey): string {
  const { names } = CHECK_WORDS;
  return quantity === 'restDays' || quantity === 'wireRadiusPercent' ? names[quantity] : quantityName(quantity);
}

/** Does it say where the model is known to disagree with practice? */
export function isLimit(check: Check): check is Check & { readonly code: LimitCode } {
  return Object.hasOwn(CHECK_WORDS.limits, check.code);
}

/** "Bite is 0.012 mm at frets 12 to 14; it needs 0.030 mm.", or nothing where the check is not about a number. */
export function checkNumbers(check: Check, system: UnitSystem): string {
  const { quantity, value, limit, limitKind, frets } = check;
  if (quantity === null || value === null || limit === null || limitKind === null) return '';
  const shown = shownApart(quantity, value, limit, system);
  if (isLimit(check)) return CHECK_WORDS.limits[check.code](shown.value, shown.limit);
  if (check.variant === 'bears') return CHECK_WORDS.bears(shown.value, shown.limit);
  return CHECK_WORDS.numbers(nameOf(quantity), shown.value, whereText(frets), limitKind, shown.limit);
}
