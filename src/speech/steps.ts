/** A step of the plan in words. */
import type { Step, StepPart } from '../fretwork/plan/steps.ts';
import type { StepQuantity } from '../fretwork/quantity.ts';
import { quantityOf } from '../neck/quantities.ts';
import type { UnitSystem } from '../neck/units.ts';
import { textOf } from './quantity-text.ts';
import { STATISTIC_WORDS } from './en/neck/quantities.ts';
import { STEP_TEXTS, STEP_WORDS } from './en/fretwork/steps.ts';
import { glueWords } from './names.ts';
import { quantityName } from './quantity-names.ts';
import { timeText } from './times.ts';

export function stepTitle({ title }: Pick<Step, 'title'>): string {
  return STEP_WORDS.titles[title];
}

function partText(part: StepPart, glue: string | undefined): string {
  if (part === 'glue') return STEP_TEXTS.glue(glueWords(glue ?? '').label);
  if (part === 'clean-up') {
    const { label, cleanUp } = glueWords(glue ?? '');
    return STEP_TEXTS['clean-up'](label, cleanUp);
  }
  return STEP_TEXTS[part];
}

export function stepText({ parts, glue }: Pick<Step, 'parts' | 'glue'>): string {
  return parts.map((part) => partText(part, glue)).join(' ');
}

function nameOf({ key, value, which, index }: StepQuantity): string {
  if (key === 'fretsInQuarter' && index !== undefined) return STEP_WORDS.quarter(index);
  if (key === 'bendToRadiusMm' && value < 0) return STEP_WORDS.bendPastStraight;
  if (key === 'restDays') return STEP_WORDS.rest;
  const name = quantityName(key);
  return which === undefined ? name : STATISTIC_WORDS[which](name);
}

/** A number of a step with its name. A radius past straight is said so in the name, and has no sign. */
export function stepQuantityText(
  quantity: StepQuantity,
  system: UnitSystem,
): { readonly name: string; readonly text: string } {
  const { key, value } = quantity;
  const { unit } = quantityOf(key);
  const shown = key === 'bendToRadiusMm' ? Math.abs(value) : value;
  const text = unit === 'day' && value > 0 ? timeText(value) : textOf(key, shown, system);
  return { name: nameOf(quantity), text };
}
