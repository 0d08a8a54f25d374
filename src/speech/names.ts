/** Names of what a neck is made of and set to, by their ids. */
import { sheetMaterial } from '../neck/materials/binding.ts';
import type { Build } from '../neck/build.ts';
import type { GlueId } from '../neck/glues.ts';
import { metalById, type Metal, type MetalId } from '../neck/metals.ts';
import { parameterById, type ParameterId } from '../neck/parameters.ts';
import type { Preset, PresetId } from '../neck/presets.ts';
import type { StringConstruction } from '../neck/strings.ts';
import { isOwnWood, ownWoodOf, type OwnWoodId } from '../neck/materials/own-woods.ts';
import type { WoodId } from '../neck/woods.ts';
import { GLUE_WORDS, METAL_SOURCE_WORDS, METAL_WORDS, SHEET_WORDS, WOOD_WORDS } from './en/neck/materials.ts';
import { CONSTRUCTION_WORDS, NOTE_WORDS, PRESET_WORDS } from './en/neck/necks.ts';
import { GROUP_WORDS, PARAMETER_WORDS, SOURCE_WORDS } from './en/neck/parameters.ts';
import type { GroupId } from '../neck/parameter-kinds.ts';

export function woodName(id: string): string {
  return WOOD_WORDS[id as WoodId | OwnWoodId];
}

/** As the build calls it, where it is one of its own woods with a name. */
export function woodNameIn(build: Pick<Build, 'ownWoods'>, id: string): string {
  return (isOwnWood(id) && ownWoodOf(build, id).name) || woodName(id);
}

export function metalName(id: string): string {
  return METAL_WORDS[id as MetalId];
}

/** Without what stands in brackets: alloy number and temper. */
export function metalShortName(id: string): string {
  return metalName(id).replace(/\s*\(.*/, '');
}

/** Where the numbers of a metal are from. */
export function metalSource({ source, mark, yieldOf }: Metal): string {
  const read = mark === 'practice' ? METAL_SOURCE_WORDS.practice : source;
  const said = mark === 'mem' ? METAL_SOURCE_WORDS.memory(read) : read;
  return yieldOf === undefined ? said : METAL_SOURCE_WORDS.yieldOf(said, metalShortName(metalById(yieldOf).id));
}

/** What a line of binding is made of. */
export function bindingMaterialName(id: string | undefined): string {
  if (id === undefined) return SHEET_WORDS.board;
  const sheet = sheetMaterial(id);
  return sheet ? SHEET_WORDS[sheet.id] : woodName(id);
}

/** What a string is made of. */
export function constructionName(id: string): string {
  return CONSTRUCTION_WORDS[id as StringConstruction];
}

export function glueWords(id: string): (typeof GLUE_WORDS)[GlueId] {
  return GLUE_WORDS[id as GlueId];
}

export function groupName(id: GroupId): string {
  return GROUP_WORDS[id];
}

/** Name of a parameter as the maker says it, without the unit. @throws {RangeError} for an unknown one */
export function parameterName(id: string): string {
  return PARAMETER_WORDS[parameterById(id).id as ParameterId].label;
}

/** What a control is called, what it changes, and where its values are from; no source is an empty text. */
export interface ControlWords {
  readonly label: string;
  readonly hint: string;
  readonly source: string;
}

/** @throws {RangeError} when no parameter has that id */
export function parameterWords(id: string): ControlWords {
  const parameter = parameterById(id);
  const { label, hint } = PARAMETER_WORDS[parameter.id as ParameterId];
  return { label, hint, source: SOURCE_WORDS[parameter.source] };
}

/** What a value of a choice is called. */
export function optionName(id: string, value: string): string {
  if (id === 'boardWood') return woodName(value);
  if (id === 'wireMetal') return metalName(value);
  if (id === 'glueKind') return glueWords(value).label;
  const words = PARAMETER_WORDS[id as ParameterId];
  return ('options' in words ? (words.options as Readonly<Record<string, string>>)[value] : undefined) ?? value;
}

/** What a build has chosen. @throws {RangeError} when the parameter is not a choice */
export function choiceName(build: Build, id: ParameterId): string {
  if (parameterById(id).kind !== 'choice') throw new RangeError(`parameter "${id}" is not a choice`);
  return id === 'boardWood' ? woodNameIn(build, build.boardWood) : optionName(id, String(build[id]));
}

/** A neck to start from, with its name in the language of the page: from then on it is the maker's own text. */
export function presetBuild({ id, build }: Preset<PresetId>): Build {
  return { ...build, name: PRESET_WORDS[id].label };
}

/** Scientific pitch name of a MIDI note number, e.g. 64 → "E4". */
export function pitchName(pitch: number): string {
  return `${NOTE_WORDS[((pitch % 12) + 12) % 12]}${Math.floor(pitch / 12) - 1}`;
}
