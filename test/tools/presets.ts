/** The necks to start from as the page puts them on the bench: with their names, in English. */
import { PRESETS as ROWS, type Preset, type PresetId } from '../../src/neck/presets.ts';
import { PRESET_WORDS } from '../../src/speech/en/neck/necks.ts';
import { presetBuild } from '../../src/speech/names.ts';

export const PRESETS: readonly (Preset<PresetId> & { readonly label: string })[] = ROWS.map((preset) => ({
  id: preset.id,
  build: presetBuild(preset),
  label: PRESET_WORDS[preset.id].label,
}));
