/** The bow that an old neck already has, measured at every fret, where there is more than one number. */
import type { UnitSystem } from '../../../neck/units.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { useBackbow } from '../../../state/store.ts';
import { ActionButton } from '../actions/action-button.tsx';
import { LIST_WORDS } from '../../../speech/en/workshop/controls.ts';
import { ListEditor, useListEdit } from '../../../kit/list-editor.tsx';
import { RefusedNumber } from '../../../kit/refused-number.tsx';
import { BowNumber } from '../../../kit/bow-number.tsx';
import { LIST_NUMBERS } from '../../../neck/schema.ts';

const RELIEF = { ...LIST_NUMBERS.startingReliefMm, step: 0.01, digits: 2 } as const;

export function ReliefsEditor() {
  const reliefs = useBackbow((state) => state.build.startingReliefMm);
  const count = useBackbow((state) => state.build.fretCount);
  const isRefret = useBackbow((state) => state.build.job === 'refret');
  const edit = useListEdit(LIST_WORDS.reliefs.title);

  const change = (wanted: readonly number[], label: string) => edit.change({ startingReliefMm: wanted }, label);

  if (!isRefret) return null;
  return (
    <ListEditor edit={edit} titled>
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
                system={edit.system}
                change={(value) => change(reliefs.with(index, value), LIST_WORDS.reliefs.fret(index + 1))}
              />
            </li>
          ))}
        </ol>
      )}
      <div className="button-row">
        <ActionButton id="refret" />
      </div>
    </ListEditor>
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
