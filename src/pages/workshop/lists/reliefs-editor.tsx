/** The bow that an old neck already has, measured at every fret, where there is more than one number. */
import type { UnitSystem } from '../../../neck/units.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { unitLabel } from '../../../speech/quantity.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { refusalText } from '../../../speech/refusal.ts';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { RefusedNumber } from '../../../kit/refused-number.tsx';
import { BowNumber } from '../../../kit/bow-number.tsx';
import { LIST_NUMBERS } from '../../../neck/schema.ts';
import { useRefusal } from '../../../kit/use-refusal.ts';

const RELIEF = { ...LIST_NUMBERS.startingReliefMm, step: 0.01, digits: 2 } as const;

export function ReliefsEditor() {
  const reliefs = useBackbow((state) => state.build.startingReliefMm);
  const count = useBackbow((state) => state.build.fretCount);
  const isRefret = useBackbow((state) => state.build.job === 'refret');
  const system = useBackbow((state) => state.unitSystem);
  const [message, setMessage] = useRefusal();

  function change(wanted: readonly number[], label: string) {
    const outcome = store.getState().change({ startingReliefMm: wanted }, label);
    setMessage(outcome.ok ? undefined : refusalText(outcome.problems, LIST_WORDS.reliefs.title, system));
    return outcome;
  }

  if (!isRefret) return null;
  return (
    <fieldset className="list-editor">
      <legend>
        {LIST_WORDS.reliefs.title}, {unitLabel('mm', system)}
      </legend>
      <p>
        <label className="tick">
          <input
            type="checkbox"
            checked={reliefs.length > 0}
            onChange={(event) =>
              change(
                event.currentTarget.checked ? Array.from({ length: count }, () => 0) : [],
                LIST_WORDS.reliefs.title,
              )
            }
          />
          {LIST_WORDS.reliefs.perFret}
        </label>
      </p>
      {reliefs.length > 0 && (
        <ol className="relief-list" aria-label={LIST_WORDS.reliefs.caption}>
          {reliefs.map((relief, index) => (
            <li key={index}>
              <span aria-hidden="true">{index + 1}</span>
              <ReliefAtFret
                name={LIST_WORDS.reliefs.fret(index + 1)}
                value={relief}
                system={system}
                change={(value) => change(reliefs.with(index, value), LIST_WORDS.reliefs.fret(index + 1))}
              />
            </li>
          ))}
        </ol>
      )}
      <p className="refusal" role="alert">
        {message}
      </p>
      <div className="button-row">
        <ActionButton id="refret" />
      </div>
    </fieldset>
  );
}

interface ReliefAtFretProps {
  readonly name: string;
  readonly value: number;
  readonly system: UnitSystem;
  readonly change: (reliefMm: number) => Outcome;
}

function ReliefAtFret({ name, value, system, change }: ReliefAtFretProps) {
  const parameter = { label: name, ...RELIEF };
  return (
    <RefusedNumber>
      {(told) => (
        <BowNumber parameter={parameter} name={name} value={value} system={system} change={change} {...told} />
      )}
    </RefusedNumber>
  );
}
