/** The head of the page: which build this is, where it starts from, saving, undoing, units and appearance. */
import { useState } from 'react';
import { PRESETS } from '../../build/presets.ts';
import type { UnitSystem } from '../../build/units.ts';
import { isUnsaved } from '../../state/build-slice.ts';
import { APPEARANCES } from '../../state/preferences.ts';
import { store, useBackbow } from '../../state/store.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { ACTION_WORDS } from '../words/actions.ts';
import { PROJECT_WORDS, SETTING_WORDS } from '../words/panels.ts';
import './project-bar.css';

function BuildName() {
  const name = useBackbow((state) => state.build.name);
  const unsaved = useBackbow(isUnsaved);
  const [draft, setDraft] = useState<string | null>(null);
  function commit(): void {
    if (draft !== null) store.getState().change({ name: draft }, PROJECT_WORDS.stepName);
    setDraft(null);
  }
  return (
    <span className="build-name">
      <input
        type="text"
        aria-label={PROJECT_WORDS.name}
        maxLength={200}
        value={draft ?? name}
        onChange={(event) => setDraft(event.currentTarget.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
          if (event.key === 'Escape') setDraft(null);
        }}
      />
      <span className="quiet">{unsaved ? PROJECT_WORDS.unsaved : ''}</span>
    </span>
  );
}

function PresetPicker() {
  return (
    <select
      aria-label={PROJECT_WORDS.presets}
      value=""
      onChange={(event) => {
        const preset = PRESETS.find(({ id }) => id === event.currentTarget.value);
        if (preset) store.getState().replaceBuild(preset.build, PROJECT_WORDS.stepPreset(preset.label));
      }}
    >
      <option value="" disabled>
        {PROJECT_WORDS.presets} …
      </option>
      {PRESETS.map((preset) => (
        <option key={preset.id} value={preset.id} title={preset.description}>
          {preset.label}
        </option>
      ))}
    </select>
  );
}

function UnitSwitch() {
  const system = useBackbow((state) => state.unitSystem);
  return (
    <select
      aria-label={SETTING_WORDS.units}
      value={system}
      onChange={(event) => store.getState().setUnitSystem(event.currentTarget.value as UnitSystem)}
    >
      <option value="metric">{SETTING_WORDS.metric}</option>
      <option value="inch">{SETTING_WORDS.inch}</option>
    </select>
  );
}

function AppearanceSwitch() {
  const appearance = useBackbow((state) => state.appearance);
  return (
    <select
      aria-label={SETTING_WORDS.appearance}
      value={appearance}
      onChange={(event) => {
        const chosen = APPEARANCES.find((known) => known === event.currentTarget.value);
        if (chosen) store.getState().setAppearance(chosen);
      }}
    >
      {APPEARANCES.map((known) => (
        <option key={known} value={known}>
          {SETTING_WORDS.appearances[known]}
        </option>
      ))}
    </select>
  );
}

export function ProjectBar() {
  // On a narrow screen the picture comes first: the tools wait behind one button.
  const [open, setOpen] = useState(false);
  return (
    <header className="project-bar">
      <h1>Backbow</h1>
      <BuildName />
      <button
        type="button"
        className="bar-menu"
        aria-expanded={open}
        aria-controls="bar-tools"
        onClick={() => setOpen(!open)}
      >
        {PROJECT_WORDS.menu}
      </button>
      <div id="bar-tools" className="bar-tools" data-open={open || undefined}>
        <PresetPicker />
        <ActionButton id="open" />
        <ActionButton id="save" />
        <ActionButton id="library" />
        <ActionButton id="share" />
        <ActionButton id="plan" />
        <ActionButton id="undo">{PROJECT_WORDS.undo(undefined)}</ActionButton>
        <ActionButton id="redo">{PROJECT_WORDS.redo(undefined)}</ActionButton>
        <UnitSwitch />
        <AppearanceSwitch />
        <ActionButton id="lessons" />
        <ActionButton id="help">{ACTION_WORDS.help}</ActionButton>
      </div>
    </header>
  );
}
