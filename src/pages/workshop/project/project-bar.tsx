/** The head of the page, in one row: which build this is, where it starts from, what is wanted every day, and the menu. */
import { useId, useState } from 'react';
import { MOST_NAME } from '../../../neck/build.ts';
import { PRESETS } from '../../../neck/presets.ts';
import { isUnsaved } from '../../../state/build-slice.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { tooLong } from '../../../kit/text-limit.ts';
import { useMedia } from '../../../kit/use-media.ts';
import { CONTROL_WORDS } from '../../../speech/en/workshop/controls.ts';
import { PROJECT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { BarMenu } from './bar-menu.tsx';
import { DAILY, ROOMY } from './daily.ts';
import './project-bar.css';
import { PRESET_WORDS } from '../../../speech/en/neck/necks.ts';
import { presetBuild } from '../../../speech/names.ts';

function BuildName() {
  const name = useBackbow((state) => state.build.name);
  const unsaved = useBackbow(isUnsaved);
  const [draft, setDraft] = useState<string | null>(null);
  const id = useId();
  const refusal = draft === null ? undefined : tooLong(PROJECT_WORDS.name, draft, MOST_NAME);
  /** A name that is refused stays in its field, to be mended there. */
  function commit(): void {
    if (draft === null || store.getState().change({ name: draft }, PROJECT_WORDS.stepName).ok) setDraft(null);
  }
  return (
    <span className="build-name">
      <input
        type="text"
        aria-label={PROJECT_WORDS.name}
        aria-invalid={refusal !== undefined || undefined}
        aria-describedby={refusal === undefined ? undefined : id}
        value={draft ?? name}
        onChange={(event) => setDraft(event.currentTarget.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
          if (event.key === 'Escape') setDraft(null);
        }}
      />
      <span className="quiet">{unsaved ? PROJECT_WORDS.unsaved : ''}</span>
      <p id={id} className="refusal" role="alert">
        {refusal && `${refusal} ${CONTROL_WORDS.kept(PROJECT_WORDS.quoted(name))}`}
      </p>
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
        if (preset)
          store.getState().replaceBuild(presetBuild(preset), PROJECT_WORDS.stepPreset(PRESET_WORDS[preset.id].label));
      }}
    >
      <option value="" disabled>
        {PROJECT_WORDS.presets} …
      </option>
      {PRESETS.map((preset) => (
        <option key={preset.id} value={preset.id} title={PRESET_WORDS[preset.id].description}>
          {PRESET_WORDS[preset.id].label}
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
  const necksPlaced = useBackbow((state) => state.necksPlaced);
  return (
    <header className="project-bar" data-keep-clear>
      <h1>Backbow</h1>
      {/* What is typed in the name belongs to one neck, not to the next. */}
      <BuildName key={necksPlaced} />
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
