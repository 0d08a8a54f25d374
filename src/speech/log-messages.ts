/** Messages of the bench log in the reader's units. */
import { RANGE_WORDS } from './en/neck/quantity.ts';
import { fromDisplay, toDisplay, type Unit, type UnitSystem } from '../neck/units.ts';
import { unitLabel, withDecimalSign } from './quantity.ts';

/** Units that have an inch counterpart and may stand in a message of the library. */
const CONVERTED: readonly Unit[] = ['mm²', 'mm³', 'mm', 'N'];

/** Digits after the point that keep a converted number as exact as the one in the message. */
function digitsFor(printed: string, unit: Unit, system: UnitSystem): number {
  const digits = printed.includes('.') ? printed.length - printed.indexOf('.') - 1 : 0;
  const resolution = Math.abs(fromDisplay(1, unit, system));
  return digits + Math.max(0, Math.ceil(Math.log10(resolution)));
}

function convert(printed: string, unit: Unit, system: UnitSystem): string {
  const shown = toDisplay(Number(printed), unit, system);
  return String(Number(shown.toFixed(digitsFor(printed, unit, system)))).replace('-', '−');
}

/** A message of the library with its lengths and forces in the reader's units, and numbers as the language writes them. */
export function inReadersUnits(message: string, system: UnitSystem): string {
  return withDecimalSign(system === 'metric' ? message : converted(message, system));
}

function converted(message: string, system: UnitSystem): string {
  const unit = CONVERTED.join('|');
  const number = String.raw`-?\d+(?:\.\d+)?`;
  // What stands between the ends of a range, " to " in English.
  const between = RANGE_WORDS.range('', '');
  const quantity = new RegExp(String.raw`(${number})(${between}(${number}))?[ \u00a0](${unit})(?![\w/²³·])`, 'g');
  return message.replace(quantity, (_all, first: string, _range, second: string | undefined, found: Unit) => {
    const label = unitLabel(found, system);
    const start = convert(first, found, system);
    return second === undefined ? `${start} ${label}` : `${start}${between}${convert(second, found, system)} ${label}`;
  });
}
