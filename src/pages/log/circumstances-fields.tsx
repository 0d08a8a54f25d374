/** Where, how and with what a neck was measured; closed until somebody wants it. */
import { ROD_STATES, STRAIGHTEDGE_ON } from '../../mechanics/bench-log/entry.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import type { EntryDraft } from './entry-draft.ts';
import { ChoiceField, NumberField, TextField } from './form-fields.tsx';

const NAMES = ['workshop', 'wire', 'blade', 'instrument'] as const;

interface CircumstancesFieldsProps {
  readonly draft: EntryDraft;
  readonly set: (change: Partial<EntryDraft>) => void;
}

export function CircumstancesFields({ draft, set }: CircumstancesFieldsProps) {
  return (
    <details className="log-circumstances">
      <summary>{LOG_WORDS.circumstances}</summary>
      <div className="log-fields">
        {NAMES.map((id) => (
          <TextField
            key={id}
            label={LOG_WORDS.circumstance[id]}
            value={draft[id]}
            change={(value) => set({ [id]: value })}
          />
        ))}
        <ChoiceField
          label={LOG_WORDS.circumstance.rod}
          value={draft.rod}
          options={ROD_STATES}
          nameOf={(rod) => LOG_WORDS.rodStates[rod]}
          change={(rod) => set({ rod })}
        />
        <ChoiceField
          label={LOG_WORDS.circumstance.straightedgeOn}
          value={draft.straightedgeOn}
          options={STRAIGHTEDGE_ON}
          nameOf={(on) => LOG_WORDS.straightedgeOn[on]}
          change={(straightedgeOn) => set({ straightedgeOn })}
        />
        <NumberField
          label={LOG_WORDS.circumstance.humidity}
          value={draft.humidityPercent}
          change={(humidityPercent) => set({ humidityPercent })}
        />
      </div>
      {draft.rod === 'snug' && <p className="quiet">{LOG_WORDS.snugSaysNothing}</p>}
    </details>
  );
}
