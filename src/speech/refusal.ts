/** Why a wish was refused, as one sentence naming the value, its range and its unit, and what is kept. */
import type { Problem } from '../neck/problems.ts';
import type { UnitSystem } from '../neck/units.ts';
import { CONTROL_WORDS } from './en/workshop/controls.ts';
import { problemTexts } from './problems.ts';
import { displayScale, quantityText, rangeText, type Scaled } from './scale.ts';

type Named = Scaled & { readonly label: string };

export function notANumber(text: string, parameter: Named, system: UnitSystem): string {
  const scale = displayScale(parameter, system);
  return CONTROL_WORDS.notANumber(text.trim(), parameter.label, rangeText(parameter.min, parameter.max, scale, system));
}

/** Undefined when the value is in range. */
export function outOfRange(stored: number, parameter: Named, system: UnitSystem): string | undefined {
  const scale = displayScale(parameter, system);
  const range = rangeText(parameter.min, parameter.max, scale, system);
  const value = quantityText(stored, scale, system);
  if (!(stored >= parameter.min && stored <= parameter.max)) {
    return CONTROL_WORDS.outOfRange(value, parameter.label, range);
  }
  if (parameter.integer && !Number.isInteger(stored)) return CONTROL_WORDS.notWhole(value, parameter.label, range);
  return undefined;
}

/** The library's own reasons, and what stays. @param kept null where there is nothing yet */
export function refusalText(problems: readonly Problem[], kept: string | null, system: UnitSystem): string {
  const stays = kept === null ? CONTROL_WORDS.staysEmpty : CONTROL_WORDS.kept(kept);
  return [...problemTexts(problems, system), stays].join(' ');
}
