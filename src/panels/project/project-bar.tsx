/** The head of the page, in one row: which build this is, where it starts from, what is wanted every day, and the menu. */
import { useState } from 'react';
import { PRESETS } from '../../build/presets.ts';
import { isUnsaved } from '../../state/build-slice.ts';
import { store, useBackbow } from '../../state/store.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { useMedia } from '../use-media.ts';
import { PROJECT_WORDS } from '../words/panels.ts';
import { BarMenu } from './bar-menu.tsx';
import { DAILY, ROOMY } from './daily.ts';
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

/** What is wanted every day: in the bar where there is room, else at the head of the menu. */
function Daily() {
  return (
    <>
      <PresetPicker />
      {DAILY.map((id) => (
        <ActionButton key={id} id={id} />
      ))}
    </>
  );
}

export function ProjectBar() {
  const isRoomy = useMedia(ROOMY);
  return (
    <header className="project-bar">
      <h1>Backbow</h1>
      <BuildName />
      {isRoomy && (
        <div className="bar-daily">
          <Daily />
        </div>
      )}
      <div className="bar-steps">
        <ActionButton id="undo">{PROJECT_WORDS.undo(undefined)}</ActionButton>
        <ActionButton id="redo">{PROJECT_WORDS.redo(undefined)}</ActionButton>
      </div>
      <BarMenu>{!isRoomy && <Daily />}</BarMenu>
    </header>
  );
}
