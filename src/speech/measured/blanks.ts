/** What is said of a blank that is measured. */
import { blankNumberName, blankOf } from '../../neck/blanks.ts';
import type { Build } from '../../neck/build.ts';
import { parameterById, type BlankPart } from '../../neck/parameters.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { isOwnWood, ownWoodOf } from '../../neck/materials/own-woods.ts';
import type { FarBlank, Slip } from '../../mechanics/blank-slips.ts';
import { blankModulusMPa, speciesModulusMPa } from '../../mechanics/elements/materials.ts';
import { BLANK_WORDS } from '../en/workshop/blanks.ts';
import { spokenLocale } from '../language.ts';
import { parameterName, woodName } from '../names.ts';
import { formatNumber, formatQuantity } from '../quantity.ts';
import { displayScale, quantityText } from '../scale.ts';

function woodOf(build: Build, part: BlankPart): string {
  const ids = part === 'board' ? [build.boardWood] : [...new Set(build.laminates.map(({ wood }) => wood))];
  if (ids.length > 1) return BLANK_WORDS.woods;
  return isOwnWood(ids[0]) ? ownWoodOf(build, ids[0]).name || BLANK_WORDS.ownWood : woodName(ids[0]);
}

const modulusText = (modulusMPa: number, system: UnitSystem) =>
  formatQuantity(modulusMPa / 1000, 'GPa', modulusMPa < 2000 ? 2 : 1, system);

/** What is missing, or what the measurement gives beside the species; empty where the blank is not measured. */
export function blankStateText(build: Build, part: BlankPart, system: UnitSystem): string {
  const blank = blankOf(build, part);
  const wood = woodOf(build, part);
  switch (blank.state) {
    case 'not-measured':
      return '';
    case 'incomplete': {
      const names = new Intl.ListFormat(spokenLocale()).format(
        blank.missing.map((id) => BLANK_WORDS.names[blankNumberName(id)]),
      );
      return BLANK_WORDS.missing(names, wood);
    }
    case 'whole':
      return BLANK_WORDS.measured(
        modulusText(blankModulusMPa(blank), system),
        wood,
        modulusText(speciesModulusMPa(build, part), system),
      );
  }
}

/** A number of a blank as text with its unit. */
export function blankValueText(id: string, value: number, system: UnitSystem): string {
  const row = parameterById(id);
  return row.kind === 'number' ? quantityText(value, displayScale(row, system), system) : '';
}

function slipText({ code, parameter, meant }: Slip, typed: string, system: UnitSystem): string {
  const value = blankValueText(parameter, meant, system);
  const why = BLANK_WORDS.why[code];
  return parameter === typed
    ? BLANK_WORDS.meant(value, why)
    : BLANK_WORDS.meantOther(parameterName(parameter), value, why);
}

/** The question that a number raises. @param build as it would be with that number */
export function farBlankText(build: Build, part: BlankPart, typed: string, far: FarBlank, system: UnitSystem): string {
  const given = blankValueText(typed, build[typed as keyof Build] as number, system);
  const factor = Math.max(far.ratio, 1 / far.ratio);
  const times = formatNumber(factor, factor < 10 ? 1 : 0);
  const say = far.ratio < 1 ? BLANK_WORDS.softer : BLANK_WORDS.stiffer;
  const found = say(
    given,
    times,
    woodOf(build, part),
    modulusText(far.modulusMPa, system),
    modulusText(far.speciesMPa, system),
  );
  const [slip] = far.slips;
  if (slip) return `${found} ${slipText(slip, typed, system)}`;
  return far.fitting === undefined
    ? found
    : `${found} ${BLANK_WORDS.usual(blankValueText(typed, far.fitting, system))}`;
}
