/** What a closed group says of the build, in a few words. */
import type { Build } from '../../../neck/build.ts';
import type { GroupId } from '../../../neck/parameter-kinds.ts';
import type { GivenKey } from '../../../neck/quantities.ts';
import { workingValue } from '../../../neck/kerf.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { setOf } from '../lists/string-choices.ts';
import { SUMMARY_WORDS } from '../../../speech/en/workshop/controls.ts';
import { METHOD_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { timeText } from '../../../speech/times.ts';
import { shortTextOf } from '../../../speech/quantity-text.ts';
import { STRING_SET_WORDS } from '../../../speech/en/neck/necks.ts';
import { spokenLanguage, type Language } from '../../../speech/language.ts';
import { choiceName, metalShortName, woodNameIn } from '../../../speech/names.ts';

interface Said {
  readonly build: Build;
  readonly system: UnitSystem;
  readonly language: Language;
  readonly text: string;
}

const said = new Map<GroupId, Said>();

/** The summary of a group; asked again for the same build it answers from memory, since every turn of the store asks. */
export function groupSummary(group: GroupId, build: Build, system: UnitSystem): string {
  const before = said.get(group);
  const language = spokenLanguage();
  if (before?.build === build && before.system === system && before.language === language) return before.text;
  const text = summarize(group, build, system);
  said.set(group, { build, system, language, text });
  return text;
}

function stringsText({ strings }: Build): string {
  const set = setOf(strings);
  return set ? STRING_SET_WORDS[set.id] : SUMMARY_WORDS.strings(strings.length);
}

function summarize(group: GroupId, build: Build, system: UnitSystem): string {
  const say = (id: GivenKey) => shortTextOf(id, workingValue(build, id) as number, system);
  switch (group) {
    case 'neck':
      return [
        say('scaleLengthMm'),
        SUMMARY_WORDS.frets(build.fretCount),
        [...new Set(build.laminates.map((laminate) => woodNameIn(build, laminate.wood)))].join(' + '),
      ].join(', ');
    case 'board':
      return [woodNameIn(build, build.boardWood), say('boardThicknessMm')].join(', ');
    case 'wire':
      return [metalShortName(build.wireMetal), say('crownWidthMm')].join(', ');
    case 'slots':
      return SUMMARY_WORDS.slots(say('kerfMm'), say('slotDepthMm'));
    case 'seating':
      return METHOD_WORDS[build.method].label;
    case 'edges':
      return SUMMARY_WORDS.binding(build.bindingLineCount);
    case 'strings':
      return stringsText(build);
    case 'rod':
      return choiceName(build, 'rodKind');
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
