/** Units and appearance. */
import type { UnitSystem } from '../../../neck/units.ts';
import { APPEARANCES } from '../../../state/preferences.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { SETTING_WORDS } from '../../../speech/en/workshop/workshop.ts';

export function UnitSwitch() {
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

export function AppearanceSwitch() {
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
