/** Settings in which compared necks differ, by the groups of the controls. */
import type { Build } from '../../neck/build.ts';
import { GROUPS, type GroupId } from '../../neck/parameter-kinds.ts';
import { workingValue } from '../../neck/kerf.ts';
import { PARAMETERS, type ParameterId } from '../../neck/parameters.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { valueRows } from '../papers/value-text.ts';
import { CONTROL_WORDS } from '../../speech/en/workshop/controls.ts';
import { PLAN_WORDS } from '../../speech/en/pages/papers.ts';
import { COMPARE_WORDS } from '../../speech/en/pages/compare.ts';
import { groupName, optionName, parameterName } from '../../speech/names.ts';

type ListId = 'laminates' | 'binding' | 'strings' | 'regions' | 'startingReliefMm';
export type SettingId = ParameterId | ListId;

type ListWords = 'laminates' | 'binding' | 'strings' | 'regions' | 'starting';
const LISTS: Readonly<Record<ListId, { readonly group: GroupId; readonly words: ListWords }>> = {
  laminates: { group: 'neck', words: 'laminates' },
  binding: { group: 'edges', words: 'binding' },
  strings: { group: 'strings', words: 'strings' },
  regions: { group: 'slots', words: 'regions' },
  startingReliefMm: { group: 'existing', words: 'starting' },
};

export interface DifferingSetting {
  readonly id: SettingId;
  readonly label: string;
  /** One a neck. */
  readonly texts: readonly string[];
}

export interface DifferingGroup {
  readonly id: GroupId;
  readonly label: string;
  readonly settings: readonly DifferingSetting[];
}

function isSame(one: unknown, other: unknown): boolean {
  return one === other || (typeof one === 'object' && JSON.stringify(one) === JSON.stringify(other));
}

function differs(builds: readonly Build[], id: SettingId): boolean {
  return builds.some((build) => !isSame(workingValue(build, id), workingValue(builds[0], id)));
}

function settingText(build: Build, parameter: (typeof PARAMETERS)[number], system: UnitSystem): string {
  const value = workingValue(build, parameter.id);
  if (value === null) return CONTROL_WORDS.notMeasured;
  if (parameter.kind === 'number') return textOf(parameter.id, value as number, system);
  if (parameter.kind === 'flag') return value === true ? CONTROL_WORDS.yes : CONTROL_WORDS.no;
  return optionName(parameter.id, String(value));
}

/** As the workshop sheet says it. */
function listText(build: Build, id: ListId, system: UnitSystem): string {
  const rows = valueRows(build, system).find((group) => group.id === LISTS[id].group)?.rows ?? [];
  return rows.find(({ label }) => label === PLAN_WORDS.values[LISTS[id].words])?.text ?? COMPARE_WORDS.noneListed;
}

/** Only groups and settings that differ between any two of the necks. */
export function differingSettings(builds: readonly Build[], system: UnitSystem): DifferingGroup[] {
  const lists = Object.keys(LISTS) as ListId[];
  return GROUPS.map((group) => ({
    id: group,
    label: groupName(group),
    settings: [
      ...PARAMETERS.filter((parameter) => parameter.group === group && differs(builds, parameter.id)).map(
        (parameter): DifferingSetting => ({
          id: parameter.id,
          label: parameterName(parameter.id),
          texts: builds.map((build) => settingText(build, parameter, system)),
        }),
      ),
      ...lists
        .filter((id) => LISTS[id].group === group && differs(builds, id))
        .map((id): DifferingSetting => ({
          id,
          label: PLAN_WORDS.values[LISTS[id].words],
          texts: builds.map((build) => listText(build, id, system)),
        })),
    ],
  })).filter(({ settings }) => settings.length > 0);
}

/** Which of these settings differ between two of the necks. */
export function settingsBetween(group: DifferingGroup, one: Build, other: Build): SettingId[] {
  return group.settings.map(({ id }) => id).filter((id) => !isSame(one[id], other[id]));
}
