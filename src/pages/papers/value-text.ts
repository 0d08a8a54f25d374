/** Values of a build as text, as the controls say them. */
import { areLaminatesConstant } from '../../neck/neck-shape.ts';
import { bindingInUse, type Build } from '../../neck/build.ts';
import { GROUPS, type GroupId } from '../../neck/parameter-kinds.ts';
import { workingKerfMm, workingValue } from '../../neck/kerf.ts';
import { isRelevant, PARAMETERS, type ParameterId } from '../../neck/parameters.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import { CONTROL_WORDS } from '../../speech/en/workshop/controls.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';
import { CONSTRUCTION_WORDS } from '../../speech/en/neck/necks.ts';
import {
  bindingMaterialName,
  choiceName,
  groupName,
  parameterName,
  pitchName,
  woodNameIn,
} from '../../speech/names.ts';

export interface ValueRow {
  readonly label: string;
  readonly text: string;
}

function listRows(group: GroupId, build: Build, system: UnitSystem): ValueRow[] {
  const words = PLAN_WORDS.values;
  const text = (key: QuantityKey, value: number) => textOf(key, value, system);
  const row = (label: string, texts: readonly string[]): ValueRow[] =>
    texts.length === 0 ? [] : [{ label, text: texts.join('; ') }];
  switch (group) {
    case 'neck':
      return row(
        words.laminates,
        build.laminates.map(({ wood, share, widthMm }) => {
          const size =
            widthMm === undefined ? formatQuantity(share * 100, '%', 1, 'metric') : text('boardWidthMm', widthMm);
          const isRest = widthMm === undefined && areLaminatesConstant(build);
          return words.laminate(woodNameIn(build, wood), isRest ? words.laminateRest : size);
        }),
      );
    case 'slots':
      return row(
        words.regions,
        build.regions.map((region) =>
          words.region(
            region.fromFret,
            region.toFret,
            text('kerfMm', workingKerfMm(region, build.method)),
            text('tangWidthMm', region.tangWidthMm),
            text('studWidthMm', region.studWidthMm),
          ),
        ),
      );
    case 'edges':
      return row(
        words.binding,
        bindingInUse(build).map(({ thicknessMm, material, colour }) =>
          words.bindingLine(
            [text('bindingThicknessMm', thicknessMm), material && bindingMaterialName(material)]
              .filter(Boolean)
              .join(' '),
            colour,
          ),
        ),
      );
    case 'strings':
      return row(
        words.strings,
        build.strings.map(({ pitch, diameterMm, construction, besidePreviousMm }) => {
          const alone = [
            pitchName(pitch),
            text('stringDiameterMm', diameterMm),
            CONSTRUCTION_WORDS[construction],
          ] as const;
          return besidePreviousMm === undefined
            ? words.string(...alone)
            : words.stringOfCourse(...alone, text('besidePreviousMm', besidePreviousMm));
        }),
      );
    case 'existing':
      return row(
        words.starting,
        build.startingReliefMm.map((relief) => text('startingBowMm', relief)),
      );
    default:
      return [];
  }
}

/** Does anything in this build rest on the value, beyond what the table's own conditions say? */
function matters(id: ParameterId, build: Build): boolean {
  if (id === 'barWidthMm' || id === 'barDepthMm' || id === 'barModulusGPa') return build.barCount > 0;
  // A slot that is sawn as far as the binding lets it has nothing to say of its ends.
  if (id === 'bridgeMm') return build.bridgeMm > 0;
  if (id === 'undercutTangs') return build.undercutTangs;
  return true;
}

/** Every value that matters in this build, by group and in the order of the controls. */
export function valueRows(build: Build, system: UnitSystem): { id: GroupId; label: string; rows: ValueRow[] }[] {
  return GROUPS.map((id) => ({
    id,
    label: groupName(id),
    rows: [
      ...PARAMETERS.filter(
        (parameter) => parameter.group === id && isRelevant(parameter, build) && matters(parameter.id, build),
      ).map((parameter): ValueRow => {
        const value = workingValue(build, parameter.id);
        const text =
          value === null
            ? CONTROL_WORDS.notMeasured
            : parameter.kind === 'number'
              ? textOf(parameter.id, value as number, system)
              : parameter.kind === 'flag'
                ? value === true
                  ? CONTROL_WORDS.yes
                  : CONTROL_WORDS.no
                : choiceName(build, parameter.id);
        return { label: parameterName(parameter.id), text };
      }),
      ...listRows(id, build, system),
    ],
  }));
}
