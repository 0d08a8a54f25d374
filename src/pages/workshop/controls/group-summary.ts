/** What a closed group says of the build, in a few words. */
import type { Build } from '../../../neck/build.ts';
import type { GroupId } from '../../../neck/parameter-kinds.ts';
import { metalById } from '../../../neck/metals.ts';
import { parameterById, type ParameterId } from '../../../neck/parameters.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { OWN_WOOD_ID, WOOD_OPTIONS } from '../../../neck/woods.ts';
import { setOf } from '../lists/string-choices.ts';
import { SUMMARY_WORDS } from '../../../speech/en/controls.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop.ts';
import { timeText } from '../../../speech/times.ts';
import { displayScale, quantityText } from '../../../speech/scale.ts';

function woodLabel(id: string): string {
  return WOOD_OPTIONS.find((option) => option.value === id)?.label ?? OWN_WOOD_ID;
}

function quantity(build: Build, id: ParameterId, system: UnitSystem): string {
  const parameter = parameterById(id);
  if (parameter.kind !== 'number') throw new RangeError(`parameter "${id}" is not a number`);
  // Short of the zeros that a field would show: "648 mm", not "648.0 mm".
  return quantityText(build[id] as number, displayScale(parameter, system), system)
    .replace(/([.,]\d*?)0+(?!\d)/, '$1')
    .replace(/[.,](?!\d)/, '');
}

function optionLabel(build: Build, id: ParameterId): string {
  const parameter = parameterById(id);
  if (parameter.kind !== 'choice') throw new RangeError(`parameter "${id}" is not a choice`);
  return parameter.options.find((option) => option.value === build[id])?.label ?? String(build[id]);
}

interface Said {
  readonly build: Build;
  readonly system: UnitSystem;
  readonly text: string;
}

const said = new Map<GroupId, Said>();

/** The summary of a group; asked again for the same build it answers from memory, since every turn of the store asks. */
export function groupSummary(group: GroupId, build: Build, system: UnitSystem): string {
  const before = said.get(group);
  if (before?.build === build && before.system === system) return before.text;
  const text = summarize(group, build, system);
  said.set(group, { build, system, text });
  return text;
}

function summarize(group: GroupId, build: Build, system: UnitSystem): string {
  const say = (id: ParameterId) => quantity(build, id, system);
  switch (group) {
    case 'neck':
      return [
        say('scaleLengthMm'),
        SUMMARY_WORDS.frets(build.fretCount),
        [...new Set(build.laminates.map((laminate) => woodLabel(laminate.wood)))].join(' + '),
      ].join(', ');
    case 'board':
      return [woodLabel(build.boardWood), say('boardThicknessMm')].join(', ');
    case 'wire':
      return [metalById(build.wireMetal).label.replace(/\s*\(.*/, ''), say('crownWidthMm')].join(', ');
    case 'slots':
      return SUMMARY_WORDS.slots(say('kerfMm'), say('slotDepthMm'));
    case 'seating':
      return METHOD_WORDS[build.method].label;
    case 'edges':
      return SUMMARY_WORDS.binding(build.bindingLineCount);
    case 'strings':
      return setOf(build.strings)?.label ?? SUMMARY_WORDS.strings(build.strings.length);
    case 'rod':
      return optionLabel(build, 'rodKind');
    case 'time':
      return [
        SUMMARY_WORDS.settled(timeText(build.settleDays)),
        ...(build.climateOn ? [SUMMARY_WORDS.climate] : []),
      ].join(', ');
    case 'existing':
      return build.job === 'refret' ? SUMMARY_WORDS.refret : SUMMARY_WORDS.newNeck;
    case 'assumptions':
      return SUMMARY_WORDS.bite(say('biteFactor'));
  }
}
